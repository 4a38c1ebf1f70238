import { beforeEach, describe, expect, it } from 'vitest';
import { chartedCapability, drawnChart, possibleDispositions, standingHolds } from '../../../shared/traveller/index.ts';
import type { ChartCard } from '../../../shared/traveller/index.ts';
import { CREW, littlePlant, openLot, releasedBatch } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';
import { CHART, charts, chartOf, define, freezing, MEAN_AND_S, measure, measuringPlant, steadyLots } from '../../property/traveller/charted.ts';
import { at, byAql, count, counting, done, found, opened } from '../../property/traveller/counting.ts';
import { checkFurnace, decideHold, gateRecord, length, routeWith, standing, twoInTheFurnace } from '../../property/traveller/on-the-way.ts';

const HOLDING: ChartCard = { ...MEAN_AND_S, mayHold: true };
let plant: LittlePlant;
beforeEach(() => { plant = measuringPlant(); });
const types = (slips: readonly { readonly type: string }[]): string[] => slips.map(({ type }) => type);

describe('a characteristic that is charted', () => {
  it('has nothing added while nobody charts it, and a point with each first verdict afterwards, in the same commit', () => {
    expect(types(measure(plant, 'A1', [0, 1, 2]))).toEqual(['readingTaken', 'verdictGiven']);
    define(plant);
    expect(types(measure(plant, 'A2', [3, 0, -3]))).toEqual(['readingTaken', 'verdictGiven', 'chartPointAdded']);
    expect(charts(plant).points).toMatchObject([{ subject: 'lot:A2', value: { by: 'measured', n: 3, mean: 10.5, s: expect.closeTo(0.003, 12), min: 10.497, max: 10.503, lower: 10, upper: 11, outside: 0, values: [10.503, 10.5, 10.497] } }]);
  });

  it('can begin with lots judged before, in the order of their first verdicts', () => {
    for (const lot of ['A1', 'A2', 'A3']) measure(plant, lot, [0, 1, 2]);
    expect(types(define(plant, MEAN_AND_S, ['lot:A3', 'lot:A1', 'lot:A3', 'lot:A2']))).toEqual(['chartDefined', 'chartPointAdded', 'chartPointAdded', 'chartPointAdded']);
    expect(charts(plant).points.map(({ subject }) => subject)).toEqual(['lot:A1', 'lot:A2', 'lot:A3']);
    expect(plant.refusalOf({ type: 'defineChart', chart: CHART, card: { ...MEAN_AND_S, spec: { kind: 'individuals' } }, lots: ['lot:A1'] }, CREW[2])).toBe('alreadyThere');
  });

  it('does not take a re-inspection for another lot, and a correction revises the point', () => {
    define(plant);
    measure(plant, 'A1', [0, 1, 900]);
    decideHold(plant, 'lot:A1', { kind: 'retest' });
    plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'own' });
    for (const ordinal of [1, 2, 3]) plant.must({ type: 'takeReading', subject: 'lot:A1', gate: 'own', characteristic: 'length', ordinal, value: 10.5, gauge: 'MIC-11' }, CREW[1]);
    expect(charts(plant).points).toHaveLength(1);
    measure(plant, 'A2', [0, 1, 2]);
    const slips = plant.must({ type: 'correctReading', subject: 'lot:A2', gate: 'own', characteristic: 'length', ordinal: 3, value: 10.508, reason: 'misread' }, CREW[1]);
    expect(types(slips)).toEqual(['readingCorrected', 'verdictRevised', 'chartPointRevised']);
    expect(charts(plant).points[1]).toMatchObject({ revised: true, value: { max: 10.508 } });
  });

  it('is charted for counts with all classes together and each alone', () => {
    plant = littlePlant();
    counting(plant, byAql({ critical: 0.65, major: 2.5 }));
    releasedBatch(plant);
    const chart = 'chart:lot/CNMG-D1/own/count';
    plant.must({ type: 'defineChart', chart, card: { spec: { kind: 'p', limits: 'exact' }, rules: ['beyondLimits'], mayHold: false, class: 'major' }, lots: [] }, CREW[2]);
    opened(plant, 'A1');
    found(plant, 'A1', 'major', 3, 9);
    done(plant, 'A1');
    const point = charts(plant, chart).points[0]?.value;
    expect(point).toMatchObject({ by: 'counted', count: 2, classes: [{ class: 'critical', count: 0 }, { class: 'major', count: 2 }] });
    expect(charts(plant, chart).about).toMatchObject({ characteristicName: count(byAql({ major: 1 })).name, unit: null });
    expect(at('A1').gate).toBe('own');
  });

  it('is charted on charges too: the grade owns it, and one verdict is one point', () => {
    plant = littlePlant();
    twoInTheFurnace(plant);
    plant.must({ type: 'defineChart', chart: 'chart:furnace/DEMO-F8/sinter-check/density', card: { ...MEAN_AND_S, spec: { kind: 'individuals' } }, lots: [] }, CREW[2]);
    checkFurnace(plant, 'F1');
    expect(charts(plant, 'chart:furnace/DEMO-F8/sinter-check/density').points.map(({ subject }) => subject)).toEqual(['furnace:F1']);
  });
});

