import { beforeEach, describe, expect, it } from 'vitest';
import type { Batch, InspectionPlan, Measured, SlipBody } from '../../../shared/traveller/index.ts';
import { evolve, remainingKg, sinteredSizes } from '../../../shared/traveller/index.ts';
import { withPressLimits } from '../../../shared/traveller/gate/press-limits.ts';
import { PLANS } from '../../../demo-data/plans.ts';
import { CREW, littlePlant, openLot, releasedBatch, workThrough } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';
import { decideHold, gateRecord, length, press, standing } from '../../property/traveller/on-the-way.ts';

let plant: LittlePlant;
beforeEach(() => {
  plant = littlePlant();
});

const POWDER = PLANS.find(({ id }) => id === 'POWDER-F8') as InspectionPlan;
const ROUTE = PLANS.find(({ id }) => id === 'ROUTE-CNMG') as InspectionPlan;
/** A powder plan that does not ask for the height. */
const withoutHeight: InspectionPlan = { ...POWDER, gates: POWDER.gates.map((gate) => ({ ...gate, characteristics: gate.characteristics.filter(({ id }) => id !== 'height') })) };
/** The route whose pressing gate also measures the green height. */
function routeMeasuring(change: Partial<Measured>): InspectionPlan {
  const green = length({ id: 'green', name: 'Green height', lower: null, upper: null, target: null, plausible: { least: 3, most: 9 }, limitsFrom: 'greenHeight', sampling: { rule: 'fixed', n: 2, accept: 'each' }, ...change });
  return { ...ROUTE, gates: ROUTE.gates.map((gate) => (gate.id === 'pressing' ? { ...gate, characteristics: [...gate.characteristics, green] } : gate)) };
}
function approve(plan: InspectionPlan): void {
  plant.must({ type: 'draftPlan', plan, why: 'for this test' }, CREW[2]);
  const state = plant.state(`plan:${plan.id}`);
  const planVersion = state?.kind === 'plan' ? state.versions.length : 0;
  for (const badge of ['Q-401', 'Q-402']) plant.must({ type: 'approvePlan', plan: plan.id, planVersion }, { badge, name: badge, roles: ['engineer'] });
}
function product(change: Readonly<Record<string, unknown>>): void {
  const state = plant.state('product:CNMG-D1');
  if (state?.kind !== 'product') throw new Error('no product CNMG-D1');
  plant.must({ type: 'defineProduct', product: { ...state.card, ...change } }, CREW[2]);
}
/** A released batch whose test pieces were measured in height too: 6.00 mm green, 4.86 mm sintered, 19 %. */
function batchWithHeight(id: string, sinteredMm = 4.86): void {
  plant.must({ type: 'openBatch', batch: id, grade: 'DEMO-F8', barrels: 3, kgPerBarrel: 100, rawLots: [] }, CREW[0]);
  plant.must({ type: 'openGate', subject: `batch:${id}`, gate: 'powder-lab' });
  for (const ordinal of [1, 2, 3]) plant.must({ type: 'takeReading', subject: `batch:${id}`, gate: 'powder-lab', characteristic: 'height', ordinal, value: null, inputs: { greenMm: 6, sinteredMm }, gauge: 'MIC-11' });
  finish(`batch:${id}`);
  plant.must({ type: 'releaseBatch', batch: id }, CREW[0]);
}
/** Every other reading of an open powder gate, on target. */
function finish(stream: string): void {
  for (const { demand: { characteristic, n } } of gateRecord(plant, stream, 'powder-lab').work) for (let ordinal = 1; ordinal <= n; ordinal += 1) {
    const here = { type: 'takeReading' as const, subject: stream, gate: 'powder-lab', characteristic: characteristic.id, ordinal };
    if (characteristic.id === 'height') continue;
    if (characteristic.kind === 'confirmed') plant.must({ ...here, value: true });
    else if (characteristic.kind === 'graded') plant.must({ ...here, value: characteristic.scale[0] ?? '' });
    else if (characteristic.kind === 'measured' && characteristic.entry.how === 'shrinkage') plant.must({ ...here, value: null, inputs: { sinteredMm: 20.5 }, gauge: 'MIC-11' });
    else if (characteristic.kind === 'measured') plant.must({ ...here, value: characteristic.target ?? 0, sure: true, ...({ density: { gauge: 'DEN-41' }, coercivity: { gauge: 'COE-42' }, hardness: { gauge: 'HAR-43' } }[characteristic.id] ?? {}) });
  }
}
const batch = (id: string): Batch => {
  const state = plant.state(`batch:${id}`);
  if (state?.kind !== 'batch') throw new Error(`no batch ${id}`);
  return state;
};
const lotOf = (lot: string, from: string, quantity = 100) => ({ type: 'openLot', lot, product: 'CNMG-D1', batch: from, quantity, trayCapacity: 60 }) as const;
const bodies = (stream: string, type: SlipBody['type']): readonly SlipBody[] => plant.slips.filter((slip) => slip.stream === stream && slip.body.type === type).map(({ body }) => body);

