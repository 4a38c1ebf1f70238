import type { LotPlan } from '../../sampling/sequential/index.ts';
import type { AttributesView, Normality, VariablesLotPlan, VariablesVerdict } from '../../sampling/variables/index.ts';
import type { DecisionRule } from '../../metrology/decision-rules/index.ts';
import type { FailedPosition } from '../charge/failed-positions.ts';
import type { RestsOnLog } from '../charge/require-log.ts';
import type { AcceptBy, FindingClass } from '../plan/characteristic.ts';

/** Summary of the values a result rests on; `s` is null for fewer than two. */
export interface ValueSummary { readonly n: number; readonly mean: number; readonly s: number | null; readonly min: number; readonly max: number }

/** Limits as judged: the specification's, and those drawn in, or out, by the guard band where the rule asks for it. */
export interface JudgedLimits {
  readonly lower: number | null;
  readonly upper: number | null;
  readonly acceptLower: number | null;
  readonly acceptUpper: number | null;
  /** Expanded uncertainty used, largest among the gauges, in the value's unit; 0 without one and for a value that is worked out. */
  readonly uncertainty: number;
  /** Coverage factor k of it; 2 where absent. */
  readonly coverageFactor?: number;
}

export interface ClassResult { readonly class: FindingClass; readonly plan: LotPlan; readonly found: number; /** Found in pieces beyond this class's n: kept, not counted. */ readonly beyond: number; /** `undecided`: another class rejected the lot first, or a correction took away what had decided. */ readonly outcome: 'accepted' | 'acceptedInGap' | 'rejected' | 'undecided';
  /** Sample it decided on and pieces of the draw until then; absent on older slips, where one sample of all pieces decided. */ readonly decided?: { readonly sample: number; readonly at: number; /** The numbers it was decided by; null where it could not go that way there. */ readonly ac: number | null; readonly re: number | null } }

export type ResultDetail =
  | { readonly by: 'attributes'; readonly classes: readonly ClassResult[] }
  | { readonly by: 'skipped'; readonly clearance: number; readonly oneIn: number; readonly lots: readonly string[] }
  | { readonly by: 'variables'; readonly plan: VariablesLotPlan; readonly judged: VariablesVerdict; readonly summary: ValueSummary; readonly limits: JudgedLimits; /** Values outside the limits. */ readonly outside: number;
    /** Whether the readings look normal: a caution. Absent on older slips. */ readonly normality?: Normality; /** The same readings as attributes, and whether the two views disagree. Absent on older slips. */ readonly attributes?: AttributesView }
  | { readonly by: 'limits'; readonly accept: AcceptBy; readonly summary: ValueSummary; readonly limits: JudgedLimits; readonly outside: number }
  | { readonly by: 'everyPiece'; readonly summary: ValueSummary; readonly limits: JudgedLimits; readonly ejectAtMostPercent: number; /** Ejected, so no longer in the lot. */ readonly outside: number }
  | { readonly by: 'interval'; readonly looks: number; readonly looked: number; readonly found: number; /** Looks that nobody took in time, with the piece they fell due at. Absent where there is none. */ readonly missed?: readonly { readonly look: number; readonly piece: number }[] }
  | { readonly by: 'grade'; readonly n: number; readonly worst: string; readonly worstAccepted: string }
  | { readonly by: 'once'; readonly statement: string; readonly confirmed: boolean; /** The log it rests on, and why it was confirmed in spite of it; where there are such. */ readonly log?: RestsOnLog; readonly despite?: string };

export interface CharacteristicResult {
  readonly characteristic: string;
  readonly name: string;
  readonly method: string;
  readonly unit: string | null;
  readonly decimals: number;
  readonly decisionRule: DecisionRule | null;
  /** Guard band as a multiple of U where the plan gives one; 1 where absent. */
  readonly guardFactor?: number;
  readonly accepted: boolean;
  readonly detail: ResultDetail;
}

export interface Verdict {
  readonly accepted: boolean;
  readonly attempt: number;
  readonly original: boolean;
  readonly results: readonly CharacteristicResult[];
  /** Badges of all who gave readings or looks for it. */
  readonly workers: readonly string[];
  /** Of a charge: the named positions that failed. Absent where none did, and on older slips. */
  readonly failedPositions?: readonly FailedPosition[];
}
