import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { BenchList, BenchRow, SkipRow, SwitchingRow, Trace } from '../../../shared/wire/views.ts';
import { FixturePlant } from '../fixture-plant.ts';

let plant: FixturePlant;
beforeAll(async () => {
  plant = await FixturePlant.open();
  await plant.releasedBatch('B1');
}, 60_000);
afterAll(() => plant.close());

async function ask<T>(path: string): Promise<T> {
  const answered = await (await plant.as('engineer')).get(path);
  expect(answered.status).toBe(200);
  return answered.body as T;
}
const bench = (name: string): Promise<BenchList> => ask(`/api/bench?bench=${encodeURIComponent(name)}`);
const rows = async (path: string): Promise<string[]> => (await ask<{ rows: BenchRow[] }>(path)).rows.map(({ id, standing }) => `${id} ${standing}`);
const at = async (name: string, id: string): Promise<string | null> => {
  const { waiting, held } = await bench(name);
  const row = [...waiting, ...held].find((each) => each.id === id);
  return row === undefined ? null : `${row.standing} ${row.gateName ?? '-'} ${row.pieces}${held.includes(row) ? ' held' : ''}`;
};

describe('one lot on its way', () => {
  it('stands at each bench in turn, and nowhere else', async () => {
    await plant.openedLot('L-1', 'B1');
    expect(await at('Gauge room', 'L-1')).toBe('due Dimensions 200');
    await plant.give('inspector', { type: 'openGate', subject: 'lot:L-1', gate: 'dimensions' });
    expect(await at('Gauge room', 'L-1')).toBe('open Dimensions 200');
    for (let ordinal = 1; ordinal <= 40; ordinal += 1) await plant.give('inspector', { type: 'takeReading', subject: 'lot:L-1', gate: 'dimensions', characteristic: 'length', ordinal, value: 12.5 });
    expect(await at('Gauge room', 'L-1')).toBeNull();
    expect(await at('Lab', 'L-1')).toBe('inCharge Sintered 200');
    expect(await rows('/api/ready/furnace')).toEqual(['L-1 inCharge']);

    await plant.give('lab', { type: 'openCharge', charge: 'F-1', kind: 'furnace', specification: 'G1', programme: 'S1', equipment: 'Furnace 1', members: [{ lot: 'L-1', places: ['Top'] }] });
    expect(await rows('/api/ready/furnace')).toEqual([]);
    expect(await at('Lab', 'F-1')).toBe('due Sintered check 200');
    await plant.workGate('lab', 'furnace:F-1', 'sintered');
    expect(await at('Lab', 'F-1')).toBeNull();
    expect(await rows('/api/charges')).toEqual(['F-1 done']);
    expect(await at('Visual 1', 'L-1')).toBe('due Final visual 200');
    expect(await rows('/api/release')).toEqual(['L-1 due']);

    await plant.workGate('second', 'lot:L-1', 'visual', 5);
    expect(await at('Visual 1', 'L-1')).toBe('held Final visual 200 held');
    expect(await rows('/api/lots?standing=held')).toEqual(['L-1 held']);
    expect((await bench('Visual 1')).held[0]).toMatchObject({ holdReason: 'Final visual', attempt: 1, severity: 'normal', demo: true });

    await plant.give('engineer', { type: 'dispose', subject: 'lot:L-1', hold: 'L-1-H1', disposition: { kind: 'sort' }, reason: 'one tray' }, { signed: true });
    expect(await at('Visual 1', 'L-1')).toBe('sorting Final visual 200');
    await plant.give('second', { type: 'recordSort', lot: 'L-1', gate: 'visual', looked: 200, removed: [{ code: 'CH', pieces: 8 }] });
    expect(await at('Visual 1', 'L-1')).toBe('due Final visual 192');
    await plant.workGate('second', 'lot:L-1', 'visual');
    expect(await rows('/api/release')).toEqual(['L-1 toRelease']);
    expect(await at('Release desk', 'L-1')).toBe('toRelease - 192');

    await plant.give('releaser', { type: 'releaseLot', lot: 'L-1' }, { signed: true });
    expect(await rows('/api/release')).toEqual([]);
    expect(await rows('/api/packing')).toEqual(['L-1 toPack']);
    for (const pieces of [100, 92]) await plant.give('packer', { type: 'packBox', lot: 'L-1', pieces });
    expect(await at('Packing', 'L-1')).toBe('toPack - 0');
    for (const box of ['L-1-001', 'L-1-002']) {
      await plant.give('packer', { type: 'printLabel', lot: 'L-1', box });
      const { boxes } = (await ask<{ state: { boxes: { serial: string; payload: string }[] } }>('/api/travellers/lot/L-1')).state;
      await plant.give('packer', { type: 'readLabel', lot: 'L-1', box, payload: boxes.find(({ serial }) => serial === box)?.payload ?? '' });
      await plant.give('packer', { type: 'shipBox', lot: 'L-1', box, shipment: 'S-1', order: 'O-1', consignee: 'Invented Works' });
    }
    expect(await rows('/api/packing')).toEqual([]);
    expect(await rows('/api/lots')).toEqual(['L-1 done']);
  });

  it('is traced up to the raw material and down to the shipment', async () => {
    const nodes = (trace: Trace, side: 'up' | 'down'): string[] => trace[side].map(({ kind, id, depth, via, standing }) => `${depth} ${kind} ${id} from ${via ?? ''} ${standing}`.trim());
    const box = await ask<Trace>('/api/trace/box/L-1-001');
    expect(nodes(box, 'up')).toEqual(['1 lot L-1 from L-1-001 done', '2 batch B1 from L-1 done', '2 furnace F-1 from L-1 done', '3 raw RAW-B1 from B1']);
    expect(nodes(box, 'down')).toEqual(['1 shipment S-1 from L-1-001 shipped']);
    const raw = await ask<Trace>('/api/trace/raw/RAW-B1');
    expect(nodes(raw, 'down')).toEqual(['1 batch B1 from RAW-B1 done', '2 lot L-1 from B1 done', '3 box L-1-001 from L-1 shipped', '3 box L-1-002 from L-1 shipped', '4 shipment S-1 from L-1-001 shipped']);
    expect(nodes(await ask<Trace>('/api/trace/furnace/F-1'), 'down')).toContain('1 lot L-1 from F-1 done');
  });
});

