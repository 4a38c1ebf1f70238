import { beforeEach, describe, expect, it } from 'vitest';
import { remainingKg } from '../../../shared/traveller/index.ts';
import type { Batch, SlipBody } from '../../../shared/traveller/index.ts';
import { CREW, littlePlant, releasedBatch, SHORT_ROUTE, workThrough } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';
import { weighBlendsOf } from '../../property/traveller/blend-plan.ts';
import { decideHold, gateRecord, passGate, press, RELEASER, standing } from '../../property/traveller/on-the-way.ts';

let plant: LittlePlant;
beforeEach(() => {
  plant = littlePlant(SHORT_ROUTE);
  releasedBatch(plant, 'P1');
  plant.must({ type: 'openBatch', batch: 'P2', grade: 'DEMO-F8', barrels: 3, kgPerBarrel: 100, rawLots: [] }, CREW[0]);
  workThrough(plant, 'batch:P2', 'powder-lab', { density: 14.69, binder: 2.04 });
  plant.must({ type: 'releaseBatch', batch: 'P2' }, CREW[0]);
});
const weighBlends = (): void => weighBlendsOf(plant);
const blend = (from: readonly (readonly [string, number])[], batch = 'B1') => ({ type: 'blendBatches', batch, from: from.map(([id, kg]) => ({ batch: id, kg })), barrels: 4 }) as const;
function releasedBlend(batch = 'B1', from: readonly (readonly [string, number])[] = [['P1', 300], ['P2', 100]]): void {
  plant.must(blend(from, batch), CREW[0]);
  workThrough(plant, `batch:${batch}`, 'powder-lab');
  plant.must({ type: 'releaseBatch', batch }, CREW[0]);
}
const batchOf = (id: string): Batch => {
  const state = plant.state(`batch:${id}`);
  if (state?.kind !== 'batch') throw new Error(`no batch ${id}`);
  return state;
};
const lotOf = (lot: string, batch = 'B1') => ({ type: 'openLot', lot, product: 'CNMG-D1', batch, quantity: 100, trayCapacity: 60 }) as const;
const lastOf = (stream: string, type: SlipBody['type']): SlipBody | undefined => plant.slips.findLast((slip) => slip.stream === stream && slip.body.type === type)?.body;

describe('a blend', () => {
  it('is a batch of its own, made of so much of each part, which then have so much less', () => {
    plant.must(blend([['P1', 300], ['P2', 100]]), CREW[0]);
    expect(batchOf('B1')).toMatchObject({ grade: { id: 'DEMO-F8' }, barrels: 4, kgPerBarrel: 100, blendedFrom: [{ batch: 'P1', kg: 300 }, { batch: 'P2', kg: 100 }], released: null });
    expect([remainingKg(batchOf('P1')), remainingKg(batchOf('P2')), remainingKg(batchOf('B1'))]).toEqual([11_700, 200, 400]);
    expect(batchOf('P2').blendedInto).toEqual([{ batch: 'B1', kg: 100 }]);
  });

  it('is not pressed before its own lab gate: mixing can fail', () => {
    plant.must(blend([['P1', 300], ['P2', 100]]), CREW[0]);
    expect(plant.refusalOf(lotOf('A1'))).toBe('batchNotReleased');
    expect(plant.refusalOf({ type: 'releaseBatch', batch: 'B1' }, CREW[0])).toBe('notAllGatesPassed');
  });

  it('has what its plan does not ask for weighted from the parts: 3 to 1 (by hand)', () => {
    weighBlends();
    releasedBlend();
    const factors = batchOf('B1').released?.factors;
    // Binder ¾ · 2.00 + ¼ · 2.04 = 2.01 %. Density: shares of the sintered mass 0.75 · 0.98 and 0.25 · 0.9796 over 0.9799; 1/ρ = 0.750077/14.65 + 0.249923/14.69, so 14.65998.
    expect([factors?.binderPercent, factors?.sinteredDensityGPerCm3, factors?.linearShrinkagePercent]).toEqual([expect.closeTo(2.01, 10), expect.closeTo(14.65998, 5), expect.closeTo(18, 10)]);
    expect(factors?.weighted).toEqual(['linearShrinkagePercent', 'heightShrinkagePercent', 'sinteredDensityGPerCm3', 'binderPercent']);
    plant.must(lotOf('A1'));
    expect(plant.lot('A1').press).toMatchObject({ fromBatch: 'B1', blendedFrom: [{ batch: 'P1', kg: 300 }, { batch: 'P2', kg: 100 }], weighted: factors?.weighted });
  });

  it('counts what was measured on itself before what its parts would give', () => {
    const grade = plant.state('grade:DEMO-F8');
    if (grade?.kind === 'grade') plant.must({ type: 'defineGrade', grade: { ...grade.card, blendPlan: grade.card.powderPlan } }, CREW[2]);
    releasedBlend();
    expect(batchOf('B1').released?.factors).toMatchObject({ sinteredDensityGPerCm3: 14.65, binderPercent: 2 });
    expect(batchOf('B1').released?.factors.weighted).toBeUndefined();
  });

  it('may be blended again', () => {
    weighBlends();
    releasedBlend();
    releasedBlend('B2', [['B1', 200], ['P1', 200]]);
    // By hand: half of 2.01 and half of 2.00.
    expect(batchOf('B2').released?.factors.binderPercent).toBeCloseTo(2.005, 10);
  });
});

