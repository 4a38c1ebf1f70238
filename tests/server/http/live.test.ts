import { randomUUID } from 'node:crypto';
import type { Socket } from 'socket.io-client';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { StampedSlip } from '../../../shared/wire/stamped-slip.ts';
import { FixturePlant } from '../fixture-plant.ts';
import { next, openLive } from './live-caller.ts';

let plant: FixturePlant;
const sockets: Socket[] = [];
beforeAll(async () => {
  plant = await FixturePlant.open();
  await plant.releasedBatch('B1');
  await plant.openedLot('L-1', 'B1');
}, 60_000);
afterEach(() => {
  for (const socket of sockets.splice(0)) socket.close();
});
afterAll(() => plant.close());

async function kiosk(): Promise<Socket> {
  const socket = await openLive(plant.server.url, (await plant.as('inspector')).token);
  sockets.push(socket);
  return socket;
}
const note = (text = 'seen'): Record<string, unknown> => ({ clientId: randomUUID(), bench: 'Bench 1', command: { type: 'addNote', subject: 'lot:L-1', text } });

describe('the live channel', () => {
  it('lets in nobody without a session, and no page of another site', async () => {
    await expect(openLive(plant.server.url, '')).rejects.toThrow('notSignedIn');
    await expect(openLive(plant.server.url, 'x'.repeat(43))).rejects.toThrow('notSignedIn');
    const { token } = await plant.as('inspector');
    await expect(openLive(plant.server.url, token, { origin: 'http://elsewhere.example' })).rejects.toThrow();
    sockets.push(await openLive(plant.server.url, '', { cookie: `gatehand=${token}`, origin: plant.server.url }));
  });

  it('answers a command as HTTP does, repeated or refused', async () => {
    const socket = await kiosk();
    const envelope = note();
    const first = await socket.emitWithAck('command', envelope);
    expect(first).toMatchObject({ ok: true, repeated: false, slips: [{ stream: 'lot:L-1', body: { type: 'noteAdded' } }] });
    expect((await (await plant.as('inspector')).post('/api/commands', envelope)).body).toEqual({ ...first, repeated: true });
    const wrong = { ...note(), clientId: randomUUID(), command: { type: 'openGate', subject: 'lot:L-1', gate: 'visual' } };
    expect(await socket.emitWithAck('command', wrong)).toEqual((await (await plant.as('inspector')).post('/api/commands', wrong)).body);
  });

  it('carries every slip to whoever watches its stream, in order, and to nobody else', async () => {
    const [writer, watcher, other] = [await kiosk(), await kiosk(), await kiosk()];
    const heard: StampedSlip[] = [];
    const misheard: StampedSlip[] = [];
    watcher.on('slips', (slips: StampedSlip[]) => heard.push(...slips));
    other.on('slips', (slips: StampedSlip[]) => misheard.push(...slips));
    const version = await plant.server.journal.versionOf('lot:L-1');
    expect(await watcher.emitWithAck('watch', ['lot:L-1', 'lot:NONE'])).toEqual({ versions: { 'lot:L-1': version, 'lot:NONE': 0 } });
    await other.emitWithAck('watch', ['batch:B1']);
    const replies = await Promise.all(Array.from({ length: 30 }, (_, index) => writer.emitWithAck('command', note(`note ${index}`))));
    expect(replies.every(({ ok }: { ok: boolean }) => ok)).toBe(true);
    await watcher.emitWithAck('ask', '/api/health');
    expect(heard.map((slip) => slip.version)).toEqual(Array.from({ length: 30 }, (_, index) => version + 1 + index));
    expect(heard).toEqual((await plant.server.journal.read('lot:L-1', version)).map((slip) => expect.objectContaining({ hash: slip.hash, body: slip.body, clientId: slip.clientId, position: slip.position })));
    expect(misheard).toEqual([]);
    await watcher.emitWithAck('unwatch', ['lot:L-1']);
    await writer.emitWithAck('command', note());
    await watcher.emitWithAck('ask', '/api/health');
    expect(heard).toHaveLength(30);
  });

  it('tells everyone which lists have changed, and says nothing of a reading', async () => {
    const socket = await kiosk();
    await plant.openedLot('L-2', 'B1');
    const changed = next<{ topics: string[] }>(socket, 'changed');
    await plant.give('inspector', { type: 'openGate', subject: 'lot:L-2', gate: 'dimensions' });
    expect((await changed).topics).toContain('bench');
  });

  it.each<[string, unknown]>([['command', null], ['command', 'x'], ['ask', 5], ['ask', '/api/nowhere'], ['ask', '/api/lots/L-1/certificate.pdf'], ['ask', '/api/travellers/lot/%E0%A4%A'], ['watch', 'lot:L-1'], ['watch', [5]], ['watch', Array.from({ length: 500 }, (_, at) => `lot:${at}`)], ['unwatch', {}]])('answers nonsense at %s (%#) with a refusal and goes on', async (event, payload) => {
    const socket = await kiosk();
    const said = await socket.emitWithAck(event, payload);
    expect(JSON.stringify(said)).toMatch(/"code":"(malformed|unknownAddress)"/);
    expect(await socket.emitWithAck('command', note())).toMatchObject({ ok: true });
  });

  it('says in words what is too long in a large command, and stays connected', async () => {
    const socket = await kiosk();
    expect(await socket.emitWithAck('command', note('x'.repeat(400_000)))).toMatchObject({ ok: false, refusal: { code: 'malformed', problems: [{ where: 'command.text' }] }, words: { kept: expect.stringMatching(/./) } });
    expect(await socket.emitWithAck('command', note())).toMatchObject({ ok: true });
  });

  it('cuts the line to whoever sends what no command can be, and goes on for all others', async () => {
    const [loud, calm] = [await kiosk(), await kiosk()];
    const gone = next(loud, 'disconnect');
    loud.emit('command', { ...note('x'.repeat(1_500_000)) });
    await gone;
    expect(await calm.emitWithAck('command', note())).toMatchObject({ ok: true });
  });

  it('closes when its person signs off', async () => {
    const caller = await plant.as('packer');
    const socket = await openLive(plant.server.url, caller.token);
    sockets.push(socket);
    const gone = next(socket, 'disconnect');
    await caller.send('DELETE', '/api/session');
    await gone;
  });
});
