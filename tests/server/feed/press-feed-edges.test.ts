import { appendFileSync, existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { io } from 'socket.io-client';
import { describe, expect, it, vi } from 'vitest';
import { readDrop } from '../../../server/feed/read-drop.ts';
import { pressPlant, steady } from './press-plant.ts';

const otherBalance = { id: 'BAL-2', name: 'Another balance', gaugeKind: 'balance', unit: 'g', resolution: 0.001, expandedUncertainty: 0.001, least: 0, most: 50, calibrationDue: '2099-01-01', bench: 'Press 1' } as const;
const card = { id: 'PR-1', name: 'Press 1', bench: 'Press 1', balance: 'BAL-1' };

describe('a press that gets another balance', () => {
  it('keeps what the one before had weighed under it; the new one begins with any number, by a token of its own', async () => {
    const press = await pressPlant();
    await press.plant.give('keeper', { type: 'registerGauge', gauge: otherBalance });
    await press.send({ fromSeq: 1, values: steady(100) });
    await press.plant.give('engineer', { type: 'changePress', press: { ...card, balance: 'BAL-2' }, reason: 'the other is being repaired' });
    const before = await press.plant.server.journal.read('lot:A1');
    expect(before.filter(({ type }) => type === 'weightsTaken')).toMatchObject([{ body: { values: { length: 100 }, gauge: { id: 'BAL-1' } } }]);
    expect((await press.send({ fromSeq: 101, values: steady(5), now: true })).status, 'the program of the balance before').toBe(401);
    const { token } = (await (await press.plant.as('keeper')).post('/api/presses/PR-1/token', {})).body as { token: string };
    expect((await press.send({ fromSeq: 1, values: steady(30), now: true }, token)).body).toEqual({ ok: true, stored: 30, held: null, next: 31 });
    expect(await press.weighed()).toBe(130);
    await press.plant.restart();
    expect((await press.send({ fromSeq: 1, values: steady(40), now: true }, token)).body).toMatchObject({ stored: 40 });
    expect(await press.weighed()).toBe(140);
  });
  it('ends the connections that were made with the token before, as a new token does', async () => {
    const press = await pressPlant();
    const socket = io(`${press.plant.server.url}/feed`, { transports: ['websocket'], reconnection: false, auth: { press: 'PR-1', token: press.token } });
    await new Promise((resolve) => socket.once('connect', () => resolve(null)));
    await (await press.plant.as('keeper')).post('/api/presses/PR-1/token', {});
    const ended = new Promise((resolve) => socket.once('disconnect', resolve));
    expect(await socket.emitWithAck('weights', { fromSeq: 1, values: steady(5), now: true })).toMatchObject({ ok: false, refusal: { code: 'notSignedIn' } });
    await ended;
    expect(await press.weighed()).toBe(0);
  });
});

describe('weights that wait in memory', () => {
  it('are written before the lot is put on hold, and what comes after the hold stays with its sender', async () => {
    const press = await pressPlant();
    await press.send({ fromSeq: 1, values: steady(70) });
    await press.plant.give('engineer', { type: 'hold', subject: 'lot:A1', reason: 'a tray fell' });
    expect(await press.weighed()).toBe(70);
    expect(await press.send({ fromSeq: 71, values: steady(10) })).toMatchObject({ status: 409, body: { refusal: { code: 'subjectIsHeld' }, stored: 70, next: 71 } });
    await press.plant.give('engineer', { type: 'dispose', subject: 'lot:A1', hold: 'A1-H1', disposition: { kind: 'clear' }, reason: 'none broken' }, { signed: true });
    expect((await press.send({ fromSeq: 71, values: steady(10), now: true })).body).toMatchObject({ stored: 80 });
  });
  it('are written before their balance is withdrawn', async () => {
    const press = await pressPlant();
    await press.send({ fromSeq: 1, values: steady(70) });
    await press.plant.give('keeper', { type: 'withdrawGauge', gauge: 'BAL-1', reason: 'dropped' });
    expect(await press.weighed()).toBe(70);
    expect(await press.send({ fromSeq: 71, values: steady(10) })).toMatchObject({ status: 409, body: { refusal: { code: 'gaugeCannotCount', why: 'withdrawn' }, stored: 70 } });
  });
  it('and are refused as a block for one that cannot be, are taken once the sender leaves that one out', async () => {
    const press = await pressPlant();
    const values = [...steady(10), 1e9, ...steady(10)];
    expect(await press.send({ fromSeq: 1, values, now: true })).toMatchObject({ status: 409, body: { refusal: { code: 'valueImpossible', value: 1e9 }, stored: null } });
    expect((await press.send({ fromSeq: 1, values: values.slice(0, 10), now: true })).body).toMatchObject({ stored: 10 });
    expect((await press.send({ fromSeq: 12, values: values.slice(11), lost: true, now: true })).body).toMatchObject({ stored: 21 });
    expect((await press.lotState()).gates[1]?.work[0]?.weights).toMatchObject({ running: { n: 20 }, missing: 1 });
  });
});

describe('a request that is none', () => {
  it('with another press’s token, of 10 MB, or with what JSON has no number for', async () => {
    const press = await pressPlant();
    await press.plant.give('engineer', { type: 'registerPress', press: { ...card, id: 'PR-7', name: 'Press 7' } });
    const { token } = (await (await press.plant.as('keeper')).post('/api/presses/PR-7/token', {})).body as { token: string };
    expect((await press.send({ fromSeq: 1, values: [10] }, token)).status).toBe(401);
    const post = (body: string): Promise<Response> => fetch(`${press.plant.server.url}/api/presses/PR-1/weights`, { method: 'POST', headers: { 'content-type': 'application/json', authorization: `Bearer ${press.token}` }, body });
    const large = await post(`{"fromSeq":1,"values":[${'10.000,'.repeat(1_500_000)}10]}`);
    expect({ status: large.status, body: await large.json() }).toMatchObject({ status: 413, body: { refusal: { code: 'tooLarge' } } });
    for (const value of ['0', '-1', 'null', '1e999', '"10"']) expect((await post(`{"fromSeq":1,"values":[10,${value}]}`)).status, value).toBe(400);
    for (const value of ['NaN', '10,']) expect((await post(`{"fromSeq":1,"values":[${value}]}`)).status, value).toBe(400);
    expect((await press.send({ fromSeq: 1, values: steady(1), now: true })).body).toMatchObject({ stored: 1 });
  });
});

describe('a file of weights', () => {
  it('is read with a byte-order mark, CRLF, semicolons and decimal commas, and empty lines at its end', () => {
    expect(readDrop('\ufeffpress;seq;weight\r\nPR-1;5;9,881\r\nPR-1;6;9,88\r\n\r\n')).toEqual({ press: 'PR-1', fromSeq: 5, values: [9.881, 9.88] });
    expect(readDrop('Press, Seq, Weight\n')).toMatchObject({ wrong: expect.stringContaining('first line') as string });
  });
  it.each([['a decimal comma between commas', 'PR-1,1,9,881'], ['nothing weighed', 'PR-1,1,0'], ['a power of ten', 'PR-1,1,1e9'], ['not a number', 'PR-1,1,NaN'], ['a number below 1', 'PR-1,0,9.881'], ['a thousands point', 'PR-1;1;1.009,881']])('with %s is not taken, and the line is named', (_what, line) => {
    expect(readDrop(`press,seq,weight\n${line}\n`)).toMatchObject({ wrong: expect.stringContaining('Line 2') as string });
  });
  it('that ends in half a line waits for its writer; one that cannot be read keeps no other waiting', async () => {
    const press = await pressPlant();
    const drop = join(press.plant.folder, 'drop');
    writeFileSync(join(drop, 'a.csv'), 'press,seq,weight\nPR-1,1,10.001\nPR-1,2,10.0');
    writeFileSync(join(drop, 'b.csv'), 'press,seq,weight\nPR-9,1,10.001\n');
    await vi.waitFor(() => expect(readdirSync(join(drop, 'refused'))).toContain('b.csv.reason.txt'));
    expect(existsSync(join(drop, 'a.csv'))).toBe(true);
    appendFileSync(join(drop, 'a.csv'), '02\n');
    await vi.waitFor(() => expect(readdirSync(join(drop, 'done'))).toEqual(['a.csv']));
    expect((await press.lotState()).gates[1]?.work[0]?.weights).toMatchObject({ running: { n: 2 } });
    // Nobody ends it: after a minute's rounds it is put aside with the reason.
    writeFileSync(join(drop, 'c.csv'), 'press,seq,weight\nPR-1,3,10.0');
    await vi.waitFor(() => expect(readFileSync(join(drop, 'refused', 'c.csv.reason.txt'), 'utf8')).toContain('last line is not ended'), { timeout: 10_000 });
  });
});
