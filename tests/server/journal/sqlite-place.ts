import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { openSqliteJournal, type SqliteJournalOptions } from '../../../server/journal/sqlite/open-sqlite-journal.ts';
import type { SqliteJournal } from '../../../server/journal/sqlite/sqlite-journal.ts';
import { rowsOfStream } from '../../../server/journal/sqlite/slip-rows.ts';
import { slipHash } from '../../../server/journal/slip-hash.ts';
import type { Place } from './contract.ts';

/** A folder of its own for one SQLite journal. */
export interface SqlitePlace extends Place {
  readonly folder: string;
  readonly file: string;
  open(options?: Omit<SqliteJournalOptions, 'file'>): Promise<SqliteJournal>;
  /** Does something to the closed file behind the journal's back. */
  meddle(act: (db: Database.Database) => void): void;
}

export async function newSqlitePlace(): Promise<SqlitePlace> {
  const folder = await mkdtemp(join(tmpdir(), 'gatehand-journal-'));
  const file = join(folder, 'journal.sqlite');
  const meddle = (act: (db: Database.Database) => void): void => {
    const db = new Database(file);
    act(db);
    db.close();
  };
  return {
    folder,
    file,
    meddle,
    open: (options = {}) => openSqliteJournal({ file, ...options }),
    replaceBody: async (stream, version, bodyText) => meddle((db) => {
      db.prepare('UPDATE slip SET body = ? WHERE stream = ? AND version = ?').run(bodyText, stream, version);
    }),
    replaceBodyAndHash: async (stream, version, bodyText) => meddle((db) => {
      const slip = rowsOfStream(db, stream, version - 1, 1)[0];
      if (slip === undefined) throw new Error(`no slip ${version} of ${stream}`);
      db.prepare('UPDATE slip SET body = ?, hash = ? WHERE position = ?').run(bodyText, slipHash({ ...slip, bodyText }), slip.position);
    }),
    removeSlip: async (stream, version) => meddle((db) => {
      db.prepare('DELETE FROM slip WHERE stream = ? AND version = ?').run(stream, version);
    }),
    clear: () => rm(folder, { recursive: true, force: true }),
  };
}
