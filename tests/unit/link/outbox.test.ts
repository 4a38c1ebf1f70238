import { beforeEach, describe, expect, it } from 'vitest';
import type { Command } from '../../../shared/traveller/index.ts';
import { Link } from '../../../kiosk/link/link.ts';
import { memoryStore, type OutboxStore } from '../../../kiosk/link/outbox-store.ts';
import { FakeTransport, refused, storageFault } from './fake-transport.ts';

const reading = (ordinal: number): Command => ({ type: 'takeReading', subject: 'lot:L26-0001', gate: 'dimensions', characteristic: 'thickness', ordinal, value: 4.76 });
const words = () => ({ happened: 'happened', kept: 'kept', next: 'next' });

let wire: FakeTransport;
let store: OutboxStore;
let later: (() => void)[];
const openLink = (): Promise<Link> => Link.open({ transport: wire, store, words, now: () => 1_700_000_000_000, later: (_, then) => void later.push(then) });
const signedOn = async (badge = 'I-301'): Promise<Link> => {
  const link = await openLink();
  await link.signIn(badge, '3010', 'Gauge room');
  return link;
};

beforeEach(() => {
  wire = new FakeTransport();
  store = memoryStore();
  later = [];
});

describe('an entry of the bench', () => {
  it('is acknowledged and leaves the outbox when the network is there', async () => {
    const link = await signedOn();
    expect((await link.give(reading(1))).state).toBe('acknowledged');
    expect(link.outbox.entries.value).toEqual([]);
    expect(await store.all()).toEqual([]);
  });

  it('is written down before it is sent', async () => {
    const link = await signedOn();
    wire.reply = async (entry) => {
      expect((await store.all()).map(({ clientId }) => clientId)).toEqual([entry.clientId]);
      return { ok: true, slips: [], repeated: false };
    };
    await link.give(reading(1));
    expect(wire.arrived).toHaveLength(1);
  });

  it('says how long it waited, where that was a minute or more', async () => {
    let now = 1_700_000_000_000;
    const link = await Link.open({ transport: wire, store, words, now: () => now, later: (_, then) => void later.push(then) });
    await link.signIn('I-301', '3010', 'Gauge room');
    await link.give(reading(1));
    wire.network = false;
    await link.give(reading(2));
    now += 9 * 3_600_000;
    wire.network = true;
    await link.outbox.flush();
    expect(wire.arrived.map((entry) => [entry.clientId.length > 0, entry.waitedMs])).toEqual([[true, undefined], [true, 32_400_000]]);
  });

  it('waits without a network, and all are sent once, in the order entered, when it returns', async () => {
    const link = await signedOn();
    wire.network = false;
    for (const ordinal of [1, 2, 3, 4, 5, 6, 7]) expect((await link.give(reading(ordinal))).state).toBe('kept');
    expect(link.outbox.unsent).toHaveLength(7);
    wire.network = true;
    await link.outbox.flush();
    expect(wire.arrived.map(({ command }) => (command as { ordinal?: number }).ordinal)).toEqual([1, 2, 3, 4, 5, 6, 7]);
    expect(link.outbox.entries.value).toEqual([]);
  });

  it('outlives a reload of the page', async () => {
    const before = await signedOn();
    wire.network = false;
    await before.give(reading(1));
    await before.give(reading(2));
    wire = new FakeTransport();
    const after = await signedOn();
    await after.outbox.flush();
    expect(wire.arrived.map(({ command }) => (command as { ordinal?: number }).ordinal)).toEqual([1, 2]);
    expect(await store.all()).toEqual([]);
  });

  it('is sent again under the same client id when its answer was lost', async () => {
    const link = await signedOn();
    wire.reply = () => 'lost';
    const outcome = await link.give(reading(1));
    expect(outcome.state).toBe('kept');
    wire.reply = () => ({ ok: true, slips: [], repeated: true });
    await link.outbox.flush();
    expect(new Set(wire.arrived.map(({ clientId }) => clientId))).toEqual(new Set([outcome.clientId]));
    expect(wire.arrived).toHaveLength(2);
    expect(link.outbox.entries.value).toEqual([]);
  });

  it('stays as refused, with the reason, until somebody dismisses it, and those behind it go on', async () => {
    const link = await signedOn();
    wire.reply = ({ command }) => ((command as { ordinal?: number }).ordinal === 1 ? refused : { ok: true, slips: [], repeated: false });
    const outcome = await link.give(reading(1));
    expect(outcome.state).toBe('refused');
    expect((await link.give(reading(2))).state).toBe('acknowledged');
    expect(link.outbox.entries.value.map((entry) => entry.refused?.refusal.code)).toEqual(['subjectIsHeld']);
    expect((await store.all()).map((entry) => entry.refused?.words.happened)).toEqual(['The lot is on hold.']);
    await link.outbox.dismiss(outcome.clientId);
    expect(await store.all()).toEqual([]);
  });

  it('waits through a fault of the plant’s store and is sent again later', async () => {
    const link = await signedOn();
    wire.reply = () => storageFault;
    expect((await link.give(reading(1))).state).toBe('kept');
    wire.reply = () => ({ ok: true, slips: [], repeated: false });
    later.forEach((then) => then());
    await link.outbox.flush();
    expect(link.outbox.entries.value).toEqual([]);
  });

  it('is sent in no other name: it waits for its person, and others’ entries pass it', async () => {
    const link = await signedOn('I-301');
    wire.network = false;
    await link.give(reading(1));
    wire.reachable = true;
    await link.signIn('I-302', '3020', 'Gauge room');
    expect((await link.give(reading(2))).state).toBe('acknowledged');
    expect(link.outbox.unsent.map(({ by }) => by)).toEqual(['I-301']);
    await link.signIn('I-301', '3010', 'Gauge room');
    await link.outbox.flush();
    expect(wire.arrived.map(({ command }) => (command as { ordinal?: number }).ordinal)).toEqual([2, 1]);
  });
});

