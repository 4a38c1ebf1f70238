import type { Database } from 'better-sqlite3';
import type { Slip } from '../../shared/traveller/index.ts';
import type { BenchRow } from '../../shared/wire/views.ts';
import { prepared } from '../journal/sqlite/prepared.ts';

/** Slips of a gate under way that a bench list shows and that change nothing else in the lists. */
const CALLS: ReadonlySet<string> = new Set(['lookFellDue', 'lookTaken', 'lookMissed', 'driftAnnounced', 'driftEnded']);

/** Is this a slip that only calls somebody to the press? */
export function isCall(type: string): boolean {
  return CALLS.has(type);
}

type LookDue = NonNullable<BenchRow['lookDue']>;
type Drift = NonNullable<BenchRow['drift']>;

/** What calls people to an open gate: a look that is due, a drift. Begins with the gate and ends with its verdict. */
export function takeCalls(db: Database, { stream, body, at }: Slip): void {
  switch (body.type) {
    case 'gateOpened': {
      const minutes = body.demands.some(({ basis }) => basis.by === 'interval' && (basis.everyMinutes !== undefined || basis.graceMinutes !== undefined));
      prepared<[string, number]>(db, 'INSERT INTO call_row (stream, minutes, look, drift) VALUES (?, ?, NULL, NULL) ON CONFLICT (stream) DO UPDATE SET minutes = excluded.minutes, look = NULL, drift = NULL').run(stream, minutes ? 1 : 0);
      return;
    }
    case 'lookFellDue': return set(db, stream, 'look', { look: body.look, since: at, piece: body.piece } satisfies LookDue);
    case 'lookTaken': case 'lookMissed': return set(db, stream, 'look', null);
    case 'driftAnnounced': return set(db, stream, 'drift', { side: body.side, piece: body.piece, predicted: body.predicted?.piece ?? null } satisfies Drift);
    case 'driftEnded': return set(db, stream, 'drift', null);
    case 'verdictGiven': prepared<[string]>(db, 'DELETE FROM call_row WHERE stream = ?').run(stream); return;
    default:
  }
}

function set(db: Database, stream: string, column: 'look' | 'drift', value: LookDue | Drift | null): void {
  prepared<[string | null, string]>(db, `UPDATE call_row SET ${column} = ? WHERE stream = ?`).run(value === null ? null : JSON.stringify(value), stream);
}
