import type { Socket } from 'socket.io-client';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readers } from '../../../server/http/readers.ts';
import { matchRoute } from '../../../server/http/route.ts';
import type { Lot } from '../../../shared/traveller/index.ts';
import { FixturePlant, people } from '../fixture-plant.ts';
import { openLive } from './live-caller.ts';

let plant: FixturePlant;
let socket: Socket;
beforeAll(async () => {
  plant = await FixturePlant.open();
  await plant.releasedBatch('B1');
  await plant.passedLot('L-1', 'B1', 'F-1');
  await plant.give('releaser', { type: 'releaseLot', lot: 'L-1' }, { signed: true });
  await plant.give('packer', { type: 'packBox', lot: 'L-1', pieces: 100 });
  await plant.give('packer', { type: 'printLabel', lot: 'L-1', box: 'L-1-001' });
  await plant.openedLot('L-2', 'B1');
  await plant.give('engineer', { type: 'hold', subject: 'lot:L-2', reason: 'looked odd' });
  await plant.give('lab', { type: 'registerGauge', gauge: { id: 'MIC-1', name: 'Micrometer', gaugeKind: 'micrometer', unit: 'mm', resolution: 0.001, expandedUncertainty: 0.002, least: 0, most: 25, calibrationDue: '2099-12-31', bench: null } });
  await plant.give('lab', { type: 'checkGauge', gauge: 'MIC-1', master: 'Block', nominal: 12, found: 12.1, allowedError: 0.002 });
  socket = await openLive(plant.server.url, (await plant.as('engineer')).token);
}, 60_000);
afterAll(async () => {
  socket.close();
  await plant.close();
});

const addresses = [
  '/api/plant', '/api/health', '/api/openapi.json', '/api/certificates/key', '/api/session', '/api/bench?bench=Gauge%20room', '/api/bench', '/api/travellers/lot/L-1', '/api/travellers/lot/L-1?tail=5',
  '/api/travellers/batch/B1', '/api/travellers/furnace/F-1', '/api/travellers/lot/L-1/slips?before=20&limit=7', '/api/travellers/lot/L-1/traveller.json', '/api/states?stream=plan%3AROUTE', '/api/states?stream=person%3AK-1',
  '/api/states?stream=lot%3ANONE', '/api/slips?stream=plan%3AROUTE', '/api/slips?stream=person%3AK-1&before=2&limit=5', '/api/slips?stream=lot%3ANONE', '/api/catalogue', '/api/plans/ROUTE/lots', '/api/tables', '/api/presses', '/api/studies', '/api/cautions', '/api/charts', '/api/charts/lots?chart=chart%3Alot%2FP%2Ffinal%2Flook', '/api/process?kind=lot&owner=PR1&gate=dimensions&characteristic=length', '/api/process?kind=lot&owner=NONE&gate=x&characteristic=y', '/api/gauges/MIC-1/uses', '/api/gauges/MIC-1/recalls/MIC-1-R1', '/api/gauges/MIC-1/recalls/MIC-1-R1/readings?limit=5', '/api/people', '/api/switching', '/api/release', '/api/packing', '/api/lots', '/api/lots?standing=held', '/api/batches', '/api/charges', '/api/charges?kind=coating',
  '/api/ready/furnace', '/api/trace/lot/L-1', '/api/trace/raw/RAW-B1', '/api/trace/box/L-1-001', '/api/search?q=L-1', '/api/search?q=', '/api/search?q=%25', '/api/lots/L-1/certificate.json', '/api/journal/verify',
];

/** An answer that tells the time tells it twice here, some milliseconds apart. */
function clockAside(answer: unknown): unknown {
  return JSON.parse(JSON.stringify(answer, (key, value: unknown) => (key === 'now' ? Number.isFinite(Date.parse(String(value))) : value)));
}

describe('a question', () => {
  it.each([...addresses, '/api/travellers/lot/NONE', '/api/lots/L-2/certificate.json', '/api/states?stream=x'])('%s is answered over the live channel as over HTTP', async (address) => {
    const { status, body } = await (await plant.as('engineer')).get(address);
    const said = await socket.emitWithAck('ask', address);
    // Each has its own token in the session's answer; here it is the same one.
    expect(clockAside(said)).toEqual(clockAside({ status, body }));
  });

  it.each(addresses)('%s is answered in the form the description names', async (address) => {
    const { status, body } = await (await plant.as('engineer')).get(address);
    expect(status).toBe(200);
    const schema = matchRoute(readers, address.split('?')[0] ?? '')?.route.answer;
    expect(schema?.safeParse(body)).toMatchObject({ success: true });
  });

  it('has a place in the description for every address there is, and every one of these is tried here', async () => {
    const { body } = await (await plant.as('engineer')).get('/api/openapi.json');
    const { paths } = body as { paths: Record<string, { get?: { responses: Record<string, unknown> } }> };
    const described = Object.entries(paths).filter(([, { get }]) => get !== undefined).map(([path]) => path).filter((path) => !/\.(pdf|png|svg|csv)$/.test(path)).sort();
    expect(described).toEqual(readers.map(({ path }) => path.replaceAll(/:(\w+)/g, '{$1}')).sort());
    const tried = new Set(addresses.map((address) => matchRoute(readers, address.split('?')[0] ?? '')?.route.path));
    expect(readers.map(({ path }) => path).filter((path) => !tried.has(path))).toEqual([]);
  });
});

