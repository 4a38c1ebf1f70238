/** What every desk says in the same way. */
export const deskWords = {
  loading: 'Reading from the server.',
  again: 'Try again',
  moreCautions: (count: number) => (count === 1 ? 'One more caution' : `${count} more cautions`),
  offline: { happened: 'The network is gone.', kept: 'What you see was read before the break and may be old.', next: 'Signing, packing and shipping wait until it is back. Nothing is lost.' },
  old: 'This could not be read again; it may be old.',
  cancel: 'Leave it',
  dismiss: 'Understood',
  filter: 'Filter',
  sort: 'Order by this column',
  csv: 'Save as CSV',
  noMatch: 'No row fits the filters.',
  busy: 'Under way',
  reason: 'Reason',
  none: '–',
  pin: { label: 'Your PIN', enter: 'Sign', clear: 'Clear', backspace: 'Back', digits: 'digits entered' },
};
export type DeskWords = typeof deskWords;
