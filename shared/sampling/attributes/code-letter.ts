import { OutsideDomain, requireWhole } from '../../ground/outside-domain.ts';

/** Inspection levels of Table I: four special ones for small samples, three general ones; II unless the plan says otherwise. */
export type InspectionLevel = 'S-1' | 'S-2' | 'S-3' | 'S-4' | 'I' | 'II' | 'III';

/** Sample size code letter. I and O are not used; S is reached only by an arrow of the tightened table. */
export type CodeLetter = 'A' | 'B' | 'C' | 'D' | 'E' | 'F' | 'G' | 'H' | 'J' | 'K' | 'L' | 'M' | 'N' | 'P' | 'Q' | 'R' | 'S';

/** The levels in the column order of Table I. */
export const INSPECTION_LEVELS: readonly InspectionLevel[] = ['S-1', 'S-2', 'S-3', 'S-4', 'I', 'II', 'III'];

/** The largest lot any function here answers for. The table itself has no upper end. */
export const LARGEST_LOT = 1_000_000_000;

type LettersOfALotRange = readonly [largestLot: number, ...letters: readonly CodeLetter[]];

/**
 * MIL-STD-105E Table I = ISO 2859-1:1999 Table 1: largest lot of the range, then the letters for S-1, S-2, S-3, S-4, I, II, III.
 * Tag: seen in full in four independent reproductions.
 */
const TABLE_I: readonly LettersOfALotRange[] = [
  [8, 'A', 'A', 'A', 'A', 'A', 'A', 'B'],
  [15, 'A', 'A', 'A', 'A', 'A', 'B', 'C'],
  [25, 'A', 'A', 'B', 'B', 'B', 'C', 'D'],
  [50, 'A', 'B', 'B', 'C', 'C', 'D', 'E'],
  [90, 'B', 'B', 'C', 'C', 'C', 'E', 'F'],
  [150, 'B', 'B', 'C', 'D', 'D', 'F', 'G'],
  [280, 'B', 'C', 'D', 'E', 'E', 'G', 'H'],
  [500, 'B', 'C', 'D', 'E', 'F', 'H', 'J'],
  [1200, 'C', 'C', 'E', 'F', 'G', 'J', 'K'],
  [3200, 'C', 'D', 'E', 'G', 'H', 'K', 'L'],
  [10_000, 'C', 'D', 'F', 'G', 'J', 'L', 'M'],
  [35_000, 'C', 'D', 'F', 'H', 'K', 'M', 'N'],
  [150_000, 'D', 'E', 'G', 'J', 'L', 'N', 'P'],
  [500_000, 'D', 'E', 'G', 'J', 'M', 'P', 'Q'],
  [Infinity, 'D', 'E', 'H', 'K', 'N', 'Q', 'R'],
];

/**
 * The sample size code letter of a lot.
 * @param lotSize pieces in the lot, 2 … 1 000 000 000; a lot of one piece is not in the table
 * @throws OutsideDomain for any other lot size or an unknown level
 * @see MIL-STD-105E Table I = ISO 2859-1:1999 Table 1
 * @example codeLetter(1200, 'II') // 'J'
 */
export function codeLetter(lotSize: number, level: InspectionLevel): CodeLetter {
  requireWhole('lotSize', lotSize, 2, LARGEST_LOT);
  const column = INSPECTION_LEVELS.indexOf(level);
  if (column < 0) throw new OutsideDomain('level', INSPECTION_LEVELS.join(', '), level);
  const row = TABLE_I.find(([largestLot]) => lotSize <= largestLot);
  const letter = row?.slice(1)[column];
  if (letter === undefined || typeof letter === 'number') throw new OutsideDomain('lotSize', 'covered by Table I', lotSize);
  return letter;
}
