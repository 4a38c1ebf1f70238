import type { Database } from 'better-sqlite3';

/** Raised when a table or what fills it changes: the tables are then filled again from the journal at the next start. */
export const readModelVersion = 10;

// Genealogy goes by whole numbers: walking a million edges by them takes two thirds of the time it takes by text.
const tables = `
  CREATE TABLE subject (
    stream TEXT PRIMARY KEY, kind TEXT NOT NULL, id TEXT NOT NULL, title TEXT NOT NULL, designation TEXT, product TEXT, gate TEXT, gate_name TEXT,
    bench TEXT NOT NULL, standing TEXT NOT NULL, waits_for TEXT, pieces INTEGER NOT NULL, open_severity TEXT, hold_reason TEXT, attempt INTEGER NOT NULL,
    since TEXT NOT NULL, opened_at TEXT NOT NULL, near_release INTEGER NOT NULL, demo INTEGER NOT NULL, state TEXT NOT NULL
  ) STRICT;
  CREATE INDEX subject_at_bench ON subject (bench, standing);
  CREATE INDEX subject_of_kind ON subject (kind, standing, opened_at);
  CREATE INDEX subject_by_id ON subject (id COLLATE NOCASE);
  CREATE TABLE call_row (stream TEXT PRIMARY KEY, minutes INTEGER NOT NULL, look TEXT, drift TEXT) STRICT, WITHOUT ROWID;
  CREATE TABLE box (serial TEXT PRIMARY KEY, lot TEXT NOT NULL, pieces INTEGER NOT NULL, standing TEXT NOT NULL, shipment TEXT) STRICT, WITHOUT ROWID;
  CREATE TABLE node (number INTEGER PRIMARY KEY, kind TEXT NOT NULL, id TEXT NOT NULL, detail TEXT, UNIQUE (kind, id)) STRICT;
  CREATE TABLE edge (parent INTEGER NOT NULL, child INTEGER NOT NULL, PRIMARY KEY (parent, child)) STRICT, WITHOUT ROWID;
  CREATE INDEX edge_up ON edge (child, parent);
  CREATE TABLE switching_row (stream TEXT PRIMARY KEY, product TEXT NOT NULL, gate TEXT NOT NULL, severity TEXT NOT NULL, state TEXT NOT NULL) STRICT, WITHOUT ROWID;
  CREATE TABLE skip_row (stream TEXT PRIMARY KEY, state TEXT NOT NULL) STRICT, WITHOUT ROWID;
  CREATE TABLE study_row (stream TEXT PRIMARY KEY, opened_at TEXT NOT NULL, state TEXT NOT NULL) STRICT, WITHOUT ROWID;
  CREATE TABLE charted (stream TEXT PRIMARY KEY, about TEXT NOT NULL, lots INTEGER NOT NULL, last_subject TEXT, last_at TEXT) STRICT, WITHOUT ROWID;
  CREATE TABLE chart (
    stream TEXT NOT NULL, key TEXT NOT NULL, card TEXT NOT NULL, frozen INTEGER NOT NULL, signals INTEGER NOT NULL, signal_rule TEXT, signal_subject TEXT, signal_at TEXT,
    signal_stands INTEGER NOT NULL DEFAULT 0, PRIMARY KEY (stream, key)
  ) STRICT, WITHOUT ROWID;
  CREATE TABLE person_row (badge TEXT PRIMARY KEY, name TEXT NOT NULL, roles TEXT NOT NULL, active INTEGER NOT NULL) STRICT, WITHOUT ROWID;
  CREATE TABLE card (kind TEXT NOT NULL, id TEXT NOT NULL, card TEXT NOT NULL, withdrawn TEXT, PRIMARY KEY (kind, id)) STRICT, WITHOUT ROWID;
  CREATE TABLE gauge_row (id TEXT PRIMARY KEY, state TEXT NOT NULL) STRICT, WITHOUT ROWID;
  CREATE TABLE gauge_reading (
    stream TEXT NOT NULL, version INTEGER NOT NULL, gauge TEXT NOT NULL, at TEXT NOT NULL, gate TEXT NOT NULL, characteristic TEXT NOT NULL, ordinal INTEGER NOT NULL,
    pieces INTEGER NOT NULL, value REAL, uncertainty REAL NOT NULL, again TEXT, PRIMARY KEY (stream, version)
  ) STRICT, WITHOUT ROWID;
  CREATE INDEX gauge_reading_by_gauge ON gauge_reading (gauge, at);
  CREATE TABLE plan_version (
    plan TEXT NOT NULL, plan_version INTEGER NOT NULL, name TEXT NOT NULL, applies_to TEXT NOT NULL, why TEXT NOT NULL, approvals INTEGER NOT NULL,
    in_force INTEGER NOT NULL, benches TEXT NOT NULL, PRIMARY KEY (plan, plan_version)
  ) STRICT, WITHOUT ROWID;
`;

/** Lays out the tables of every list, empty. */
export function createTables(db: Database): void {
  db.exec(tables);
}
