import { beforeEach, describe, expect, it } from 'vitest';
import type { Command } from '../../../shared/traveller/index.ts';
import type { StampedSlip } from '../../../shared/wire/stamped-slip.ts';
import { Link } from '../../../kiosk/link/link.ts';
import { memoryStore } from '../../../kiosk/link/outbox-store.ts';
import { TravellerStore, type TravellerView } from '../../../kiosk/link/traveller-store.ts';
import { batchAfter, opened, readingSlip, stream } from './a-batch.ts';
import { FakeTransport, refused, type Arrived } from './fake-transport.ts';

const words = () => ({ happened: 'happened', kept: 'kept', next: 'next' });
const reading = (ordinal: number, value = 0.1): Command => ({ type: 'takeReading', subject: stream, gate: 'powder-lab', characteristic: 'moisture', ordinal, value });
const path = '/api/travellers/batch/P-1?tail=200';

let wire: FakeTransport;
let link: Link;
let store: TravellerStore;
let thread: readonly StampedSlip[];

/** The server's side: it writes what is sent, and tells the watchers. */
function take({ clientId, command }: Arrived) {
  const { ordinal, value } = command as unknown as { ordinal: number; value: number };
  const written = readingSlip(thread.length + 1, ordinal, value, clientId);
  thread = [...thread, written];
  serve();
  return { ok: true as const, slips: [written], repeated: false };
}
function serve(): void {
  wire.answers = { [path]: { status: 200, body: { state: batchAfter(thread), slips: thread, names: { 'L-201': 'Tamsin Vire' } } } };
}
function view(): Extract<TravellerView, { state: 'open' }> {
  const { value } = store.view;
  if (value.state !== 'open') throw new Error(`the traveller is ${value.state}`);
  return value;
}
const readings = (): readonly number[] => view().subject.gates[0]?.work[0]?.readings.map(({ ordinal }) => ordinal) ?? [];
/** Lets what is under way on the fake wire come to its end: nothing on it takes time. */
const settled = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

beforeEach(async () => {
  wire = new FakeTransport();
  wire.reply = take;
  thread = opened;
  serve();
  link = await Link.open({ transport: wire, store: memoryStore(), words, now: () => 0, later: () => undefined });
  await link.signIn('I-301', '3010', 'Lab');
  store = new TravellerStore(link, stream, words);
  store.open();
  await settled();
});

describe('an own entry', () => {
  it('shows at once, before the server has answered, and once only afterwards', async () => {
    const given = store.give(reading(1));
    expect(readings()).toEqual([1]);
    expect(view().own.map(({ standing }) => standing)).toEqual(['sending']);
    expect((await given).state).toBe('acknowledged');
    wire.hearSlips(thread.slice(2));
    expect(readings()).toEqual([1]);
    expect(view().own).toEqual([]);
    expect(view().slips.map(({ version }) => version)).toEqual([1, 2, 3]);
  });

  it('is kept without a network, together with the verdict it brings, and stands when the network returns', async () => {
    wire.network = false;
    for (const ordinal of [1, 2, 3]) await store.give(reading(ordinal));
    expect(view().own.map(({ standing }) => standing)).toEqual(['kept', 'kept', 'kept']);
    expect(view().subject.gates[0]?.status).toBe('accepted');
    expect(view().confirmed.gates[0]?.status).toBe('open');
    wire.network = true;
    await link.outbox.flush();
    await settled();
    expect(view().own).toEqual([]);
    expect(view().confirmed.gates[0]?.work[0]?.readings.map(({ ordinal }) => ordinal)).toEqual([1, 2, 3]);
  });

  it('is taken back loudly when the server refuses it, until it is set aside', async () => {
    wire.reply = () => refused;
    const outcome = await store.give(reading(1));
    expect(readings()).toEqual([]);
    expect(view().own.map(({ standing, words: why }) => [standing, why?.happened])).toEqual([['refused', 'The lot is on hold.']]);
    await store.dismiss(outcome.clientId);
    expect(view().own).toEqual([]);
    expect(link.outbox.entries.value).toEqual([]);
  });

  it('is refused here and not sent when the rules say no', async () => {
    const outcome = await store.give(reading(1, 12));
    expect(outcome.state === 'refused' && outcome.refusal.code).toBe('unlikelyValue');
    expect(wire.arrived).toEqual([]);
    expect(view().own).toEqual([]);
  });

  it('is questioned without a network too', async () => {
    wire.network = false;
    expect((await store.give(reading(1, 12))).state).toBe('refused');
    expect(link.outbox.entries.value).toEqual([]);
  });

  it('made before a reload is shown again as kept', async () => {
    wire.network = false;
    await store.give(reading(1));
    const again = new TravellerStore(link, stream, words);
    wire.reachable = true;
    again.open();
    await settled();
    const { value } = again.view;
    expect(value.state === 'open' && value.own.map(({ standing }) => standing)).toEqual(['kept']);
  });
});

describe('slips of others', () => {
  it('are folded as they come', () => {
    wire.hearSlips([readingSlip(3, 1, 0.11)]);
    expect(readings()).toEqual([1]);
  });

  it('that come twice are folded once', () => {
    wire.hearSlips([readingSlip(3, 1, 0.11)]);
    wire.hearSlips([readingSlip(3, 1, 0.11), readingSlip(4, 2, 0.12)]);
    expect(readings()).toEqual([1, 2]);
    expect(view().slips.map(({ version }) => version)).toEqual([1, 2, 3, 4]);
  });

  it('with a gap between make it fetch the traveller anew', async () => {
    thread = [...opened, readingSlip(3, 1, 0.11), readingSlip(4, 2, 0.12)];
    serve();
    wire.hearSlips(thread.slice(3));
    await settled();
    expect(readings()).toEqual([1, 2]);
  });

  it('missed during a break are fetched when the channel is back', async () => {
    wire.network = false;
    thread = [...opened, readingSlip(3, 1, 0.11)];
    serve();
    wire.versions = { [stream]: 3 };
    wire.network = true;
    await settled();
    expect(readings()).toEqual([1]);
  });
});

it('says so when the traveller is not there, and finds it on trying again', async () => {
  const there = wire.answers;
  wire.answers = {};
  const other = new TravellerStore(link, stream, words);
  wire.live.set(false);
  other.open();
  await settled();
  expect(other.view.value.state).toBe('faulty');
  wire.answers = there;
  other.retry();
  await settled();
  expect(other.view.value.state).toBe('open');
});
