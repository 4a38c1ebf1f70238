/** What is wrong with a table that was to be loaded. The words are in shared/words. */
export type TableProblemCode =
  /** Nothing in the file. */
  | 'empty'
  /** More text than any table has. */
  | 'tooLong'
  /** The first columns must be code_letter and sample_size, or n1 and n2, or n_each_of_3 … n_each_of_7. */
  | 'headUnknown'
  /** The 26 AQLs must follow in order. */
  | 'aqlHead'
  | 'columnCount'
  /** Letters A to R must follow one another, S may come last. */
  | 'letterOrder'
  | 'letterMissing'
  | 'sizeNotWhole'
  /** A row has a smaller sample than the row above. */
  | 'sizeFalls'
  /** A row without a sample size holds a plan. */
  | 'sizeMissing'
  /** Not a plan, an arrow or a sign. */
  | 'cellUnreadable'
  /** More or fewer pairs than the table has samples. */
  | 'pairCount'
  | 'reNotAboveAc'
  /** Ac or Re is smaller than for the sample before: the numbers are cumulative. */
  | 'pairsFall'
  /** The last sample must be able to accept. */
  | 'lastCannotAccept'
  /** Only reduced plans leave a gap between the last Ac and Re. */
  | 'gapOutsideReduced'
  /** `single` or `double` where this table cannot say so. */
  | 'signNotAllowed'
  /** `-` in a row that a lot can start from. */
  | 'cellNotReachable'
  /** An arrow runs off the table, turns round or ends where there is no plan. */
  | 'arrowLeadsNowhere';

/** One thing wrong, with its place: the line of the file from 1, the column from 1 and its head; null where the whole line or file is meant. */
export interface TableProblem {
  readonly code: TableProblemCode;
  readonly line: number;
  readonly column: number | null;
  readonly head: string | null;
  /** What stands there. */
  readonly found: string;
  /** What would be right, where that is one thing. */
  readonly expected: string | null;
}
