import { BrokenThread } from '../broken-thread.ts';
import { evolveCommon, evolveGateWork, isCommonSlip, isGateSlip, moved } from '../gate/evolve-common.ts';
import { freshGates } from '../gate/evolve-gates.ts';
import type { CommonSlip, GateSlip } from '../gate/slips.ts';
import type { Slip } from '../slip.ts';
import type { Batch } from './batch.ts';
import type { BatchSlip } from './slips.ts';

/** Folds one slip into the powder batch. */
export function evolveBatch(batch: Batch | null, slip: Slip<BatchSlip>): Batch {
  const { body } = slip;
  if (batch === null) {
    if (body.type !== 'batchOpened') throw new BrokenThread(`the thread of ${slip.stream} begins with ${body.type}`);
    return {
      kind: 'batch', id: body.batch, stream: slip.stream, version: slip.version, openedAt: slip.at, lastAt: slip.at, demo: body.demo,
      gates: freshGates(body.route), holds: [], corrections: [], ended: null, grade: body.grade, plan: body.plan, planVersion: body.planVersion,
      barrels: body.barrels, kgPerBarrel: body.kgPerBarrel, rawLots: body.rawLots, blendedFrom: body.blendedFrom ?? [], blendedInto: [], lotsKg: 0, concessions: [], released: null, lots: [],
    };
  }
  if (isGateSlip(slip)) return evolveGateWork(batch, slip);
  if (isCommonSlip(slip)) {
    const next = evolveCommon(batch, slip);
    const kind = slip.body.type === 'disposed' ? slip.body.disposition.kind : null;
    return kind === 'scrap' || kind === 'return' ? { ...next, ended: { how: kind === 'scrap' ? 'scrapped' : 'returned', at: slip.at } } : next;
  }
  const next = moved(batch, slip);
  const own = body as Exclude<BatchSlip, GateSlip | CommonSlip>;
  switch (own.type) {
    case 'batchOpened': throw new BrokenThread(`batch ${batch.id} was opened twice`);
    case 'batchReleased': return { ...next, released: { factors: own.factors, signature: own.signature } };
    case 'factorsRevised': return { ...next, released: batch.released === null ? null : { ...batch.released, factors: own.factors } };
    case 'batchBlended': return { ...next, blendedInto: [...batch.blendedInto, { batch: own.into, kg: own.kg }] };
    case 'batchUsed': return { ...next, lots: [...batch.lots, own.lot], lotsKg: batch.lotsKg + (own.kg ?? 0) };
  }
}
