/** What every desk says in the same way. */
export const deskWords = {
  loading: 'Reading from the server.',
  again: 'Try again',
  offline: { happened: 'The network is gone.', kept: 'What you see was read before the break and may be old.', next: 'Signing, packing and shipping wait until it is back. Nothing is lost.' },
  old: 'This could not be read again; it may be old.',
  close: 'Close',
  cancel: 'Leave it',
  dismiss: 'Understood',
  filter: 'Filter',
  sort: 'Order by this column',
  csv: 'Save as CSV',
  print: 'Print',
  noMatch: 'No row fits the filters.',
  busy: 'Under way',
  reason: 'Reason',
  none: '–',
  needsRole: (roles: string) => `Only for: ${roles}.`,
  pin: { label: 'Your PIN', enter: 'Sign', clear: 'Clear', backspace: 'Back', digits: 'digits entered' },
};
export type DeskWords = typeof deskWords;
