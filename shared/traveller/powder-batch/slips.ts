import type { CommonSlip, GateSlip } from '../gate/slips.ts';
import type { Signature } from '../stamp.ts';
import type { BlendShare, PowderFactors, RawShare } from './batch.ts';
import type { RouteStep } from '../lot/lot.ts';

export type BatchSlip = GateSlip | CommonSlip
  | { readonly type: 'batchOpened'; readonly batch: string; readonly grade: { readonly id: string; readonly name: string }; readonly plan: string; readonly planVersion: number; readonly route: readonly RouteStep[]; readonly barrels: number; readonly kgPerBarrel: number; readonly rawLots: readonly RawShare[]; /** Set for a blend. */ readonly blendedFrom?: readonly BlendShare[]; readonly demo: boolean }
  | { readonly type: 'batchReleased'; readonly factors: PowderFactors; readonly signature: Signature }
  /** The lab's readings, or those of a part, were corrected after the release: lots not yet pressed go on to the new target, those pressed are named. */
  | { readonly type: 'factorsRevised'; readonly from: PowderFactors; readonly factors: PowderFactors; readonly retargeted: readonly string[]; readonly pressed: readonly string[] }
  | { readonly type: 'batchBlended'; readonly into: string; readonly kg: number }
  | { readonly type: 'batchUsed'; readonly lot: string; /** Powder booked for the lot; absent on older slips and for a part split from a lot. */ readonly kg?: number };