describe('limits', () => {
  beforeEach(() => { define(plant, HOLDING); steadyLots(plant); });

  it('are provisional until an engineer freezes them by signature; until then nothing is signalled', () => {
    expect(types(measure(plant, 'A1', [300, 310, 290]))).toEqual(['readingTaken', 'verdictGiven', 'chartPointAdded']);
    expect(plant.refusalOf(freezing(plant), CREW[1])).toBe('notYourRole');
    expect(plant.refusalOf(freezing(plant), CREW[2], { signed: false })).toBe('signatureMissing');
    const steady = charts(plant).points.slice(0, 8).map(({ subject }) => subject);
    expect(plant.must(freezing(plant, 'meanAndS', steady), CREW[2])).toMatchObject([{ type: 'chartLimitsFrozen', lots: steady, signature: { badge: 'Q-401', meaning: 'limitsFrozenBy' } }]);
  });

  it('rest on eight lots at least, all of them on the chart, with some scatter; or are given', () => {
    const all = charts(plant).points.map(({ subject }) => subject);
    const refused = (command: Parameters<LittlePlant['ask']>[0]) => {
      const decision = plant.ask(command, CREW[2]);
      return 'refusal' in decision ? decision.refusal : null;
    };
    expect(refused(freezing(plant, 'meanAndS', all.slice(1)))).toEqual({ code: 'chartBaseUnfit', why: 'tooFew', have: 7, least: 8 });
    expect(refused(freezing(plant, 'meanAndS', [...all, 'lot:X9']))).toMatchObject({ code: 'chartBaseUnfit', why: 'notOnChart' });
    expect(refused({ ...freezing(plant, 'meanAndS', []), given: { centre: 10.5, sigma: 0 } })).toMatchObject({ code: 'chartBaseUnfit', why: 'noSpread' });
    expect(refused({ ...freezing(plant, 'meanAndS', []), given: { centre: 10.5, sigma: 0.01 } })).toBeNull();
    expect(refused(freezing(plant, 'ewma'))).toMatchObject({ code: 'notFound', what: 'chart' });
    expect(refused({ ...freezing(plant), reason: ' ' })).toMatchObject({ code: 'reasonMissing' });
  });

  it('do not move with later lots, and other constants are refused while they stand', () => {
    define(plant, { spec: { kind: 'ewma', lambda: 0.2, width: 3, spread: 'betweenLots' }, rules: ['beyondLimits'], mayHold: false, class: null });
    plant.must(freezing(plant, 'ewma'), CREW[2]);
    const before = chartOf(plant, 'ewma').frozen;
    measure(plant, 'A1', [50, 60, 40]);
    expect(chartOf(plant, 'ewma').frozen).toEqual(before);
    expect(plant.refusalOf({ type: 'defineChart', chart: CHART, card: { spec: { kind: 'ewma', lambda: 0.4, width: 3, spread: 'betweenLots' }, rules: ['beyondLimits'], mayHold: false, class: null }, lots: [] }, CREW[2])).toBe('chartLimitsFrozen');
    plant.must({ type: 'unfreezeChartLimits', chart: CHART, key: 'ewma', reason: 'other machine' }, CREW[2]);
    expect(chartOf(plant, 'ewma').frozen).toBeNull();
  });
});

