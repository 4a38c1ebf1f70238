import type { RawShare } from './batch.ts';
export interface OpenBatch { readonly type: 'openBatch'; readonly batch: string; readonly grade: string; readonly barrels: number; readonly kgPerBarrel: number; readonly rawLots: readonly RawShare[] }
/** Signed: the lab lets the powder go to the presses. */
export interface ReleaseBatch { readonly type: 'releaseBatch'; readonly batch: string }
export type BatchOwnCommand = OpenBatch | ReleaseBatch;
