import type { Database, Statement } from 'better-sqlite3';

const kept = new WeakMap<Database, Map<string, Statement<unknown[], unknown>>>();

/** The prepared statement for a text, prepared once a connection. Parameters and rows are as the caller's SQL has them. */
export function prepared<Parameters extends unknown[], Row = unknown>(db: Database, sql: string): Statement<Parameters, Row> {
  let ofConnection = kept.get(db);
  if (ofConnection === undefined) kept.set(db, (ofConnection = new Map()));
  let statement = ofConnection.get(sql);
  if (statement === undefined) ofConnection.set(sql, (statement = db.prepare<unknown[], unknown>(sql)));
  return statement as unknown as Statement<Parameters, Row>; // the edge: SQL text carries no types
}