describe('shrinkage by direction', () => {
  it('is asked for by the plan and read from green and sintered size; the height has its own target, limits and die, from the designation where the card states none', () => {
    batchWithHeight('P1');
    plant.must(lotOf('A1', 'P1'));
    const target = plant.lot('A1').press;
    // By hand: 18 % across and 19 % along; 4.76/0.81 = 5.8765, 4.63/0.81 = 5.7160, 4.89/0.81 = 6.0370; 12.7/0.82 = 15.4878; 661 · 14.65/0.98 = 9.8813 g.
    expect([target.greenThicknessMm, target.greenThicknessLimits?.lowerMm, target.greenThicknessLimits?.upperMm, target.dieMm, target.weightG].map((value) => value?.toFixed(4))).toEqual(['5.8765', '5.7160', '6.0370', '15.4878', '9.8813']);
  });

  it('needs the green size where the plan has it read, and refuses it where it has not', () => {
    plant.must({ type: 'openBatch', batch: 'P1', grade: 'DEMO-F8', barrels: 3, kgPerBarrel: 100, rawLots: [] }, CREW[0]);
    plant.must({ type: 'openGate', subject: 'batch:P1', gate: 'powder-lab' });
    const at = { type: 'takeReading', subject: 'batch:P1', gate: 'powder-lab', ordinal: 1, value: null, gauge: 'MIC-11' } as const;
    expect(plant.refusalOf({ ...at, characteristic: 'height', inputs: { sinteredMm: 4.86 } })).toBe('wrongKindOfEntry');
    expect(plant.refusalOf({ ...at, characteristic: 'shrinkage', inputs: { sinteredMm: 20.5, greenMm: 25 } })).toBe('wrongKindOfEntry');
    expect(plant.refusalOf({ ...at, characteristic: 'height', inputs: { sinteredMm: 6.1, greenMm: 6 } })).toBe('valueImpossible');
  });

  it('comes with its uncertainty: the spread of the readings over the root of their number', () => {
    releasedBatch(plant);
    plant.must({ type: 'correctReading', subject: 'batch:P1', gate: 'powder-lab', characteristic: 'density', ordinal: 1, value: 14.68, reason: 'misread' }, CREW[0]);
    // Readings 14.68, 14.65, 14.65: s = 0.03/√3, by hand, and s/√3 = 0.01.
    expect(batch('P1').released?.factors.standardUncertainty?.sinteredDensityGPerCm3).toBeCloseTo(0.01, 10);
    openLot(plant, 'A1', 100);
    const { weightG, uncertainty } = plant.lot('A1').press;
    expect((uncertainty?.weightG ?? 0) / weightG).toBeCloseTo((2 * 0.01) / 14.66, 8);
  });
});

describe('the sintered sizes of a product', () => {
  const cardOf = () => {
    const state = plant.state('product:CNMG-D1');
    if (state?.kind !== 'product') throw new Error('no product CNMG-D1');
    return state.card;
  };
  it('are the card’s; limits and circle it leaves out are those of its designation, CNMG 12 04 08: s 4.76 ± 0.13, d 12.70', () => {
    expect(sinteredSizes(cardOf())).toEqual({ sinteredVolumeMm3: 661, thicknessMm: 4.76, thicknessLimits: { lowerMm: 4.63, upperMm: 4.89 }, limitsFrom: 'designation', acrossMm: 12.7, acrossFrom: 'designation' });
    expect(sinteredSizes({ ...cardOf(), thicknessLimits: { lowerMm: 4.7, upperMm: 4.8 }, inscribedCircleMm: 12.72 })).toMatchObject({ thicknessLimits: { lowerMm: 4.7, upperMm: 4.8 }, limitsFrom: 'card', acrossMm: 12.72, acrossFrom: 'card' });
  });
  it('are not guessed from the designation where stock is to be ground off or the product is made to a drawing', () => {
    expect(sinteredSizes({ ...cardOf(), thicknessMm: 4.95 })).toEqual({ sinteredVolumeMm3: 661, thicknessMm: 4.95 });
    expect(sinteredSizes({ ...cardOf(), byDrawing: true })).toEqual({ sinteredVolumeMm3: 661, thicknessMm: 4.76 });
  });
});

