/** How the positions of a level lie: rows and columns counted from the top left, or a ring counted clockwise from the top, as seen from above with the door (or the operator) at the bottom. */
export type LevelLayout = { readonly by: 'grid'; readonly rows: number; readonly columns: number } | { readonly by: 'ring'; readonly positions: number };
export interface MapLevel { readonly name: string; readonly layout: LevelLayout }
/** One place of a level; both count from 1. */
export interface Cell { readonly level: number; readonly position: number }
/** Where a test piece lies, under the name that plans ask for it by. Trays of lots may share its cell. */
export interface TestPosition extends Cell { readonly name: string }
/** What a furnace or coating plant looks like inside: levels from the top down. */
export interface ChargeMap { readonly levels: readonly MapLevel[]; readonly testPositions: readonly TestPosition[] }

/** Places of a level. */
export function positionsOf({ layout }: MapLevel): number {
  return layout.by === 'grid' ? layout.rows * layout.columns : layout.positions;
}

/** True for a cell that the map has. */
export function isOnMap({ levels }: Pick<ChargeMap, 'levels'>, { level, position }: Cell): boolean {
  const at = levels[level - 1];
  return at !== undefined && Number.isInteger(position) && position >= 1 && position <= positionsOf(at);
}

/** What a cell is called on paper and on screen: the level's name and the position, e.g. `Top 3`; behind a name that ends in a figure a stroke keeps the two apart, `Level 1/3`. */
export function cellName({ levels }: Pick<ChargeMap, 'levels'>, { level, position }: Cell): string {
  const name = levels[level - 1]?.name ?? String(level);
  return `${name}${/\d$/.test(name) ? '/' : ' '}${position}`;
}

export function sameCell(one: Cell, other: Cell): boolean {
  return one.level === other.level && one.position === other.position;
}

/** Every cell, level by level. */
export function cellsOf({ levels }: Pick<ChargeMap, 'levels'>): readonly Cell[] {
  return levels.flatMap((level, at) => Array.from({ length: positionsOf(level) }, (_, index) => ({ level: at + 1, position: index + 1 })));
}

/** The middle of a position within its level, both from 0 (left, top) to 1. A ring runs at four fifths of the half width. */
export function middleOf({ layout }: MapLevel, position: number): { readonly x: number; readonly y: number } {
  if (layout.by === 'grid') return { x: (((position - 1) % layout.columns) + 0.5) / layout.columns, y: (Math.floor((position - 1) / layout.columns) + 0.5) / layout.rows };
  const turn = (2 * Math.PI * (position - 1)) / layout.positions;
  return { x: 0.5 + 0.4 * Math.sin(turn), y: 0.5 - 0.4 * Math.cos(turn) };
}
