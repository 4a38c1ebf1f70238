import type { Database } from 'better-sqlite3';
import { prepared } from '../journal/sqlite/prepared.ts';

const owners = { lot: '$.product.id', batch: '$.grade.id', furnace: '$.specification.id', coating: '$.specification.id' } as const;

/** The newest subjects of a product, grade or specification, whatever became of them. */
export function newestOf(db: Database, kind: keyof typeof owners, owner: string, most: number): string[] {
  const sql = 'SELECT stream FROM subject WHERE kind = ? AND state ->> ? = ? ORDER BY opened_at DESC, stream LIMIT ?';
  return prepared<[string, string, string, number], { stream: string }>(db, sql).all(kind, owners[kind], owner, most).map(({ stream }) => stream);
}
