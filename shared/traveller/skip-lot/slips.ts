import type { SkipState } from '../../sampling/skip-lot/index.ts';

/** One lot as the count sees it. */
export interface SkipLotCounted { readonly lot: string; readonly accepted: boolean; readonly skipped: boolean }

/** What moves the count of lots that may be passed over, for one product, gate and characteristic. */
export type SkipSlip =
  /** Counting begins, or begins anew because the plan asks otherwise. */
  | { readonly type: 'skipStarted'; readonly product: string; readonly gate: string; readonly characteristic: string; readonly clearance: number; readonly oneIn: number }
  | ({ readonly type: 'skipCounted' } & SkipLotCounted)
  /** A correction has turned this lot's verdict: everything since the count began is counted again. */
  | { readonly type: 'skipRecounted'; readonly lot: string; readonly accepted: boolean };

/** How far a stream of lots has come towards being passed over. */
export interface Skipping {
  readonly kind: 'skip';
  readonly stream: string;
  readonly version: number;
  readonly product: string;
  readonly gate: string;
  readonly characteristic: string;
  readonly state: SkipState;
  /** All that was counted since the count began, so that a corrected verdict can be counted again. */
  readonly counted: readonly SkipLotCounted[];
  /** The lots accepted in a row that the state rests on, oldest first; at most `clearance`. */
  readonly lots: readonly string[];
  /** The lot that brought inspection of every lot back last; null before. */
  readonly endedBy: string | null;
}
