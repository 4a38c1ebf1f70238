import type { CommonSlip, GateSlip } from '../gate/slips.ts';
import type { Signature } from '../stamp.ts';
import type { PowderFactors, RawShare } from './batch.ts';
import type { RouteStep } from '../lot/lot.ts';

export type BatchSlip = GateSlip | CommonSlip
  | { readonly type: 'batchOpened'; readonly batch: string; readonly grade: { readonly id: string; readonly name: string }; readonly plan: string; readonly planVersion: number; readonly route: readonly RouteStep[]; readonly barrels: number; readonly kgPerBarrel: number; readonly rawLots: readonly RawShare[]; readonly demo: boolean }
  | { readonly type: 'batchReleased'; readonly factors: PowderFactors; readonly signature: Signature }
  | { readonly type: 'batchUsed'; readonly lot: string };