describe('a blend is refused', () => {
  it('of fewer than two, of one named twice, of no mass and of a mass finer than a gram', () => {
    const why = (from: readonly (readonly [string, number])[]) => {
      const decision = plant.ask(blend(from), CREW[0]);
      return 'refusal' in decision && decision.refusal.code === 'blendImpossible' ? decision.refusal.why : decision;
    };
    expect([why([['P1', 1]]), why([['P1', 1], ['P1', 2]]), why([['P1', 0], ['P2', 1]]), why([['P1', 1], ['P2', -1]]), why([['P1', Number.NaN], ['P2', 1]]), why([['P1', 1.0005], ['P2', 1]])])
      .toEqual(['fewerThanTwo', 'namedTwice', 'massUnfit', 'massUnfit', 'massUnfit', 'massUnfit']);
  });

  it('of more than is left', () => {
    plant.must(lotOf('A1', 'P2'));
    // By hand: 100 pieces of 661 · 14.69/0.9796 = 9.9123 g are 0.992 kg, up to the next gram.
    expect(plant.ask(blend([['P1', 1], ['P2', 300]]), CREW[0])).toEqual({ refusal: { code: 'notEnoughPowder', batch: 'P2', wantedKg: 300, remainingKg: 299.008 } });
  });

  it('of another grade, of powder not released, held or scrapped, by anybody but the lab, under a number that is taken', () => {
    plant.must({ type: 'openBatch', batch: 'T1', grade: 'DEMO-T10', barrels: 3, kgPerBarrel: 100, rawLots: [] }, CREW[0]);
    expect(plant.refusalOf(blend([['P1', 1], ['T1', 1]]), CREW[0])).toBe('batchNotReleased');
    workThrough(plant, 'batch:T1', 'powder-lab');
    plant.must({ type: 'releaseBatch', batch: 'T1' }, CREW[0]);
    expect(plant.refusalOf(blend([['P1', 1], ['T1', 1]]), CREW[0])).toBe('gradeDiffers');
    expect(plant.refusalOf(blend([['P1', 1], ['P2', 1]]), CREW[1])).toBe('notYourRole');
    expect(plant.refusalOf(blend([['P1', 1], ['P2', 1]], 'P1'), CREW[0])).toBe('alreadyThere');
    plant.must({ type: 'hold', subject: 'batch:P2', reason: 'open overnight' }, CREW[0]);
    expect(plant.refusalOf(blend([['P1', 1], ['P2', 1]]), CREW[0])).toBe('subjectIsHeld');
    decideHold(plant, 'batch:P2', { kind: 'scrap' });
    expect(plant.refusalOf(blend([['P1', 1], ['P2', 1]]), CREW[0])).toBe('subjectHasEnded');
  });
});

