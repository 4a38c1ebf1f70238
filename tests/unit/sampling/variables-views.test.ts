import { describe, expect, it } from 'vitest';
import { asAttributes, normality, normalPoints, sMethodPlan, variablesPlan } from '../../../shared/sampling/variables/index.ts';
import type { CharacteristicResult, Measured, VariablesRule } from '../../../shared/traveller/index.ts';
import { words } from '../../../shared/words/index.ts';
import { littlePlant, openLot, releasedBatch } from '../../property/traveller/little-plant.ts';
import { gateRecord, length, routeWith, verdictAt } from '../../property/traveller/on-the-way.ts';

describe('whether readings look normal', () => {
  it('fits: ten readings near a line', () => expect(normality([9.7, 9.8, 9.9, 9.95, 10, 10.02, 10.08, 10.1, 10.2, 10.3]).says).toBe('fits'));
  it('is doubted for one reading far off', () => expect(normality([1, 1.1, 1.2, 1, 1.1, 1.3, 1.2, 1.1, 1, 9]).says).toBe('doubtful'));
  it('is doubted for few readings too, when they are far enough off', () => expect(normality([1, 1.01, 1.02, 1.01, 9]).says).toBe('doubtful'));
  it('says of seven harmless readings that they are few', () => expect(normality([1, 2, 3, 4, 5, 6, 7])).toMatchObject({ says: 'fewReadings', n: 7 }));
  it('says that equal readings tell nothing, and that two are not tested', () => {
    expect(normality([5, 5, 5, 5])).toEqual({ says: 'noScatter', n: 4 });
    expect(normality([5, 6])).toEqual({ says: 'notTested', n: 2 });
  });
  it('does not depend on unit or zero of the readings', () => {
    const values = [9.7, 9.81, 9.9, 9.95, 10, 10.02, 10.4];
    const [first, second] = [normality(values), normality(values.map((value) => 1e-6 * value + 5))];
    expect('pValue' in first && 'pValue' in second ? second.pValue / first.pValue : 0).toBeCloseTo(1, 6);
  });
  it('plots readings in rising order at (i − 3/8) / (n + 1/4), the middle one at 0', () => {
    const points = normalPoints([3, 1, 2]);
    expect(points.map(({ value }) => value)).toEqual([1, 2, 3]);
    expect(points[1]?.z).toBeCloseTo(0, 14);
    expect(points[2]?.z).toBeCloseTo(0.8694238, 7); // Φ⁻¹(2.625/3.25): scipy 1.17.1 norm.ppf(2.625/3.25)
  });
});

describe('the same readings as attributes', () => {
  // MIL-STD-105E Tables I and II-A: 500 at level II is H, n 50; AQL 1.0 Ac 1, Re 2. Variables: 500 at IV is I, n 25.
  const plan = sMethodPlan({ lotSize: 500, level: 'IV', aqlPercent: 1, severity: 'normal' });
  it('are held against the plan of the same lot and AQL at the level beside it', () => expect(asAttributes(plan, 0, true).plan).toEqual({ level: 'II', letter: 'H', sampleSize: 50, ac: 1, re: 2 }));
  it.each([
    { outside: 0, accepted: true, outcome: 'open', disagrees: false }, { outside: 1, accepted: true, outcome: 'open', disagrees: false },
    { outside: 2, accepted: true, outcome: 'rejected', disagrees: true }, { outside: 0, accepted: false, outcome: 'open', disagrees: true },
    { outside: 1, accepted: false, outcome: 'open', disagrees: false }, { outside: 2, accepted: false, outcome: 'rejected', disagrees: false },
  ])('$outside outside with accepted $accepted: $outcome, disagrees $disagrees', ({ outside, accepted, outcome, disagrees }) => {
    expect(asAttributes(plan, outside, accepted)).toMatchObject({ outcome, disagrees });
  });
  it('have no such plan with an AQL for each limit; then any reading outside an accepted lot disagrees', () => {
    const separate = variablesPlan({ lotSize: 500, level: 'IV', aqlPercent: 1, severity: 'normal', separate: { lowerAqlPercent: 1, upperAqlPercent: 2.5 } });
    expect(asAttributes(separate, 1, true)).toEqual({ outside: 1, outcome: 'open', disagrees: true });
  });
});

