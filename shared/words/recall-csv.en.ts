/** Heads of the table of readings that a recall puts in doubt, as a spreadsheet gets it. */
export const recallCsvWords = {
  heads: ['at', 'subject', 'gate', 'characteristic', 'piece', 'pieces', 'value', 'unit', 'accepted as read', 'accepted with the error found', 'measured again with'],
};