describe('a stream of any kind', () => {
  it.each(['lot:L-1', 'batch:B1', 'furnace:F-1', 'plan:ROUTE', 'product:PR1', 'grade:G1', 'person:K-1', 'plant:plant', 'switching:PR1/visual/looks/major'])('%s can be watched over the live channel, and all that goes over it be read over HTTP', async (stream) => {
    const { versions } = await socket.emitWithAck('watch', [stream]) as { readonly versions: Readonly<Record<string, number>> };
    const { body } = await (await plant.as('engineer')).get(`/api/slips?stream=${encodeURIComponent(stream)}`);
    const kept = await plant.server.journal.read(stream);
    expect(kept).toHaveLength(versions[stream] ?? 0);
    expect(kept.length).toBeGreaterThan(0);
    expect(body).toEqual({ slips: kept.map(({ version, hash, body: said }) => expect.objectContaining({ stream, version, hash, body: said })).slice(-200) });
  });
});

describe('a traveller', () => {
  it('comes with its last slips, the earlier ones on asking, and the names of who wrote them', async () => {
    const caller = await plant.as('lab');
    const whole = (await caller.get('/api/travellers/lot/L-1/traveller.json')).body as { state: Lot; slips: { version: number }[]; names: Record<string, string> };
    expect(whole.slips.map(({ version }) => version)).toEqual(Array.from({ length: whole.state.version }, (_, index) => index + 1));
    const tail = (await caller.get('/api/travellers/lot/L-1?tail=3')).body as typeof whole;
    expect(tail.slips).toEqual(whole.slips.slice(-3));
    const earlier = (await caller.get(`/api/travellers/lot/L-1/slips?before=${whole.state.version - 2}&limit=4`)).body as typeof whole;
    expect(earlier.slips).toEqual(whole.slips.slice(-7, -3));
    expect((await caller.get('/api/travellers/lot/L-1/slips?before=1')).body).toEqual({ slips: [] });
    expect(whole.names).toMatchObject({ 'I-1': 'Ina Invented', 'L-1': 'Lou Invented' });
  });
});

describe('the search', () => {
  it('opens the lot of a box by its serial and by the whole code on its label', async () => {
    const caller = await plant.as('packer');
    const lot = ((await caller.get('/api/travellers/lot/L-1')).body as { state: Lot }).state;
    const payload = lot.boxes[0]?.payload ?? '';
    for (const asked of ['L-1-001', 'l-1-001', payload]) {
      expect((await caller.get(`/api/search?q=${encodeURIComponent(asked)}`)).body).toMatchObject({ hits: [{ stream: 'lot:L-1', kind: 'box', id: 'L-1-001' }, ...(asked === payload ? [{ id: 'L-1' }] : [])] });
    }
    expect((await caller.get('/api/search?q=raw-b1')).body).toEqual({ hits: [] });
    expect((await caller.get('/api/search?q=RAW-B1')).body).toMatchObject({ hits: [{ kind: 'raw', id: 'RAW-B1' }] });
    expect((await caller.get('/api/search?q=invented%20insert')).body).toMatchObject({ hits: [{ id: 'L-2' }, { id: 'L-1' }] });
  });
});

describe('a checkpoint', () => {
  it('signs the heads as they are, by the key anyone may fetch, and leaves its slip', async () => {
    const caller = await plant.as('keeper');
    const before = await plant.server.journal.headsDigest();
    const { body } = await caller.post('/api/journal/checkpoint', {});
    const { slip, publicKey } = body as { slip: { body: { digest: string; streams: number; position: number; signature: string } }; publicKey: string };
    expect(slip.body).toMatchObject(before);
    const { verify, createPublicKey } = await import('node:crypto');
    const { digest, position, streams } = slip.body;
    const signed = Buffer.from(`{"digest":"${digest}","position":${position},"streams":${streams}}`, 'utf8');
    expect(verify(null, signed, createPublicKey(publicKey), Buffer.from(slip.body.signature, 'base64'))).toBe(true);
    expect((await caller.get('/api/certificates/key')).body).toMatchObject({ publicKey });
  });

  it('is signed for keepers and engineers alone, and never by merely reading its address', async () => {
    const before = await plant.server.journal.versionOf('plant:plant');
    expect(await (await plant.as('keeper')).get('/api/journal/checkpoint')).toMatchObject({ status: 405, body: { refusal: { code: 'methodNotAllowed', allowed: 'POST' } } });
    expect(await (await plant.as('inspector')).post('/api/journal/checkpoint', {})).toMatchObject({ status: 403, body: { refusal: { code: 'notYourRole' } } });
    expect(await socket.emitWithAck('ask', '/api/journal/checkpoint')).toMatchObject({ status: 404 });
    expect(await plant.server.journal.versionOf('plant:plant')).toBe(before);
    expect((await (await plant.as('engineer')).get('/api/openapi.json')).body).toMatchObject({ paths: { '/api/journal/checkpoint': { post: {} } } });
  });

  it('is signed at each release', async () => {
    const slips = await plant.server.journal.read('plant:plant');
    expect(slips.map(({ type, by }) => `${type} ${by}`)).toContain('headsSigned R-1');
  });
});

it('the invented people are told at the door of the invented plant only while they are those of the demo', async () => {
  const { body } = await (await plant.as('lab')).get('/api/plant');
  expect(body).toMatchObject({ opened: true, demoPeople: [], plant: { demo: true } });
  expect((body as { benches: string[] }).benches).toEqual(['Gauge room', 'Lab', 'Visual 1', 'Release desk', 'Packing', 'Quality desk', 'Office']);
  expect(JSON.stringify(body)).not.toContain(people.keeper.name);
});
