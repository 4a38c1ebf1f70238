import type { CommonSlip, GateSlip } from '../gate/slips.ts';
import type { RouteStep } from '../lot/lot.ts';
import type { AttachedLog, ChargeMember, OpenedOn } from './charge.ts';

export type ChargeSlip = GateSlip | CommonSlip
  | { readonly type: 'chargeOpened'; readonly charge: string; readonly kind: 'furnace' | 'coating'; readonly specification: { readonly id: string; readonly name: string }; readonly plan: string; readonly planVersion: number; readonly route: readonly RouteStep[]; readonly programme: string; readonly equipment: string; /** Absent where places are words only, and on older slips. */ readonly map?: OpenedOn; readonly members: readonly ChargeMember[]; readonly demo: boolean }
  /** The journal knows `attachment` as the digest of a file it must hold. */
  | ({ readonly type: 'furnaceLogAttached' } & Omit<AttachedLog, 'slip' | 'at' | 'by'>);
