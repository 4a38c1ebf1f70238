/** What the presses' desk and the picture of a stream of weights say. */
export const pressesDeskWords = {
  title: 'Presses',
  loading: 'Reading the presses', tryAgain: 'Try again', old: 'Read before the network went; it may be old.',
  empty: { happened: 'No press is registered.', next: 'An engineer or the keeper registers each press with its balance.' },
  csv: 'As a file', register: 'Register a press', set: 'Set on a lot', change: 'Set on another lot', stop: 'The press stands', token: 'New token for its balance', edit: 'Change the press',
  stands: 'Stands', presses: (lot: string) => `Presses ${lot}`, noLot: 'on no lot',
  pieces: 'Pieces', of: (made: string, all: string) => `${made} of ${all}`, mean: 'Mean', s: 's', ppk: 'Ppk', outside: 'Outside', missing: 'Never came', waiting: 'Not yet written', newest: 'Newest', look: 'Next look', missedLooks: 'Looks missed',
  last: (count: string) => `The last ${count} weights between their limits`, noWeights: 'No weight yet',
  drift: { unwatched: 'Drift not watched', learning: 'Drift: learning', steady: 'Steady', above: 'Drifts above the target', below: 'Drifts below the target' },
  expected: (piece: string) => `limit expected at piece ${piece}`, notForetold: 'when it comes to the limit cannot be told yet',
  lookDue: (look: string) => `look ${look} is due now`, lookAt: (piece: string) => `at piece ${piece}`, lookOr: (piece: string, time: string) => `at piece ${piece} or ${time}`,
  silent: (minutes: string) => `No piece for ${minutes} min`, silentHours: (hours: string) => `No piece for ${hours} h`, balance: { counts: 'counts', overdue: 'calibration overdue: its weights do not count', withdrawn: 'withdrawn: its weights do not count', outOfTolerance: 'found out of tolerance: its weights do not count', unknown: 'not known: its weights do not count' }, held: 'The lot is on hold', done: 'The gate is not open any more',
  notTaken: 'The last weights were not taken',
  choose: { title: (press: string) => `Which lot does ${press} press?`, lots: 'Lots being weighed at its bench', none: 'No lot is open at the gate of this bench. Open its gate first.', close: 'Leave it as it is' },
  form: { title: 'Register a press', id: 'Number of the press', idHint: '2 to 16 of A–Z, 0–9 and dash', name: 'Name', bench: 'Bench', balance: 'Balance', noBalance: 'No balance is registered among the gauges.', save: 'Register', close: 'Leave it', missing: 'This must be filled in.',
    changeTitle: (press: string) => `Change ${press}`, saveChange: 'Change', reason: 'Reason', otherBalance: 'The new balance counts its pieces anew and needs a new token: the token of the one before ends with this change.',
    count: 'The balance’s count of pieces', countOn: 'Goes on', countAnew: 'Begins anew', countAnewHint: 'It was set up again. Its token ends too.' },
  tokenTitle: 'Token of the balance', tokenText: (press: string) => `Enter it in the program that sends the weights of ${press}. It is shown this once; the one before counts no longer.`, tokenClose: 'I have it',
  head: ['Press', 'Lot', 'Pieces', 'Mean', 's', 'Ppk', 'Drift', 'Next look', 'Looks missed', 'Newest'],
  chart: {
    caption: (blocks: string) => `Means of ${blocks} blocks, with their running average`, piece: 'Piece', value: 'Weight', mean: 'Mean of the block', ewma: 'Running average', limit: 'Limit', target: 'Target', control: 'Drift limit', predicted: 'If it goes on so',
    how: 'How?', howTitle: 'How drift is told', close: 'Close',
    howText: (lambda: string, factor: string) => `Running average z = λ·x + (1 − λ)·z with λ = ${lambda}. Drift is told when z leaves target ± L·σ·√(λ/(2 − λ)) with L = ${factor}; σ comes from the differences between neighbours unless the plan gives it. With it at most 1 % of steady streams of 60,000 pieces give a false alarm. The piece foretold is where a straight line through the pieces since the drift began comes within 3 σ of the limit, with an interval of about 95 %. Sources: Roberts 1959; Lucas & Saccucci 1990; docs/methods/drift.md.`,
  },
};
export type PressesDeskWords = typeof pressesDeskWords;
