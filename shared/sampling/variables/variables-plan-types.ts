import type { SMethodRequest } from './s-method-plan.ts';
import type { VariablesLetter } from './variables-letter.ts';

/** What one limit with an AQL of its own is judged by. */
export interface SideConstants { readonly aqlPercent: number; readonly k: number; readonly mPercent: number }

/** What a sample by variables is judged by. Absent optional fields are the s-method, one AQL, and the k form for one limit with M for two. */
export interface VariablesJudging {
  /** Pieces to measure. */
  readonly sampleSize: number;
  /** Acceptability constant of the k form: accept when (limit − mean) / s is k or more; with `separate` that of the smaller AQL. */
  readonly k: number;
  /** Largest estimated percent nonconforming of the M form; with `separate` the larger of the two, which both sides together keep to. */
  readonly mPercent: number;
  readonly method?: 'sigma';
  /** The known standard deviation, in the unit of the values. */
  readonly sigma?: number;
  readonly form?: 'k' | 'M';
  readonly separate?: { readonly lower: SideConstants; readonly upper: SideConstants };
}

interface Common extends VariablesJudging {
  readonly lotSize: number;
  readonly aqlPercent: number;
  readonly severity: 'normal' | 'tightened';
  /** The sample before it was cut down to the lot. */
  readonly tableSampleSize: number;
  /** The sample reaches the lot: every piece is measured. k and M stay, as the standard gives no others. */
  readonly everyPiece: boolean;
}

/** A plan looked up by lot size, level and AQL. Plain data, fit for a slip. */
export interface VariablesPlan extends Common, SMethodRequest {
  readonly severity: 'normal' | 'tightened';
  readonly lotSize: number;
  readonly aqlPercent: number;
  readonly origin?: never;
  /** Letter Table A-2 gives for the lot size. */
  readonly startLetter: VariablesLetter;
  /** Letter of the plan used, after following an arrow. */
  readonly letter: VariablesLetter;
  /** AQL column the cell was read from: the AQL itself, or on tightened inspection the next smaller. */
  readonly columnAqlPercent: number;
  readonly arrow: 'none' | 'down';
  /** The tables read, or the table that a σ plan is worked out from. */
  readonly tables: 'MIL-STD-414 A-2, B-1, B-3' | 'derived from MIL-STD-414 B-1';
}

/** The smallest plan through two risk points of one limit. `aqlPercent` is p1; there is no switching. */
export interface PointsVariablesPlan extends Common {
  readonly origin: 'points';
  readonly severity: 'normal';
  readonly p1Percent: number;
  readonly producerRisk: number;
  readonly p2Percent: number;
  readonly consumerRisk: number;
}

/** The plan a lot is measured by, however it was found. */
export type VariablesLotPlan = VariablesPlan | PointsVariablesPlan;