describe('the count of lots that may be passed over', () => {
  it('is listed with the lots it rests on', async () => {
    const counted = (lot: string, accepted: boolean) => ({ type: 'skipCounted' as const, lot, accepted, skipped: false });
    const bodies = [{ type: 'skipStarted' as const, product: 'PR1', gate: 'visual', characteristic: 'looks', clearance: 2, oneIn: 4 }, counted('S-1', false), counted('S-2', true), counted('S-3', true)];
    await plant.server.journal.append({ clientId: 'skip-count-1', at: '2026-01-05T06:00:00.000Z', by: 'E-1', bench: 'Bench', changes: [{ stream: 'skip:PR1/visual/looks', expectedVersion: 0, bodies }] });
    const { skips } = await ask<{ skips: SkipRow[] }>('/api/switching');
    expect(skips).toEqual([{ stream: 'skip:PR1/visual/looks', product: 'PR1', gate: 'visual', characteristic: 'looks', clearance: 2, oneIn: 4, skipping: true, acceptedInRow: 2, lots: ['S-2', 'S-3'], endedBy: 'S-1' }]);
  });
});

describe('the switching state', () => {
  it('says on the bench that the next lot is inspected on tightened, once two of five were not accepted', async () => {
    for (const lot of ['L-11', 'L-12']) {
      await plant.openedLot(lot, 'B1');
      await plant.workGate('inspector', `lot:${lot}`, 'dimensions');
    }
    await plant.give('lab', { type: 'openCharge', charge: 'F-11', kind: 'furnace', specification: 'G1', programme: 'S1', equipment: 'Furnace 1', members: [{ lot: 'L-11', places: ['Top'] }, { lot: 'L-12', places: ['Bottom'] }] });
    await plant.workGate('lab', 'furnace:F-11', 'sintered');
    expect((await bench('Visual 1')).waiting.map(({ id, severity }) => `${id} ${severity}`)).toEqual(['L-11 normal', 'L-12 normal']);
    // The first rejection was that of L-1 above.
    await plant.workGate('second', 'lot:L-11', 'visual', 5);
    const { rows: states } = await ask<{ rows: SwitchingRow[] }>('/api/switching');
    expect(states).toMatchObject([{ stream: 'switching:PR1/visual/looks/major', severity: 'tightened', movedWhy: 'twoOfFiveNotAccepted', movedLots: ['L-1', 'L-11'] }]);
    expect((await bench('Visual 1')).waiting).toMatchObject([{ id: 'L-12', standing: 'due', severity: 'tightened', discontinued: false }]);
    await plant.give('inspector', { type: 'openGate', subject: 'lot:L-12', gate: 'visual' });
    expect((await bench('Visual 1')).waiting).toMatchObject([{ id: 'L-12', standing: 'open', severity: 'tightened' }]);
  });
});

describe('the records', () => {
  it('show a gauge at its bench when its calibration nears its end, and no longer once it is calibrated or withdrawn', async () => {
    const day = (days: number): string => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);
    const gauge = { name: 'Invented gauge', gaugeKind: 'gauge', unit: 'mm', resolution: 0.001, expandedUncertainty: 0.002, least: 0, most: 25, bench: 'Gauge room' };
    for (const [id, days] of [['G-1', -2], ['G-2', 5], ['G-3', 200]] as const) await plant.give('keeper', { type: 'registerGauge', gauge: { ...gauge, id, calibrationDue: day(days) } });
    expect((await bench('Gauge room')).dueSoon.map(({ id, overdue }) => `${id} ${overdue}`)).toEqual(['G-1 true', 'G-2 false']);
    expect((await bench('Lab')).dueSoon).toEqual([]);
    await plant.give('keeper', { type: 'calibrateGauge', gauge: 'G-1', calibrationDue: day(365), expandedUncertainty: 0.003, certificate: 'CAL-1' });
    await plant.give('keeper', { type: 'withdrawGauge', gauge: 'G-2', reason: 'dropped' });
    expect((await bench('Gauge room')).dueSoon).toEqual([]);
    expect(await ask('/api/catalogue')).toMatchObject({ gauges: [{ id: 'G-1', calibrationDue: day(365), expandedUncertainty: 0.003, withdrawn: null }, { id: 'G-2', withdrawn: 'dropped' }, { id: 'G-3' }] });
  });

  it('show each plan with its versions and which one is in force', async () => {
    const { plans: listed } = await ask<{ plans: { id: string; versions: unknown[] }[] }>('/api/catalogue');
    expect(listed.find(({ id }) => id === 'ROUTE')?.versions).toEqual([{ planVersion: 1, inForce: true, approvals: 2, why: 'first' }]);
  });
});
