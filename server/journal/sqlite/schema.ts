import type { Database } from 'better-sqlite3';
import { JournalFault } from '../journal-fault.ts';

const layout = 1;
const applicationId = 0x47617465;

// `slip` is stored in order of arrival with a separate index on (stream, version): measured at 2.4 times the writes of a table
// clustered by stream. `head` repeats the last slip of each stream: it answers "which version" with one look, and a stream cut
// short no longer agrees with it. `entry` names the run of slips an entry became; its rows are short, so one tree keyed by client id
// costs less than a table with an index beside it.
const tables = `
  CREATE TABLE slip (
    position INTEGER PRIMARY KEY, stream TEXT NOT NULL, version INTEGER NOT NULL, type TEXT NOT NULL, schema INTEGER NOT NULL,
    at TEXT NOT NULL, by TEXT NOT NULL, bench TEXT NOT NULL, client_id TEXT NOT NULL, body TEXT NOT NULL,
    prev_hash TEXT NOT NULL, hash TEXT NOT NULL
  ) STRICT;
  CREATE UNIQUE INDEX slip_in_stream ON slip (stream, version);
  CREATE TABLE head (stream TEXT PRIMARY KEY, version INTEGER NOT NULL, hash TEXT NOT NULL) STRICT, WITHOUT ROWID;
  CREATE TABLE entry (
    client_id TEXT PRIMARY KEY, first_position INTEGER NOT NULL, last_position INTEGER NOT NULL, answer TEXT
  ) STRICT, WITHOUT ROWID;
  CREATE TABLE projection (name TEXT PRIMARY KEY, version INTEGER, tables TEXT NOT NULL) STRICT;
  CREATE TABLE pin (badge TEXT PRIMARY KEY, hash TEXT NOT NULL, failed_attempts INTEGER NOT NULL, last_failed_at TEXT) STRICT;
  CREATE TABLE keep (name TEXT PRIMARY KEY, value ANY NOT NULL) STRICT;
`;
// Added later: a journal laid out before gets it when it is opened. A release before reads such a file as ever, and leaves the table alone.
const addedTables = `
  CREATE TABLE IF NOT EXISTS attachment (digest TEXT PRIMARY KEY, bytes INTEGER NOT NULL, at TEXT NOT NULL, packed BLOB NOT NULL) STRICT;
  CREATE TRIGGER IF NOT EXISTS attachment_is_not_changed BEFORE UPDATE ON attachment BEGIN SELECT RAISE(ABORT, 'an attachment is never changed'); END;
  CREATE TRIGGER IF NOT EXISTS attachment_is_not_removed BEFORE DELETE ON attachment BEGIN SELECT RAISE(ABORT, 'an attachment is never taken away'); END;
`;

/** Sets what a connection that writes needs: write-ahead log, a sync at every commit, a large cache, later checkpoints. */
export function tuneWriter(db: Database): void {
  db.pragma('journal_mode = WAL');
  db.pragma('synchronous = FULL');
  db.pragma('wal_autocheckpoint = 8000'); // pages of 4 KiB: a checkpoint about every 32 MB
  db.pragma('journal_size_limit = 67108864');
  tuneReader(db);
}

/** Sets what any connection needs to read fast. */
export function tuneReader(db: Database): void {
  db.pragma('cache_size = -131072'); // KiB: 128 MB
  db.pragma('mmap_size = 4294967296');
  db.pragma('temp_store = MEMORY');
}

/**
 * Lays out an empty file, or checks that the file is a journal this release can read.
 * @throws JournalFault `unknownLayout` otherwise
 */
export function layOut(db: Database, file: string): void {
  const found = { id: db.pragma('application_id', { simple: true }), layout: db.pragma('user_version', { simple: true }) };
  if (found.id === applicationId && found.layout === layout) return void db.transaction(() => db.exec(addedTables)).immediate();
  const isEmpty = db.prepare('SELECT 1 FROM sqlite_master').get() === undefined;
  if (!isEmpty || found.id !== 0) {
    const what = found.id === applicationId ? `a journal of layout ${String(found.layout)}; this release reads layout ${layout}` : 'not a journal';
    throw new JournalFault('unknownLayout', `${file} is ${what}. Nothing was changed. Use the release it belongs to, or name another data folder.`);
  }
  db.transaction(() => {
    db.exec(tables);
    db.exec(addedTables);
    db.pragma(`application_id = ${applicationId}`);
    db.pragma(`user_version = ${layout}`);
  }).immediate();
}
