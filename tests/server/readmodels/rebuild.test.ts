import type { Database } from 'better-sqlite3';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { makeHistory } from '../../../demo-data/history.ts';
import { fold } from '../../../server/door/state-cache.ts';
import { placeOf, piecesOf } from '../../../server/readmodels/standing.ts';
import { isSubject } from '../../../shared/traveller/index.ts';
import { FixturePlant } from '../fixture-plant.ts';

let plant: FixturePlant;
beforeAll(async () => {
  plant = await FixturePlant.empty();
  // Six weeks of the invented plant, in groups as the journal would have taken them in.
  const history = makeHistory({ seed: 'lists', endIso: '2026-06-30T16:00:00.000Z' });
  for (let at = 0; at < history.length; at += 400) await Promise.all(history.slice(at, at + 400).map((entry) => plant.server.journal.append(entry)));
}, 120_000);
afterAll(() => plant.close());

/** Every row of every table of the lists. */
function everything(db: Database): Record<string, unknown[]> {
  const tables = ['subject', 'box', 'node', 'edge', 'switching_row', 'person_row', 'card', 'gauge_row', 'gauge_reading', 'plan_version'];
  return Object.fromEntries(tables.map((table) => [table, db.prepare(`SELECT * FROM ${table} ORDER BY 1, 2`).all()]));
}

it('the lists filled again from the journal are those that were kept all along, row for row', async () => {
  const { journal } = plant.server;
  const live = everything(journal.reader);
  const { slips } = await journal.rebuild();
  expect(slips).toBe((await journal.headsDigest()).position);
  expect(everything(journal.reader)).toEqual(live);
  expect(live['subject']?.length).toBeGreaterThan(70);
  expect(live['box']?.length).toBeGreaterThan(1000);
});

it('every row says what the whole fold of its thread says', async () => {
  const { journal } = plant.server;
  const rows = new Map(journal.reader.prepare<[], { stream: string; standing: string; gate: string | null; bench: string; pieces: number; near: number }>('SELECT stream, standing, gate, bench, pieces, near_release AS near FROM subject').all().map((row) => [row.stream, row]));
  const subjects = (await journal.heads()).map(({ stream }) => stream).filter(isSubject);
  expect([...rows.keys()].sort()).toEqual([...subjects].sort());
  for (const stream of subjects) {
    const state = fold(await journal.read(stream));
    if (state === null || !('gates' in state)) throw new Error(`${stream} has no subject`);
    const { standing, gate, bench, nearRelease } = placeOf(state);
    expect(rows.get(stream)).toEqual({ stream, standing, gate: gate?.id ?? null, bench, pieces: piecesOf(state), near: nearRelease ? 1 : 0 });
  }
});
