import type { Database } from 'better-sqlite3';
import type { PlanLotRow } from '../../shared/wire/plan-lots-view.ts';
import { prepared } from '../journal/sqlite/prepared.ts';

const mostRows = 5_000;

/** Lots of a plan that are not done with, the newest first, each with the version it is inspected by. */
export function lotsOfPlan(db: Database, plan: string): PlanLotRow[] {
  const sql = `SELECT id, title, standing, gate_name AS gateName, state ->> '$.planVersion' AS planVersion FROM subject
    WHERE kind = 'lot' AND standing <> 'done' AND state ->> '$.plan' = ? ORDER BY opened_at DESC LIMIT ${mostRows}`;
  return prepared<[string], PlanLotRow>(db, sql).all(plan);
}
