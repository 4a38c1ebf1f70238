import { mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import Database from 'better-sqlite3';
import { sqliteAttachmentStore } from './attachment-store.ts';
import { lockFolder } from './folder-lock.ts';
import { GroupWriter } from './group-writer.ts';
import { sqliteKeyStore } from './key-store.ts';
import { sqlitePinVault } from './pin-vault.ts';
import type { Projection } from './projection.ts';
import { outdated, refill, unattended } from './projection-shelf.ts';
import { layOut, tuneReader, tuneWriter } from './schema.ts';
import { SqliteJournal } from './sqlite-journal.ts';

export interface SqliteJournalOptions {
  /** The journal's file; its folder is made when missing. */
  readonly file: string;
  readonly projections?: readonly Projection[];
  /** Present schema number of a slip type; 1 for all unless given. */
  readonly schemaOf?: (type: string) => number;
  /** Milliseconds to wait for another program that holds the file, such as a database shell; 2 000 unless given. */
  readonly patienceMs?: number;
}

/**
 * Opens a journal, or lays out a new one, and holds it against other servers. Projections whose stored version differs are filled
 * again before this resolves.
 * @throws JournalFault `folderInUse` or `unknownLayout`, with a sentence for whoever started the server
 */
export async function openSqliteJournal({ file, projections = [], schemaOf = () => 1, patienceMs = 2_000 }: SqliteJournalOptions): Promise<SqliteJournal> {
  mkdirSync(dirname(file), { recursive: true });
  const unlock = lockFolder(file);
  const opened: Database.Database[] = [];
  try {
    const writer = new Database(file, { timeout: patienceMs });
    opened.push(writer);
    layOut(writer, file);
    tuneWriter(writer);
    const behind = outdated(writer, projections);
    if (behind.length > 0) refill(writer, behind);
    const reader = new Database(file, { readonly: true, timeout: patienceMs });
    opened.push(reader);
    tuneReader(reader);
    const group = new GroupWriter(writer, projections, unattended(writer, projections));
    return new SqliteJournal({ writer, reader, projections, group, schemaOf, pins: sqlitePinVault(writer), keys: sqliteKeyStore(writer), attachments: sqliteAttachmentStore(writer), unlock });
  } catch (cause) {
    for (const db of opened.reverse()) db.close();
    unlock();
    throw cause;
  }
}
