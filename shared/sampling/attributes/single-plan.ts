import { OutsideDomain, requireWhole } from '../../ground/outside-domain.ts';
import { aqlColumn } from './aqls.ts';
import { codeLetter, LARGEST_LOT } from './code-letter.ts';
import type { CodeLetter, InspectionLevel } from './code-letter.ts';
import { masterRows, tableName } from './master-table.ts';
import type { Severity, TableName } from './master-table.ts';

/** What a single sampling plan is asked for. */
export type SinglePlanRequest = {
  readonly lotSize: number;
  readonly level: InspectionLevel;
  readonly aqlPercent: number;
  readonly severity: Severity;
};

/** A single sampling plan by attributes, with the way it was found. Plain data, fit for a slip. */
export type AttributesPlan = SinglePlanRequest & {
  /** Letter Table I gives for the lot size. */
  readonly startLetter: CodeLetter;
  /** Letter of the plan used, after following an arrow. */
  readonly letter: CodeLetter;
  /** Pieces to look at: the table's size, or the whole lot when that is not larger. */
  readonly sampleSize: number;
  /** Sample size of `letter` in the table. */
  readonly tableSampleSize: number;
  /** Acceptance number: accept at this count or below. */
  readonly ac: number;
  /** Rejection number: reject at this count or above. More than Ac + 1 only on reduced inspection. */
  readonly re: number;
  /** The arrow that stood in the cell of `startLetter`. */
  readonly arrow: 'none' | 'down' | 'up';
  /** The sample reaches the lot: every piece is looked at. */
  readonly everyPiece: boolean;
  readonly table: TableName;
};

/**
 * Key of the note that belongs beside every reduced plan: Ac and Re come from MIL-STD-105E Table II-C, with its gap. ISO 2859-1:1999
 * Table 2-C (Re = Ac + 1 throughout) could not be confirmed against a text, so it is not offered.
 */
export const reducedTableNote = 'reducedPlanIsFromTableIIC';

/**
 * The single sampling plan of a lot. An arrow is followed in its AQL column to the first plan, and the sample size then belongs to the
 * letter reached. A sample that reaches the lot size means every piece; Ac and Re stay those of the cell.
 * A lot of one piece stands in no table: that piece is looked at and Ac is 0, whatever the AQL.
 * @param request lot size 1 … 1 000 000 000 pieces, level, AQL (one of AQLS) and severity
 * @throws OutsideDomain for a lot size, level or AQL the tables do not know
 * @see MIL-STD-105E 4.9.4, Tables I, II-A, II-B, II-C = ISO 2859-1:1999 10.3, Tables 1, 2-A, 2-B (reduced: see reducedTableNote)
 * @example singlePlan({ lotSize: 1000, level: 'II', aqlPercent: 1, severity: 'normal' }) // J, n 80, Ac 2, Re 3
 */
export function singlePlan(request: SinglePlanRequest): AttributesPlan {
  const { lotSize, level, aqlPercent, severity } = request;
  requireWhole('lotSize', lotSize, 1, LARGEST_LOT);
  const column = aqlColumn(aqlPercent);
  const asked = { lotSize, level, aqlPercent, severity, table: tableName(severity) };
  if (lotSize === 1) {
    return { ...asked, startLetter: 'A', letter: 'A', sampleSize: 1, tableSampleSize: 1, ac: 0, re: 1, arrow: 'none', everyPiece: true };
  }
  const startLetter = codeLetter(lotSize, level);
  const rows = masterRows(severity);
  let at = rows.findIndex((row) => row.letter === startLetter);
  let arrow: AttributesPlan['arrow'] = 'none';
  for (;;) {
    const row = rows[at];
    const cell = row?.cells[column];
    if (row === undefined || cell === undefined || cell === 'unreachable') {
      throw new OutsideDomain('aqlPercent', `reachable from letter ${startLetter} in Table ${asked.table}`, aqlPercent);
    }
    if (typeof cell === 'object') {
      const everyPiece = row.sampleSize >= lotSize;
      const sampleSize = everyPiece ? lotSize : row.sampleSize;
      return { ...asked, startLetter, letter: row.letter, sampleSize, tableSampleSize: row.sampleSize, ...cell, arrow, everyPiece };
    }
    arrow = cell;
    at += cell === 'down' ? 1 : -1;
  }
}
