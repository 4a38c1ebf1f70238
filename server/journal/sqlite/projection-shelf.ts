import type { Database } from 'better-sqlite3';
import { OutsideDomain } from '../../../shared/ground/outside-domain.ts';
import { prepared } from './prepared.ts';
import { applyAll, type Projection } from './projection.ts';
import { rowsAfter, slipOfRow } from './slip-rows.ts';

const pageOfSlips = 2_000;

interface Made {
  readonly type: 'table' | 'view' | 'trigger' | 'index';
  readonly name: string;
}

function schemaObjects(db: Database): Made[] {
  return db.prepare<[], Made>(`SELECT type, name FROM sqlite_master WHERE name NOT LIKE 'sqlite\\_%' ESCAPE '\\' ORDER BY rowid`).all();
}

function drop(db: Database, name: string): void {
  const row = db.prepare<[string], { tables: string }>('SELECT tables FROM projection WHERE name = ?').get(name);
  if (row === undefined) return;
  const made: Made[] = JSON.parse(row.tables);
  // Last made goes first: a trigger or view before the table it speaks of.
  for (const { type, name: object } of made.toReversed()) db.exec(`DROP ${type} IF EXISTS "${object.replaceAll('"', '""')}"`);
  db.prepare<[string]>('DELETE FROM projection WHERE name = ?').run(name);
}

function create(db: Database, projection: Projection): void {
  const before = new Set(schemaObjects(db).map(({ name }) => name));
  projection.create(db);
  const made = schemaObjects(db).filter(({ name }) => !before.has(name));
  db.prepare<[string, number, string]>('INSERT INTO projection (name, version, tables) VALUES (?, ?, ?)')
    .run(projection.name, projection.version, JSON.stringify(made));
}

/**
 * Drops what these projections have, creates them anew and fills them from the journal, page by page, in one transaction: until it
 * commits the old tables stand, and if anything throws they stay. Other work waits meanwhile.
 * @returns slips taken in
 */
export function refill(db: Database, projections: readonly Projection[]): number {
  return db.transaction(() => {
    for (const projection of projections) {
      drop(db, projection.name);
      create(db, projection);
    }
    let taken = 0;
    for (let after = 0; ; ) {
      const rows = rowsAfter(db, after, pageOfSlips);
      const last = rows.at(-1);
      if (last === undefined) return taken;
      applyAll(db, projections, rows.map(slipOfRow));
      taken += rows.length;
      after = last.position;
    }
  }).immediate();
}

/** Which projections must be filled again: new ones, and those stored in another version or left behind. */
export function outdated(db: Database, projections: readonly Projection[]): Projection[] {
  const names = projections.map(({ name }) => name);
  if (new Set(names).size < names.length) throw new OutsideDomain('projections', 'named differently', names.join(', '));
  const stored = db.prepare<[string], { version: number | null }>('SELECT version FROM projection WHERE name = ?');
  return projections.filter(({ name, version }) => stored.get(name)?.version !== version);
}

/** Stored projections that this opening does not keep up to date. */
export function unattended(db: Database, projections: readonly Projection[]): string[] {
  const attended = new Set(projections.map(({ name }) => name));
  const stored = db.prepare<[], { name: string }>('SELECT name FROM projection WHERE version IS NOT NULL').all();
  return stored.map(({ name }) => name).filter((name) => !attended.has(name));
}

/** Marks projections as left behind, so that whoever next opens the journal with them fills them again. */
export function leaveBehind(db: Database, names: readonly string[]): void {
  for (const name of names) prepared<[string]>(db, 'UPDATE projection SET version = NULL WHERE name = ?').run(name);
}