describe('limits of the pressing gate', () => {
  it('for the green height are the sintered ones carried to the green piece, or the plan’s percentage', () => {
    approve(routeMeasuring({ pressTolerancePercent: null }));
    batchWithHeight('P1');
    plant.must(lotOf('A1', 'P1'));
    plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'pressing' });
    const limits = (lot: string, id: string) => gateRecord(plant, `lot:${lot}`, 'pressing').work.flatMap(({ demand: { characteristic } }) => (characteristic.kind === 'measured' && characteristic.id === id ? [characteristic.lower, characteristic.target, characteristic.upper] : []));
    expect(limits('A1', 'green')).toEqual([5.716, 5.877, 6.037]);
    expect(limits('A1', 'weight')).toEqual([9.832, 9.881, 9.931]);
    approve(routeMeasuring({ pressTolerancePercent: 1 }));
    plant.must(lotOf('A2', 'P1'));
    plant.must({ type: 'openGate', subject: 'lot:A2', gate: 'pressing' });
    // By hand: 5.8765 ± 1 %.
    expect(limits('A2', 'green')).toEqual([5.818, 5.877, 5.935]);
  });

  it('for the weight may follow from the sintered limits of the thickness, at one density', () => {
    approve({ ...ROUTE, gates: ROUTE.gates.map((gate) => (gate.id === 'pressing' ? { ...gate, characteristics: gate.characteristics.map((each) => (each.kind === 'measured' ? { ...each, pressTolerancePercent: null, limitsFrom: 'pressWeight' as const } : each)) } : gate)) });
    releasedBatch(plant);
    product({ byDrawing: true });
    expect(plant.ask(lotOf('A1', 'P1'))).toEqual({ refusal: { code: 'planUnsound', where: 'Weight of every piece', why: 'noThicknessLimits' } });
    product({ thicknessLimits: { lowerMm: 4.63, upperMm: 4.89 } });
    plant.must(lotOf('A1', 'P1'));
    plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'pressing' });
    const [weight] = gateRecord(plant, 'lot:A1', 'pressing').work;
    // By hand: 9.8813 g · 4.63/4.76 = 9.6114 g, · 4.89/4.76 = 10.1512 g.
    expect(weight?.demand.characteristic.kind === 'measured' && [weight.demand.characteristic.lower, weight.demand.characteristic.upper]).toEqual([9.611, 10.151]);
  });

  it('for the green height are refused from powder whose height was not measured: the lot is not opened, and the reason names batch and factor', () => {
    approve(withoutHeight);
    approve(routeMeasuring({ pressTolerancePercent: 1 }));
    releasedBatch(plant);
    expect(plant.ask(lotOf('A1', 'P1'))).toEqual({ refusal: { code: 'factorMissing', batch: 'P1', factor: 'heightShrinkagePercent' } });
  });

  it('are asked for again at the gate, where a lot was moved to a plan its powder does not fit', () => {
    approve(withoutHeight);
    releasedBatch(plant);
    plant.must(lotOf('A1', 'P1'));
    approve(routeMeasuring({ pressTolerancePercent: 1 }));
    plant.must({ type: 'moveLotToPlan', lot: 'A1', planVersion: 2, reason: 'the height is wanted' });
    expect(plant.ask({ type: 'openGate', subject: 'lot:A1', gate: 'pressing' })).toEqual({ refusal: { code: 'factorMissing', batch: 'P1', factor: 'heightShrinkagePercent' } });
  });
});

describe('powder', () => {
  it('is booked for each lot, and a lot that wants more than is left is not opened', () => {
    plant.must({ type: 'openBatch', batch: 'P1', grade: 'DEMO-F8', barrels: 1, kgPerBarrel: 10, rawLots: [] }, CREW[0]);
    workThrough(plant, 'batch:P1', 'powder-lab');
    plant.must({ type: 'releaseBatch', batch: 'P1' }, CREW[0]);
    plant.must(lotOf('A1', 'P1', 1000));
    // By hand: 1000 · 9.8813 g = 9.882 kg, up to the next gram.
    expect(remainingKg(batch('P1'))).toBeCloseTo(0.118, 12);
    expect(plant.ask(lotOf('A2', 'P1', 12))).toEqual({ refusal: { code: 'notEnoughPowder', batch: 'P1', wantedKg: 0.119, remainingKg: 0.118 } });
    plant.must(lotOf('A2', 'P1', 11));
    plant.must({ type: 'splitLot', lot: 'A1', into: 'A1S', pieces: 100, reason: 'half goes on' });
    expect(remainingKg(batch('P1'))).toBeCloseTo(0.009, 12);
  });
});

