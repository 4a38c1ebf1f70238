const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

/** What the lab and the charge's traveller say about maps, positions and furnace logs. */
export const kioskChargeWords = {
  map: {
    caption: (equipment: string) => `Map of ${equipment}`, test: 'test piece', failed: 'failed', near: 'near a failed position',
    cell: (name: string, lot: string | null, test: string | null, failed: boolean) => [name, lot === null ? 'free' : `lot ${lot}`, ...(test === null ? [] : [`test piece ${test}`]), ...(failed ? ['failed'] : [])].join(', '),
    lot: (lot: string, places: string, again: string | null, near: string) => `${lot}: ${places}${again === null ? '' : ` (${again})`}${near === '' ? '' : ` · ${near}`}`,
    left: 'taken out, to be done again',
    how: 'How “near” is meant: the same cell; the cells that touch it on its level by side or corner (on a ring the next ones either way); the cells straight above and below. Our own definition, derived: the map says where pieces lay, not how heat ran.',
    howTitle: 'How?',
  },
  place: {
    equipment: 'Equipment', noMap: 'No map: places in words', hand: 'Lot in hand', choose: 'Choose a lot, then tap the cells it lies on. Tap a cell again to take it off.',
    none: 'no cell yet', cells: (count: number) => counted(count, 'cell', 'cells'), missing: 'Every lot lies on at least one cell.', taken: (cell: string, lot: string) => `${cell} holds lot ${lot}. Take it off there first.`,
    placed: (lot: string, cell: string) => `Lot ${lot} lies on ${cell}.`, off: (lot: string, cell: string) => `Lot ${lot} was taken off ${cell}.`, no: 'Choose a lot first.',
  },
  failed: { title: 'Positions that failed' },
  log: {
    title: 'Furnace log', none: 'No log is attached.', attach: 'Attach a log', another: 'Attach another log', choose: 'CSV of the recorder: time and temperature, where there are any pressure and gas', busy: 'Reading the log',
    waits: { happened: 'The network is gone: a log cannot be attached now.', kept: 'The file stays where it is.', next: 'Attach it when the network is back. Readings go on being kept here meanwhile.' },
    tooLarge: { happened: 'The file is larger than 8 MB.', kept: 'It was not sent.', next: 'Export the log with fewer rows a minute, and choose it again.' },
    within: 'Within limits', outside: 'Outside limits', file: (name: string, rows: string, programme: string, version: number) => `${name}: ${rows} rows, against programme ${programme} version ${version}`, whole: 'The file itself',
    temperature: 'Temperature, °C', pressure: 'Pressure, mbar', time: 'Time from the start, min',
    summary: (verdict: string, rows: number) => `Curve of the furnace log, ${verdict}. The tables say the same in words and figures; ${counted(rows, 'segment', 'segments')}.`,
    legend: { window: 'window of a soak', ramp: 'steepest ramp allowed', flag: 'outside, numbered as listed' },
    segments: 'Segments of the programme', segment: 'Segment', from: 'From, min', to: 'To, min', minutes: 'Within, min', least: 'Lowest, °C', most: 'Highest, °C', limits: 'Limits', notBegun: 'not begun',
    findings: 'What lies outside', how: 'How the log is held against the programme: a ramp ends at the first row at its temperature; a soak lasts until its window is left for good; a stretch outside lasts from its first row to the first within again; minutes are counted between neighbouring rows that are both within; a rate is taken over the programme’s least time. Derived, our own choice; the limits are the plant’s record.',
    kinds: { tooHot: 'too hot', tooCold: 'too cold', tooFast: 'too fast', tooSlow: 'too slow', soakShort: 'soak too short', soakLong: 'soak too long', pressureHigh: 'pressure too high', pressureLow: 'pressure too low', pressureShort: 'too short at pressure', pressureMissing: 'no pressure', notReached: 'not reached', startsLate: 'starts late', gap: 'gap', backwards: 'time runs back', repeated: 'row twice', contradicting: 'two values at once' },
    outOfSight: 'The log attached lies outside its programme’s limits.', noLog: 'No log is attached to this charge.',
    despite: 'Confirm all the same', despiteReason: 'Why it may be confirmed all the same; it stands on the traveller and the certificate',
  },
  some: {
    whole: 'The whole charge', wholeHint: 'every lot leaves it', near: (count: number) => `Only ${counted(count, 'lot', 'lots')} near the failed position`, chosen: 'Only the lots chosen below', which: 'Which lots', lots: 'Lots that are done again', rest: 'What becomes of the others',
    concession: 'Concession', concessionHint: 'accepted as they are; stands on their certificates', retest: 'Tested again', retestHint: 'in this charge, on new pieces', nearMark: 'near',
  },
};
