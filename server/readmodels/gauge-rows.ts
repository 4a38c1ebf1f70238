import type { Database } from 'better-sqlite3';
import type { GaugeState, GaugeUsed, Slip } from '../../shared/traveller/index.ts';
import { evolve } from '../../shared/traveller/index.ts';
import { prepared } from '../journal/sqlite/prepared.ts';

/** A gauge's state as the list keeps it; null where nobody knows the gauge. */
export function gaugeRow(db: Database, id: string): GaugeState | null {
  const row = prepared<[string], { state: string }>(db, 'SELECT state FROM gauge_row WHERE id = ?').get(id);
  return row === undefined ? null : JSON.parse(row.state);
}

/** Every gauge of the plant by its number. */
export function gaugeRows(db: Database): GaugeState[] {
  return prepared<[], { state: string }>(db, 'SELECT state FROM gauge_row ORDER BY id').all().map(({ state }): GaugeState => JSON.parse(state));
}

/** Takes in a slip of a gauge: its state, and its card for the lists of due days and benches. */
export function takeGauge(db: Database, slip: Slip): void {
  const id = slip.stream.slice('gauge:'.length);
  const after = evolve(gaugeRow(db, id), slip);
  if (after.kind !== 'gauge') return;
  prepared<[string, string]>(db, 'INSERT INTO gauge_row (id, state) VALUES (?, ?) ON CONFLICT (id) DO UPDATE SET state = excluded.state').run(id, JSON.stringify(after));
  const sql = `INSERT INTO card (kind, id, card, withdrawn) VALUES ('gauge', ?, ?, ?) ON CONFLICT (kind, id) DO UPDATE SET card = excluded.card, withdrawn = excluded.withdrawn`;
  prepared<[string, string, string | null]>(db, sql).run(id, JSON.stringify(after.card), after.withdrawn);
}

/** Slips that may say which gauge was used. */
const USES: ReadonlySet<string> = new Set(['readingTaken', 'weightsTaken', 'readingCorrected']);
export function mayUseGauge(type: string): boolean {
  return USES.has(type);
}

/** Takes in which gauge gave which readings, the one thing any list shows of them: a row a reading, or a block of weights. */
export function takeGaugeUse(db: Database, { stream, version, at, body }: Slip): void {
  switch (body.type) {
    case 'readingTaken': {
      if (body.gauge === undefined) return;
      return putUse(db, { stream, version, at: body.takenAt ?? at, gauge: body.gauge, gate: body.gate, characteristic: body.characteristic, ordinal: body.ordinal, pieces: 1, value: typeof body.value === 'number' ? body.value : null });
    }
    case 'weightsTaken': {
      if (body.gauge === undefined) return;
      return putUse(db, { stream, version, at: body.takenAt ?? at, gauge: body.gauge, gate: body.gate, characteristic: body.characteristic, ordinal: body.fromPiece, pieces: body.values.length, value: null });
    }
    case 'readingCorrected': {
      // The newest of this place: one of an earlier attempt at the gate is another reading.
      const sql = `SELECT max(version) AS version FROM gauge_reading WHERE stream = ? AND gate = ? AND characteristic = ? AND ordinal = ?`;
      const before = prepared<[string, string, string, number], { version: number | null }>(db, sql).get(stream, body.gate, body.characteristic, body.ordinal)?.version ?? null;
      const value = typeof body.to === 'number' ? body.to : null;
      if (body.gauge === undefined) {
        if (before !== null) prepared<[number | null, string, number]>(db, 'UPDATE gauge_reading SET value = ? WHERE stream = ? AND version = ?').run(value, stream, before);
        return;
      }
      if (before !== null) prepared<[string, string, number]>(db, 'UPDATE gauge_reading SET again = ? WHERE stream = ? AND version = ?').run(body.gauge.id, stream, before);
      return putUse(db, { stream, version, at, gauge: body.gauge, gate: body.gate, characteristic: body.characteristic, ordinal: body.ordinal, pieces: 1, value });
    }
    default:
  }
}

interface Use { readonly stream: string; readonly version: number; readonly at: string; readonly gauge: GaugeUsed; readonly gate: string; readonly characteristic: string; readonly ordinal: number; readonly pieces: number; readonly value: number | null }

function putUse(db: Database, { stream, version, at, gauge, gate, characteristic, ordinal, pieces, value }: Use): void {
  const sql = 'INSERT INTO gauge_reading (stream, version, gauge, at, gate, characteristic, ordinal, pieces, value, uncertainty) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)';
  prepared<[string, number, string, string, string, string, number, number, number | null, number]>(db, sql).run(stream, version, gauge.id, at, gate, characteristic, ordinal, pieces, value, gauge.expandedUncertainty);
}
