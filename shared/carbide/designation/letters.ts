/** Normal clearance of position 2, degrees; null for O, another angle that is described apart. @see ISO 1832 (memory) */
export const CLEARANCES = { A: 3, B: 5, C: 7, D: 15, E: 20, F: 25, G: 30, N: 0, P: 11, O: null } as const;
export type ClearanceLetter = keyof typeof CLEARANCES;

/** Letters of position 3. */
export const TOLERANCE_CLASSES = ['A', 'F', 'C', 'H', 'E', 'G', 'J', 'K', 'L', 'M', 'N', 'U'] as const;
export type ToleranceClass = (typeof TOLERANCE_CLASSES)[number];

/** The fixing hole: with one or two countersinks of the angle named, degrees. */
export type Hole = 'none' | 'cylindrical' | 'oneCountersink40' | 'twoCountersinks40' | 'oneCountersink70' | 'twoCountersinks70';
export type ChipBreaker = 'none' | 'oneFace' | 'bothFaces';
export type Fixing = { readonly hole: Hole; readonly chipBreaker: ChipBreaker };

/** Hole and chip breaker of position 4; null for X, which needs a drawing. @see ISO 1832 (memory) */
export const FIXINGS = {
  N: { hole: 'none', chipBreaker: 'none' }, R: { hole: 'none', chipBreaker: 'oneFace' }, F: { hole: 'none', chipBreaker: 'bothFaces' },
  A: { hole: 'cylindrical', chipBreaker: 'none' }, M: { hole: 'cylindrical', chipBreaker: 'oneFace' }, G: { hole: 'cylindrical', chipBreaker: 'bothFaces' },
  W: { hole: 'oneCountersink40', chipBreaker: 'none' }, T: { hole: 'oneCountersink40', chipBreaker: 'oneFace' },
  Q: { hole: 'twoCountersinks40', chipBreaker: 'none' }, U: { hole: 'twoCountersinks40', chipBreaker: 'bothFaces' },
  B: { hole: 'oneCountersink70', chipBreaker: 'none' }, H: { hole: 'oneCountersink70', chipBreaker: 'oneFace' },
  C: { hole: 'twoCountersinks70', chipBreaker: 'none' }, J: { hole: 'twoCountersinks70', chipBreaker: 'bothFaces' },
  X: null,
} as const satisfies Record<string, Fixing | null>;
export type FixingLetter = keyof typeof FIXINGS;

/** Cutting edge of position 8. @see ISO 1832 (seen; P from memory) */
export const EDGES = { F: 'sharp', E: 'rounded', T: 'chamfered', S: 'chamferedAndRounded', K: 'doubleChamfered', P: 'doubleChamferedAndRounded' } as const;
export type EdgeLetter = keyof typeof EDGES;

/** Cutting direction of position 9. @see ISO 1832 (seen) */
export const HANDS = { R: 'right', L: 'left', N: 'both' } as const;
export type HandLetter = keyof typeof HANDS;

/** First letter of a wiper corner: cutting edge angle, degrees; null: another. @see ISO 1832 position 7 (memory) */
export const WIPER_ANGLES = { A: 45, D: 60, E: 75, F: 85, P: 90, Z: null } as const;
export type WiperAngleLetter = keyof typeof WIPER_ANGLES;

/** Second letter of a wiper corner: normal clearance of the wiper, degrees; null: another. @see ISO 1832 position 7 (memory) */
export const WIPER_CLEARANCES = { A: 3, B: 5, C: 7, D: 15, E: 20, F: 25, G: 30, N: 0, P: 11, Z: null } as const;
export type WiperClearanceLetter = keyof typeof WIPER_CLEARANCES;

/** The letter itself where it is a key of the table, otherwise null. */
export function letterOf<Letter extends string>(table: Readonly<Record<Letter, unknown>>, text: string): Letter | null {
  return isLetterOf(table, text) ? text : null;
}
function isLetterOf<Letter extends string>(table: Readonly<Record<Letter, unknown>>, text: string): text is Letter {
  return Object.hasOwn(table, text);
}
