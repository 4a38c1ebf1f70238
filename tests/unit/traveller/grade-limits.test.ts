import { describe, expect, it } from 'vitest';
import { proposeLayerSet, proposeSinteredSet, gateToPropose, sharedSamplingOf, withProposed } from '../../../shared/traveller/index.ts';
import type { Decision, GradeCard, GradeLimits, LayerCard } from '../../../shared/traveller/index.ts';
import { requireSound } from '../../../shared/traveller/plan/require-sound.ts';
import { sinteredSetNames } from '../../../shared/words/sintered-set.en.ts';
import { PLANS } from '../../../demo-data/plans.ts';
import { littlePlant, openLot, releasedBatch, workThrough } from '../../property/traveller/little-plant.ts';
import { gateRecord, load, press } from '../../property/traveller/on-the-way.ts';

const LIMITS: GradeLimits = {
  densityGPerCm3: { lower: 14.6, upper: 14.72 }, coercivityKAPerM: { lower: 14, upper: 17 }, hardnessHv30: { lower: 1550, upper: null },
  saturation: { lowPercent: 75, warnLowPercent: 80, warnHighPercent: 92, highPercent: 95, unit: 'µT·m³/kg' }, porosity: { A: 'A02', B: 'B00', C: 'C00' }, flags: { etaPhase: 'none', binderLakes: 'traces' },
};
const grade = (change: Partial<GradeCard> = {}): GradeCard => ({ id: 'NEW-8', name: 'New 8', composition: [{ component: 'WC', massPercent: 92 }, { component: 'Co', massPercent: 8 }], powderPlan: 'POWDER-F8', furnacePlan: 'FURNACE-F8', limits: LIMITS, ...change });
const fault = (decision: Decision): unknown => ('refusal' in decision && decision.refusal.code === 'cardUnsound' ? decision.refusal.fault : null);
const asked = (card: GradeCard): unknown => fault(littlePlant().ask({ type: 'defineGrade', grade: card }));
const positions = { rule: 'positions', positions: ['Top', 'Bottom'], each: 1, accept: 'each' } as const;

describe('a grade', () => {
  it('is taken with its limits, or without any as before', () => {
    expect(asked(grade())).toBeNull();
    const { limits: _, ...bare } = grade();
    expect(asked(bare)).toBeNull();
    expect(littlePlant().must({ type: 'defineGrade', grade: grade() })).toEqual([{ type: 'gradeDefined', grade: grade() }]);
  });

  it.each([
    ['shares that do not add up', grade({ composition: [{ component: 'WC', massPercent: 92 }, { component: 'Co', massPercent: 7 }] }), { why: 'sum', sumPercent: 99 }],
    ['an unknown component without its density', grade({ composition: [{ component: 'WC', massPercent: 92 }, { component: 'Ru', massPercent: 8 }] }), { why: 'densityUnknown', component: 'Ru' }],
    ['crossed limits', grade({ limits: { ...LIMITS, densityGPerCm3: { lower: 15, upper: 14 } } }), { why: 'limits', of: 'density' }],
    ['a limit on neither side', grade({ limits: { ...LIMITS, hardnessHv30: { lower: null, upper: null } } }), { why: 'limits', of: 'hardness' }],
    ['a window that does not rise', grade({ limits: { ...LIMITS, saturation: { lowPercent: 80, warnLowPercent: 75, warnHighPercent: 92, highPercent: 95, unit: '% Co' } } }), { why: 'saturationWindow' }],
    ['a level that is none', grade({ limits: { ...LIMITS, porosity: { A: 'A03' } } }), { why: 'porosity', of: 'A03' }],
    ['a saturation without cobalt', grade({ composition: [{ component: 'WC', massPercent: 92 }, { component: 'Ni', massPercent: 8 }] }), { why: 'saturationWithoutCobalt' }],
  ])('is refused for %s', (_, card, why) => expect(asked(card)).toEqual(why));
});

describe('a coating', () => {
  const layer = (layers: LayerCard['layers']): LayerCard => ({ id: 'NEW-L', name: 'New coating', coatingPlan: 'COATING-CVD', ...(layers === undefined ? {} : { layers }) });
  const THREE = [{ name: 'TiN', lowerUm: 0.5, upperUm: 1.5 }, { name: 'Al2O3', lowerUm: 3, upperUm: 5 }, { name: 'TiCN', lowerUm: 6, upperUm: 8 }];

  it('names its layers once each, with limits', () => {
    const plant = littlePlant();
    expect(fault(plant.ask({ type: 'defineLayer', layer: layer(THREE) }))).toBeNull();
    expect(fault(plant.ask({ type: 'defineLayer', layer: layer([...THREE, { name: 'TiN', lowerUm: 1, upperUm: 2 }]) }))).toEqual({ why: 'layerTwice', of: 'TiN' });
    expect(fault(plant.ask({ type: 'defineLayer', layer: layer([{ name: 'TiN', lowerUm: 2, upperUm: 1 }]) }))).toEqual({ why: 'limits', of: 'TiN' });
  });

  it('proposes one crater through all its layers, the whole with the sums of their limits', () => {
    const set = proposeLayerSet(layer(THREE), 30, positions, { total: 'Coating thickness', method: 'ISO 26423', gaugeKind: null });
    expect(set.map(({ name, lower, upper, entry }) => [name, lower, upper, entry.how])).toEqual([['Coating thickness', 9.5, 14.5, 'crater'], ['TiN', 0.5, 1.5, 'craterLayer'], ['Al2O3', 3, 5, 'craterLayer'], ['TiCN', 6, 8, 'craterLayer']]);
    const coating = PLANS.find(({ id }) => id === 'COATING-CVD');
    const gate = coating?.gates[0];
    if (coating === undefined || gate === undefined) throw new Error('the demo plant has no COATING-CVD');
    expect(() => requireSound({ ...coating, gates: [{ ...gate, characteristics: set }] })).not.toThrow();
    expect(proposeLayerSet(layer(undefined), 30, positions, { total: '', method: '', gaugeKind: null })).toEqual([]);
    expect(proposeLayerSet(layer(THREE.slice(0, 1)), 30, positions, { total: 'T', method: 'm', gaugeKind: null }).map(({ entry }) => entry)).toEqual([{ how: 'crater', ballDiameterMm: 30 }]);
  });
});

