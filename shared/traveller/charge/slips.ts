import type { CommonSlip, GateSlip } from '../gate/slips.ts';
import type { RouteStep } from '../lot/lot.ts';
import type { ChargeMember } from './charge.ts';

export type ChargeSlip = GateSlip | CommonSlip
  | { readonly type: 'chargeOpened'; readonly charge: string; readonly kind: 'furnace' | 'coating'; readonly specification: { readonly id: string; readonly name: string }; readonly plan: string; readonly planVersion: number; readonly route: readonly RouteStep[]; readonly programme: string; readonly equipment: string; readonly members: readonly ChargeMember[]; readonly demo: boolean };
