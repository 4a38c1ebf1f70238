import { beforeEach, describe, expect, it } from 'vitest';
import { evenShrinkage, pressTargetsByDirection } from '../../../shared/carbide/index.ts';
import { verdictOf } from '../../../shared/traveller/index.ts';
import type { InspectionPlan } from '../../../shared/traveller/index.ts';
import { PLANS } from '../../../demo-data/plans.ts';
import { CREW, littlePlant, openLot, releasedBatch, SHORT_ROUTE, workThrough } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';
import { decideHold, gateRecord, labelledBox, passedLot, releasedLot, RELEASER, standing } from '../../property/traveller/on-the-way.ts';

let plant: LittlePlant;
beforeEach(() => {
  plant = littlePlant(SHORT_ROUTE);
});
const openP1 = (): void => void plant.must({ type: 'openBatch', batch: 'P1', grade: 'DEMO-F8', barrels: 12, kgPerBarrel: 100, rawLots: [] }, CREW[0]);
const lotOf = { type: 'openLot', lot: 'A1', product: 'CNMG-D1', batch: 'P1', quantity: 100, trayCapacity: 60 } as const;
const correct = (characteristic: string, value: number) => plant.must({ type: 'correctReading', subject: 'batch:P1', gate: 'powder-lab', characteristic, ordinal: 1, value, reason: 'misread' }, CREW[0]);

describe('powder', () => {
  it('is sampled from drawn barrels', () => {
    openP1();
    plant.must({ type: 'openGate', subject: 'batch:P1', gate: 'powder-lab' });
    const places = gateRecord(plant, 'batch:P1', 'powder-lab').work[0]?.demand.places ?? [];
    expect(new Set(places.map((place) => (place.at === 'barrel' ? place.barrel : 0))).size).toBe(3);
  });

  it('that is not released opens no lot', () => {
    openP1();
    expect(plant.refusalOf(lotOf)).toBe('batchNotReleased');
    workThrough(plant, 'batch:P1', 'powder-lab');
    expect(plant.refusalOf(lotOf)).toBe('batchNotReleased');
    plant.must({ type: 'releaseBatch', batch: 'P1' }, CREW[0]);
    expect(plant.refusalOf(lotOf)).toBe('none');
  });

  it('is not released before its gates have passed, nor twice, nor without a signature', () => {
    openP1();
    expect(plant.refusalOf({ type: 'releaseBatch', batch: 'P1' })).toBe('notAllGatesPassed');
    workThrough(plant, 'batch:P1', 'powder-lab');
    expect(plant.refusalOf({ type: 'releaseBatch', batch: 'P1' }, CREW[0], { signed: false })).toBe('signatureMissing');
    expect(plant.refusalOf({ type: 'releaseBatch', batch: 'P1' }, CREW[1])).toBe('notYourRole');
    plant.must({ type: 'releaseBatch', batch: 'P1' }, CREW[0]);
    expect(plant.refusalOf({ type: 'releaseBatch', batch: 'P1' })).toBe('alreadyReleased');
  });

  it('of another grade is not pressed into a product', () => {
    releasedBatch(plant);
    expect(plant.refusalOf({ ...lotOf, product: 'TNMG-D2' })).toBe('gradeDiffers');
  });

  it('without a factor that pressing needs is not released', () => {
    const powder = PLANS.find(({ id }) => id === 'POWDER-F8') as InspectionPlan;
    const without: InspectionPlan = { ...powder, gates: powder.gates.map((gate) => ({ ...gate, characteristics: gate.characteristics.filter(({ id }) => id !== 'binder') })) };
    plant = littlePlant(without);
    openP1();
    workThrough(plant, 'batch:P1', 'powder-lab');
    expect(plant.ask({ type: 'releaseBatch', batch: 'P1' })).toEqual({ refusal: { code: 'factorMissing', batch: 'P1', factor: 'binderPercent' } });
  });
});

describe('the factors of the powder', () => {
  it('are the lab’s means and set the press target of each lot made from it', () => {
    releasedBatch(plant);
    openLot(plant, 'A1');
    const { pressWeightG } = pressTargetsByDirection({ sinteredVolumeMm3: 661, sinteredDensityGPerCm3: 14.65, binderFraction: 0.02, shrinkages: evenShrinkage(0.18), heightMm: 4.76 });
    const { weightG, greenThicknessMm, fromBatch } = plant.lot('A1').press;
    // By hand: test pieces of 6 mm come out 4.872 mm high, 18.8 %; 4.76/0.812.
    expect([weightG / pressWeightG, greenThicknessMm / (4.76 / 0.812), fromBatch]).toEqual([expect.closeTo(1, 12), expect.closeTo(1, 12), 'P1']);
  });

  it('corrected after the release, hold for the lots opened from then on and for those not yet pressed', () => {
    releasedBatch(plant);
    openLot(plant, 'A1');
    correct('density', 14.68);
    openLot(plant, 'A2');
    expect([plant.lot('A1').press.sinteredDensityGPerCm3, plant.lot('A2').press.sinteredDensityGPerCm3]).toEqual([expect.closeTo(14.66, 10), expect.closeTo(14.66, 10)]);
    expect(plant.lot('A1').press).toEqual(plant.lot('A2').press);
  });

  it('set the weight limits of every piece at the press', () => {
    plant = littlePlant();
    releasedBatch(plant);
    openLot(plant, 'A1', 100);
    plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'pressing' });
    const weight = gateRecord(plant, 'lot:A1', 'pressing').work[0]?.demand.characteristic;
    // 661 mm³ × 14.65 g/cm³ / 0.98 = 9.881 g, ± 0.5 %; by hand.
    expect(weight?.kind === 'measured' && [weight.lower, weight.target, weight.upper]).toEqual([9.832, 9.881, 9.931]);
  });
});

