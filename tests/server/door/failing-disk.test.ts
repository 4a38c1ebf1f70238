import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { Door } from '../../../server/door/door.ts';
import type { Entry, Journal, Receipt } from '../../../server/journal/journal.ts';
import { JournalFault } from '../../../server/journal/journal-fault.ts';
import { PinDesk } from '../../../server/people/pin-desk.ts';
import { FixturePlant } from '../fixture-plant.ts';

let plant: FixturePlant;
beforeAll(async () => {
  plant = await FixturePlant.open();
  await plant.releasedBatch('B1');
  await plant.openedLot('L-1', 'B1');
}, 60_000);
afterAll(() => plant.close());

/** The plant's journal, whose next so many appends come to nothing. */
function failing(journal: Journal, left: { failures: number }): Journal {
  const append = async (entry: Entry): Promise<Receipt> => {
    if (left.failures === 0) return journal.append(entry);
    left.failures -= 1;
    await new Promise((resolve) => setImmediate(resolve));
    throw new JournalFault('fault', 'the disk is full');
  };
  return {
    append, receiptFor: (id) => journal.receiptFor(id), read: (stream, after, limit) => journal.read(stream, after, limit), follow: (after, limit) => journal.follow(after, limit),
    versionOf: (stream) => journal.versionOf(stream), heads: () => journal.heads(), headsDigest: () => journal.headsDigest(), verify: () => journal.verify(), close: () => journal.close(),
  };
}

it('what was not written has not happened: it is said so, later commands do not build on it, and the same command is taken afterwards', async () => {
  const { journal } = plant.server;
  const left = { failures: 0 };
  const faults: unknown[] = [];
  const door = new Door({ journal: failing(journal, left), vault: journal.pins, attachments: journal.attachments, pins: new PinDesk(journal.pins), onFault: (fault) => faults.push(fault) });
  const note = (text: string) => ({ clientId: randomUUID(), bench: 'B', command: { type: 'addNote', subject: 'lot:L-1', text } });
  const giver = { badge: 'I-1' };
  const version = await journal.versionOf('lot:L-1');
  left.failures = 1;
  const lost = note('lost');
  // The second is decided on the first before that has failed; it must come out right all the same.
  const [first, second] = await Promise.all([door.give(lost, giver), door.give(note('kept'), giver)]);
  expect(first).toMatchObject({ ok: false, refusal: { code: 'storageFault' } });
  expect(second).toMatchObject({ ok: true, slips: [{ version: version + 1, body: { text: 'kept' } }] });
  expect(faults).toHaveLength(1);
  expect(await door.give(lost, giver)).toMatchObject({ ok: true, repeated: false, slips: [{ version: version + 2, body: { text: 'lost' } }] });
});

it('a refusal does not rest on an entry that then came to nothing', async () => {
  const { journal } = plant.server;
  const left = { failures: 0 };
  const door = new Door({ journal: failing(journal, left), vault: journal.pins, attachments: journal.attachments, pins: new PinDesk(journal.pins), onFault: () => undefined });
  const giver = { badge: 'I-1' };
  const give = (command: unknown) => door.give({ clientId: randomUUID(), bench: 'B', command }, giver);
  const at = { subject: 'lot:L-1', gate: 'dimensions' };
  expect(await give({ type: 'openGate', ...at })).toMatchObject({ ok: true });
  left.failures = 1;
  const reading = { type: 'takeReading', ...at, characteristic: 'length', ordinal: 1, value: 12.5 };
  const [first, second] = await Promise.all([give(reading), give({ ...reading, value: 12.6 })]);
  expect(first).toMatchObject({ ok: false, refusal: { code: 'storageFault' } });
  expect(second).toMatchObject({ ok: true, slips: [{ body: { type: 'readingTaken', value: 12.6 } }] });
});
