import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makeHistory } from '../../../demo-data/history.ts';
import { fold } from '../../../server/door/state-cache.ts';
import { typed } from '../../../server/readmodels/typed-slip.ts';
import { gaugeRow } from '../../../server/readmodels/gauge-rows.ts';
import { countOfUses, readingsOfGauge, recallRows } from '../../../server/readmodels/gauge-uses.ts';
import type { Recall, Slip } from '../../../shared/traveller/index.ts';
import { FixturePlant } from '../fixture-plant.ts';

let plant: FixturePlant;
let slips: readonly Slip[];
beforeAll(async () => {
  plant = await FixturePlant.empty();
  const history = makeHistory({ seed: 'recall', endIso: '2026-06-30T16:00:00.000Z' });
  for (let at = 0; at < history.length; at += 400) await Promise.all(history.slice(at, at + 400).map((entry) => plant.server.journal.append(entry)));
  slips = (await Promise.all((await plant.server.journal.heads()).map(({ stream }) => plant.server.journal.read(stream)))).flat().map(typed);
}, 120_000);
afterAll(() => plant.close());

/** A recall of that gauge over a span, as if it had been opened. */
const recallOver = (from: string | null, to: string): Recall => ({ id: 'R', found: 'check', openedAt: to, openedBy: 'K-100', since: from, error: 0.01, allowedError: 0.002, held: [], closed: null });

/** Brute force over every slip of the plant: which streams the gauge read between two moments. */
function readBy(gauge: string, from: string, to: string): Map<string, number> {
  const found = new Map<string, number>();
  for (const { stream, at, body } of slips) {
    if ((body.type !== 'readingTaken' && body.type !== 'weightsTaken') || body.gauge?.id !== gauge || at < from || at > to) continue;
    found.set(stream, (found.get(stream) ?? 0) + 1);
  }
  return found;
}

/** What rests on a stream, from the slips alone: blended of the batch, made from it, put into the charge, split from the lot. */
function restingOn(streams: ReadonlySet<string>): Set<string> {
  const all = new Set(streams);
  for (let before = -1; before !== all.size;) {
    before = all.size;
    for (const { stream, body } of slips) {
      if (body.type === 'batchOpened' && (body.blendedFrom ?? []).some(({ batch }) => all.has(`batch:${batch}`))) all.add(stream);
      if (body.type === 'lotOpened' && (all.has(`batch:${body.batch}`) || (body.splitFrom !== null && all.has(`lot:${body.splitFrom}`)))) all.add(stream);
      if (body.type === 'chargeJoined' && all.has(body.charge)) all.add(stream);
    }
  }
  return all;
}

describe('what a recall lists', () => {
  const gauges = ['MIC-11', 'BAL-21', 'DEN-41', 'COE-42', 'HAR-43', 'OPT-31', 'CRA-44'];
  const spans: readonly (readonly [string | null, string])[] = [[null, '2026-06-30T16:00:00.000Z'], ['2026-06-10T00:00:00.000Z', '2026-06-30T16:00:00.000Z'], ['2026-05-20T00:00:00.000Z', '2026-05-28T12:00:00.000Z'], ['2026-07-01T00:00:00.000Z', '2026-07-02T00:00:00.000Z']];
  it.each(gauges.flatMap((gauge) => spans.map(([from, to]) => ({ gauge, from, to }))))('$gauge from $from to $to is what a walk through every slip finds', ({ gauge, from, to }) => {
    const db = plant.server.journal.reader;
    const rows = recallRows(db, gauge, recallOver(from, to));
    const expected = readBy(gauge, from ?? '', to);
    expect(new Map(rows.filter(({ through }) => through === null).map(({ stream, readings }) => [stream, readings]))).toEqual(expected);
    expect(new Set(rows.map(({ stream }) => stream))).toEqual(restingOn(new Set(expected.keys())));
    expect(countOfUses(db, gauge, { from: from ?? '', to }).readings).toBe([...expected.values()].reduce((sum, each) => sum + each, 0));
  });

  it('is told with what became of each: released, shipped by order and consignee, still here', async () => {
    const rows = recallRows(plant.server.journal.reader, 'MIC-11', recallOver(null, '2026-06-30T16:00:00.000Z'));
    for (const row of rows.filter(({ kind }) => kind === 'lot')) {
      const lot = fold(await plant.server.journal.read(row.stream));
      if (lot?.kind !== 'lot') throw new Error(`${row.stream} is no lot`);
      expect(row.certificate).toBe(lot.release !== null && lot.release.withdrawn === null ? lot.release.certificate : null);
      const shipped = lot.boxes.filter((box) => box.shipped !== null && box.voided === null);
      expect(row.shipped.reduce((sum, { boxes }) => sum + boxes, 0)).toBe(shipped.length);
      expect(row.shipped.reduce((sum, { pieces }) => sum + pieces, 0)).toBe(shipped.reduce((sum, { pieces }) => sum + pieces, 0));
    }
    expect(rows.some(({ shipped }) => shipped.length > 0)).toBe(true);
    expect(rows.some(({ here }) => here) && rows.some(({ here }) => !here)).toBe(true);
  });

  it('pages through every reading once, in the order taken', () => {
    const db = plant.server.journal.reader;
    const span = { from: '', to: '~' };
    const all = readingsOfGauge(db, 'MIC-11', span, 0, 100_000);
    const paged = Array.from({ length: Math.ceil(all.length / 97) }, (_, page) => readingsOfGauge(db, 'MIC-11', span, 97 * page, 97)).flat();
    expect(all.length).toBeGreaterThan(300);
    expect(paged).toEqual(all);
    expect([...all].sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0)).map(({ at }) => at)).toEqual(all.map(({ at }) => at));
  });
});

it('a gauge’s row is the fold of its thread', async () => {
  for (const gauge of ['MIC-11', 'OPT-31']) expect(gaugeRow(plant.server.journal.reader, gauge)).toEqual(fold(await plant.server.journal.read(`gauge:${gauge}`)));
});
