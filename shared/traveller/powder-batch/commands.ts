import type { BlendShare, RawShare } from './batch.ts';
export interface OpenBatch { readonly type: 'openBatch'; readonly batch: string; readonly grade: string; readonly barrels: number; readonly kgPerBarrel: number; readonly rawLots: readonly RawShare[] }
/** Mixes so much of two or more released batches of one grade into a new batch, filled into so many barrels. */
export interface BlendBatches { readonly type: 'blendBatches'; readonly batch: string; readonly from: readonly BlendShare[]; readonly barrels: number }
/** Signed: the lab lets the powder go to the presses. */
export interface ReleaseBatch { readonly type: 'releaseBatch'; readonly batch: string }
export type BatchOwnCommand = OpenBatch | BlendBatches | ReleaseBatch;
