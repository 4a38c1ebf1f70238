import { afterAll, beforeAll, expect, it } from 'vitest';
import { FixturePlant } from '../fixture-plant.ts';
import { refusalIn } from '../http-caller.ts';

let plant: FixturePlant;
beforeAll(async () => {
  plant = await FixturePlant.open();
  await plant.releasedBatch('B1');
}, 60_000);
afterAll(() => plant.close());

const addresses = ['/api/travellers/lot/L-1', '/api/travellers/batch/B1', '/api/bench?bench=Gauge%20room', '/api/catalogue', '/api/people', '/api/trace/lot/L-1', '/api/session', '/api/switching', '/api/states?stream=person%3AI-1', '/api/certificates/key'];

it('a server stopped in the middle of a sample goes on where it was: states, lists, sessions and client ids', async () => {
  await plant.openedLot('L-1', 'B1');
  await plant.give('inspector', { type: 'openGate', subject: 'lot:L-1', gate: 'dimensions' });
  const caller = await plant.as('inspector');
  const reading = (ordinal: number) => ({ type: 'takeReading', subject: 'lot:L-1', gate: 'dimensions', characteristic: 'length', ordinal, value: 12.5 }) as const;
  const clientId = 'before-the-restart';
  const first = await caller.mustGive(reading(1), { clientId });
  for (let ordinal = 2; ordinal <= 20; ordinal += 1) await caller.mustGive(reading(ordinal));
  const read = async (): Promise<unknown[]> => Promise.all(addresses.map(async (address) => (await caller.get(address)).body));
  const before = await read();

  await plant.restart();
  expect(await read()).toEqual(before);
  expect(await caller.mustGive(reading(1), { clientId })).toEqual({ ...first, repeated: true });
  expect(refusalIn(await caller.give(reading(1)))).toMatchObject({ code: 'readingAlreadyTaken' });
  for (let ordinal = 21; ordinal <= 40; ordinal += 1) await caller.mustGive(reading(ordinal));
  expect((await caller.get('/api/travellers/lot/L-1?tail=1')).body).toMatchObject({ slips: [{ body: { type: 'verdictGiven', verdict: { accepted: true } } }] });
});

it('what was entered while the server stops is either answered and kept, or not answered ok', async () => {
  await plant.openedLot('L-2', 'B1');
  const caller = await plant.as('inspector');
  const entered = Array.from({ length: 60 }, (_, index) => caller.give({ type: 'addNote', subject: 'lot:L-2', text: `note ${index}` }).then(({ status }) => (status === 200 ? index : null), () => null));
  await plant.restart();
  const acknowledged = (await Promise.all(entered)).filter((index) => index !== null);
  const kept = (await plant.server.journal.read('lot:L-2')).map(({ body }) => body).filter(({ type }) => type === 'noteAdded').map((body) => JSON.stringify(body));
  for (const index of acknowledged) expect(kept.filter((body) => body.includes(`"note ${index}"`))).toHaveLength(1);
  expect((await plant.server.journal.verify()).firstBroken).toBeNull();
});
