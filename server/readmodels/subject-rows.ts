import type { Database } from 'better-sqlite3';
import type { Slip, Subject } from '../../shared/traveller/index.ts';
import { evolve, standingHolds } from '../../shared/traveller/index.ts';
import { prepared } from '../journal/sqlite/prepared.ts';
import { slimSubject } from './slim-state.ts';
import { piecesOf, placeOf } from './standing.ts';

/** The subject rows touched by one run of slips: each is read once, folded on, and written once. */
export class SubjectRows {
  readonly #db: Database;
  readonly #touched = new Map<string, { state: Subject | null; openSeverity: string | null; since: string; standing: string | null }>();

  constructor(db: Database) {
    this.#db = db;
  }

  take(slip: Slip): void {
    const row = this.#touched.get(slip.stream) ?? this.#read(slip.stream);
    const state = evolve(row.state, slip);
    if (!('gates' in state)) return;
    const { body } = slip;
    if (body.type === 'gateOpened') row.openSeverity = severityAsked(body.demands);
    row.state = slimSubject(state);
    const { standing, gate } = placeOf(row.state);
    const where = `${standing} ${gate?.id ?? ''}`;
    if (where !== row.standing) {
      row.since = slip.at;
      row.standing = where;
    }
    this.#touched.set(slip.stream, row);
  }

  write(): void {
    for (const { state, openSeverity, since } of this.#touched.values()) if (state !== null) this.#write(state, openSeverity, since);
    this.#touched.clear();
  }

  #read(stream: string): { state: Subject | null; openSeverity: string | null; since: string; standing: string | null } {
    const sql = 'SELECT state, open_severity AS openSeverity, since, standing, gate FROM subject WHERE stream = ?';
    const row = prepared<[string], { state: string; openSeverity: string | null; since: string; standing: string; gate: string | null }>(this.#db, sql).get(stream);
    if (row === undefined) return { state: null, openSeverity: null, since: '', standing: null };
    const state: Subject = JSON.parse(row.state);
    return { state, openSeverity: row.openSeverity, since: row.since, standing: `${row.standing} ${row.gate ?? ''}` };
  }

  #write(subject: Subject, openSeverity: string | null, since: string): void {
    const { standing, gate, bench, waitsFor, nearRelease } = placeOf(subject);
    const sql = `INSERT INTO subject (stream, kind, id, title, designation, product, gate, gate_name, bench, standing, waits_for, pieces, open_severity, hold_reason, attempt, since,
        opened_at, near_release, demo, state) VALUES (@stream, @kind, @id, @title, @designation, @product, @gate, @gateName, @bench, @standing, @waitsFor, @pieces, @openSeverity,
        @holdReason, @attempt, @since, @openedAt, @nearRelease, @demo, @state)
      ON CONFLICT (stream) DO UPDATE SET title = excluded.title, designation = excluded.designation, product = excluded.product, gate = excluded.gate, gate_name = excluded.gate_name,
        bench = excluded.bench, standing = excluded.standing, waits_for = excluded.waits_for, pieces = excluded.pieces, open_severity = excluded.open_severity,
        hold_reason = excluded.hold_reason, attempt = excluded.attempt, since = excluded.since, near_release = excluded.near_release, state = excluded.state`;
    const hold = standingHolds(subject)[0];
    prepared<[Record<string, unknown>]>(this.#db, sql).run({
      stream: subject.stream, kind: subject.kind, id: subject.id, title: titleOf(subject), designation: subject.kind === 'lot' ? subject.product.designation : null,
      product: subject.kind === 'lot' ? subject.product.id : null, gate: gate?.id ?? null, gateName: gate?.name ?? null, bench, standing, waitsFor, pieces: piecesOf(subject),
      openSeverity: standing === 'open' ? openSeverity : null, holdReason: hold?.reason ?? null, attempt: gate?.attempt ?? 0, since, openedAt: subject.openedAt,
      nearRelease: nearRelease ? 1 : 0, demo: subject.demo ? 1 : 0, state: JSON.stringify(subject),
    });
  }
}

function titleOf(subject: Subject): string {
  switch (subject.kind) {
    case 'lot': return subject.product.name;
    case 'batch': return subject.grade.name;
    case 'furnace': case 'coating': return subject.specification.name;
  }
}

/** The hardest severity among the plans of an opened gate; null where none has one. */
function severityAsked(demands: Extract<Slip['body'], { type: 'gateOpened' }>['demands']): string | null {
  const asked = demands.flatMap(({ basis }) => (basis.by === 'attributes' ? basis.classes.flatMap(({ plan }) => ('severity' in plan ? [plan.severity] : [])) : basis.by === 'variables' ? [basis.plan.severity] : []));
  return (['tightened', 'normal', 'reduced'] as const).find((severity) => asked.includes(severity)) ?? null;
}
