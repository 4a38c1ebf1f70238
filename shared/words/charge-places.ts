import type { Cell, ChargeMap } from '../traveller/index.ts';
import type { Format } from './format.ts';

/**
 * Where a lot lies, level by level: `Top: 1, 2 and 3; Middle: 1`.
 * @param cells in any order; a lot placed in words has none, and then `places` are said as they were given
 */
export function placesByLevel(map: Pick<ChargeMap, 'levels'>, cells: readonly Cell[], places: readonly string[], format: Format): string {
  if (cells.length === 0) return format.list(places);
  return map.levels.flatMap(({ name }, at) => {
    const here = cells.filter(({ level }) => level === at + 1).map(({ position }) => position).sort((a, b) => a - b);
    return here.length === 0 ? [] : [`${name}: ${format.list(here.map((position) => format.count(position)))}`];
  }).join('; ');
}
