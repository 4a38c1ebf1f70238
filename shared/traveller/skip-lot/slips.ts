import type { SkipState } from '../../sampling/skip-lot/index.ts';

/** What moves the count of lots that may be passed over, for one product, gate and characteristic. */
export type SkipSlip =
  /** Counting begins, or begins anew because the plan asks otherwise. */
  | { readonly type: 'skipStarted'; readonly product: string; readonly gate: string; readonly characteristic: string; readonly clearance: number; readonly oneIn: number }
  | { readonly type: 'skipCounted'; readonly lot: string; readonly accepted: boolean; readonly skipped: boolean };

/** How far a stream of lots has come towards being passed over. */
export interface Skipping {
  readonly kind: 'skip';
  readonly stream: string;
  readonly version: number;
  readonly product: string;
  readonly gate: string;
  readonly characteristic: string;
  readonly state: SkipState;
  /** The lots accepted in a row that the state rests on, oldest first; at most `clearance`. */
  readonly lots: readonly string[];
  /** The lot that brought inspection of every lot back last; null before. */
  readonly endedBy: string | null;
}