describe('a hold on the powder', () => {
  it('stops every lot made of it: gate, charge, release, packing and shipping', () => {
    releasedBatch(plant);
    openLot(plant, 'A1');
    passedLot(plant, 'A2', 100);
    releasedLot(plant, 'A3', 100);
    const box = labelledBox(plant, 'A3');
    plant.must({ type: 'hold', subject: 'batch:P1', reason: 'contaminated' }, CREW[0]);
    expect(plant.refusalOf({ type: 'openGate', subject: 'lot:A1', gate: 'final-visual' })).toBe('upstreamIsHeld');
    expect(plant.refusalOf({ type: 'releaseLot', lot: 'A2' }, RELEASER)).toBe('upstreamIsHeld');
    expect(plant.refusalOf({ type: 'packBox', lot: 'A3', pieces: 10 })).toBe('upstreamIsHeld');
    expect(plant.refusalOf({ type: 'printLabel', lot: 'A3', box, reason: 'smeared' })).toBe('upstreamIsHeld');
    expect(plant.refusalOf({ type: 'shipBox', lot: 'A3', box, shipment: 'S', order: 'O', consignee: 'C' })).toBe('upstreamIsHeld');
    expect(plant.refusalOf({ ...lotOf, lot: 'A4' })).toBe('subjectIsHeld');
    decideHold(plant, 'batch:P1', { kind: 'clear' });
    expect(plant.refusalOf({ type: 'releaseLot', lot: 'A2' }, RELEASER)).toBe('none');
  });

  it('that ends in scrapping it holds each lot made of it and still here, for a decision of its own', () => {
    releasedBatch(plant);
    openLot(plant, 'A1');
    passedLot(plant, 'A2', 100);
    plant.must({ type: 'hold', subject: 'batch:P1', reason: 'contaminated' }, CREW[0]);
    decideHold(plant, 'batch:P1', { kind: 'scrap' }, 'tungsten of the wrong supplier');
    expect(plant.lot('A1').holds.map(({ reason, lifted }) => [reason, lifted])).toEqual([['tungsten of the wrong supplier', null]]);
    expect(plant.refusalOf({ type: 'releaseLot', lot: 'A2' }, RELEASER)).toBe('subjectIsHeld');
    decideHold(plant, 'lot:A2', { kind: 'clear' });
    expect(plant.refusalOf({ type: 'releaseLot', lot: 'A2' }, RELEASER)).toBe('none');
  });
});

describe('powder accepted on concession', () => {
  it('leaves the concession on every lot made of it, for the certificate', () => {
    openP1();
    workThrough(plant, 'batch:P1', 'powder-lab', { flow: 40 });
    decideHold(plant, 'batch:P1', { kind: 'concession', statement: 'flows slowly, press at half speed' });
    plant.must({ type: 'releaseBatch', batch: 'P1' }, CREW[0]);
    openLot(plant, 'A1');
    const { gates, concessions } = plant.lot('A1');
    expect([gates[0]?.status, concessions.map(({ statement, from }) => [statement, from])]).toEqual(['conceded', [['flows slowly, press at half speed', 'batch:P1']]]);
  });
});

describe('a correction on released powder', () => {
  beforeEach(() => {
    releasedBatch(plant);
    openLot(plant, 'A1');
  });

  it('reaches the lots made of it: their traveller has the corrected numbers', () => {
    correct('flow', 33);
    const flow = verdictOf(gateRecord(plant, 'lot:A1', 'powder'))?.verdict.results.find(({ characteristic }) => characteristic === 'flow')?.detail;
    expect(flow !== undefined && 'summary' in flow && flow.summary.max).toBe(33);
  });

  it('that turns it to rejected holds the powder and its lots, and no further lot is opened', () => {
    correct('flow', 40);
    expect([standing(plant, 'batch:P1').length, standing(plant, 'lot:A1').length]).toEqual([1, 1]);
    decideHold(plant, 'batch:P1', { kind: 'retest' });
    expect([gateRecord(plant, 'lot:A1', 'powder').status, plant.refusalOf({ ...lotOf, lot: 'A2' })]).toEqual(['waiting', 'batchNotReleased']);
    workThrough(plant, 'batch:P1', 'powder-lab');
    expect([gateRecord(plant, 'lot:A1', 'powder').status, plant.refusalOf({ ...lotOf, lot: 'A2' })]).toEqual(['accepted', 'none']);
  });
});

it('numbers that would not fit a label’s code are refused when a batch, lot or charge is opened', () => {
  releasedBatch(plant);
  for (const unfit of ['a1', 'L 26', 'L', '-1', 'L26-0417-0000-001', 'L:1', 'Ü1']) {
    expect(plant.refusalOf({ ...lotOf, lot: unfit })).toBe('identifierUnfit');
    expect(plant.refusalOf({ type: 'openBatch', batch: unfit, grade: 'DEMO-F8', barrels: 1, kgPerBarrel: 1, rawLots: [] })).toBe('identifierUnfit');
  }
  expect(plant.refusalOf({ ...lotOf, lot: 'L26-0417-000-001' })).toBe('none');
});