describe('the sintered set of a grade', () => {
  const set = proposeSinteredSet(grade(), positions, sinteredSetNames, false);

  it('judges what the grade has limits for, and nothing else', () => {
    expect(set.map(({ id }) => id)).toEqual(['density', 'coercivity', 'saturation', 'hardness', 'porosity', 'porosity-b', 'porosity-c', 'eta', 'lakes']);
    expect(proposeSinteredSet(grade({ limits: { hardnessHv30: { lower: 1500, upper: null } } }), positions, sinteredSetNames, false).map(({ id }) => id)).toEqual(['hardness']);
    expect(proposeSinteredSet(grade({ limits: {} }), positions, sinteredSetNames, true)).toEqual([]);
  });

  it('weighs the density in water and reads the saturation in its unit against the cobalt of the grade', () => {
    expect(set[0]).toMatchObject({ kind: 'measured', unit: 'g/cm³', lower: 14.6, upper: 14.72, entry: { how: 'archimedes' }, factor: null });
    expect(set[2]).toMatchObject({ unit: '%', lower: 75, upper: 95, entry: { how: 'saturation', unit: 'µT·m³/kg', cobaltFraction: 0.08, warnLowPercent: 80, warnHighPercent: 92 } });
    expect(set[4]).toMatchObject({ kind: 'graded', scale: ['A00', 'A02', 'A04', 'A06', 'A08'], worstAccepted: 'A02', reference: 'porosityA' });
    expect(set[8]).toMatchObject({ kind: 'graded', worstAccepted: 'traces' });
  });

  it('gives the density to pressing at a powder lab', () => {
    expect(proposeSinteredSet(grade(), { rule: 'barrels', barrels: 3, each: 1, accept: 'each' }, sinteredSetNames, true)[0]).toMatchObject({ factor: 'sinteredDensityGPerCm3' });
  });

  it.each(['FURNACE-F8', 'POWDER-F8'])('goes into %s in the places of what it replaces, sampled as before, and the plan can be worked', (id) => {
    const plan = PLANS.find((each) => each.id === id);
    const gate = plan === undefined ? null : gateToPropose(plan, set.map((each) => each.id));
    if (plan === undefined || gate === null) throw new Error(`the demo plant has no ${id}`);
    const sampling = sharedSamplingOf(gate);
    if (sampling === null) throw new Error('nothing is sampled');
    const changed = withProposed(plan, gate.id, proposeSinteredSet(grade(), sampling, sinteredSetNames, plan.appliesTo === 'batch'));
    const ids = changed.gates[0]?.characteristics.map((each) => each.id) ?? [];
    expect(ids.slice(0, gate.characteristics.length)).toEqual(gate.characteristics.map((each) => each.id));
    expect(ids.slice(gate.characteristics.length)).toEqual(['porosity-b', 'porosity-c', 'eta', 'lakes']);
    expect(changed.gates[0]?.characteristics.find((each) => each.id === 'density')?.sampling).toEqual(gate.characteristics.find((each) => each.id === 'density')?.sampling);
    expect(() => requireSound(changed)).not.toThrow();
  });

  it('is worked in a furnace charge to a verdict: density, saturation and ratings each from what was read', () => {
    const plan = PLANS.find(({ id }) => id === 'FURNACE-F8');
    const gate = plan?.gates[0];
    if (plan === undefined || gate === undefined) throw new Error('the demo plant has no FURNACE-F8');
    const plant = littlePlant({ ...plan, gates: [{ ...gate, characteristics: set }] });
    releasedBatch(plant);
    openLot(plant, 'A1', 300);
    press(plant, 'A1');
    load(plant, 'furnace', 'F1', ['A1']);
    workThrough(plant, 'furnace:F1', 'sinter-check', { coercivity: 15.5, hardness: 1600 });
    const { work, verdicts } = gateRecord(plant, 'furnace:F1', 'sinter-check');
    expect(verdicts.at(-1)?.verdict.results.map(({ characteristic, accepted }) => [characteristic, accepted])).toEqual(set.map(({ id }) => [id, true]));
    expect(work[2]?.readings[0]?.inputs).toMatchObject({ unit: 'µT·m³/kg' });
    expect(work[0]?.readings[0]?.inputs).toMatchObject({ massInAirG: 9.87 });
  });
});
