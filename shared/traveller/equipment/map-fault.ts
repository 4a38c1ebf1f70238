import { cellsOf, isOnMap } from './charge-map.ts';
import type { ChargeMap } from './charge-map.ts';

/** Why a map cannot be used. */
export type MapFault = 'noCells' | 'tooManyCells' | 'nameTwice' | 'testPositionOutside';
/** Most cells of a map: 40 levels of 50 trays. */
export const MOST_CELLS = 2_000;

/** Finds what makes a map unusable, with the name it is about. */
export function mapFault(map: ChargeMap): { readonly fault: MapFault; readonly name: string } | null {
  const cells = cellsOf(map).length;
  if (cells === 0) return { fault: 'noCells', name: '' };
  if (cells > MOST_CELLS) return { fault: 'tooManyCells', name: String(cells) };
  const twice = firstTwice(map.levels.map(({ name }) => name)) ?? firstTwice(map.testPositions.map(({ name }) => name));
  if (twice !== null) return { fault: 'nameTwice', name: twice };
  const outside = map.testPositions.find((position) => !isOnMap(map, position));
  return outside === undefined ? null : { fault: 'testPositionOutside', name: outside.name };
}

function firstTwice(names: readonly string[]): string | null {
  return names.find((name, at) => names.indexOf(name) < at) ?? null;
}
