import Database from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Entry } from '../../server/journal/journal.ts';
import { JournalFault } from '../../server/journal/journal-fault.ts';
import type { Projection } from '../../server/journal/sqlite/projection.ts';
import { entryOf, readingFor } from '../server/journal/entries.ts';
import { newSqlitePlace, type SqlitePlace } from '../server/journal/sqlite-place.ts';

/** A read model that keeps nothing, but gets hold of the connection that writes. */
function foothold(apply: Projection['apply'] = () => undefined): Projection & { writer(): Database.Database } {
  let held: Database.Database | null = null;
  return {
    name: 'foothold',
    version: 1,
    create: (db) => { held = db; },
    apply,
    writer: () => {
      if (held === null) throw new Error('not opened yet');
      return held;
    },
  };
}

function large(clientId: string, stream: string): Entry {
  const block = { type: 'weightsTaken', weights: 'w'.repeat(400_000) };
  return entryOf(clientId, [{ stream, expectedVersion: 0, bodies: [block] }]);
}

describe('when the disk fails', () => {
  let place: SqlitePlace;
  beforeEach(async () => { place = await newSqlitePlace(); });
  afterEach(() => place.clear());

  it('refuses the whole group on a full disk, keeps what was acknowledged, and goes on when there is room again', async () => {
    const hold = foothold();
    const journal = await place.open({ projections: [hold] });
    await journal.append(readingFor('lot L-1', 0));
    const pages = Number(hold.writer().pragma('page_count', { simple: true }));
    hold.writer().pragma(`max_page_count = ${pages + 20}`); // SQLite then reports SQLITE_FULL as it does for a full disk
    const group = await Promise.allSettled([readingFor('lot L-1', 1), large('c-large', 'lot L-2'), readingFor('lot L-3', 0)].map((entry) => journal.append(entry)));
    for (const one of group) expect(one).toMatchObject({ status: 'rejected', reason: { name: 'JournalFault', kind: 'fault' } });
    expect(await journal.follow(0, 10)).toHaveLength(1);
    expect((await journal.append(readingFor('lot L-1', 1))).repeated).toBe(false);
    hold.writer().pragma('max_page_count = 1000000');
    expect((await journal.append(large('c-large', 'lot L-2'))).repeated).toBe(false);
    expect(await journal.verify()).toEqual({ slips: 3, streams: 2, firstBroken: null, attachments: 0, brokenAttachment: null });
    await journal.close();
  });

  it('refuses the group while another program holds the file, and goes on afterwards', async () => {
    const journal = await place.open({ patienceMs: 20 });
    const shell = new Database(place.file);
    shell.exec('BEGIN IMMEDIATE');
    await expect(journal.append(readingFor('lot L-1', 0))).rejects.toMatchObject({ name: 'JournalFault', kind: 'fault' });
    shell.close();
    expect((await journal.append(readingFor('lot L-1', 0))).repeated).toBe(false);
    await journal.close();
  });

  it('takes nothing more after a failed sync until it is opened again, and still reads', async () => {
    // A sync cannot be made to fail from here; the database's own error is thrown in its place.
    let failing = false;
    const failingSync = foothold(() => {
      if (failing) throw new Database.SqliteError('disk I/O error', 'SQLITE_IOERR_FSYNC');
    });
    const journal = await place.open({ projections: [failingSync] });
    await journal.append(readingFor('lot L-1', 0));
    failing = true;
    const group = await Promise.allSettled([journal.append(readingFor('lot L-1', 1)), journal.append(readingFor('lot L-2', 0))]);
    for (const one of group) expect(one).toMatchObject({ status: 'rejected', reason: { name: 'JournalFault', kind: 'closed' } });
    failing = false;
    await expect(journal.append(readingFor('lot L-1', 1))).rejects.toBeInstanceOf(JournalFault);
    expect(await journal.read('lot L-1')).toHaveLength(1);
    await journal.close();
    const again = await place.open();
    expect((await again.append(readingFor('lot L-1', 1))).repeated).toBe(false);
    expect(await again.verify()).toEqual({ slips: 2, streams: 1, firstBroken: null, attachments: 0, brokenAttachment: null });
    await again.close();
  });
});
