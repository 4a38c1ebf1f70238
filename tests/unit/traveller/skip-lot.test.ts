import { beforeEach, describe, expect, it } from 'vitest';
import { diceFrom } from '../../../shared/sampling/draw/dice.ts';
import type { Skipping } from '../../../shared/traveller/index.ts';
import { CREW, littlePlant, openLot, releasedBatch } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';
import { at, byAql, counting, done, found, opened, workAt } from '../../property/traveller/counting.ts';
import { decideHold, gateRecord, verdictAt } from '../../property/traveller/on-the-way.ts';

let plant: LittlePlant;
let serial = 0;
beforeEach(() => {
  plant = littlePlant();
  releasedBatch(plant);
  counting(plant, byAql({ major: 1 }, { skipLot: { clearance: 3, oneIn: 4 } }));
  serial = 0;
});
const state = (): Skipping => {
  const skipping = plant.state('skip:CNMG-D1/own/count');
  if (skipping?.kind !== 'skip') throw new Error('nothing was counted');
  return skipping;
};
const basisOf = (lot: string) => workAt(plant, lot).demand.basis;
/** A new lot: inspected, with so many found where it is asked for. Says whether it was passed over. */
function next(many = 0): 'skipped' | 'inspected' {
  serial += 1;
  const lot = `L${String(serial).padStart(3, '0')}`;
  opened(plant, lot);
  if (basisOf(lot).by === 'skipped') return 'skipped';
  found(plant, lot, 'major', ...Array.from({ length: many }, (_, index) => index + 1));
  done(plant, lot);
  return 'inspected';
}

