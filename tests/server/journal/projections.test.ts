import type { Database } from 'better-sqlite3';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { prepared } from '../../../server/journal/sqlite/prepared.ts';
import { ProjectionFault, type Projection } from '../../../server/journal/sqlite/projection.ts';
import type { SqliteJournal } from '../../../server/journal/sqlite/sqlite-journal.ts';
import { entryOf, reading, readingFor } from './entries.ts';
import { newSqlitePlace, type SqlitePlace } from './sqlite-place.ts';

/** Readings a stream, in order; throws at a slip whose type is `poison`, after having written. */
function readingList(version = 1): Projection {
  return {
    name: 'reading list',
    version,
    create: (db) => db.exec(`
      CREATE TABLE reading_list (position INTEGER PRIMARY KEY, stream TEXT NOT NULL, text TEXT NOT NULL);
      CREATE INDEX reading_list_by_stream ON reading_list (stream);
      CREATE VIEW reading_count AS SELECT stream, count(*) AS n FROM reading_list GROUP BY stream;`),
    apply(db, slips) {
      const add = prepared<[number, string, string]>(db, 'INSERT INTO reading_list (position, stream, text) VALUES (?, ?, ?)');
      for (const { position, stream, type, body } of slips) {
        add.run(position, stream, `${version}: ${JSON.stringify(body)}`);
        if (type === 'poison') throw new Error('cannot be listed');
      }
    },
  };
}

const rows = (db: Database) => db.prepare('SELECT * FROM reading_list ORDER BY position').all();

describe('read models kept in the append’s own transaction', () => {
  let place: SqlitePlace;
  let journal: SqliteJournal;
  const reopen = async (projections: readonly Projection[]) => {
    await journal.close();
    journal = await place.open({ projections });
  };
  beforeEach(async () => {
    place = await newSqlitePlace();
    journal = await place.open({ projections: [readingList()] });
  });
  afterEach(async () => {
    await journal.close();
    await place.clear();
  });

  it('are up to date when an entry is acknowledged', async () => {
    await journal.append(readingFor('lot L-1', 0));
    expect(rows(journal.reader)).toHaveLength(1);
    expect(journal.reader.prepare('SELECT * FROM reading_count').all()).toEqual([{ stream: 'lot L-1', n: 1 }]);
  });

  it('undo only the entry they throw at, its slips and their own rows together', async () => {
    const poisoned = entryOf('c-bad', [{ stream: 'lot L-2', expectedVersion: 0, bodies: [reading(1), { type: 'poison' }] }]);
    const results = await Promise.allSettled([journal.append(readingFor('lot L-1', 0)), journal.append(poisoned), journal.append(readingFor('lot L-1', 1))]);
    expect(results.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'fulfilled']);
    expect(results[1]).toMatchObject({ reason: { name: 'ProjectionFault', projection: 'reading list' } });
    expect(rows(journal.reader)).toHaveLength(2);
    expect(await journal.versionOf('lot L-2')).toBe(0);
    expect(await journal.receiptFor('c-bad')).toBeNull();
    expect(await journal.verify()).toEqual({ slips: 2, streams: 1, firstBroken: null, attachments: 0, brokenAttachment: null });
  });

  it('hold the same after a rebuild as before it, whatever was entered', async () => {
    await fc.assert(fc.asyncProperty(fc.array(fc.tuple(fc.constantFrom('lot A', 'lot B', 'lot C'), fc.nat(3), fc.boolean()), { maxLength: 30 }), async (tries) => {
      await Promise.allSettled(tries.map(([stream, expectedVersion, poison], n) =>
        journal.append(entryOf(`${n}`, [{ stream, expectedVersion, bodies: [reading(n), ...(poison ? [{ type: 'poison' }] : [])] }]))));
      const live = rows(journal.reader);
      expect(await journal.rebuild()).toEqual({ slips: live.length });
      expect(rows(journal.reader)).toEqual(live);
      await journal.close();
      await place.clear();
      journal = await place.open({ projections: [readingList()] });
    }), { seed: 21, numRuns: 25 });
  });

  it('are filled by more than one page of slips', async () => {
    await journal.append(entryOf('c-1', [{ stream: 'lot L-1', expectedVersion: 0, bodies: Array.from({ length: 4_500 }, (_, n) => reading(n)) }]));
    const live = rows(journal.reader);
    expect(await journal.rebuild()).toEqual({ slips: 4_500 });
    expect(rows(journal.reader)).toEqual(live);
  });

  it('stay as they were when a rebuild fails', async () => {
    let broken = false;
    const fragile: Projection = {
      ...readingList(2),
      apply(db, slips) {
        readingList(2).apply(db, slips);
        if (broken) throw new Error('a bug');
      },
    };
    await reopen([fragile]);
    await journal.append(readingFor('lot L-1', 0));
    const live = rows(journal.reader);
    broken = true;
    await expect(journal.rebuild()).rejects.toBeInstanceOf(ProjectionFault);
    broken = false;
    expect(rows(journal.reader)).toEqual(live);
    await journal.append(readingFor('lot L-1', 1));
    expect(rows(journal.reader)).toHaveLength(2);
  });

  it('are filled again at the opening that brings another version, and the old tables go', async () => {
    await journal.append(readingFor('lot L-1', 0));
    await reopen([readingList(2)]);
    expect(rows(journal.reader)).toMatchObject([{ text: expect.stringMatching(/^2: /) }]);
    const renamed: Projection = { ...readingList(3), create: (db) => db.exec('CREATE TABLE other (n INTEGER)'), apply: () => undefined };
    await reopen([renamed]);
    expect(journal.reader.prepare(`SELECT name FROM sqlite_master WHERE name LIKE 'reading%'`).all()).toEqual([]);
  });

  it('are left alone at an opening that brings the same version', async () => {
    await journal.append(readingFor('lot L-1', 0));
    let created = 0;
    await reopen([{ ...readingList(), create: () => { created += 1; } }]);
    expect(created).toBe(0);
    expect(rows(journal.reader)).toHaveLength(1);
  });

  it('are filled again when slips were added without them, and only then', async () => {
    await journal.append(readingFor('lot L-1', 0));
    let created = 0;
    const watched: Projection = { ...readingList(), create: (db) => { created += 1; readingList().create(db); } };
    await reopen([]);
    await reopen([watched]);
    expect(created).toBe(0);
    await reopen([]);
    await journal.append(readingFor('lot L-1', 1));
    await reopen([watched]);
    expect(created).toBe(1);
    expect(rows(journal.reader)).toHaveLength(2);
  });

  it('must have names of their own', async () => {
    await journal.close();
    await expect(place.open({ projections: [readingList(), readingList()] })).rejects.toThrow(/named differently/);
    journal = await place.open();
  });
});
