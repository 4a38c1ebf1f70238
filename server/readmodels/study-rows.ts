import type { Database } from 'better-sqlite3';
import { evolve, readingsWanted } from '../../shared/traveller/index.ts';
import type { Slip, Study } from '../../shared/traveller/index.ts';
import type { StudyRow } from '../../shared/wire/studies-view.ts';
import { prepared } from '../journal/sqlite/prepared.ts';

/** Takes in a slip of a gauge study: the whole state is kept, for it is small. */
export function takeStudy(db: Database, slip: Slip): void {
  const row = prepared<[string], { state: string }>(db, 'SELECT state FROM study_row WHERE stream = ?').get(slip.stream);
  const before: Study | null = row === undefined ? null : JSON.parse(row.state);
  const after = evolve(before, slip);
  if (after.kind !== 'study') return;
  const sql = 'INSERT INTO study_row (stream, opened_at, state) VALUES (?, ?, ?) ON CONFLICT (stream) DO UPDATE SET state = excluded.state';
  prepared<[string, string, string]>(db, sql).run(slip.stream, after.openedAt, JSON.stringify(after));
}

/** Every gauge study, the newest first. */
export function studyRows(db: Database): StudyRow[] {
  return prepared<[], { state: string }>(db, 'SELECT state FROM study_row ORDER BY opened_at DESC, stream DESC').all().map(({ state }) => rowOf(JSON.parse(state)));
}

function rowOf(study: Study): StudyRow {
  const found = study.closed?.found;
  const crossed = found?.by === 'crossed' ? found : null;
  return {
    id: study.id, stream: study.stream, studyKind: study.studyKind, gauge: study.gauge, gaugeName: study.gaugeThen.name, characteristic: study.characteristic, standing: study.standing,
    parts: study.parts.length, people: [...study.people], trials: study.trials, taken: study.readings.length, wanted: readingsWanted(study), openedAt: study.openedAt, closedAt: study.closed?.signature.at ?? null,
    percentOfStudy: crossed?.percentOfStudy ?? null, percentOfTolerance: crossed?.percentOfTolerance ?? null, categories: crossed?.categories ?? null,
  };
}
