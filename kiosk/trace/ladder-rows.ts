import type { Trace, TraceNode } from '../../shared/wire/views.ts';

/** More boxes than this on one lot are drawn as one rung until they are unfolded. */
const mostBoxesInSight = 6;

/** The order in which things come about; what stands above is drawn in it. */
const ORDER: readonly TraceNode['kind'][] = ['raw', 'batch', 'lot', 'furnace', 'coating', 'box', 'shipment'];

export type Direction = 'up' | 'here' | 'down';
/** One rung of the ladder. `level` counts the columns from the left, raw material first. */
export interface LadderRow {
  readonly key: string;
  readonly direction: Direction;
  readonly level: number;
  /** Index of the row it hangs on; null for the one traced from. */
  readonly parent: number | null;
  readonly node: TraceNode;
  /** Set where the row stands for several boxes. */
  readonly fold: null | { readonly lot: string; readonly boxes: number; readonly pieces: number };
}

type Branch = { readonly node: TraceNode; readonly fold: LadderRow['fold']; readonly parent: Branch | null; readonly depth: number };

/** Puts a trace in order for drawing: everything above first, the one traced from, then all that was made of it. */
export function ladderRows(here: TraceNode, { up, down }: Pick<Trace, 'up' | 'down'>, unfolded: ReadonlySet<string>): readonly LadderRow[] {
  const root: Branch = { node: here, fold: null, parent: null, depth: 0 };
  const above = grow(root, [...up].sort((a, b) => ORDER.indexOf(b.kind) - ORDER.indexOf(a.kind)), unfolded).reverse();
  const below = grow(root, down, unfolded);
  const deepest = Math.max(0, ...above.map(({ depth }) => depth));
  const branches = [...above, root, ...below];
  const at = new Map(branches.map((branch, index) => [branch, index]));
  return branches.map((branch, index): LadderRow => {
    const direction: Direction = branch === root ? 'here' : index < above.length ? 'up' : 'down';
    return {
      key: `${direction}/${index}/${branch.node.kind}:${branch.node.id}`, direction, node: branch.node, fold: branch.fold,
      level: direction === 'up' ? deepest - branch.depth : deepest + branch.depth, parent: branch.parent === null ? null : (at.get(branch.parent) ?? null),
    };
  });
}

function grow(root: Branch, nodes: readonly TraceNode[], unfolded: ReadonlySet<string>): Branch[] {
  const children = new Map<string, TraceNode[]>();
  for (const node of nodes) {
    // What hangs on something that is not in this trace hangs on the one traced from, so that nothing is left out.
    const via = node.via !== null && nodes.some(({ id }) => id === node.via) ? node.via : root.node.id;
    children.set(via, [...(children.get(via) ?? []), node]);
  }
  const seen = new Set<string>();
  const branches: Branch[] = [];
  const add = (parent: Branch, ids: readonly string[]): void => {
    const hanging = ids.flatMap((id) => children.get(id) ?? []).filter(({ kind, id }) => !seen.has(`${kind}:${id}`));
    const boxes = hanging.filter(({ kind }) => kind === 'box');
    const folds = boxes.length > mostBoxesInSight && !unfolded.has(parent.node.id);
    const [first] = boxes;
    if (folds && first !== undefined) {
      for (const { kind, id } of boxes) seen.add(`${kind}:${id}`);
      const pieces = boxes.reduce((sum, box) => sum + (box.pieces ?? 0), 0);
      const fold: Branch = { node: first, fold: { lot: parent.node.id, boxes: boxes.length, pieces }, parent, depth: parent.depth + 1 };
      branches.push(fold);
      add(fold, boxes.map(({ id }) => id));
    }
    for (const node of hanging) {
      if (seen.has(`${node.kind}:${node.id}`)) continue;
      seen.add(`${node.kind}:${node.id}`);
      const branch: Branch = { node, fold: null, parent, depth: parent.depth + 1 };
      branches.push(branch);
      add(branch, [node.id]);
    }
  };
  add(root, [root.node.id]);
  return branches;
}

/** What is drawn in one column beside one row: a rail from above, a rail to below, a rung to the right, the row's own knot. */
export interface LadderCell { readonly above: boolean; readonly below: boolean; readonly right: boolean; readonly left: boolean; readonly knot: boolean }

/** The columns left of each row. A rail runs down in the upper end's column and turns right at the lower end's row. */
export function ladderCells(rows: readonly LadderRow[]): readonly (readonly LadderCell[])[] {
  const width = Math.max(...rows.map(({ level }) => level)) + 1;
  const edges = rows.flatMap(({ parent, level }, index) => {
    const other = parent === null ? undefined : rows[parent];
    if (parent === null || other === undefined) return [];
    return [{ column: Math.min(level, other.level), from: Math.min(index, parent), to: Math.max(index, parent), until: Math.max(level, other.level) }];
  });
  return rows.map(({ level }, row) =>
    Array.from({ length: width }, (_, column): LadderCell => {
      const own = edges.filter((edge) => edge.column === column);
      const turning = edges.filter(({ to }) => to === row);
      return {
        above: own.some(({ from, to }) => from < row && to >= row), below: own.some(({ from, to }) => from <= row && to > row),
        right: turning.some((edge) => edge.column <= column && column < edge.until), left: turning.some((edge) => edge.column < column && column <= edge.until), knot: level === column,
      };
    }),
  );
}
