/** What the page of cautions says. */
export const planCautionsWords = {
  title: 'Cautions', lead: 'Short reminders at the step. Word them as your site’s instructions do, add your own, or switch one off with a reason. Under each stands that the site’s rules come first; that line cannot be written away.',
  caption: 'Words and where they stand', empty: 'There are no cautions.',
  columns: { caution: 'Caution', standing: 'Standing', text: 'Words shown', from: 'Written', used: 'Where it is shown', edit: 'Change' },
  standings: { tool: 'tool’s words', plant: 'plant’s words', off: 'switched off' },
  written: (by: string, at: string, version: string, why: string) => `Version ${version}, ${by}, ${at}: ${why}`, tool: 'Version 0: comes with the tool', nowhere: 'nowhere now', change: 'Change',
  steps: { openBatch: 'opening a powder batch', blendBatches: 'blending powder batches', openFurnace: 'opening a furnace charge', openCoating: 'opening a coating charge', packing: 'packing' },
  edit: (caution: string) => `Change ${caution}`, add: 'Add a caution', addTitle: 'A caution of the plant’s own',
  key: 'Key', keyHint: 'Capital letters, digits and dashes, such as WET-FLOOR.', wrongKey: 'Two to sixteen capital letters, digits or dashes.',
  text: 'Words', textHint: 'One calm line of up to 200 characters: what the hazard is, and which of your instructions says what to do.', missing: 'Say something.', why: 'Why', whyMissing: 'Say why in a few words.',
  shown: 'Shown at its gates', choices: { shown: 'Shown', off: 'Switched off' }, keep: 'Keep', back: 'Back to the tool’s words',
  done: (caution: string) => `${caution} stands as written.`, doneNext: 'Gates opened from now on show it so; a gate that is open keeps what it showed.', mayNot: 'Cautions are worded by quality engineers and the plant keeper.',
};
