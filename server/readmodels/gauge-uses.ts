import type { Database } from 'better-sqlite3';
import type { Recall, Subject } from '../../shared/traveller/index.ts';
import { remainingPieces, standingHolds, streamName, streamParts } from '../../shared/traveller/index.ts';
import type { GaugeUseRow, RecallRow } from '../../shared/wire/gauge-views.ts';
import { prepared } from '../journal/sqlite/prepared.ts';
import { walkDescent } from './genealogy.ts';
import { placeOf } from './standing.ts';

/** From which moment to which; both ends belong to it. */
export interface Span { readonly from: string; readonly to: string }
/** A reading as the list of uses has it; of a block of weights `ordinal` is its first piece and `value` null. */
export interface GaugeReading { readonly stream: string; readonly version: number; readonly at: string; readonly gate: string; readonly characteristic: string; readonly ordinal: number; readonly pieces: number; readonly value: number | null; readonly uncertainty: number; readonly again: string | null }
interface UseOfSubject { readonly stream: string; readonly readings: number; readonly pieces: number; readonly again: number; readonly firstAt: string; readonly lastAt: string }

/** More subjects than any recall has. */
const mostSubjects = 5_000;
const mostBelow = 20_000;
const ALL: Span = { from: '', to: '~' };

/** What a recall looks at: from the last good check to the moment it was opened. Without one it looks at everything before. */
export function spanOf({ since, openedAt }: Recall): Span {
  return { from: since ?? '', to: openedAt };
}

/** What a gauge has measured, subject by subject, the last used first. */
export function usesOfGauge(db: Database, gauge: string, most: number): GaugeUseRow[] {
  return usesOf(db, gauge, ALL, most).map(({ stream, readings, pieces, firstAt, lastAt }) => ({ stream, ...kindAndId(stream), title: titleOf(db, stream), readings, pieces, firstAt, lastAt }));
}

/** How many readings (blocks of weights are one each) and on how many subjects. */
export function countOfUses(db: Database, gauge: string, { from, to }: Span = ALL): { readonly readings: number; readonly subjects: number } {
  const sql = 'SELECT count(*) AS readings, count(DISTINCT stream) AS subjects FROM gauge_reading WHERE gauge = ? AND at >= ? AND at <= ?';
  return prepared<[string, string, string], { readings: number; subjects: number }>(db, sql).get(gauge, from, to) ?? { readings: 0, subjects: 0 };
}

/** Readings of a gauge in the order taken, behind `after`. */
export function readingsOfGauge(db: Database, gauge: string, { from, to }: Span, after: number, most: number): GaugeReading[] {
  const sql = `SELECT stream, version, at, gate, characteristic, ordinal, pieces, value, uncertainty, again FROM gauge_reading
    WHERE gauge = ? AND at >= ? AND at <= ? ORDER BY at, stream, version LIMIT ? OFFSET ?`;
  return prepared<[string, string, string, number, number], GaugeReading>(db, sql).all(gauge, from, to, most, after);
}

/**
 * Everything a recall puts in doubt: what the gauge read itself, and every lot and blend that rests on a batch, charge or lot it read, each once. What
 * has been re-sintered or moved since is listed all the same: rather one too many.
 */
export function recallRows(db: Database, gauge: string, recall: Recall): RecallRow[] {
  const own = usesOf(db, gauge, spanOf(recall), mostSubjects);
  const found = new Map<string, UseOfSubject & { readonly through: string | null }>(own.map((use) => [use.stream, { ...use, through: null }]));
  for (const { stream, firstAt, lastAt } of own) {
    const parts = streamParts(stream);
    if (parts === null) continue;
    for (const below of walkDescent(db, parts.kind === 'furnace' || parts.kind === 'coating' || parts.kind === 'batch' ? parts.kind : 'lot', parts.id, 'down', mostBelow) ?? []) {
      if (below.kind !== 'lot' && below.kind !== 'batch') continue;
      const rests = streamName(below.kind, below.id);
      if (!found.has(rests)) found.set(rests, { stream: rests, readings: 0, pieces: 0, again: 0, firstAt, lastAt, through: stream });
    }
  }
  return [...found.values()].flatMap((use) => {
    const state = subjectState(db, use.stream);
    return state === null ? [] : [rowOf(use, state, recall.id)];
  });
}

function usesOf(db: Database, gauge: string, { from, to }: Span, most: number): UseOfSubject[] {
  const sql = `SELECT stream, count(*) AS readings, sum(pieces) AS pieces, count(again) AS again, min(at) AS firstAt, max(at) AS lastAt FROM gauge_reading
    WHERE gauge = ? AND at >= ? AND at <= ? GROUP BY stream ORDER BY max(at) DESC, stream LIMIT ?`;
  return prepared<[string, string, string, number], UseOfSubject>(db, sql).all(gauge, from, to, most);
}

function rowOf({ stream, readings, pieces, again, firstAt, lastAt, through }: UseOfSubject & { readonly through: string | null }, state: Subject, recall: string): RecallRow {
  const boxes = state.kind === 'lot' ? state.boxes.filter(({ voided }) => voided === null) : [];
  const shipments = new Map<string, RecallRow['shipped'][number]>();
  for (const { shipped, pieces: inBox } of boxes) {
    if (shipped === null) continue;
    const before = shipments.get(`${shipped.shipment} ${shipped.order}`);
    shipments.set(`${shipped.shipment} ${shipped.order}`, { shipment: shipped.shipment, order: shipped.order, consignee: shipped.consignee, boxes: (before?.boxes ?? 0) + 1, pieces: (before?.pieces ?? 0) + inBox });
  }
  const isHere = state.ended === null && (state.kind !== 'lot' || remainingPieces(state.balance) > 0 || boxes.some(({ shipped }) => shipped === null));
  return {
    stream, ...kindAndId(stream), title: state.kind === 'lot' ? state.product.name : state.kind === 'batch' ? state.grade.name : state.specification.name, readings, pieces, measuredAgain: again, firstAt, lastAt, through,
    standing: placeOf(state).standing, here: isHere, heldForThis: standingHolds(state).some(({ cause }) => cause.by === 'recall' && cause.recall === recall),
    certificate: state.kind === 'lot' && state.release !== null && state.release.withdrawn === null ? state.release.certificate : null, shipped: [...shipments.values()],
  };
}

function kindAndId(stream: string): { readonly kind: GaugeUseRow['kind']; readonly id: string } {
  const parts = streamParts(stream);
  const kind = (['batch', 'furnace', 'coating'] as const).find((each) => each === parts?.kind) ?? 'lot';
  return { kind, id: parts?.id ?? stream };
}

function subjectState(db: Database, stream: string): Subject | null {
  const row = prepared<[string], { state: string }>(db, 'SELECT state FROM subject WHERE stream = ?').get(stream);
  return row === undefined ? null : JSON.parse(row.state);
}

function titleOf(db: Database, stream: string): string {
  return prepared<[string], { title: string }>(db, 'SELECT title FROM subject WHERE stream = ?').get(stream)?.title ?? '';
}