describe('what befalls a part reaches the blend', () => {
  beforeEach(() => {
    weighBlends();
    releasedBlend();
    releasedBlend('B2', [['B1', 100], ['P1', 100]]);
    plant.must(lotOf('A1'));
    plant.must(lotOf('A2', 'B2'));
  });

  it('a hold on it stops blends and lots made of it, near and far, until it is cleared', () => {
    plant.must({ type: 'hold', subject: 'batch:P2', reason: 'contaminated' }, CREW[0]);
    const stopped = { refusal: { code: 'upstreamIsHeld', upstream: 'P2', reason: 'contaminated' } };
    for (const lot of ['A1', 'A2']) expect(plant.ask({ type: 'openGate', subject: `lot:${lot}`, gate: 'final-visual' })).toEqual(stopped);
    expect(plant.ask(lotOf('A3'))).toEqual(stopped);
    expect(plant.ask(blend([['B1', 10], ['P1', 10]], 'B3'), CREW[0])).toEqual(stopped);
    decideHold(plant, 'batch:P2', { kind: 'clear' });
    expect(plant.refusalOf({ type: 'openGate', subject: 'lot:A2', gate: 'final-visual' })).toBe('none');
  });

  it('scrapping it puts each blend and each lot made of it on hold, for a decision of its own', () => {
    plant.must({ type: 'hold', subject: 'batch:P2', reason: 'contaminated' }, CREW[0]);
    decideHold(plant, 'batch:P2', { kind: 'scrap' }, 'wrong carbide');
    expect(['batch:B1', 'batch:B2', 'lot:A1', 'lot:A2'].map((stream) => standing(plant, stream).length)).toEqual([1, 1, 1, 1]);
    expect(standing(plant, 'batch:P1')).toEqual([]);
    expect(plant.refusalOf(lotOf('A3'))).toBe('subjectIsHeld');
    decideHold(plant, 'batch:B1', { kind: 'clear' });
    decideHold(plant, 'lot:A1', { kind: 'clear' });
    expect(plant.refusalOf({ type: 'openGate', subject: 'lot:A1', gate: 'final-visual' })).toBe('none');
  });

  it('while it is under test again nothing is made, gone on with or released of it, near and far', () => {
    for (const lot of ['A1', 'A2']) for (const gate of ['final-visual', 'marking']) passGate(plant, lot, gate);
    plant.must({ type: 'correctReading', subject: 'batch:P2', gate: 'powder-lab', characteristic: 'flow', ordinal: 1, value: 60, reason: 'misread', sure: true }, CREW[0]);
    decideHold(plant, 'batch:P2', { kind: 'retest' });
    const stopped = { refusal: { code: 'batchNotReleased', batch: 'P2' } };
    for (const lot of ['A1', 'A2']) expect(plant.ask({ type: 'releaseLot', lot }, RELEASER)).toEqual(stopped);
    expect(plant.ask(lotOf('A3'))).toEqual(stopped);
    workThrough(plant, 'batch:P2', 'powder-lab');
    expect([plant.refusalOf({ type: 'releaseLot', lot: 'A2' }, RELEASER), plant.refusalOf(lotOf('A3'))]).toEqual(['none', 'none']);
  });

  it('a concession given later on it reaches the lots that are there, and stays when the blend is tested again', () => {
    for (const gate of ['final-visual', 'marking']) passGate(plant, 'A2', gate);
    plant.must({ type: 'correctReading', subject: 'batch:P2', gate: 'powder-lab', characteristic: 'flow', ordinal: 1, value: 60, reason: 'misread', sure: true }, CREW[0]);
    decideHold(plant, 'batch:P2', { kind: 'concession', statement: 'flows slowly' });
    const conceded = (lot: string) => [plant.lot(lot).gates[0]?.status, plant.lot(lot).concessions.map(({ statement, from }) => [statement, from])];
    for (const lot of ['A1', 'A2']) expect(conceded(lot)).toEqual(['conceded', [['flows slowly', 'batch:P2']]]);
    plant.must({ type: 'correctReading', subject: 'batch:B1', gate: 'powder-lab', characteristic: 'flow', ordinal: 1, value: 60, reason: 'misread', sure: true }, CREW[0]);
    decideHold(plant, 'batch:B1', { kind: 'retest' });
    workThrough(plant, 'batch:B1', 'powder-lab');
    expect(conceded('A1')).toEqual(['conceded', [['flows slowly', 'batch:P2']]]);
    plant.must({ type: 'releaseLot', lot: 'A2' }, RELEASER);
    expect(plant.refusalOf({ type: 'correctReading', subject: 'batch:P2', gate: 'powder-lab', characteristic: 'flow', ordinal: 1, value: 30, reason: 'misread' }, CREW[0])).toBe('alreadyReleased');
  });

  it('a concession on it stands on the lots of the blend, for the certificate', () => {
    plant.must({ type: 'openBatch', batch: 'P3', grade: 'DEMO-F8', barrels: 3, kgPerBarrel: 100, rawLots: [] }, CREW[0]);
    workThrough(plant, 'batch:P3', 'powder-lab', { flow: 40 });
    decideHold(plant, 'batch:P3', { kind: 'concession', statement: 'flows slowly' });
    plant.must({ type: 'releaseBatch', batch: 'P3' }, CREW[0]);
    releasedBlend('B3', [['P1', 50], ['P3', 50]]);
    plant.must(lotOf('A3', 'B3'));
    const { gates, concessions } = plant.lot('A3');
    expect([gates[0]?.status, concessions.map(({ statement, from }) => [statement, from])]).toEqual(['conceded', [['flows slowly', 'batch:P3']]]);
  });

  it('a corrected reading of it gives blends and lots not pressed the new numbers, and names lots already pressed', () => {
    plant.must({ type: 'correctReading', subject: 'batch:P2', gate: 'powder-lab', characteristic: 'binder', ordinal: 1, value: 2.1, reason: 'misread' }, CREW[0]);
    // By hand: P2 (2.10 + 2.04 + 2.04)/3 = 2.06 %; B1 ¾ · 2.00 + ¼ · 2.06 = 2.015 %; B2 half of it and half of 2.00 = 2.0075 %.
    expect(['P2', 'B1', 'B2'].map((id) => batchOf(id).released?.factors.binderPercent)).toEqual([2.06, 2.015, 2.0075].map((value) => expect.closeTo(value, 10)));
    expect([lastOf('batch:B1', 'factorsRevised'), lastOf('batch:B2', 'factorsRevised')]).toMatchObject([{ retargeted: ['A1'], pressed: [] }, { retargeted: ['A2'], pressed: [] }]);
    expect(plant.lot('A2').press.binderPercent).toBeCloseTo(2.0075, 10);
  });

  it('a part that loses a factor the blend needs stops the blend by name', () => {
    plant.must({ type: 'openBatch', batch: 'P4', grade: 'DEMO-F8', barrels: 3, kgPerBarrel: 100, rawLots: [] }, CREW[0]);
    workThrough(plant, 'batch:P4', 'powder-lab', { binder: 2.05 });
    plant.must({ type: 'releaseBatch', batch: 'P4' }, CREW[0]);
    plant.must(blend([['P4', 100], ['P1', 100]], 'B4'), CREW[0]);
    for (const ordinal of [1, 2, 3]) plant.must({ type: 'correctReading', subject: 'batch:P4', gate: 'powder-lab', characteristic: 'binder', ordinal, value: 0, reason: 'crucible was empty', sure: true }, CREW[0]);
    decideHold(plant, 'batch:P4', { kind: 'concession', statement: 'binder to be settled' });
    workThrough(plant, 'batch:B4', 'powder-lab');
    expect(plant.ask({ type: 'releaseBatch', batch: 'B4' }, CREW[0])).toEqual({ refusal: { code: 'factorMissing', batch: 'P4', factor: 'binderPercent' } });
  });
});

it('a lot pressed from a blend is named when a part is corrected afterwards', () => {
  plant = littlePlant();
  releasedBatch(plant, 'P1');
  releasedBatch(plant, 'P2');
  weighBlends();
  releasedBlend();
  plant.must(lotOf('A1'));
  press(plant, 'A1');
  plant.must({ type: 'correctReading', subject: 'batch:P2', gate: 'powder-lab', characteristic: 'density', ordinal: 1, value: 14.68, reason: 'misread' }, CREW[0]);
  expect(lastOf('batch:B1', 'factorsRevised')).toMatchObject({ retargeted: [], pressed: ['A1'] });
  expect(plant.lot('A1').pressOutdated).not.toBeNull();
  expect(gateRecord(plant, 'lot:A1', 'pressing').status).toBe('accepted');
});
