import { evolve } from '../../../shared/traveller/index.ts';
import type { Batch, Demand, GatePlan, Measured, SlipBody, Subject } from '../../../shared/traveller/index.ts';
import type { StampedSlip } from '../../../shared/wire/stamped-slip.ts';

const moisture: Measured = {
  kind: 'measured', id: 'moisture', name: 'Moisture', method: 'drying loss', destructive: false, unit: '%', decimals: 2, lower: null, upper: 0.2, target: 0.1, plausible: { least: 0, most: 2 },
  gaugeKind: null, decisionRule: 'simple', entry: { how: 'direct' }, factor: null, pressTolerancePercent: null, sampling: { rule: 'barrels', barrels: 3, each: 1, accept: 'each' },
};
const gate: GatePlan = { id: 'powder-lab', name: 'Powder lab', workedOn: 'batch', bench: 'Lab', roles: ['inspector', 'lab'], cautions: [], characteristics: [moisture] };
const demand: Demand = { characteristic: moisture, basis: { by: 'limits', accept: 'each' }, n: 3, places: [2, 5, 9].map((barrel) => ({ at: 'barrel', barrel, nth: 1 })) };

/** The thread of an invented powder batch whose gate is open and asks for three readings. */
export const stream = 'batch:P-1';
/** A slip of that thread as the server would stamp it. */
export function slip(version: number, body: SlipBody, clientId = `their-${version}`, by = 'L-201'): StampedSlip {
  return { position: version, stream, version, at: `2026-03-02T06:0${version % 10}:00.000Z`, by, bench: 'Lab', body, clientId, hash: '' };
}
export const opened: readonly StampedSlip[] = [
  slip(1, { type: 'batchOpened', batch: 'P-1', grade: { id: 'G', name: 'Grade' }, plan: 'POWDER', planVersion: 1, route: [{ id: 'powder-lab', name: 'Powder lab', workedOn: 'batch', bench: 'Lab' }], barrels: 12, kgPerBarrel: 100, rawLots: [], demo: true }),
  slip(2, { type: 'gateOpened', gate, attempt: 1, original: true, lotSize: 12, seed: 's', demands: [demand] }),
];
/** A reading's slip. */
export function readingSlip(version: number, ordinal: number, value: number, clientId?: string): StampedSlip {
  return slip(version, { type: 'readingTaken', gate: 'powder-lab', characteristic: 'moisture', ordinal, value }, clientId);
}
/** The batch after these slips. */
export function batchAfter(slips: readonly StampedSlip[]): Batch {
  const state = slips.reduce<Subject | null>((before, each) => {
    const next = evolve(before, each);
    return next.kind === 'batch' ? next : before;
  }, null);
  if (state?.kind !== 'batch') throw new Error('the thread is not that of a batch');
  return state;
}
