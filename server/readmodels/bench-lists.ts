import { severityFor } from '../../shared/traveller/index.ts';
import type { Database } from 'better-sqlite3';
import type { BenchList, BenchRow } from '../../shared/wire/views.ts';
import { prepared } from '../journal/sqlite/prepared.ts';

type Severity = BenchRow['severity'];
interface InForce { readonly severity: Severity; readonly lots: string[] }
interface Row {
  readonly stream: string; readonly kind: BenchRow['kind']; readonly id: string; readonly title: string; readonly designation: string | null; readonly product: string | null;
  readonly gate: string | null; readonly gateName: string | null; readonly bench: string; readonly standing: BenchRow['standing']; readonly pieces: number;
  readonly openSeverity: Severity | null; readonly holdReason: string | null; readonly attempt: number; readonly since: string; readonly demo: number; readonly waitsFor: BenchRow['waitsFor']; readonly look: string | null; readonly drift: string | null;
}
const columns = `stream, kind, id, title, designation, product, gate, gate_name AS gateName, bench, standing, pieces, open_severity AS openSeverity,
  hold_reason AS holdReason, attempt, since, demo, waits_for AS waitsFor,
  (SELECT look FROM call_row WHERE call_row.stream = subject.stream) AS look, (SELECT drift FROM call_row WHERE call_row.stream = subject.stream) AS drift`;

/** Most rows of one list; a bench with more is beyond reading anyway. */
const mostRows = 5_000;
/** A gauge is shown from so many days before its last day. */
const dueSoonDays = 14;

/** The lists of subjects, from their table and the switching states in force. */
export class BenchLists {
  readonly #db: Database;

  constructor(db: Database) {
    this.#db = db;
  }

  /** Streams with an open gate whose plan counts minutes between looks. */
  withMinutes(): string[] {
    return prepared<[], { stream: string }>(this.#db, 'SELECT stream FROM call_row WHERE minutes = 1').all().map(({ stream }) => stream);
  }

  /** What waits at a bench, what is held there, and which of its gauges fall due. */
  bench(bench: string, today: string): BenchList {
    const rows = this.#rows(`bench = ? AND standing IN ('due', 'open', 'sorting', 'inCharge', 'toRelease', 'toPack', 'held')
      ORDER BY CASE standing WHEN 'open' THEN 0 WHEN 'sorting' THEN 1 WHEN 'inCharge' THEN 3 ELSE 2 END, since`, bench);
    return { bench, waiting: rows.filter(({ standing }) => standing !== 'held'), held: rows.filter(({ standing }) => standing === 'held'), dueSoon: this.#dueSoon(bench, today) };
  }

  /** Lots that have passed every gate, or all but the last, and are not released. */
  release(): BenchRow[] {
    return this.#rows(`near_release = 1 ORDER BY standing <> 'toRelease', since`);
  }

  packing(): BenchRow[] {
    return this.#rows(`kind = 'lot' AND standing = 'toPack' ORDER BY since`);
  }

  /** Subjects of a kind, the newest first; those of one standing where it is given. */
  ofKind(kind: string, standing: string | null): BenchRow[] {
    return standing === null ? this.#rows('kind = ? ORDER BY opened_at DESC', kind) : this.#rows('kind = ? AND standing = ? ORDER BY opened_at DESC', kind, standing);
  }

  charges(kind: string | null): BenchRow[] {
    return kind === null ? this.#rows(`kind IN ('furnace', 'coating') ORDER BY opened_at DESC`) : this.ofKind(kind, null);
  }

  /** Lots that wait to be put into a charge of this kind. */
  readyFor(kind: string): BenchRow[] {
    return this.#rows(`kind = 'lot' AND standing = 'inCharge' AND waits_for = ? ORDER BY since`, kind);
  }

  #rows(where: string, ...values: string[]): BenchRow[] {
    const severities = this.#severities();
    const rows = prepared<string[], Row>(this.#db, `SELECT ${columns} FROM subject WHERE ${where} LIMIT ${mostRows}`).all(...values);
    return rows.map(({ product, openSeverity, demo, look, drift, ...row }) => {
      const inForce = product === null || row.gate === null ? undefined : severities.get(`${product}/${row.gate}`);
      const severity = openSeverity ?? severityFor(inForce?.severity ?? 'normal', row.attempt === 0);
      const severityLots = severity !== 'normal' && inForce !== undefined && severity === inForce.severity ? inForce.lots : [];
      return { ...row, severity, severityLots, discontinued: severity === 'discontinued', demo: demo === 1, lookDue: callOf<BenchRow['lookDue']>(look), drift: callOf<BenchRow['drift']>(drift) };
    });
  }

  /** The hardest severity in force by product and gate, with the lots it was switched for. */
  #severities(): Map<string, InForce> {
    const sql = `SELECT product, gate, severity, coalesce(state -> '$.lastMove.lots', '[]') AS lots FROM switching_row`;
    const rows = prepared<[], { product: string; gate: string; severity: Severity; lots: string }>(this.#db, sql).all();
    const hardest = new Map<string, InForce>();
    const order: readonly Severity[] = ['discontinued', 'tightened', 'normal', 'reduced'];
    for (const { product, gate, severity, lots } of rows) {
      const key = `${product}/${gate}`;
      const before = hardest.get(key);
      if (before === undefined || order.indexOf(severity) < order.indexOf(before.severity)) hardest.set(key, { severity, lots: JSON.parse(lots) as string[] });
    }
    return hardest;
  }

  #dueSoon(bench: string, today: string): BenchList['dueSoon'] {
    const until = new Date(Date.parse(`${today}T00:00:00Z`) + dueSoonDays * 86_400_000).toISOString().slice(0, 10);
    const sql = `SELECT id, card ->> '$.name' AS name, card ->> '$.calibrationDue' AS due FROM card
      WHERE kind = 'gauge' AND withdrawn IS NULL AND card ->> '$.bench' = ? AND card ->> '$.calibrationDue' <= ? ORDER BY due`;
    return prepared<[string, string], { id: string; name: string; due: string }>(this.#db, sql).all(bench, until)
      .map(({ id, name, due }) => ({ what: 'calibration' as const, id, name, due, overdue: due < today }));
  }
}

/** Kept as JSON by the projection itself. */
function callOf<Call>(text: string | null): Call | null {
  return text === null ? null : (JSON.parse(text) as Call);
}
