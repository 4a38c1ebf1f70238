import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Command, InspectionPlan } from '../../../shared/traveller/index.ts';
import type { GaugeUses, RecalledReadings, RecallView } from '../../../shared/wire/gauge-views.ts';
import { FixturePlant, people, plans } from '../fixture-plant.ts';
import { refusalIn } from '../http-caller.ts';

let plant: FixturePlant;
let now = new Date('2026-03-30T10:00:00.000Z');
const GAUGE = { id: 'MIC-1', name: 'Micrometer', gaugeKind: 'micrometer', unit: 'mm', resolution: 0.001, expandedUncertainty: 0.002, least: 0, most: 25, calibrationDue: '2026-03-30', bench: 'Gauge room', allowedError: 0.002 } as const;
const check = (found: number): Command => ({ type: 'checkGauge', gauge: 'MIC-1', master: 'Block 12 mm', nominal: 12, found });
const reading = (lot: string, ordinal: number, value: number): Command => ({ type: 'takeReading', subject: `lot:${lot}`, gate: 'dimensions', characteristic: 'length', ordinal, value, gauge: 'MIC-1' });

beforeAll(async () => {
  plant = await FixturePlant.open({ now: () => now });
  // The same route, its lengths measured with a micrometer.
  const [route] = plans.filter(({ id }) => id === 'ROUTE');
  if (route === undefined) throw new Error('the fixture has a route');
  const measured: InspectionPlan = { ...route, gates: route.gates.map((gate) => ({ ...gate, characteristics: gate.characteristics.map((each) => (each.kind === 'measured' && gate.id === 'dimensions' ? { ...each, gaugeKind: 'micrometer' } : each)) })) };
  await plant.give('engineer', { type: 'draftPlan', plan: measured, why: 'with a gauge' });
  for (const by of ['engineer', 'otherEngineer'] as const) await plant.give(by, { type: 'approvePlan', plan: 'ROUTE', planVersion: 2 }, { signed: true });
  await plant.give('lab', { type: 'registerGauge', gauge: GAUGE });
  await plant.releasedBatch('B1');
  for (const lot of ['L-1', 'L-2']) {
    await plant.openedLot(lot, 'B1');
    await plant.give('inspector', { type: 'openGate', subject: `lot:${lot}`, gate: 'dimensions' });
  }
}, 60_000);
afterAll(() => plant.close());

async function ask<T>(path: string): Promise<T> {
  const { status, body } = await (await plant.as('inspector')).get(path);
  expect(status).toBe(200);
  return body as T;
}

describe('a gauge whose calibration ends tonight', () => {
  it('still counts for a reading that was taken today and arrives tomorrow, by how long it waited', async () => {
    const caller = await plant.as('inspector');
    await caller.mustGive(reading('L-1', 1, 12.5));
    now = new Date('2026-03-31T06:00:00.000Z');
    expect(refusalIn(await caller.give(reading('L-1', 2, 12.5)))).toMatchObject({ code: 'gaugeCannotCount', why: 'overdue' });
    const { slips } = await caller.mustGive(reading('L-1', 2, 12.5), { waitedMs: 8 * 3_600_000 });
    expect(slips[0]?.body).toMatchObject({ type: 'readingTaken', takenAt: '2026-03-30T22:00:00.000Z', gauge: { calibrationDue: '2026-03-30' } });
    expect(refusalIn(await caller.give(reading('L-1', 3, 12.5), { waitedMs: 5 * 3_600_000 }))).toMatchObject({ why: 'overdue' });
    expect(refusalIn(await caller.give(reading('L-1', 3, 12.5), { waitedMs: 604_800_001 }))).toMatchObject({ code: 'malformed' });
  });
});