describe('a signal', () => {
  beforeEach(() => { define(plant, HOLDING); steadyLots(plant); plant.must(freezing(plant), CREW[2]); });

  it('stands on the chart and on the lot’s thread, and holds the lot where the chart may', () => {
    const slips = measure(plant, 'A1', [100, 110, 90]);
    expect(types(slips)).toEqual(['readingTaken', 'verdictGiven', 'chartPointAdded', 'chartSignalled', 'chartSignalled', 'held']);
    const where = plant.slips.filter(({ body }) => body.type === 'chartSignalled').map(({ stream }) => stream);
    expect(where).toEqual([CHART, 'lot:A1']);
    expect(slips.at(-2)).toMatchObject({ rule: 'beyondLimits', line: 'mean', side: 'above', subject: 'lot:A1', lots: ['lot:A1'] });
    expect(standingHolds(plant.lot('A1'))).toMatchObject([{ cause: { by: 'chart', gate: 'own', chart: CHART } }]);
    expect(chartOf(plant, 'meanAndS').signals).toHaveLength(1);
    // The lot was accepted all the same: the chart speaks of the process, not of the limits of the drawing.
    expect(gateRecord(plant, 'lot:A1', 'own').status).toBe('accepted');
  });

  it('holds a lot that an engineer may clear, scrap or send back, as a person’s hold', () => {
    measure(plant, 'A1', [100, 110, 90]);
    const lot = plant.lot('A1');
    const [hold] = standingHolds(lot);
    expect(hold === undefined ? [] : possibleDispositions(lot, hold)).toEqual(['clear', 'scrap', 'return']);
    expect(decideHold(plant, 'lot:A1', { kind: 'clear' })).toMatchObject([{ type: 'disposed', gate: null }]);
    expect(standing(plant, 'lot:A1')).toEqual([]);
  });

  it('holds nothing where the chart may not', () => {
    plant.must({ type: 'defineChart', chart: CHART, card: MEAN_AND_S, lots: [] }, CREW[2]);
    expect(types(measure(plant, 'A1', [100, 110, 90]))).toEqual(['readingTaken', 'verdictGiven', 'chartPointAdded', 'chartSignalled', 'chartSignalled']);
    expect(standing(plant, 'lot:A1')).toEqual([]);
  });

  it('does not count a rule that is switched off, and no run across a restart', () => {
    for (const lot of ['A1', 'A2', 'A3', 'A4', 'A5', 'A6', 'A7']) measure(plant, lot, [4, 3, 5]);
    plant.must({ type: 'restartChart', chart: CHART, key: 'meanAndS', reason: 'wheel dressed' }, CREW[2]);
    expect(types(measure(plant, 'A8', [4, 3, 5]))).not.toContain('chartSignalled');
    for (const lot of ['B1', 'B2', 'B3', 'B4', 'B5', 'B6']) measure(plant, lot, [4, 3, 5]);
    expect(measure(plant, 'B7', [4, 3, 5]).find(({ type }) => type === 'chartSignalled')).toMatchObject({ rule: 'eightOnOneSide', lots: ['lot:A8', ...['B1', 'B2', 'B3', 'B4', 'B5', 'B6', 'B7'].map((lot) => `lot:${lot}`)] });
    expect(plant.refusalOf({ type: 'restartChart', chart: CHART, key: 'cusum', reason: 'x' }, CREW[2])).toBe('notFound');
  });

  it('comes from a correction too, and stays on the thread when one takes it away', () => {
    measure(plant, 'A1', [0, 10, -10]);
    const correct = (value: number) => plant.must({ type: 'correctReading', subject: 'lot:A1', gate: 'own', characteristic: 'length', ordinal: 1, value, reason: 'misread' }, CREW[1]);
    expect(types(correct(10.6))).toEqual(['readingCorrected', 'verdictRevised', 'chartPointRevised', 'chartSignalled', 'chartSignalled', 'chartSignalled', 'chartSignalled', 'held']);
    correct(10.5);
    const record = chartOf(plant, 'meanAndS');
    const drawn = drawnChart(charts(plant), record);
    expect([record.signals.length, typeof drawn === 'string' ? null : drawn.signals]).toEqual([2, []]);
  });
});

