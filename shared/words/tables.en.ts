import type { TableNote, TableProblemCode } from '../sampling/attributes/index.ts';

/** How sure a table is, as screen and certificate say it. */
export const tableNoteLabels: Readonly<Record<TableNote, string>> = {
  reducedFromTableIIC: 'Ac and Re of reduced inspection are those of MIL-STD-105E Table II-C; the table of ISO 2859-1 for reduced inspection has not been compared with its own text.',
  doubleFromMemory: 'Double plans are those of MIL-STD-105E Tables III, written from memory and checked by computation; they have not been compared with the printed text.',
  multipleFromMemory: 'Multiple plans are those of MIL-STD-105E Tables IV, written from memory, a part of them seen in print; they have not been compared as a whole.',
  cellUnconfirmed: 'The cell of the table used here is among those least certain.',
  noMultipleReduced: 'There is no table of reduced multiple plans here; the reduced double plan was used.',
  useSingle: 'The table asked for refers to the single plan, which was used.',
  useDouble: 'The table asked for refers to the double plan, which was used.',
  ownTable: 'The plant’s own copy of the table was used; nothing but its structure was checked here.',
};

/** What is wrong with a table that was to be loaded. */
export const tableProblemLabels: Readonly<Record<TableProblemCode, string>> = {
  empty: 'there is nothing in it',
  tooLong: 'it is longer than any table',
  headUnknown: 'the heads must begin with code_letter and then sample_size, n1 and n2, or n_each_of_7',
  aqlHead: 'the 26 AQLs must follow in order',
  columnCount: 'the number of columns differs from the heads',
  letterOrder: 'letters follow one another from A to R, and S may come last',
  letterMissing: 'a code letter is missing',
  sizeNotWhole: 'a sample size is a whole number',
  sizeFalls: 'sample sizes do not fall from row to row',
  sizeMissing: 'a row with a plan needs its sample size',
  cellUnreadable: 'a cell holds Ac/Re, down, up, single, double or -',
  pairCount: 'a plan has one Ac/Re for each sample',
  reNotAboveAc: 'Re lies above Ac',
  pairsFall: 'Ac and Re are cumulative and do not fall',
  lastCannotAccept: 'the last sample must be able to accept',
  gapOutsideReduced: 'only reduced plans leave a gap between the last Ac and Re',
  signNotAllowed: 'this table cannot refer to another one here',
  cellNotReachable: 'a row that a lot can start from needs a plan or an arrow here',
  arrowLeadsNowhere: 'this arrow does not end at a plan of its column',
};
