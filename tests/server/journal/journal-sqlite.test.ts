import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { JournalFault } from '../../../server/journal/journal-fault.ts';
import type { Projection } from '../../../server/journal/sqlite/projection.ts';
import type { SqliteJournal } from '../../../server/journal/sqlite/sqlite-journal.ts';
import { journalContract } from './contract.ts';
import { readingFor } from './entries.ts';
import { newSqlitePlace, type SqlitePlace } from './sqlite-place.ts';

journalContract('a journal in SQLite', newSqlitePlace);

describe('a journal in SQLite', () => {
  let place: SqlitePlace;
  let journal: SqliteJournal;
  beforeEach(async () => {
    place = await newSqlitePlace();
    journal = await place.open();
  });
  afterEach(async () => {
    await journal.close();
    await place.clear();
  });

  it('writes ahead of the file and syncs the disk at every commit', async () => {
    await journal.close();
    const found: unknown[] = [];
    const look: Projection = {
      name: 'look',
      version: 1,
      create: (db) => ['journal_mode', 'synchronous'].forEach((name) => found.push(db.pragma(name, { simple: true }))),
      apply: () => undefined,
    };
    journal = await place.open({ projections: [look] });
    expect(found, 'synchronous 2 is FULL (sqlite.org, PRAGMA synchronous)').toEqual(['wal', 2]);
  });

  it('offers read models a connection that cannot write', () => {
    expect(() => journal.reader.exec('DELETE FROM slip')).toThrow(/readonly/);
  });

  it('commits what arrives in one turn once: no reader sees a part of it', async () => {
    const seen = new Set<unknown>();
    const count = journal.reader.prepare('SELECT count(*) FROM slip').pluck();
    await Promise.all(Array.from({ length: 200 }, async (_, n) => {
      await journal.append(readingFor(`lot L-${n}`, 0));
      seen.add(count.get());
    }));
    expect([...seen]).toEqual([200]);
  });

  it('tells a second server in plain words that the folder is taken, and lets it in once the first has gone', async () => {
    const second = place.open();
    await expect(second).rejects.toMatchObject({ name: 'JournalFault', kind: 'folderInUse' });
    await expect(second).rejects.toThrow(/Another Gatehand server has .*journal\.sqlite open\. Stop that one first/);
    await journal.append(readingFor('lot L-1', 0));
    await journal.close();
    journal = await place.open();
    expect(await journal.versionOf('lot L-1')).toBe(1);
  });

  it('leaves a file alone that is no journal, or one of a newer release', async () => {
    await journal.close();
    place.meddle((db) => db.pragma('user_version = 99'));
    await expect(place.open()).rejects.toThrow(/a journal of layout 99; this release reads layout 1/);
    place.meddle((db) => db.pragma('application_id = 1'));
    await expect(place.open()).rejects.toMatchObject({ kind: 'unknownLayout' });
  });

  it('stamps a slip with the present schema of its type', async () => {
    await journal.close();
    journal = await place.open({ schemaOf: (type) => (type === 'readingTaken' ? 3 : 1) });
    expect((await journal.append(readingFor('lot L-1', 0))).slips[0]?.schema).toBe(3);
    expect((await journal.verify()).firstBroken).toBeNull();
  });

  it('finds a stream taken out with its head', async () => {
    await journal.append(readingFor('lot L-1', 0));
    await journal.append(readingFor('lot L-2', 0));
    await journal.append(readingFor('lot L-3', 0));
    await journal.close();
    place.meddle((db) => db.exec(`DELETE FROM slip WHERE stream = 'lot L-2'; DELETE FROM head WHERE stream = 'lot L-2'`));
    journal = await place.open();
    expect((await journal.verify()).firstBroken).toMatchObject({ position: 2, why: expect.stringContaining('is gone') });
  });

  it('sees where a stream stands when another program has moved it meanwhile', async () => {
    await journal.append(readingFor('lot L-1', 0));
    place.meddle((db) => db.exec(`UPDATE head SET version = 4 WHERE stream = 'lot L-1'`));
    await expect(journal.append(readingFor('lot L-1', 1))).rejects.toMatchObject({ name: 'StaleVersion', expected: 1, actual: 4 });
    place.meddle((db) => db.exec(`UPDATE head SET version = 1 WHERE stream = 'lot L-1'`));
    expect((await journal.append(readingFor('lot L-1', 1))).slips[0]?.version).toBe(2);
  });

  it('copies itself whole while readings come in', async () => {
    await Promise.all(Array.from({ length: 300 }, (_, n) => journal.append(readingFor('lot L-1', n))));
    await journal.keys.put('signing key', 'kept in the copy');
    const elsewhere = await newSqlitePlace();
    const copying = journal.backup(elsewhere.file);
    await journal.append(readingFor('lot L-1', 300));
    await copying;
    const copy = await elsewhere.open();
    const { slips, firstBroken } = await copy.verify();
    expect(firstBroken).toBeNull();
    expect([300, 301]).toContain(slips);
    expect(await copy.keys.getText('signing key')).toBe('kept in the copy');
    await copy.close();
    await elsewhere.clear();
  });

  it('says it is closed when it is', async () => {
    await journal.close();
    await expect(journal.backup(`${place.file}.copy`)).rejects.toBeInstanceOf(JournalFault);
    await expect(journal.rebuild()).rejects.toBeInstanceOf(JournalFault);
  });
});