describe('plans with an AQL for each limit', () => {
  it('read both in the row of the larger sample (MIL-STD-414 Tables A-2, B-1, B-3)', () => {
    // 40 at IV is D; AQL 0.1 leads by an arrow to G, n 15, k 2.42; AQL 1 in row G has k 1.79, M 3.05.
    expect(variablesPlan({ lotSize: 40, level: 'IV', aqlPercent: 0.1, severity: 'normal', separate: { lowerAqlPercent: 1, upperAqlPercent: 0.1 } }))
      .toMatchObject({ letter: 'G', sampleSize: 15, k: 2.42, mPercent: 3.05, separate: { lower: { aqlPercent: 1, k: 1.79, mPercent: 3.05 }, upper: { aqlPercent: 0.1, k: 2.42, mPercent: 0.312 } } });
  });
  it('share the larger of two samples with known σ', () => {
    const plan = variablesPlan({ lotSize: 500, level: 'IV', aqlPercent: 1, severity: 'normal', method: 'sigma', sigma: 0.1, separate: { lowerAqlPercent: 1, upperAqlPercent: 4 } });
    expect(plan.separate?.upper.k).toBeLessThan(plan.separate?.lower.k ?? 0);
    expect(plan).toMatchObject({ method: 'sigma', sigma: 0.1, sampleSize: Math.max(...[1, 4].map((aqlPercent) => variablesPlan({ lotSize: 500, level: 'IV', aqlPercent, severity: 'normal', method: 'sigma', sigma: 0.1 }).sampleSize)) });
  });
  it('refuse an AQL that is not the smaller of the two, and a σ without its method', () => {
    expect(() => variablesPlan({ lotSize: 40, level: 'IV', aqlPercent: 2.5, severity: 'normal', separate: { lowerAqlPercent: 1, upperAqlPercent: 2.5 } })).toThrow(/aqlPercent/);
    expect(() => variablesPlan({ lotSize: 40, level: 'IV', aqlPercent: 1, severity: 'normal', sigma: 2 })).toThrow(/sigma/);
  });
});

