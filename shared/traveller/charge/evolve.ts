import { BrokenThread } from '../broken-thread.ts';
import { evolveCommon, evolveGateWork, isCommonSlip, isGateSlip } from '../gate/evolve-common.ts';
import { freshGates } from '../gate/evolve-gates.ts';
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
      gates: freshGates(body.route), holds: [], corrections: [], ended: null, specification: body.specification, plan: body.plan, planVersion: body.planVersion,
      programme: body.programme, equipment: body.equipment, members: body.members, concessions: [],
    };
  }
  if (isGateSlip(slip)) return evolveGateWork(charge, slip);
  if (isCommonSlip(slip)) {
    const next = evolveCommon(charge, slip);
    const kind = slip.body.type === 'disposed' ? slip.body.disposition.kind : null;
    return kind === 'reSinter' || kind === 'recoat' ? { ...next, ended: { how: 'reprocessed', at: slip.at } } : next;
  }
  throw new BrokenThread(`charge ${charge.id} was opened twice`);
}
