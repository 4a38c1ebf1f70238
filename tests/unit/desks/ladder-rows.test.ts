import { expect, it } from 'vitest';
import { ladderCells, ladderRows } from '../../../kiosk/trace/ladder-rows.ts';
import type { TraceNode } from '../../../shared/wire/views.ts';

const node = (kind: TraceNode['kind'], id: string, depth: number, via: string | null): TraceNode => ({ kind, id, depth, via, stream: null, standing: '', pieces: kind === 'box' ? 10 : null, detail: null });
const here = node('lot', 'L1', 0, null);
const up = [node('coating', 'C1', 1, 'L1'), node('batch', 'P1', 1, 'L1'), node('furnace', 'F1', 1, 'L1'), node('raw', 'R1', 2, 'P1'), node('raw', 'R2', 2, 'P1')];
const boxes = Array.from({ length: 8 }, (_, at) => node('box', `L1-00${at + 1}`, 1, 'L1'));
const down = [...boxes, node('shipment', 'S1', 2, 'L1-001'), node('shipment', 'S1', 2, 'L1-002')];
const ids = (rows: ReturnType<typeof ladderRows>) => rows.map(({ node: { id }, fold }) => (fold === null ? id : `${fold.boxes} boxes, ${fold.pieces} pieces`));

it('draws what came first above: raw lots, batch, furnace, coating, then the lot', () => {
  expect(ids(ladderRows(here, { up, down: [] }, new Set()))).toEqual(['R2', 'R1', 'P1', 'F1', 'C1', 'L1']);
});

it('folds many boxes into one rung and still shows each shipment once', () => {
  expect(ids(ladderRows(here, { up: [], down }, new Set()))).toEqual(['L1', '8 boxes, 80 pieces', 'S1']);
});

it('shows every box once it is unfolded, and the shipment once', () => {
  const rows = ids(ladderRows(here, { up: [], down }, new Set(['L1'])));
  expect(rows).toHaveLength(10);
  expect(rows.filter((id) => id === 'S1')).toHaveLength(1);
});

it('leaves nothing out that hangs on something unknown', () => {
  expect(ids(ladderRows(here, { up: [node('raw', 'R9', 2, 'gone')], down: [] }, new Set()))).toEqual(['R9', 'L1']);
});

it('draws one rail from each row to the row it hangs on', () => {
  const rows = ladderRows(here, { up, down: boxes.slice(0, 2) }, new Set());
  const cells = ladderCells(rows);
  // R2 and R1 share the first column's rail, which turns right at the batch.
  expect(cells.map((row) => row[0])).toMatchObject([{ knot: true, above: false, below: true }, { knot: true, above: true, below: true }, { knot: false, above: true, below: false, right: true }, { above: false }, { above: false }, { above: false }, { above: false }, { above: false }]);
  expect(cells.every((row) => row.filter(({ knot }) => knot).length === 1)).toBe(true);
});