describe('what a chart may be', () => {
  it.each([
    { card: { ...MEAN_AND_S, spec: { kind: 'p', limits: 'exact' } } as ChartCard, why: 'kind' }, { card: { ...MEAN_AND_S, rules: [] }, why: 'rules' }, { card: { ...MEAN_AND_S, rules: ['beyondLimits', 'beyondLimits'] } as ChartCard, why: 'rules' },
    { card: { ...MEAN_AND_S, class: 'major' } as ChartCard, why: 'kind' }, { card: { ...MEAN_AND_S, spec: { kind: 'ewma', lambda: 0, width: 3, spread: 'betweenLots' } } as ChartCard, why: 'constants' },
  ])('is refused: $why', ({ card, why }) => {
    const decision = plant.ask({ type: 'defineChart', chart: CHART, card, lots: [] }, CREW[2]);
    expect('refusal' in decision ? decision.refusal : null).toMatchObject({ code: 'chartUnfit', why });
  });

  it('is of a characteristic in the plan in force', () => {
    for (const [chart, code] of [['chart:lot/CNMG-D1/own/width', 'notFound'], ['chart:lot/NONE/own/length', 'notFound'], ['chart:lot/CNMG-D1/own', 'notFound'], ['lot:A1', 'notFound'], ['chart:batch/DEMO-F8/powder-lab/porosity', 'chartUnfit']] as const) {
      expect(plant.refusalOf({ type: 'defineChart', chart, card: MEAN_AND_S, lots: [] }, CREW[2]), chart).toBe(code);
    }
    define(plant);
    expect(plant.refusalOf({ type: 'defineChart', chart: CHART, card: MEAN_AND_S, lots: [] }, CREW[2])).toBe('nothingChanged');
    plant.must({ type: 'withdrawChart', chart: CHART, key: 'meanAndS', reason: 'not needed' }, CREW[2]);
    expect(charts(plant).charts).toEqual([]);
  });
});

describe('capability of what is charted', () => {
  it('takes the newest limits, counts what lay outside, and asks whether the readings look normal', () => {
    define(plant);
    steadyLots(plant);
    const { figures, counted, normality, lower, upper, limitsDiffer, keptValues } = chartedCapability(charts(plant).points, 0.95);
    expect([lower, upper, limitsDiffer, keptValues.length, counted?.value, normality.n]).toEqual([10, 11, false, 24, 0, 24]);
    expect(typeof figures === 'string' ? figures : figures.values).toBe(24);
    expect(chartedCapability([], 0.95)).toMatchObject({ figures: 'tooFew', counted: null });
  });
});

it.each(['meanAndS', 'meanAndRange'] as const)('a lot of 12 000 pieces weighed one by one has its verdict and its point on a chart %s', (kind) => {
  const big = littlePlant(routeWith(length({ gaugeKind: 'balance', unit: 'g', sampling: { rule: 'everyPiece', ejectAtMostPercent: 2 } })));
  releasedBatch(big);
  define(big, { ...MEAN_AND_S, spec: { kind } });
  big.must({ type: 'freezeChartLimits', chart: CHART, key: kind, lots: [], given: { centre: 10.5, sigma: 0.004 }, reason: 'steady' }, CREW[2]);
  openLot(big, 'A1', 12_000);
  big.must({ type: 'openGate', subject: 'lot:A1', gate: 'own' });
  const values = Array.from({ length: 12_000 }, (_, at) => 10.5 + (at % 2 === 0 ? 0.004 : -0.004));
  big.must({ type: 'takeWeights', subject: 'lot:A1', gate: 'own', characteristic: 'length', fromPiece: 1, values, gauge: 'BAL-21' });
  expect(big.lot('A1').gates.at(-1)?.status).toBe('accepted');
  const drawn = drawnChart(charts(big), chartOf(big, kind));
  expect(typeof drawn === 'string' ? drawn : drawn.lines.map(({ name, points }) => [name, points.length])).toEqual([['mean', 1], kind === 'meanAndS' ? ['s', 1] : ['range', 0]]);
});
