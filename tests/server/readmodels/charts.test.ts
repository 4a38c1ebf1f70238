import { afterAll, beforeAll, expect, it } from 'vitest';
import type { ChartRow } from '../../../shared/wire/charts-view.ts';
import { FixturePlant } from '../fixture-plant.ts';

const CHART = 'chart:batch/G1/powder/density';
let plant: FixturePlant;
beforeAll(async () => { plant = await FixturePlant.open(); }, 60_000);
afterAll(() => plant.close());

async function judged(batch: string, density: number): Promise<void> {
  await plant.give('lab', { type: 'openBatch', batch, grade: 'G1', barrels: 3, kgPerBarrel: 10, rawLots: [] });
  const at = { subject: `batch:${batch}`, gate: 'powder' };
  await plant.give('lab', { type: 'openGate', ...at });
  for (const [characteristic, value] of [['shrinkage', 18], ['binder', 2], ['density', density]] as const) await plant.give('lab', { type: 'takeReading', ...at, characteristic, ordinal: 1, value });
}
async function ask<T>(path: string): Promise<T> {
  return (await (await plant.as('engineer')).get(path)).body as T;
}
const rows = async (): Promise<readonly ChartRow[]> => (await ask<{ rows: readonly ChartRow[] }>('/api/charts')).rows;
const rowsNow = async (): Promise<unknown> => (await rows()).map(({ key, standing, lots, signals }) => ({ key, standing, lots, signals }));

it('lists every chart and how it stands, from the first lot to a signal and beyond, the same after a restart', async () => {
  const steady = [14.5, 14.52, 14.49, 14.51, 14.5, 14.48, 14.51];
  for (const [at, density] of steady.entries()) await judged(`B${at}`, density);
  const offered = await ask<{ lots: string[] }>(`/api/charts/lots?chart=${encodeURIComponent(CHART)}`);
  expect(offered.lots).toEqual(steady.map((_, at) => `batch:B${at}`));
  await plant.give('engineer', { type: 'defineChart', chart: CHART, card: { spec: { kind: 'individuals' }, rules: ['beyondLimits'], mayHold: true, class: null }, lots: offered.lots });
  await plant.give('engineer', { type: 'defineChart', chart: CHART, card: { spec: { kind: 'cusum', k: 0.5, h: 5, spread: 'betweenLots' }, rules: ['beyondLimits'], mayHold: false, class: null }, lots: [] });
  await judged('B7', 14.5);
  const at = ({ key }: ChartRow): string => key;
  expect((await rows()).map(at)).toEqual(['cusum', 'individuals']);
  expect(await rowsNow()).toEqual([{ key: 'cusum', standing: 'provisional', lots: 8, signals: 0 }, { key: 'individuals', standing: 'provisional', lots: 8, signals: 0 }]);

  await plant.give('engineer', { type: 'freezeChartLimits', chart: CHART, key: 'individuals', lots: [...offered.lots, 'batch:B7'], given: null, reason: 'steady' }, { signed: true });
  expect(await rowsNow()).toEqual([{ key: 'individuals', standing: 'inControl', lots: 8, signals: 0 }, { key: 'cusum', standing: 'provisional', lots: 8, signals: 0 }]);
  await judged('B8', 14.9);
  expect((await rows())[0]).toMatchObject({ key: 'individuals', standing: 'signal', lots: 9, signals: 2, mayHold: true, ownerName: 'Invented grade', gateName: 'Powder lab', characteristicName: 'The density', lastSignal: { rule: 'beyondLimits', subject: 'batch:B8' } });
  // The batch was accepted and is held all the same, by the chart.
  const traveller = await ask<{ state: { holds: { cause: unknown }[]; gates: { status: string }[] }; slips: { body: { type: string } }[] }>('/api/travellers/batch/B8');
  expect(traveller.state.holds).toMatchObject([{ cause: { by: 'chart', gate: 'powder', chart: CHART } }]);
  expect(traveller.state.gates[0]?.status).toBe('accepted');
  expect(traveller.slips.map(({ body }) => body.type)).toContain('chartSignalled');

  const before = await rows();
  await plant.restart();
  expect(await rows()).toEqual(before);
  await plant.give('engineer', { type: 'restartChart', chart: CHART, key: 'individuals', reason: 'sieve changed' });
  await judged('B9', 14.5);
  expect((await rows()).find(({ key }) => key === 'individuals')).toMatchObject({ standing: 'inControl', signals: 2, lots: 10 });
  await plant.give('engineer', { type: 'withdrawChart', chart: CHART, key: 'cusum', reason: 'not needed' });
  expect((await rows()).map(at)).toEqual(['individuals']);
}, 60_000);

it('says what a chart’s name must be', async () => {
  const answered = await (await plant.as('engineer')).get('/api/charts/lots?chart=lot%3AL-1');
  expect(answered.status).toBe(400);
});
