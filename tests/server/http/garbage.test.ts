import { randomUUID } from 'node:crypto';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { commandExamples } from '../../../shared/wire/command-examples.ts';
import { FixturePlant, people, type Somebody } from '../fixture-plant.ts';
import { refusalIn, type Answered } from '../http-caller.ts';

/** The dice are seeded: the same garbage each time. */
const seed = 20_859;

let plant: FixturePlant;
beforeAll(async () => {
  plant = await FixturePlant.open();
  await plant.releasedBatch('B1');
  await plant.openedLot('L-1', 'B1');
}, 60_000);
afterAll(async () => {
  // Whatever was sent, the plant goes on and its journal is whole.
  expect((await (await plant.as('engineer')).get('/api/journal/verify')).body).toMatchObject({ firstBroken: null });
  await plant.close();
});

/** A 4xx with its code, its three sentences; never a fault of the server's. */
function expectTold(answered: Answered): void {
  expect(answered.status).toBeGreaterThanOrEqual(400);
  expect(answered.status).toBeLessThan(500);
  expect(refusalIn(answered).code).toMatch(/^[a-zA-Z]+$/);
}

const leaf = fc.oneof(fc.constantFrom<unknown>(null, true, -1, 0, 1.5, 1e308, '', ' ', 'L-1', 'lot:L-1', 'batch:B1', 'dimensions', 'length', '\u0000', '\ud800', '__proto__', 'constructor', [], {}), fc.string({ maxLength: 12 }), fc.double({ noNaN: true, noDefaultInfinity: true }));

describe('the door', () => {
  it('answers any JSON that is no command with a refusal, and writes nothing', async () => {
    const caller = await plant.as('inspector');
    const before = await plant.server.journal.headsDigest();
    await fc.assert(fc.asyncProperty(fc.jsonValue({ maxDepth: 4 }), async (body) => expectTold(await caller.post('/api/commands', body))), { seed, numRuns: 120 });
    expect(await plant.server.journal.headsDigest()).toEqual(before);
  });

  it('answers every command with one field spoilt by its place or by the rule, whoever gives it', async () => {
    const someone = fc.constantFrom<Somebody>('keeper', 'lab', 'inspector', 'engineer', 'releaser', 'packer');
    const spoilt = fc.constantFrom(...Object.values(commandExamples)).chain((command) => fc.tuple(fc.constantFrom(...Object.keys(command)), leaf).map(([field, value]) => ({ ...command, [field]: value })));
    await fc.assert(fc.asyncProperty(someone, spoilt, fc.boolean(), async (who, command, signed) => {
      const answered = await (await plant.as(who)).post('/api/commands', { clientId: randomUUID(), bench: 'Bench 1', command, ...(signed ? { pin: people[who].pin } : {}) });
      if (answered.status !== 200) expectTold(answered);
    }), { seed, numRuns: 400 });
  }, 60_000);

  it('answers any address under /api, and any value in its question', async () => {
    const caller = await plant.as('engineer');
    const word = fc.oneof(fc.constantFrom('lot', 'L-1', 'travellers', 'trace', 'states', 'slips', 'boxes', 'label.png', 'certificate.pdf', 'traveller.csv', '..', '%', '%00', '%ff', "'", '"', ';'), fc.string({ maxLength: 6 }).map(inAddress));
    const query = fc.oneof(fc.constant(''), fc.tuple(fc.constantFrom('stream', 'tail', 'before', 'limit', 'kind', 'standing', 'q', 'size', 'dpi', 'bench'), fc.string({ maxLength: 10 }).map(inAddress)).map(([name, value]) => `?${name}=${value}`));
    const known = fc.constantFrom('/api/travellers/lot/L-1', '/api/travellers/lot/L-1/slips', '/api/states', '/api/bench', '/api/lots', '/api/charges', '/api/search', '/api/lots/L-1/boxes/L-1-001/label.svg');
    const address = fc.oneof(known, fc.array(word, { minLength: 1, maxLength: 5 }).map((words) => `/api/${words.join('/')}`));
    await fc.assert(fc.asyncProperty(address, query, async (path, asked) => {
      const answered = await caller.get(`${path}${asked}`);
      if (answered.status !== 200) expectTold(answered);
    }), { seed, numRuns: 300 });
  }, 60_000);
});

/** As it would stand in an address; half a character, which no address can hold, is left out. */
function inAddress(text: string): string {
  return encodeURIComponent(text.replaceAll(/\p{Cs}/gu, ''));
}
