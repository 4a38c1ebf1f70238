import type { Projection } from '../../server/journal/sqlite/projection.ts';
import { prepared } from '../../server/journal/sqlite/prepared.ts';

/** A read model that counts the slips of each stream. */
export const slipCount: Projection = {
  name: 'slip count',
  version: 1,
  create: (db) => db.exec('CREATE TABLE slip_count (stream TEXT PRIMARY KEY, n INTEGER NOT NULL) WITHOUT ROWID'),
  apply(db, slips) {
    const add = prepared<[string]>(db, 'INSERT INTO slip_count (stream, n) VALUES (?, 1) ON CONFLICT (stream) DO UPDATE SET n = n + 1');
    for (const { stream } of slips) add.run(stream);
  },
};
