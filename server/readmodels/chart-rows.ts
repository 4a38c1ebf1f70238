import type { Database } from 'better-sqlite3';
import type { ChartCard, ChartedThing, ChartRule, ChartSlip, Slip, Subject } from '../../shared/traveller/index.ts';
import { chartParts } from '../../shared/traveller/index.ts';
import type { ChartRow } from '../../shared/wire/charts-view.ts';
import { prepared } from '../journal/sqlite/prepared.ts';

/** Most subjects offered to begin a chart with. */
const mostLots = 200;

/** Takes in a slip of the charts of a characteristic. */
export function takeChart(db: Database, { stream, body, at }: Slip<ChartSlip>): void {
  switch (body.type) {
    case 'chartDefined':
      prepared<[string, string]>(db, 'INSERT INTO charted (stream, about, lots, last_subject, last_at) VALUES (?, ?, 0, NULL, NULL) ON CONFLICT (stream) DO NOTHING').run(stream, JSON.stringify(body.about));
      prepared<[string, string, string]>(db, 'INSERT INTO chart (stream, key, card, frozen, signals) VALUES (?, ?, ?, 0, 0) ON CONFLICT (stream, key) DO UPDATE SET card = excluded.card').run(stream, body.key, JSON.stringify(body.card));
      return;
    case 'chartPointAdded':
      prepared<[string, string, string]>(db, 'UPDATE charted SET lots = lots + 1, last_subject = ?, last_at = ? WHERE stream = ?').run(body.subject, body.judgedAt, stream);
      return;
    case 'chartLimitsFrozen': return standsAnew(db, stream, body.key, 1);
    case 'chartLimitsUnfrozen': return standsAnew(db, stream, body.key, 0);
    case 'chartRestarted': return standsAnew(db, stream, body.key, 1);
    case 'chartWithdrawn':
      prepared<[string, string]>(db, 'DELETE FROM chart WHERE stream = ? AND key = ?').run(stream, body.key);
      return;
    case 'chartSignalled': {
      const sql = 'UPDATE chart SET signals = signals + 1, signal_rule = ?, signal_subject = ?, signal_at = ?, signal_stands = 1 WHERE stream = ? AND key = ?';
      prepared<[string, string, string, string, string]>(db, sql).run(body.rule, body.subject, at, stream, body.key);
      return;
    }
    case 'chartPointRevised': return;
  }
}

function standsAnew(db: Database, stream: string, key: string, frozen: 0 | 1): void {
  prepared<[number, string, string]>(db, 'UPDATE chart SET frozen = ?, signal_stands = 0 WHERE stream = ? AND key = ?').run(frozen, stream, key);
}

interface Row {
  readonly stream: string; readonly about: string; readonly lots: number; readonly lastSubject: string | null; readonly lastAt: string | null; readonly key: string; readonly card: string; readonly frozen: number;
  readonly signals: number; readonly signalRule: ChartRule | null; readonly signalSubject: string | null; readonly signalAt: string | null; readonly signalStands: number;
}

/** Every chart, those that signal first. */
export function chartRows(db: Database): ChartRow[] {
  const sql = `SELECT charted.stream, about, lots, last_subject AS lastSubject, last_at AS lastAt, key, card, frozen, signals, signal_rule AS signalRule, signal_subject AS signalSubject,
      signal_at AS signalAt, signal_stands AS signalStands FROM charted JOIN chart ON chart.stream = charted.stream ORDER BY charted.stream, key`;
  const standing = { signal: 0, inControl: 1, provisional: 2 } as const;
  return prepared<[], Row>(db, sql).all().map(chartRow).sort((one, other) => standing[one.standing] - standing[other.standing]);
}

function chartRow({ stream, about, lots, lastSubject, lastAt, key, card, frozen, signals, signalRule, signalSubject, signalAt, signalStands }: Row): ChartRow {
  const { subjectKind, owner, ownerName, gate, gateName, characteristic, characteristicName }: ChartedThing = JSON.parse(about);
  const { mayHold }: ChartCard = JSON.parse(card);
  // A signal stands until another lot passes without one, or an engineer begins anew.
  const standing = frozen === 0 ? 'provisional' : signalStands === 1 && signalSubject === lastSubject ? 'signal' : 'inControl';
  return {
    stream, key, subjectKind, owner, ownerName, gate, gateName, characteristic, characteristicName, standing, mayHold, lots, lastAt, signals,
    lastSignal: signalRule === null || signalSubject === null || signalAt === null ? null : { rule: signalRule, subject: signalSubject, at: signalAt },
  };
}

/** Subjects judged at the gate that this stream is about, the oldest of the newest ones first; none for a name that is no chart's. */
export function lotsForChart(db: Database, stream: string): string[] {
  const parts = chartParts(stream);
  if (parts === null) return [];
  const owner = { lot: '$.product.id', batch: '$.grade.id', furnace: '$.specification.id', coating: '$.specification.id' }[parts.subjectKind];
  const sql = `SELECT stream, state FROM subject WHERE kind = ? AND state ->> ? = ? ORDER BY opened_at DESC LIMIT ${mostLots}`;
  const rows = prepared<[string, string, string], { stream: string; state: string }>(db, sql).all(parts.subjectKind, owner, parts.owner);
  return rows.filter(({ state }) => isJudged(JSON.parse(state), parts.gate)).map((row) => row.stream).reverse();
}

function isJudged({ gates }: Subject, gate: string): boolean {
  return gates.some(({ id, status, attempt }) => id === gate && attempt > 0 && (attempt > 1 || status !== 'open'));
}
