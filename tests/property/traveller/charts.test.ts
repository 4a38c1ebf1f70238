import fc from 'fast-check';
import { expect, it } from 'vitest';
import { estimateMeasuredBase, measuredLines, signalsOf } from '../../../shared/metrology/charts/index.ts';
import { drawnChart } from '../../../shared/traveller/index.ts';
import { summarise } from '../../../shared/metrology/summary/index.ts';
import { CREW } from './little-plant.ts';
import { CHART, chartOf, charts, define, freezing, MEAN_AND_S, measure, measuringPlant, steadyLots } from './charted.ts';

const offUm = fc.tuple(...([0, 1, 2] as const).map(() => fc.integer({ min: -60, max: 60 })));
const move = fc.oneof(
  { weight: 6, arbitrary: fc.record({ move: fc.constant('lot' as const), offUm }) },
  { weight: 2, arbitrary: fc.record({ move: fc.constant('correct' as const), lot: fc.nat(), ordinal: fc.integer({ min: 1, max: 3 }), off: fc.integer({ min: -60, max: 60 }) }) },
  { weight: 1, arbitrary: fc.record({ move: fc.constant('restart' as const) }) },
  { weight: 1, arbitrary: fc.record({ move: fc.constant('freeze' as const) }) },
);

it('in any order of lots, corrections and restarts the chart is what the slips alone give, and frozen limits never move by themselves', () => {
  fc.assert(fc.property(fc.array(move, { maxLength: 24 }), (moves) => {
    const plant = measuringPlant();
    define(plant, { ...MEAN_AND_S, rules: ['beyondLimits', 'twoOfThreeBeyondTwo', 'eightOnOneSide'] });
    steadyLots(plant);
    plant.must(freezing(plant), CREW[2]);
    let signed = chartOf(plant, 'meanAndS').frozen;
    let serial = 0;
    for (const each of moves) {
      if (each.move === 'lot') measure(plant, `N${(serial += 1)}`, each.offUm);
      if (each.move === 'correct') {
        const { subject } = charts(plant).points[each.lot % charts(plant).points.length] ?? { subject: '' };
        plant.give({ type: 'correctReading', subject, gate: 'own', characteristic: 'length', ordinal: each.ordinal, value: (10500 + each.off) / 1000, reason: 'misread' }, CREW[1]);
      }
      if (each.move === 'restart') plant.give({ type: 'restartChart', chart: CHART, key: 'meanAndS', reason: 'cause removed' }, CREW[2]);
      if (each.move === 'freeze') {
        plant.must(freezing(plant), CREW[2]);
        signed = chartOf(plant, 'meanAndS').frozen;
      }
      expect(chartOf(plant, 'meanAndS').frozen).toBe(signed);
    }

    // From the readings on the lots' own threads, not from the state under test.
    const judged = plant.slips.filter(({ stream, body }) => stream.startsWith('lot:') && body.type === 'verdictGiven').map(({ stream }) => stream);
    const readings = new Map(judged.map((stream) => [stream, new Map<number, number>()]));
    for (const { stream, body } of plant.slips) {
      if (body.type === 'readingTaken' && typeof body.value === 'number') readings.get(stream)?.set(body.ordinal, body.value);
      if (body.type === 'readingCorrected' && typeof body.to === 'number') readings.get(stream)?.set(body.ordinal, body.to);
    }
    const points = judged.map((stream) => summarise([...(readings.get(stream) ?? new Map<number, number>()).values()]));
    const onChart = plant.slips.filter(({ stream }) => stream === CHART);
    const lastFreeze = onChart.findLastIndex(({ body }) => body.type === 'chartLimitsFrozen');
    const added = (upTo: number): number => onChart.slice(0, upTo).filter(({ body }) => body.type === 'chartPointAdded').length;
    const starts = [0, ...onChart.flatMap(({ body }, at) => (body.type === 'chartRestarted' && at > lastFreeze ? [added(at)] : []))];
    const frozen = onChart[lastFreeze]?.body;
    if (frozen?.type !== 'chartLimitsFrozen') throw new Error('limits were frozen');
    const lines = measuredLines({ kind: 'meanAndS' }, points, frozen.base, starts);
    const drawn = drawnChart(charts(plant), chartOf(plant, 'meanAndS'));
    expect(drawn).toMatchObject({ provisional: false, signals: signalsOf(lines, ['beyondLimits', 'twoOfThreeBeyondTwo', 'eightOnOneSide'], starts) });
    expect(charts(plant).points.map(({ subject }) => subject)).toEqual(judged);

    // What is signalled now and came about at or after the last freeze was posted, on the chart and on the lot.
    const posted = new Set(onChart.slice(lastFreeze).flatMap(({ body }) => (body.type === 'chartSignalled' ? [`${body.subject} ${body.line} ${body.rule} ${body.side}`] : [])));
    const own = new Set(plant.slips.flatMap(({ stream, body }) => (stream.startsWith('lot:') && body.type === 'chartSignalled' ? [`${body.subject} ${body.line} ${body.rule} ${body.side}`] : [])));
    for (const key of posted) expect(own).toContain(key);
    const after = added(lastFreeze);
    for (const { at, line, rule, side } of signalsOf(lines, ['beyondLimits', 'twoOfThreeBeyondTwo', 'eightOnOneSide'], starts).filter((signal) => signal.at >= after)) {
      expect(onChart.some(({ body }) => body.type === 'chartSignalled' && body.subject === judged[at] && body.line === line && body.rule === rule && body.side === side)).toBe(true);
    }
  }), { numRuns: 25, seed: 20260305 });
});

it('limits frozen from lots are those of their readings alone', () => {
  const plant = measuringPlant();
  define(plant);
  steadyLots(plant);
  measure(plant, 'N1', [200, 210, 190]);
  const steady = charts(plant).points.slice(0, 8);
  plant.must(freezing(plant, 'meanAndS', steady.map(({ subject }) => subject)), CREW[2]);
  const points = steady.flatMap(({ value }) => (value.by === 'measured' ? [{ n: value.n, mean: value.mean, s: value.s, range: value.max - value.min }] : []));
  expect(chartOf(plant, 'meanAndS').frozen?.base).toEqual(estimateMeasuredBase({ kind: 'meanAndS' }, points));
});
