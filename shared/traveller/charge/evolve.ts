import { BrokenThread } from '../broken-thread.ts';
import { evolveCommon, evolveGateWork, isCommonSlip, isGateSlip, moved } from '../gate/evolve-common.ts';
import { freshGates } from '../gate/evolve-gates.ts';
import type { CommonSlip } from '../gate/slips.ts';
import type { Slip } from '../slip.ts';
import type { Charge } from './charge.ts';
import type { ChargeSlip } from './slips.ts';

/** Folds one slip into the charge. */
export function evolveCharge(charge: Charge | null, slip: Slip<ChargeSlip>): Charge {
  const { body } = slip;
  if (charge === null) {
    if (body.type !== 'chargeOpened') throw new BrokenThread(`the thread of ${slip.stream} begins with ${body.type}`);
    return {
      kind: body.kind, id: body.charge, stream: slip.stream, version: slip.version, openedAt: slip.at, lastAt: slip.at, demo: body.demo,
      gates: freshGates(body.route).map((gate) => ({ ...gate, original: !body.members.every(({ again }) => again !== undefined) })), holds: [], corrections: [], ended: null, specification: body.specification, plan: body.plan, planVersion: body.planVersion,
      programme: body.programme, equipment: body.equipment, map: body.map ?? null, members: body.members, concessions: [], logs: [],
    };
  }
  if (isGateSlip(slip)) return evolveGateWork(charge, slip);
  if (isCommonSlip(slip)) return afterCommon(evolveCommon(charge, slip), slip);
  if (body.type === 'furnaceLogAttached') {
    const { type: _, ...log } = body;
    return { ...moved(charge, slip), logs: [...charge.logs, { ...log, slip: slip.version, at: slip.at, by: slip.by }] };
  }
  throw new BrokenThread(`charge ${charge.id} was opened twice`);
}

/** Done again as a whole the charge is over; where only some members are, it goes on with the others. */
function afterCommon(charge: Charge, { body, at }: Slip<CommonSlip>): Charge {
  if (body.type !== 'disposed' || (body.disposition.kind !== 'reSinter' && body.disposition.kind !== 'recoat')) return charge;
  const { some } = body.disposition;
  if (some === undefined) return { ...charge, ended: { how: 'reprocessed', at } };
  return { ...charge, members: charge.members.map((member) => (some.lots.includes(member.lot) ? { ...member, left: true } : member)) };
}
