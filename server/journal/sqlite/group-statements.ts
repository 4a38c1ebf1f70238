import type { Database, Statement } from 'better-sqlite3';

/** How an entry is remembered: the run of slips it became, and the answer kept with it. */
export interface EntryRow {
  readonly first: number;
  readonly last: number;
  readonly answer: string | null;
}

/** The statements that every group needs, prepared once. */
export interface Statements {
  readonly begin: Statement;
  readonly commit: Statement;
  readonly rollback: Statement;
  readonly savepoint: Statement;
  readonly release: Statement;
  readonly rollbackTo: Statement;
  readonly entry: Statement<[string], EntryRow>;
  readonly addEntry: Statement<[string, number, number, string | null]>;
  readonly addSlip: Statement<[string, number, string, number, string, string, string, string, string, string, string]>;
}

export function groupStatements(db: Database): Statements {
  return {
    begin: db.prepare('BEGIN IMMEDIATE'),
    commit: db.prepare('COMMIT'),
    rollback: db.prepare('ROLLBACK'),
    savepoint: db.prepare('SAVEPOINT entry'),
    release: db.prepare('RELEASE entry'),
    rollbackTo: db.prepare('ROLLBACK TO entry'),
    entry: db.prepare('SELECT first_position AS first, last_position AS last, answer FROM entry WHERE client_id = ?'),
    addEntry: db.prepare('INSERT INTO entry (client_id, first_position, last_position, answer) VALUES (?, ?, ?, ?)'),
    addSlip: db.prepare('INSERT INTO slip (stream, version, type, schema, at, by, bench, client_id, body, prev_hash, hash) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)'),
  };
}
