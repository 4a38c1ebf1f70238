import type { Database } from 'better-sqlite3';
import type { SlipBody, StoredSlip } from '../journal.ts';
import { prepared } from './prepared.ts';

/** A slip as its row has it: the body is still the text that was hashed. */
export interface SlipRow extends Omit<StoredSlip, 'body'> {
  readonly bodyText: string;
}

const columns = `position, stream, version, type, schema, at, by, bench, client_id AS clientId,
  body AS bodyText, prev_hash AS prevHash, hash`;

export function slipOfRow({ bodyText, ...row }: SlipRow): StoredSlip {
  const body: SlipBody = JSON.parse(bodyText);
  return { ...row, body };
}

/** Rows of one stream, versions above `afterVersion`; a negative limit means all. */
export function rowsOfStream(db: Database, stream: string, afterVersion: number, limit: number): SlipRow[] {
  const sql = `SELECT ${columns} FROM slip WHERE stream = ? AND version > ? ORDER BY version LIMIT ?`;
  return prepared<[string, number, number], SlipRow>(db, sql).all(stream, afterVersion, limit);
}

/** Rows of all streams, positions above `afterPosition`. */
export function rowsAfter(db: Database, afterPosition: number, limit: number): SlipRow[] {
  const sql = `SELECT ${columns} FROM slip WHERE position > ? ORDER BY position LIMIT ?`;
  return prepared<[number, number], SlipRow>(db, sql).all(afterPosition, limit);
}

/** Rows from one position to another, both included. */
export function rowsBetween(db: Database, first: number, last: number): SlipRow[] {
  return prepared<[number, number], SlipRow>(db, `SELECT ${columns} FROM slip WHERE position BETWEEN ? AND ? ORDER BY position`).all(first, last);
}