describe('a gauge that is found bad', () => {
  it('lists what it read since its last good check, holds it in one signed action, and says how each would have been judged', async () => {
    await plant.give('lab', { type: 'calibrateGauge', gauge: 'MIC-1', calibrationDue: '2027-03-31', expandedUncertainty: 0.002, certificate: 'K-1' });
    now = new Date('2026-03-31T07:00:00.000Z');
    for (const [at, value] of [12.003, 12.5, 12.007].entries()) await plant.give('inspector', reading('L-2', at + 1, value));
    now = new Date('2026-03-31T08:00:00.000Z');
    await plant.give('inspector', check(12.006));
    expect(refusalIn(await (await plant.as('inspector')).give(reading('L-2', 4, 12.5)))).toMatchObject({ why: 'outOfTolerance', detail: 'MIC-1-R1' });

    // L-1 was measured before the good calibration: it is not in doubt.
    const view = await ask<RecallView>('/api/gauges/MIC-1/recalls/MIC-1-R1');
    expect(view.rows.map(({ id, readings, here, heldForThis }) => [id, readings, here, heldForThis])).toEqual([['L-2', 3, true, false]]);
    expect(view.recall).toMatchObject({ since: '2026-03-31T06:00:00.000Z', error: 0.006, allowedError: 0.002 });
    // Shown 0.006 mm too much: 12.003 was 11.997 and would have been outside 12 … 13; 12.007 was 12.001.
    const { rows, total } = await ask<RecalledReadings>('/api/gauges/MIC-1/recalls/MIC-1-R1/readings');
    expect([total, rows.map(({ value, acceptedAsRead, acceptedWithError }) => [value, acceptedAsRead, acceptedWithError])]).toEqual([3, [[12.003, 1, 0], [12.5, 1, 1], [12.007, 1, 1]]]);
    expect((await ask<RecalledReadings>('/api/gauges/MIC-1/recalls/MIC-1-R1/readings?after=2&limit=2')).rows).toEqual(rows.slice(2));

    const hold: Command = { type: 'holdRecall', gauge: 'MIC-1', recall: 'MIC-1-R1', subjects: view.rows.map(({ stream }) => stream), reason: 'Micrometer 1 reads 0.006 mm too much' };
    expect(refusalIn(await (await plant.as('engineer')).give(hold))).toMatchObject({ code: 'signatureMissing' });
    await plant.give('engineer', hold, { signed: true });
    const after = await ask<RecallView>('/api/gauges/MIC-1/recalls/MIC-1-R1');
    expect([after.rows[0]?.standing, after.rows[0]?.heldForThis, after.recall.held]).toEqual(['held', true, [{ subject: 'lot:L-2', hold: 'L-2-H1' }]]);
  });

  it('has its readings as a table, every one, and what it measured', async () => {
    const answered = await fetch(`${plant.server.url}/api/gauges/MIC-1/recalls/MIC-1-R1/readings.csv`, { headers: { authorization: `Bearer ${(await plant.as('inspector')).token}` } });
    const lines = (await answered.text()).trimEnd().split('\r\n');
    expect(lines).toHaveLength(4);
    expect(lines[1]).toBe('2026-03-31T07:00:00.000Z,lot:L-2,Dimensions,The length,1,1,12.003,mm,1,0,');
    expect(await ask<GaugeUses>('/api/gauges/MIC-1/uses')).toMatchObject({ readings: 5, subjects: 2, rows: [{ id: 'L-2', readings: 3 }, { id: 'L-1', readings: 2 }] });
    expect((await (await plant.as('inspector')).get('/api/gauges/NONE-1/uses')).status).toBe(404);
    expect((await (await plant.as('inspector')).get('/api/gauges/MIC-1/recalls/MIC-1-R9')).status).toBe(404);
  });

  it('is told in the catalogue with what is known against it', async () => {
    const { gauges } = await ask<{ gauges: readonly unknown[] }>('/api/catalogue');
    expect(gauges).toEqual([{ ...GAUGE, calibrationDue: '2027-03-31', certificate: 'K-1', withdrawn: null, outOfTolerance: 'MIC-1-R1', lastGoodAt: '2026-03-31T06:00:00.000Z', openRecalls: 1 }]);
    expect(people.lab.roles).toEqual(['lab']);
  });
});

it('holds a thousand subjects in one commit, and a thousand and one are too many for one message', async () => {
  // Lots of their own, opened at once.
  const lots = Array.from({ length: 120 }, (_, at) => `M-${at}`);
  await Promise.all(lots.map((lot) => plant.openedLot(lot, 'B1', 10)));
  const caller = await plant.as('engineer');
  const hold = (subjects: readonly string[]): Command => ({ type: 'holdRecall', gauge: 'MIC-1', recall: 'MIC-1-R1', subjects, reason: 'many' });
  const { slips } = await caller.mustGive(hold(lots.map((lot) => `lot:${lot}`)), { pin: people.engineer.pin, clientId: randomUUID() });
  expect(slips.filter(({ body }) => body.type === 'held')).toHaveLength(120);
  expect(new Set(slips.map(({ clientId }) => clientId)).size).toBe(1);
  expect(refusalIn(await caller.give(hold(Array.from({ length: 1_001 }, (_, at) => `lot:X-${at}`)), { pin: people.engineer.pin }))).toMatchObject({ code: 'malformed' });
});

describe('how sure a decision is', () => {
  it('is asked for a process by its last lots, all their readings together', async () => {
    const other = await FixturePlant.open();
    try {
      await other.releasedBatch('B1');
      for (const lot of ['L-1', 'L-2']) {
        await other.openedLot(lot, 'B1');
        await other.workGate('inspector', `lot:${lot}`, 'dimensions');
      }
      const caller = await other.as('inspector');
      // Each lot reads 12.501 … 12.540: mean 12.5205; 80 readings, squares 2 · 40 · (40² − 1) / 12 · 1e-6.
      const { body } = await caller.get('/api/process?kind=lot&owner=PR1&gate=dimensions&characteristic=length');
      expect(body).toMatchObject({ lots: ['L-2', 'L-1'], n: 80 });
      const { mean, s } = body as { mean: number; s: number };
      expect(mean).toBeCloseTo(12.5205, 10);
      expect(s).toBeCloseTo(Math.sqrt((80 * (40 ** 2 - 1)) / 12 / 79) * 1e-3, 10);
      expect((await caller.get('/api/process?kind=lot&owner=PR1&gate=dimensions&characteristic=length&without=lot:L-2')).body).toMatchObject({ lots: ['L-1'], n: 40 });
      expect((await caller.get('/api/process?kind=lot&owner=NONE&gate=dimensions&characteristic=length')).body).toEqual({ lots: [], n: 0, mean: null, s: null });
    } finally {
      await other.close();
    }
  }, 60_000);
});
