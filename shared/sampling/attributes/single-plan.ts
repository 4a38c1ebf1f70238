import { attributesPlan } from './attributes-plan.ts';
import type { CodeLetter, InspectionLevel } from './code-letter.ts';
import type { Severity, TableName } from './master-table.ts';
import type { Stage } from './stages.ts';

/** What a single sampling plan is asked for. */
export type SinglePlanRequest = {
  readonly lotSize: number;
  readonly level: InspectionLevel;
  readonly aqlPercent: number;
  readonly severity: Severity;
};

/** A sampling plan by attributes, with the way it was found. Plain data, fit for a slip. A plan without `samples` is a single one. */
export type AttributesPlan = SinglePlanRequest & {
  /** Letter Table I gives for the lot size. */
  readonly startLetter: CodeLetter;
  /** Letter of the plan used, after following an arrow. */
  readonly letter: CodeLetter;
  /** Pieces to look at: the table's size, or the whole lot when that is not larger. Of several samples: all together. */
  readonly sampleSize: number;
  /** Sample size of `letter` in the table; of several samples, all together. */
  readonly tableSampleSize: number;
  /** Acceptance number: accept at this count or below. Of several samples, that of the last. */
  readonly ac: number;
  /** Rejection number: reject at this count or above. More than Ac + 1 only on reduced inspection. Of several samples, that of the last. */
  readonly re: number;
  /** The arrow that stood in the cell of `startLetter`. */
  readonly arrow: 'none' | 'down' | 'up';
  /** The sample reaches the lot: every piece is looked at. Of several samples: unless an earlier one decides. */
  readonly everyPiece: boolean;
  readonly table: TableName;
  /** How many samples the plan may take; absent on a single plan. */
  readonly samples?: 'double' | 'multiple';
  /** The samples in turn; only with `samples`. */
  readonly stages?: readonly Stage[];
  /** The id of the plant's own copy of the table, where one stood in. */
  readonly tableSource?: string;
  /** Why the plan takes fewer samples than were asked for: the table says so, or there is no table of reduced multiple plans. */
  readonly instead?: 'useSingle' | 'useDouble' | 'noMultipleReduced';
};

/**
 * The single sampling plan of a lot: `attributesPlan` with one sample.
 * @param request lot size 1 … 1 000 000 000 pieces, level, AQL (one of AQLS) and severity
 * @throws OutsideDomain for a lot size, level or AQL the tables do not know
 * @see MIL-STD-105E 4.9.4, Tables I, II-A, II-B, II-C = ISO 2859-1:1999 10.3, Tables 1, 2-A, 2-B (how sure each is: `tableNotes`)
 * @example singlePlan({ lotSize: 1000, level: 'II', aqlPercent: 1, severity: 'normal' }) // J, n 80, Ac 2, Re 3
 */
export function singlePlan({ lotSize, level, aqlPercent, severity }: SinglePlanRequest): AttributesPlan {
  return attributesPlan({ lotSize, level, aqlPercent, severity });
}