describe('at a gate', () => {
  /** The only result of a lot of 500 at a gate that measures a length, 10 to 11 mm but for the change, with these readings in turn. */
  function resultOf(rule: Partial<VariablesRule>, readings: (at: number) => number, change: Partial<Measured> = {}): CharacteristicResult {
    const plant = littlePlant(routeWith(length({ sampling: { rule: 'variables', level: 'II', aqlPercent: 1, ...rule }, ...change })));
    releasedBatch(plant);
    openLot(plant, 'A1', 500);
    plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'own' });
    const n = gateRecord(plant, 'lot:A1', 'own').work[0]?.demand.n ?? 0;
    for (let at = 1; at <= n; at += 1) plant.must({ type: 'takeReading', subject: 'lot:A1', gate: 'own', characteristic: 'length', ordinal: at, value: Number(readings(at).toFixed(3)), gauge: 'MIC-11' });
    const [result] = verdictAt(plant, 'A1', 'own').results;
    if (result === undefined) throw new Error('no result');
    return result;
  }
  const speak = words('en');
  const said = (result: CharacteristicResult): string => speak.verdictSentence({ accepted: result.accepted, attempt: 1, original: true, results: [result], workers: [] }, {});
  const steady = (at: number): number => 10.4 + 0.03 * ((at * 7) % 10);

  it('known σ takes fewer pieces and says so', () => {
    const result = resultOf({ sigma: 0.1 }, steady);
    // Derived from row E (n 7, k 1.62) at AQL 1 %: 3 pieces.
    expect(result.detail).toMatchObject({ by: 'variables', plan: { method: 'sigma', sigma: 0.1, letter: 'E', sampleSize: 3 }, judged: { method: 'sigma', form: 'M' }, summary: { n: 3 } });
    expect(said(result)).toContain('σ-method, σ 0.1 mm');
  });
  it('one limit is judged by M where the plan asks for it', () => {
    expect(resultOf({ form: 'M' }, steady, { upper: null }).detail).toMatchObject({ judged: { form: 'M', limit: 3.55 } });
    expect(resultOf({}, steady, { upper: null }).detail).toMatchObject({ judged: { form: 'k', limit: 1.62 } });
  });
  it('an AQL for each limit is judged side by side and said for both', () => {
    const result = resultOf({ separate: { lowerAqlPercent: 1, upperAqlPercent: 2.5 } }, steady);
    expect(result.detail).toMatchObject({ judged: { form: 'M', separate: { lower: { limit: 3.55 }, upper: { limit: 8.4 }, together: { limit: 8.4 } } } });
    expect(said(result)).toMatch(/below, accept to 3.55 %; .* above, accept to 8.4 %; .* together, accept to 8.4 %.*AQL 1 below · 2.5 above/);
  });
  it('a plan through two points needs no AQL and moves no switching state', () => {
    const result = resultOf({ points: { p1Percent: 1, producerRisk: 0.05, p2Percent: 10, consumerRisk: 0.1 } }, steady);
    expect(result.detail).toMatchObject({ plan: { origin: 'points', p1Percent: 1, p2Percent: 10 }, normality: { says: 'fits' } });
    expect(said(result)).toContain('smallest plan for p1 1 %, p2 10 %');
  });
  it('readings that do not look normal are a caution on the slip and change no verdict', () => {
    const result = resultOf({ level: 'IV' }, (at) => (at === 9 ? 10.62 : 10.5 + 0.001 * (at % 5)));
    expect([result.accepted, result.detail.by === 'variables' && result.detail.normality?.says]).toEqual([true, 'doubtful']);
    expect(said(result)).toMatch(/caution: the readings hardly look normal \(Shapiro–Wilk W 0\.\d+, p below 0.001\)/);
  });
  it('few readings are said to be few, and a rejection with none outside to disagree with attributes', () => {
    const result = resultOf({}, (at) => 10.05 + 0.15 * (at - 1));
    expect(result.accepted).toBe(false);
    expect(said(result)).toContain('no reading is outside, so by attributes nothing is found: the two views disagree; 7 readings are too few to tell whether they are normal');
  });
  it.each([
    [{ form: 'k' }, 'variablesForm'], [{ separate: { lowerAqlPercent: 2.5, upperAqlPercent: 4 } }, 'variablesSides'], [{ separate: { lowerAqlPercent: 1, upperAqlPercent: 2 } }, 'variablesAql'],
    [{ points: { p1Percent: 6, producerRisk: 0.05, p2Percent: 1, consumerRisk: 0.1 } }, 'riskPoints'], [{ points: { p1Percent: 1, producerRisk: 0.5, p2Percent: 5, consumerRisk: 0.5 } }, 'riskPoints'],
    [{ points: { p1Percent: 1, producerRisk: 0.05, p2Percent: 1.05, consumerRisk: 0.1 } }, 'noDesign'],
  ] as const)('a plan with %j is refused: %s', (rule, why) => {
    const plant = littlePlant(routeWith(length()));
    const decision = plant.ask({ type: 'draftPlan', plan: routeWith(length({ sampling: { rule: 'variables', level: 'II', aqlPercent: 1, ...rule } })), why: 'a change' });
    expect('refusal' in decision && decision.refusal).toMatchObject({ code: 'planUnsound', why });
  });
});
