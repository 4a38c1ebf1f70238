import { existsSync, readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { io } from 'socket.io-client';
import { describe, expect, it, vi } from 'vitest';
import type { FeedReply } from '../../../server/feed/press-feeds.ts';
import type { Presses } from '../../../shared/wire/presses-view.ts';
import { pressPlant, steady, type PressPlant } from './press-plant.ts';

const presses = async ({ plant }: PressPlant): Promise<Presses['rows']> => ((await (await plant.as('inspector')).get('/api/presses')).body as Presses).rows;

describe('weights over HTTP', () => {
  it('wait in memory until a block is full and say so; what is stored is written', async () => {
    const press = await pressPlant();
    expect((await press.send({ fromSeq: 1, values: steady(100) })).body).toEqual({ ok: true, stored: null, held: 100, next: 101 });
    expect(await press.weighed()).toBe(0);
    expect((await press.send({ fromSeq: 101, values: steady(50) })).body).toEqual({ ok: true, stored: 120, held: 150, next: 151 });
    expect(await press.weighed()).toBe(120);
    expect((await press.send({ fromSeq: 151, values: steady(10), now: true })).body).toEqual({ ok: true, stored: 160, held: null, next: 161 });
    expect(await press.weighed()).toBe(160);
  });
  it('may be sent again as often as the sender likes, also overlapping', async () => {
    const press = await pressPlant();
    await press.send({ fromSeq: 1, values: steady(60), now: true });
    expect((await press.send({ fromSeq: 1, values: steady(60), now: true })).body).toEqual({ ok: true, stored: 60, held: null, next: 61 });
    expect((await press.send({ fromSeq: 41, values: steady(40), now: true })).body).toEqual({ ok: true, stored: 80, held: null, next: 81 });
    expect(await press.weighed()).toBe(80);
  });
  it('with a gap are refused by number, unless the sender says that they are lost', async () => {
    const press = await pressPlant();
    await press.send({ fromSeq: 1, values: steady(60) });
    expect(await press.send({ fromSeq: 71, values: steady(10) })).toMatchObject({ status: 409, body: { ok: false, refusal: { code: 'feedGap', expected: 61, got: 71 }, next: 61 } });
    expect((await press.send({ fromSeq: 71, values: steady(10), lost: true, now: true })).body).toMatchObject({ ok: true, stored: 80 });
    expect((await press.lotState()).gates[1]?.work[0]?.weights).toMatchObject({ running: { n: 70 }, missing: 10 });
  });
  it('come from the press’s own token alone, and a new one ends the old', async () => {
    const press = await pressPlant();
    expect((await press.send({ fromSeq: 1, values: [10] }, 'wrong')).status).toBe(401);
    expect((await press.send({ fromSeq: 1, values: [10] }, (await press.plant.as('inspector')).token)).status).toBe(401);
    expect((await (await press.plant.as('inspector')).post('/api/presses/PR-1/token', {})).status).toBe(403);
    await (await press.plant.as('keeper')).post('/api/presses/PR-1/token', {});
    expect((await press.send({ fromSeq: 1, values: [10] })).status).toBe(401);
    expect((await press.plant.server.door.give({ clientId: 'somebody-0001', bench: 'Press 1', command: { type: 'takeFeed', press: 'PR-1', fromSeq: 1, missing: 0, values: [10] } }, { badge: 'I-1' }))).toMatchObject({ ok: false, refusal: { code: 'malformed' } });
  });
  it('that are no weights are refused by name of the field', async () => {
    const press = await pressPlant();
    expect(await press.send({ fromSeq: 0, values: [] })).toMatchObject({ status: 400, body: { refusal: { code: 'malformed', problems: [{ where: 'fromSeq' }, { where: 'values' }] } } });
  });
  it('of a balance that is overdue do not count, and the presses’ list says why', async () => {
    const press = await pressPlant();
    await press.plant.give('keeper', { type: 'calibrateGauge', gauge: 'BAL-1', calibrationDue: '2020-01-01', expandedUncertainty: 0.001, certificate: 'K-1' });
    expect(await press.send({ fromSeq: 1, values: steady(10) })).toMatchObject({ status: 409, body: { refusal: { code: 'gaugeCannotCount', why: 'overdue' }, stored: null } });
    expect((await presses(press))[0]).toMatchObject({ balanceStanding: 'overdue', no: { refusal: { code: 'gaugeCannotCount' } }, pieces: 0, waiting: 0 });
  });
  it('are written before a restart and go on where they were; what was only held is sent again', async () => {
    const press = await pressPlant();
    await press.send({ fromSeq: 1, values: steady(100) });
    await press.plant.restart();
    expect(await press.weighed()).toBe(100);
    expect((await press.send({ fromSeq: 91, values: steady(20), now: true })).body).toMatchObject({ stored: 110 });
    expect(await press.weighed()).toBe(110);
  });
  it('pressed for one lot are written to it before the press is set on the next', async () => {
    const press = await pressPlant();
    await press.send({ fromSeq: 1, values: steady(100) });
    await press.lot('A2', 500);
    await press.plant.give('inspector', { type: 'setPress', press: 'PR-1', lot: 'A2' });
    expect([await press.weighed('A1'), await press.weighed('A2')]).toEqual([100, 0]);
    await press.send({ fromSeq: 101, values: steady(20), now: true });
    expect([await press.weighed('A1'), await press.weighed('A2')]).toEqual([100, 20]);
  });
  it('beyond the lot are not taken: its last piece is the last', async () => {
    const press = await pressPlant();
    await press.lot('A2', 30);
    await press.plant.give('inspector', { type: 'setPress', press: 'PR-1', lot: 'A2' });
    expect(await press.send({ fromSeq: 1, values: steady(40), now: true })).toMatchObject({ status: 409, body: { refusal: { code: 'weightsOutOfOrder' }, stored: 30, next: 31 } });
    expect(await press.weighed('A2')).toBe(30);
  });
  it('end a block where a look falls due, and the bench list of the press says so', async () => {
    const press = await pressPlant({}, { everyPieces: 50 });
    await press.send({ fromSeq: 1, values: steady(60) });
    expect(await press.weighed()).toBe(50);
    const bench = await (await press.plant.as('inspector')).get('/api/bench?bench=Press%201');
    expect(bench.body).toMatchObject({ waiting: [{ id: 'A1', lookDue: { look: 1, piece: 50 }, drift: null }] });
    expect((await presses(press))[0]).toMatchObject({ pieces: 50, waiting: 10, look: { look: 1, dueAt: 50 } });
    await press.plant.give('inspector', { type: 'takeLook', subject: 'lot:A1', gate: 'pressing', characteristic: 'looks', look: 1, found: 0 });
    expect((await (await press.plant.as('inspector')).get('/api/bench?bench=Press%201')).body).toMatchObject({ waiting: [{ lookDue: null }] });
  });
});

describe('weights by socket', () => {
  it('take the same way, with the press’s token', async () => {
    const press = await pressPlant();
    const { url } = press.plant.server;
    const wrong = io(`${url}/feed`, { transports: ['websocket'], reconnection: false, auth: { press: 'PR-1', token: 'wrong' } });
    await new Promise((resolve) => wrong.once('connect_error', resolve));
    wrong.close();
    const socket = io(`${url}/feed`, { transports: ['websocket'], reconnection: false, auth: { press: 'PR-1', token: press.token } });
    await new Promise((resolve) => socket.once('connect', () => resolve(null)));
    const reply = await socket.emitWithAck('weights', { fromSeq: 1, values: steady(5), now: true }) as FeedReply;
    expect(reply).toEqual({ ok: true, stored: 5, held: null, next: 6 });
    expect(await socket.emitWithAck('weights', { fromSeq: 1 })).toMatchObject({ ok: false, refusal: { code: 'malformed' } });
    socket.close();
  });
});

describe('files of weights', () => {
  it('are taken whole once they are whole; a half-written one waits, a wrong one is put aside with the reason', async () => {
    const press = await pressPlant();
    const drop = join(press.plant.folder, 'drop');
    writeFileSync(join(drop, 'half.csv.part'), 'press,seq,weight\nPR-1,1,10.001\n');
    await vi.waitFor(() => expect(existsSync(join(drop, 'done'))).toBe(true));
    writeFileSync(join(drop, 'b.csv'), 'press;seq;weight\nPR-1;1;9,999\nPR-1;3;10,001\n');
    await vi.waitFor(() => expect(readdirSync(join(drop, 'refused')).sort()).toEqual(['b.csv', 'b.csv.reason.txt']));
    expect(readFileSync(join(drop, 'refused', 'b.csv.reason.txt'), 'utf8')).toContain('Line 3 has number 3; 2 comes next.');
    expect([await press.weighed(), existsSync(join(drop, 'half.csv.part'))]).toEqual([0, true]);
    renameSync(join(drop, 'half.csv.part'), join(drop, 'a.csv'));
    await vi.waitFor(() => expect(readdirSync(join(drop, 'done'))).toEqual(['a.csv']));
    expect(await press.weighed()).toBe(1);
    writeFileSync(join(drop, 'a.csv'), 'press,seq,weight\nPR-1,1,10.001\nPR-1,2,10.002\n');
    await vi.waitFor(() => expect(readdirSync(join(drop, 'done')).sort()).toEqual(['a-2.csv', 'a.csv']));
    expect(await press.weighed()).toBe(2);
    writeFileSync(join(drop, 'c.csv'), 'press,seq,weight\nPR-9,1,10.001\n');
    await vi.waitFor(() => expect(readdirSync(join(drop, 'refused'))).toContain('c.csv.reason.txt'));
  });
});

describe('the clock', () => {
  it('calls a look when its minutes are over, and writes it down as missed after the grace; the slip bears the server’s own name', async () => {
    let now = Date.parse('2026-03-02T06:00:00Z');
    const press = await pressPlant({ now: () => new Date(now) }, { everyPieces: 5000, everyMinutes: 30, graceMinutes: 10 });
    await press.send({ fromSeq: 1, values: steady(100), now: true });
    now += 31 * 60_000;
    const calls = async () => (await press.lotState()).gates[1]?.work[1]?.calls;
    await vi.waitFor(async () => expect((await calls())?.due).toMatchObject({ look: 1, piece: 100, at: '2026-03-02T06:31:00.000Z' }));
    now += 11 * 60_000;
    await vi.waitFor(async () => expect((await calls())?.missed).toEqual([{ look: 1, piece: 100 }]));
    const slips = await press.plant.server.journal.read('lot:A1');
    expect(slips.filter(({ type }) => type.startsWith('look')).map(({ type, by }) => `${type} ${by}`)).toEqual(['lookFellDue server', 'lookMissed server']);
  });
  it('writes a block that has waited long enough', async () => {
    let now = Date.parse('2026-03-02T06:00:00Z');
    const press = await pressPlant({ now: () => new Date(now) });
    await press.send({ fromSeq: 1, values: steady(10) });
    now += 31_000;
    await vi.waitFor(async () => expect(await press.weighed()).toBe(10), { timeout: 4000 });
  });
});
