import type { Database } from 'better-sqlite3';
import type { Skipping, Slip, Switching } from '../../shared/traveller/index.ts';
import { evolve } from '../../shared/traveller/index.ts';
import { prepared } from '../journal/sqlite/prepared.ts';
import { rowsOfStream, slipOfRow } from '../journal/sqlite/slip-rows.ts';
import { slimSwitching } from './slim-state.ts';
import { typed } from './typed-slip.ts';

/** Takes in a slip of a switching state. A recount goes back to the beginning, so it alone is folded from the whole thread. */
export function takeSwitching(db: Database, slip: Slip): void {
  const row = prepared<[string], { state: string }>(db, 'SELECT state FROM switching_row WHERE stream = ?').get(slip.stream);
  const kept: Switching | null = row === undefined ? null : JSON.parse(row.state);
  const before = slip.body.type === 'lotRecounted' ? wholeFold(db, slip) : kept;
  const after = evolve(before, slip);
  if (after.kind !== 'switching') return;
  const sql = `INSERT INTO switching_row (stream, product, gate, severity, state) VALUES (?, ?, ?, ?, ?)
    ON CONFLICT (stream) DO UPDATE SET severity = excluded.severity, state = excluded.state`;
  prepared<[string, string, string, string, string]>(db, sql).run(slip.stream, after.product, after.gate, after.state.severity, JSON.stringify(slimSwitching(after)));
}

/** Takes in a slip of the count of lots that may be passed over. */
export function takeSkip(db: Database, slip: Slip): void {
  const row = prepared<[string], { state: string }>(db, 'SELECT state FROM skip_row WHERE stream = ?').get(slip.stream);
  const before: Skipping | null = row === undefined ? null : JSON.parse(row.state);
  prepared<[string, string]>(db, 'INSERT INTO skip_row (stream, state) VALUES (?, ?) ON CONFLICT (stream) DO UPDATE SET state = excluded.state').run(slip.stream, JSON.stringify(evolve(before, slip)));
}

function wholeFold(db: Database, { stream, version }: Slip): Switching | null {
  const state = rowsOfStream(db, stream, 0, version - 1).map((row) => typed(slipOfRow(row))).reduce<ReturnType<typeof evolve> | null>(evolve, null);
  return state?.kind === 'switching' ? state : null;
}

/** Takes in slips of people, catalogue and plans. */
export function takeRecords(db: Database, { stream, version, body, at, by }: Slip): void {
  switch (body.type) {
    case 'personEnrolled':
      return putPerson(db, body.badge, body.name, body.roles, true);
    case 'personChanged':
      return putPerson(db, stream.slice('person:'.length), body.name, body.roles, body.active);
    case 'productDefined': return putCard(db, 'product', body.product.id, body.product);
    case 'gradeDefined': return putCard(db, 'grade', body.grade.id, body.grade);
    case 'layerDefined': return putCard(db, 'layer', body.layer.id, body.layer);
    case 'equipmentDefined': return putCard(db, 'equipment', body.equipment.id, body.equipment);
    case 'programmeDefined': return putCard(db, 'programme', body.programme.id, body.programme);
    case 'pressRegistered': case 'pressChanged': return putCard(db, 'press', body.press.id, body.press);
    case 'tableLoaded': return putCard(db, 'table', body.table.id, { table: body.table, at, by, reason: body.reason });
    case 'cautionWritten': {
      const { caution, text, shown, reason } = body;
      return putCard(db, 'caution', caution, { caution, cautionVersion: version, text, shown, reason, by, at });
    }
    case 'plantOpened': return putCard(db, 'plant', 'plant', body.plant);
    case 'planDrafted': {
      const sql = 'INSERT INTO plan_version (plan, plan_version, name, applies_to, why, approvals, in_force, benches) VALUES (?, ?, ?, ?, ?, 0, 0, ?)';
      const benches = [...new Set(body.plan.gates.map(({ bench }) => bench))];
      prepared<[string, number, string, string, string, string]>(db, sql).run(body.plan.id, body.planVersion, body.plan.name, body.plan.appliesTo, body.why, JSON.stringify(benches));
      return;
    }
    case 'planApproved': {
      const plan = stream.slice('plan:'.length);
      if (body.inForce) prepared<[string]>(db, 'UPDATE plan_version SET in_force = 0 WHERE plan = ?').run(plan);
      prepared<[number, string, number]>(db, 'UPDATE plan_version SET approvals = approvals + 1, in_force = ? WHERE plan = ? AND plan_version = ?').run(body.inForce ? 1 : 0, plan, body.planVersion);
      return;
    }
    default:
  }
}

function putPerson(db: Database, badge: string, name: string, roles: readonly string[], active: boolean): void {
  const sql = `INSERT INTO person_row (badge, name, roles, active) VALUES (?, ?, ?, ?)
    ON CONFLICT (badge) DO UPDATE SET name = excluded.name, roles = excluded.roles, active = excluded.active`;
  prepared<[string, string, string, number]>(db, sql).run(badge, name, JSON.stringify(roles), active ? 1 : 0);
}

function putCard(db: Database, kind: string, id: string, card: unknown): void {
  const sql = 'INSERT INTO card (kind, id, card) VALUES (?, ?, ?) ON CONFLICT (kind, id) DO UPDATE SET card = excluded.card';
  prepared<[string, string, string]>(db, sql).run(kind, id, JSON.stringify(card));
}