describe('lots passed over', () => {
  it('begin only after the run of accepted lots that the plan asks for', () => {
    expect([next(), next(), next()]).toEqual(['inspected', 'inspected', 'inspected']);
    expect(state()).toMatchObject({ lots: ['L001', 'L002', 'L003'], state: { skipping: true, acceptedInRow: 3 } });
  });

  it('are about three in four, drawn by the seed that the opened gate records, and say which lots earned it', () => {
    for (let lot = 0; lot < 3; lot += 1) next();
    const went = Array.from({ length: 200 }, () => next());
    // Binomial with n 200, p 0.75: mean 150, standard deviation 6.1. The seeds are fixed.
    expect(Math.abs(went.filter((each) => each === 'skipped').length - 150)).toBeLessThan(4 * 6.1);
    const lot = `L${String(4 + went.indexOf('skipped')).padStart(3, '0')}`;
    expect(basisOf(lot)).toMatchObject({ by: 'skipped', clearance: 3, oneIn: 4 });
    expect(gateRecord(plant, `lot:${lot}`, 'own')).toMatchObject({ status: 'accepted', work: [{ demand: { n: 0, places: [] } }] });
    expect(verdictAt(plant, lot, 'own')).toMatchObject({ accepted: true, results: [{ detail: { by: 'skipped', lots: [expect.any(String), expect.any(String), expect.any(String)] } }] });
  });

  it('have their verdict with the opening of the gate, and move no switching', () => {
    for (let lot = 0; lot < 3; lot += 1) next();
    const before = plant.state('switching:CNMG-D1/own/count/major')?.version;
    while (next() === 'inspected');
    const skippedAt = plant.slips.findLastIndex(({ body }) => body.type === 'gateOpened');
    expect(plant.slips.slice(skippedAt).map(({ body }) => body.type)).toEqual(['gateOpened', 'verdictGiven', 'skipCounted']);
    expect(plant.state('switching:CNMG-D1/own/count/major')?.version).toBeGreaterThanOrEqual(before ?? 0);
    expect(plant.refusalOf({ ...at(`L${String(serial).padStart(3, '0')}`), type: 'completeSample', looked: 80 })).toBe('gateNotOpen');
  });

  it('end with a lot that is not accepted: then every lot is inspected until the run is there again', () => {
    for (let lot = 0; lot < 3; lot += 1) next();
    while (next(9) !== 'inspected');
    expect(state()).toMatchObject({ lots: [], endedBy: `L${String(serial).padStart(3, '0')}`, state: { skipping: false, acceptedInRow: 0 } });
    expect([next(), next(), next()]).toEqual(['inspected', 'inspected', 'inspected']);
    expect(state().state.skipping).toBe(true);
  });

  it('end too when a correction turns the verdict of one of the lots it rests on', () => {
    next(3);
    const lot = 'L001';
    expect(verdictAt(plant, lot, 'own').accepted).toBe(false);
    for (let more = 0; more < 3; more += 1) next();
    expect(state().state.skipping).toBe(true);
    // L001 was not accepted; with one finding withdrawn it is, and the run began with it.
    const finding = gateRecord(plant, `lot:${lot}`, 'own').work[0]?.findings[0]?.slip ?? 0;
    plant.must({ ...at(lot), type: 'withdrawFinding', finding, reason: 'dust' });
    expect(plant.slips.map(({ body }) => body).findLast(({ type }) => type === 'skipRecounted')).toEqual({ type: 'skipRecounted', lot, accepted: true });
    expect(state()).toMatchObject({ endedBy: null, state: { skipping: true }, counted: [{ lot, accepted: true }, {}, {}, {}] });
  });

  it('end too with a lot not accepted that was opened under a version of the plan which passes none over', () => {
    counting(plant, byAql({ major: 1 }));
    opened(plant, 'OLD');
    counting(plant, byAql({ major: 1 }, { skipLot: { clearance: 3, oneIn: 4 } }));
    for (let lot = 0; lot < 3; lot += 1) next();
    expect(state().state.skipping).toBe(true);
    found(plant, 'OLD', 'major', 1, 2, 3);
    done(plant, 'OLD');
    expect(state()).toMatchObject({ lots: [], endedBy: 'OLD', state: { clearance: 3, oneIn: 4, skipping: false, acceptedInRow: 0 } });
  });

  it('end by a correction too where the lot is another product by then', () => {
    const product = plant.state('product:CNMG-D1');
    if (product?.kind !== 'product') throw new Error('the demo plant has no CNMG-D1');
    plant.must({ type: 'defineProduct', product: { ...product.card, id: 'CNMG-D9', itemCode: 'CNMG-D9' } });
    next(3);
    decideHold(plant, 'lot:L001', { kind: 'regrade', toProduct: 'CNMG-D9' });
    plant.must({ ...at('L001'), type: 'withdrawFinding', finding: gateRecord(plant, 'lot:L001', 'own').work[0]?.findings[0]?.slip ?? 0, reason: 'dust' });
    expect(state().counted).toEqual([{ lot: 'L001', accepted: true, skipped: false }]);
  });

  it('are inspected once in 49 where the plan says so, by the roll of the dice and not by the last digit of a division', () => {
    counting(plant, byAql({ major: 1 }, { skipLot: { clearance: 1, oneIn: 49 } }));
    next();
    openLot(plant, 'X1');
    for (let turn = 0; turn < 400; turn += 1) {
      const seed = `turn ${turn}`;
      const asked = plant.ask({ type: 'openGate', subject: 'lot:X1', gate: 'own' }, undefined, { seed });
      const basis = 'slips' in asked ? asked.slips.flatMap(({ body }) => (body.type === 'gateOpened' ? body.demands.map(({ basis: { by } }) => by) : [])) : [];
      expect(basis, seed).toEqual([diceFrom(`${seed} / skip count`).roll(49) === 1 ? 'attributes' : 'skipped']);
    }
  });

  it('never are lots that came back, lots on tightened inspection, or a class named critical', () => {
    for (let lot = 0; lot < 3; lot += 1) next();
    while (next(9) !== 'inspected');
    const back = `L${String(serial).padStart(3, '0')}`;
    for (let lot = 0; lot < 3; lot += 1) next();
    decideHold(plant, `lot:${back}`, { kind: 'retest' });
    for (let turn = 0; turn < 30; turn += 1) {
      const asked = plant.ask({ type: 'openGate', subject: `lot:${back}`, gate: 'own' });
      expect('slips' in asked && asked.slips.flatMap(({ body }) => (body.type === 'gateOpened' ? body.demands.map(({ basis }) => basis.by) : []))).toEqual(['attributes']);
    }
    while (next(9) !== 'inspected');
    expect(plant.state('switching:CNMG-D1/own/count/major')).toMatchObject({ state: { severity: 'tightened' } });
    expect([next(), next(), next(), next()]).toEqual(['inspected', 'inspected', 'inspected', 'inspected']);
    expect(state().state.skipping).toBe(true);
    expect(() => counting(plant, byAql({ critical: 0.15, major: 1 }, { skipLot: { clearance: 3, oneIn: 4 } }))).toThrow('skipLotCritical');
    for (const skipLot of [{ clearance: 0, oneIn: 4 }, { clearance: 3, oneIn: 1 }, { clearance: 2.5, oneIn: 4 }]) expect(() => counting(plant, byAql({ major: 1 }, { skipLot }))).toThrow('skipLotNumbers');
  });

  it('are counted from the start again when the plan asks for another run', () => {
    for (let lot = 0; lot < 3; lot += 1) next();
    counting(plant, byAql({ major: 1 }, { skipLot: { clearance: 2, oneIn: 3 } }));
    expect([next(), next()]).toEqual(['inspected', 'inspected']);
    expect(state()).toMatchObject({ state: { clearance: 2, oneIn: 3, skipping: true } });
  });
});

it('a demand that passes the lot over is worked by whoever may open the gate', () => {
  for (let lot = 0; lot < 3; lot += 1) next();
  expect(plant.refusalOf({ type: 'openGate', subject: 'lot:L003', gate: 'own' }, CREW[4])).not.toBe('none');
});
