import type { Database } from 'better-sqlite3';
import { SUBJECT_KINDS } from '../../shared/traveller/index.ts';
import type { Trace, TraceNode } from '../../shared/wire/views.ts';
import { prepared } from '../journal/sqlite/prepared.ts';
import { walkDescent, type DescentRow } from './genealogy.ts';

/** Most nodes shown in one direction. */
const mostNodes = 20_000;

/** Where something comes from and where it went, nearest first; null where nobody knows it. */
export function traceOf(db: Database, kind: string, id: string): Trace | null {
  const up = walkDescent(db, kind, id, 'up', mostNodes);
  const down = walkDescent(db, kind, id, 'down', mostNodes);
  if (up === null || down === null) return null;
  return { of: `${kind}:${id}`, up: up.map((row) => nodeOf(db, row)), down: down.map((row) => nodeOf(db, row)) };
}

function nodeOf(db: Database, { kind, id, detail, depth, viaId }: DescentRow): TraceNode {
  const base = { kind, id, depth, via: viaId };
  if (SUBJECT_KINDS.some((each) => each === kind)) {
    const stream = `${kind}:${id}`;
    const row = prepared<[string], { standing: string; title: string; pieces: number }>(db, 'SELECT standing, title, pieces FROM subject WHERE stream = ?').get(stream);
    return { ...base, stream, standing: row?.standing ?? '', pieces: row?.pieces ?? null, detail: row?.title ?? null };
  }
  if (kind === 'box') {
    const box = prepared<[string], { lot: string; standing: string; pieces: number }>(db, 'SELECT lot, standing, pieces FROM box WHERE serial = ?').get(id);
    return { ...base, stream: box === undefined ? null : `lot:${box.lot}`, standing: box?.standing ?? '', pieces: box?.pieces ?? null, detail: null };
  }
  return { ...base, stream: null, standing: kind === 'shipment' ? 'shipped' : '', pieces: null, detail };
}
