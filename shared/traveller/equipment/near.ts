import { middleOf, positionsOf, sameCell } from './charge-map.ts';
import type { Cell, ChargeMap, MapLevel } from './charge-map.ts';

/** How a cell lies to another, nearest first. */
export const NEARNESS = ['same', 'beside', 'above', 'below'] as const;
export type Nearness = (typeof NEARNESS)[number];
/** Positions whose middles differ by less lie equally far. */
const SAME_PLACE = 1e-9;

/**
 * How `cell` lies to `from`: the same cell, beside it on the same level, or straight above or below it on the next level; null where it is
 * not near. Beside it in rows and columns are the up to eight cells that touch by side or corner, on a ring the next ones either way. Straight
 * above and below are those cells of the next level whose middles lie closest to its own, seen from above (several where they lie equally close).
 * Derived, our own choice: how heat and gas run in a furnace is the plant's to know, and the map says only where pieces lay.
 */
export function nearness({ levels }: Pick<ChargeMap, 'levels'>, from: Cell, cell: Cell): Nearness | null {
  const [here, there] = [levels[from.level - 1], levels[cell.level - 1]];
  if (here === undefined || there === undefined) return null;
  if (sameCell(from, cell)) return 'same';
  if (from.level === cell.level) return isBeside(here, from.position, cell.position) ? 'beside' : null;
  if (Math.abs(from.level - cell.level) !== 1 || !isClosest(here, from.position, there, cell.position)) return null;
  return cell.level < from.level ? 'above' : 'below';
}

function isBeside({ layout }: MapLevel, one: number, other: number): boolean {
  if (layout.by === 'ring') {
    const apart = Math.abs(one - other);
    return Math.min(apart, layout.positions - apart) === 1;
  }
  const [row, column] = [(position: number): number => Math.floor((position - 1) / layout.columns), (position: number): number => (position - 1) % layout.columns];
  return Math.max(Math.abs(row(one) - row(other)), Math.abs(column(one) - column(other))) === 1;
}

function isClosest(here: MapLevel, from: number, there: MapLevel, position: number): boolean {
  const middle = middleOf(here, from);
  const far = (at: number): number => {
    const { x, y } = middleOf(there, at);
    return Math.hypot(x - middle.x, y - middle.y);
  };
  const closest = Math.min(...Array.from({ length: positionsOf(there) }, (_, index) => far(index + 1)));
  return far(position) <= closest + SAME_PLACE;
}

/** Lots that lie near a cell, the nearest first and then in the order given; each once, as near as its nearest cell. */
export function lotsNear(map: Pick<ChargeMap, 'levels'>, from: Cell, members: readonly { readonly lot: string; readonly cells?: readonly Cell[] }[]): readonly { readonly lot: string; readonly how: Nearness }[] {
  const rank = (how: Nearness): number => NEARNESS.indexOf(how);
  return members.flatMap(({ lot, cells = [] }) => {
    const [how] = cells.flatMap((cell) => nearness(map, from, cell) ?? []).sort((a, b) => rank(a) - rank(b));
    return how === undefined ? [] : [{ lot, how }];
  }).sort((a, b) => rank(a.how) - rank(b.how));
}
