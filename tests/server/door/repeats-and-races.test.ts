import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Command } from '../../../shared/traveller/index.ts';
import { FixturePlant } from '../fixture-plant.ts';
import { refusalIn } from '../http-caller.ts';

let plant: FixturePlant;
beforeAll(async () => {
  plant = await FixturePlant.open();
  await plant.releasedBatch('B1');
}, 60_000);
afterAll(() => plant.close());

let lots = 0;
/** A fresh lot with its dimensions gate open. */
async function openLot(): Promise<string> {
  const lot = `L-${(lots += 1)}`;
  await plant.openedLot(lot, 'B1');
  await plant.give('inspector', { type: 'openGate', subject: `lot:${lot}`, gate: 'dimensions' });
  return lot;
}
const reading = (lot: string, ordinal: number, value = 12.5): Command => ({ type: 'takeReading', subject: `lot:${lot}`, gate: 'dimensions', characteristic: 'length', ordinal, value });
const versionOf = async (lot: string): Promise<number> => plant.server.journal.versionOf(`lot:${lot}`);

describe('a client id', () => {
  it('sent again with the same command gets the first answer and writes nothing', async () => {
    const lot = await openLot();
    const caller = await plant.as('inspector');
    const clientId = randomUUID();
    const first = await caller.mustGive(reading(lot, 1), { clientId });
    const version = await versionOf(lot);
    const again = await caller.mustGive(reading(lot, 1), { clientId });
    expect(first.repeated).toBe(false);
    expect(again).toEqual({ ...first, repeated: true });
    expect(await versionOf(lot)).toBe(version);
  });

  it('sent ten times at once is written once, whatever the rules say of a second one', async () => {
    const lot = await openLot();
    const caller = await plant.as('inspector');
    for (const command of [reading(lot, 1), { type: 'addNote', subject: `lot:${lot}`, text: 'seen' } as const]) {
      const clientId = randomUUID();
      const version = await versionOf(lot);
      const answers = await Promise.all(Array.from({ length: 10 }, () => caller.mustGive(command, { clientId })));
      expect(answers.filter(({ repeated }) => !repeated)).toHaveLength(1);
      expect(await versionOf(lot)).toBe(version + 1);
    }
    await caller.mustGive(reading(lot, 2));
  });

  it('used again for another command, or by another person, is refused and writes nothing', async () => {
    const lot = await openLot();
    const clientId = randomUUID();
    await (await plant.as('inspector')).mustGive(reading(lot, 1), { clientId });
    const version = await versionOf(lot);
    for (const [who, command] of [['inspector', reading(lot, 1, 12.6)], ['inspector', reading(lot, 2)], ['second', reading(lot, 1)]] as const) {
      const answered = await (await plant.as(who)).give(command, { clientId });
      expect(answered.status).toBe(409);
      expect(refusalIn(answered)).toEqual({ code: 'clientIdReused', clientId });
    }
    expect(await versionOf(lot)).toBe(version);
  });
});

describe('two at one traveller', () => {
  it('who both saw the same version: one is taken, the other is told it has moved', async () => {
    const lot = await openLot();
    const seen = await versionOf(lot);
    const [one, two] = await Promise.all([(await plant.as('inspector')).give(reading(lot, 1), { seen }), (await plant.as('second')).give(reading(lot, 2), { seen })]);
    const statuses = [one.status, two.status].sort();
    expect(statuses).toEqual([200, 409]);
    expect(refusalIn(one.status === 409 ? one : two)).toEqual({ code: 'staleVersion', stream: `lot:${lot}`, seen, actual: seen + 1 });
  });

  it('who enter the same place at once: one is taken, the other learns that it was', async () => {
    const lot = await openLot();
    const [one, two] = await Promise.all([(await plant.as('inspector')).give(reading(lot, 1)), (await plant.as('second')).give(reading(lot, 1, 12.7))]);
    expect([one.status, two.status].sort()).toEqual([200, 409]);
    expect(refusalIn(one.status === 409 ? one : two)).toMatchObject({ code: 'readingAlreadyTaken', ordinal: 1 });
  });

  it('who enter forty places between them at once: all are taken, in forty versions without a gap', async () => {
    const lot = await openLot();
    const callers = [await plant.as('inspector'), await plant.as('second')];
    const before = await versionOf(lot);
    const answers = await Promise.all(Array.from({ length: 40 }, (_, index) => callers[index % 2]?.mustGive(reading(lot, index + 1))));
    const own = answers.flatMap((answer) => answer?.slips ?? []).filter(({ body }) => body.type === 'readingTaken').map(({ version }) => version).sort((a, b) => a - b);
    expect(own).toEqual(Array.from({ length: 40 }, (_, index) => before + 1 + index));
    expect((await plant.server.journal.read(`lot:${lot}`)).at(-1)?.type).toBe('verdictGiven');
  });

  it('while another server writes beside this one: the next command is decided on what that one wrote', async () => {
    const lot = await openLot();
    const stream = `lot:${lot}`;
    const beside = { type: 'held', hold: `${lot}-H1`, cause: { by: 'person' }, reason: 'from beside' };
    await plant.server.journal.append({ clientId: randomUUID(), at: new Date().toISOString(), by: 'K-1', bench: 'beside', changes: [{ stream, expectedVersion: await versionOf(lot), bodies: [beside] }] });
    const answered = await (await plant.as('inspector')).give(reading(lot, 1));
    expect(refusalIn(answered)).toMatchObject({ code: 'subjectIsHeld', reason: 'from beside' });
    const page = await (await plant.as('inspector')).get(`/api/travellers/lot/${lot}?tail=1`);
    expect(page.body).toMatchObject({ state: { holds: [{ reason: 'from beside' }] }, slips: [{ body: { type: 'held' } }] });
  });
});