describe('a factor corrected by the lab', () => {
  const correct = (value: number) => plant.must({ type: 'correctReading', subject: 'batch:P1', gate: 'powder-lab', characteristic: 'density', ordinal: 1, value, reason: 'misread' }, CREW[0]);

  it('gives the new target to lots not pressed yet and names those pressed, on the batch and on the lot', () => {
    releasedBatch(plant);
    openLot(plant, 'A1', 100);
    openLot(plant, 'A2', 100);
    press(plant, 'A1');
    correct(14.68);
    expect(bodies('batch:P1', 'factorsRevised')).toMatchObject([{ retargeted: ['A2'], pressed: ['A1'] }]);
    // By hand: 661 · 14.66/0.98 = 9.8880 g.
    expect([plant.lot('A1').press.weightG.toFixed(4), plant.lot('A1').pressOutdated?.weightG.toFixed(4), plant.lot('A2').press.weightG.toFixed(4), plant.lot('A2').pressOutdated]).toEqual(['9.8813', '9.8880', '9.8880', null]);
    plant.must({ type: 'openGate', subject: 'lot:A2', gate: 'pressing' });
    const [weight] = gateRecord(plant, 'lot:A2', 'pressing').work;
    expect(weight?.demand.characteristic.kind === 'measured' && weight.demand.characteristic.target).toBe(9.888);
  });

  it('writes nothing where a correction leaves the factors as they are', () => {
    releasedBatch(plant);
    openLot(plant, 'A1', 100);
    plant.must({ type: 'correctReading', subject: 'batch:P1', gate: 'powder-lab', characteristic: 'moisture', ordinal: 1, value: 0.11, reason: 'misread' }, CREW[0]);
    expect(bodies('batch:P1', 'factorsRevised')).toEqual([]);
  });

  it('counts from a new test as from a correction', () => {
    releasedBatch(plant);
    openLot(plant, 'A1', 100);
    plant.must({ type: 'correctReading', subject: 'batch:P1', gate: 'powder-lab', characteristic: 'flow', ordinal: 1, value: 40, reason: 'misread' }, CREW[0]);
    decideHold(plant, 'batch:P1', { kind: 'retest' });
    workThrough(plant, 'batch:P1', 'powder-lab', { density: 14.7 });
    expect([plant.lot('A1').press.sinteredDensityGPerCm3.toFixed(2), standing(plant, 'lot:A1')]).toEqual(['14.70', []]);
  });
});

describe('slips of before shrinkage had a direction and powder was booked', () => {
  const at = { at: '2026-03-02T06:00:00.000Z', by: 'L-201', bench: 'Lab' };
  const route = [{ id: 'powder-lab', name: 'Powder lab', workedOn: 'batch' as const, bench: 'Lab' }];
  it('fold as ever: nothing blended, nothing booked, shrinkage even, the target as it was written', () => {
    const thread: readonly SlipBody[] = [
      { type: 'batchOpened', batch: 'P9', grade: { id: 'G', name: 'Grade' }, plan: 'POWDER', planVersion: 1, route, barrels: 12, kgPerBarrel: 100, rawLots: [], demo: true },
      { type: 'batchReleased', factors: { linearShrinkagePercent: 18, sinteredDensityGPerCm3: 14.65, binderPercent: 2 }, signature: { badge: 'L-201', name: 'Lab', role: 'lab', at: at.at, meaning: 'powderReleasedBy' } },
      { type: 'batchUsed', lot: 'A9' },
    ];
    const state = thread.reduce<ReturnType<typeof evolve> | null>((before, body, index) => evolve(before, { ...at, stream: 'batch:P9', version: index + 1, body }), null);
    expect(state).toMatchObject({ blendedFrom: [], blendedInto: [], lotsKg: 0, lots: ['A9'], released: { factors: { linearShrinkagePercent: 18, sinteredDensityGPerCm3: 14.65, binderPercent: 2 } } });
    const press = { weightG: 9.881, greenThicknessMm: 5.805, linearShrinkagePercent: 18, sinteredDensityGPerCm3: 14.65, binderPercent: 2, fromBatch: 'P9' };
    const product = { id: 'P', designation: 'CNMG 12 04 08', name: 'Insert', grade: 'G', layer: null, marking: 'P', piecesPerBox: 10, itemCode: 'P' };
    const lot = evolve(null, { ...at, stream: 'lot:A9', version: 1, body: { type: 'lotOpened', lot: 'A9', product, plan: 'R', planVersion: 1, route, batch: 'P9', quantity: 100, trayCapacity: 60, order: null, press, splitFrom: null, demo: true } });
    expect(lot).toMatchObject({ press, pressOutdated: null });
    const weight = withPressLimits(length({ id: 'weight', unit: 'g', lower: null, upper: null, target: null, pressTolerancePercent: 0.5 }), press);
    expect(weight.kind === 'measured' && [weight.lower, weight.target, weight.upper]).toEqual([9.832, 9.881, 9.93]);
  });
});