describe('a signed command', () => {
  const release: Command = { type: 'releaseLot', lot: 'L26-0001' };

  it('is never written down: without a network it is refused at once', async () => {
    const link = await signedOn();
    wire.network = false;
    const outcome = await link.give(release, { pin: '3010' });
    expect(outcome.state === 'refused' && outcome.refusal.code).toBe('signingNeedsNetwork');
    expect(JSON.stringify(await store.all())).not.toContain('3010');
    expect(await store.all()).toEqual([]);
  });

  it('goes after what was entered before it', async () => {
    const link = await signedOn();
    wire.network = false;
    await link.give(reading(1));
    wire.reachable = true;
    wire.live.set(true);
    await link.give(release, { pin: '3010' });
    expect(wire.arrived.map(({ command }) => command.type)).toEqual(['takeReading', 'releaseLot']);
  });

  it('is asked for once more when its answer is lost, and then says that it may have been taken', async () => {
    const link = await signedOn();
    wire.reply = () => 'lost';
    const outcome = await link.give(release, { pin: '3010' });
    expect(outcome.state === 'refused' && outcome.refusal.code).toBe('answerLost');
    expect(new Set(wire.arrived.map(({ clientId }) => clientId)).size).toBe(1);
    expect(wire.arrived).toHaveLength(2);
  });
});

describe('the link', () => {
  it('is signed out, online or offline, and tells each change', async () => {
    const link = await openLink();
    const told: string[] = [];
    link.connection.follow((connection) => void told.push(connection));
    await link.signIn('I-301', '3010', 'Gauge room');
    wire.network = false;
    wire.network = true;
    await link.signOut();
    expect(told).toEqual(['signedOut', 'offline', 'online', 'offline', 'online', 'offline', 'signedOut']);
  });

  it('throws a refusal with its words at who asks for what is not there', async () => {
    const link = await signedOn();
    wire.live.set(false);
    await expect(link.ask('/api/nowhere')).rejects.toMatchObject({ status: 404, words: { happened: 'Nothing stands there.' } });
  });

  it('watches again and has lists read again after a break', async () => {
    const link = await signedOn();
    let read = 0;
    link.onChanged(['bench'], () => (read += 1));
    const told: number[] = [];
    wire.versions = { 'lot:L26-0001': 12 };
    link.watch(['lot:L26-0001'], () => undefined, (versions) => void told.push(versions['lot:L26-0001'] ?? 0));
    wire.network = false;
    wire.network = true;
    await link.outbox.flush();
    expect(wire.watched).toEqual([['lot:L26-0001'], ['lot:L26-0001']]);
    expect(told).toEqual([12, 12]);
    expect(read).toBe(1);
  });
});
