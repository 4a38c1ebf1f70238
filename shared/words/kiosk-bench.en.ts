const pieces = (count: number, written: string): string => (count === 1 ? '1 piece' : `${written} pieces`);

/** What the bench list says. */
export const kioskBenchWords = {
  title: (bench: string) => bench,
  waiting: 'Waits here', held: 'On hold', due: 'Falls due',
  empty: { happened: 'Nothing waits at this bench.', next: 'Scan a traveller to open it, or look at what is on hold.' },
  noneHeld: 'Nothing is on hold here.',
  noneDue: 'No gauge of this bench falls due soon.',
  loading: 'Reading what waits here',
  old: 'This list was read before the network went; it may be old.',
  tryAgain: 'Try again',
  start: (gate: string) => `Start ${gate}`, goOn: (gate: string) => `Go on with ${gate}`, sort: (gate: string) => `Enter the sort at ${gate}`, decide: 'Waits for a decision', inCharge: (gate: string) => `${gate}: in a charge`, waitsForCharge: { furnace: (gate: string) => `${gate}: put it into a furnace charge`, coating: (gate: string) => `${gate}: put it into a coating charge` }, toRelease: 'To be released', toPack: 'To be packed', done: 'Done',
  attempt: (attempt: number) => `attempt ${attempt}, re-inspection`,
  pieces: { lot: pieces, batch: (_: number, written: string) => `${written} barrels`, furnace: pieces, coating: pieces },
  kinds: { lot: 'Lot', batch: 'Powder batch', furnace: 'Furnace charge', coating: 'Coating charge' },
  switchedFor: (lots: string) => `after ${lots}`,
  lookDue: (look: string, time: string) => `Look ${look} due since ${time}`, drift: { above: 'Weights drift above', below: 'Weights drift below' },
  since: (when: string) => `since ${when}`,
  discontinued: 'Inspection discontinued',
  state: { due: 'Due', open: 'In work', sorting: 'Sorting', held: 'On hold', inCharge: 'In a charge', waitsForCharge: 'Waits for a charge', toRelease: 'To be released', toPack: 'To be packed', done: 'Done' },
  severity: { tightened: 'Tightened', reduced: 'Reduced', discontinued: 'Discontinued', normal: 'Normal' },
  calibration: (id: string, name: string) => `${id} ${name}`, calibrationDue: (day: string) => `calibration due ${day}`, calibrationOver: (day: string) => `overdue since ${day}: gives no reading that counts`,
  handOver: 'Hand over', handOverTitle: (bench: string) => `Hand-over at ${bench}`, open: 'In work', yetToStart: 'Not begun', noneOpen: 'Nothing is in work.', print: 'Print', handOverDone: 'Back to the list',
  newLot: 'Open a lot',
  lot: { title: 'Open a lot', number: 'Number of the lot', numberHint: '2 to 16 of A–Z, 0–9 and dash', product: 'Product', batch: 'Released powder batch', noBatch: 'No released powder of this grade.', quantity: 'Pieces to be pressed', tray: 'Places on one tray', order: 'Order, where there is one', open: 'Open the lot', busy: 'Under way', missing: 'This must be filled in.', whole: 'A whole number, 1 or more.', cancel: 'Leave it' },
};
export type KioskBenchWords = typeof kioskBenchWords;
