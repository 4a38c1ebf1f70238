import type { DriftRule } from '../../metrology/drift/index.ts';
import type { LotPlan } from '../../sampling/sequential/index.ts';
import type { VariablesLotPlan } from '../../sampling/variables/index.ts';
import type { AcceptBy, Characteristic, FindingClass } from '../plan/characteristic.ts';

/** Where a piece to be taken is found. */
export type Place =
  | { readonly at: 'tray'; readonly piece: number; readonly tray: number; readonly position: number }
  | { readonly at: 'barrel'; readonly barrel: number; readonly nth: number }
  | { readonly at: 'position'; readonly position: string; readonly nth: number };

export interface ClassPlan {
  readonly class: FindingClass;
  readonly plan: LotPlan;
  /** Stream of the switching state that gave the severity; null for a plan that knows no switching. */
  readonly switching: string | null;
}

/** What the number of pieces and the judgement rest on. */
export type Basis =
  | { readonly by: 'attributes'; readonly classes: readonly ClassPlan[] }
  /** Passed over by skip-lot: nothing is asked. `lots` earned it. */
  | { readonly by: 'skipped'; readonly clearance: number; readonly oneIn: number; readonly lots: readonly string[] }
  | { readonly by: 'variables'; readonly plan: VariablesLotPlan; /** Null where the plan was worked out from two points: it knows no switching. */ readonly switching: string | null }
  | { readonly by: 'limits'; readonly accept: AcceptBy }
  | { readonly by: 'everyPiece'; /** How drift is watched for; absent on older slips and without a target: not watched. */ readonly drift?: DriftRule & { readonly holds: boolean } }
  | { readonly by: 'interval'; readonly everyPieces: number; /** By pieces alone. */ readonly looks: number; readonly everyMinutes?: number; readonly graceMinutes?: number }
  | { readonly by: 'grade' }
  | { readonly by: 'once' };

/** What one characteristic of an opened gate asks for. */
export interface Demand {
  /** As planned, with limits worked out from the powder filled in. */
  readonly characteristic: Characteristic;
  readonly basis: Basis;
  /** Results wanted; for an interval the pieces of one look. */
  readonly n: number;
  /** The drawn pieces in order of their ordinal 1 … n; empty where every piece is looked at or nothing is drawn. */
  readonly places: readonly Place[];
}
