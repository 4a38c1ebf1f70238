import { OutsideDomain, requireWhole } from '../../ground/outside-domain.ts';

/** Inspection levels of MIL-STD-414; IV unless the plan says otherwise. */
export type VariablesLevel = 'I' | 'II' | 'III' | 'IV' | 'V';

/** Sample size code letter of MIL-STD-414. They are not the letters of the attributes tables. */
export type VariablesLetter = 'B' | 'C' | 'D' | 'E' | 'F' | 'G' | 'H' | 'I' | 'J' | 'K' | 'L' | 'M' | 'N' | 'O' | 'P' | 'Q';

/** The levels in the column order of Table A-2. */
export const VARIABLES_LEVELS: readonly VariablesLevel[] = ['I', 'II', 'III', 'IV', 'V'];

/** The smallest lot Table A-2 knows. */
export const SMALLEST_VARIABLES_LOT = 3;

type LettersOfALotRange = readonly [largestLot: number, ...letters: readonly VariablesLetter[]];

/**
 * MIL-STD-414 (1957) Table A-2: largest lot of the range, then the letters for levels I … V.
 * Tag: memory; the level IV cells of lots 40, 100, 500 and 100 000 confirmed by published examples.
 */
const TABLE_A_2: readonly LettersOfALotRange[] = [
  [8, 'B', 'B', 'B', 'B', 'C'],
  [15, 'B', 'B', 'B', 'B', 'D'],
  [25, 'B', 'B', 'B', 'C', 'E'],
  [40, 'B', 'B', 'B', 'D', 'F'],
  [65, 'B', 'B', 'C', 'E', 'G'],
  [110, 'B', 'B', 'D', 'F', 'H'],
  [180, 'B', 'C', 'E', 'G', 'I'],
  [300, 'B', 'D', 'F', 'H', 'J'],
  [500, 'C', 'E', 'G', 'I', 'K'],
  [800, 'D', 'F', 'H', 'J', 'L'],
  [1300, 'E', 'G', 'I', 'K', 'L'],
  [3200, 'F', 'H', 'J', 'L', 'M'],
  [8000, 'G', 'I', 'L', 'M', 'N'],
  [22_000, 'H', 'J', 'M', 'N', 'O'],
  [110_000, 'I', 'K', 'N', 'O', 'P'],
  [550_000, 'I', 'K', 'O', 'P', 'Q'],
  [Infinity, 'I', 'K', 'P', 'Q', 'Q'],
];

/**
 * The sample size code letter of a lot inspected by variables.
 * @param lotSize pieces in the lot, 3 … 1 000 000 000; the table knows no smaller lot
 * @throws OutsideDomain for any other lot size or an unknown level
 * @see MIL-STD-414 Table A-2
 * @example variablesLetter(40, 'IV') // 'D'
 */
export function variablesLetter(lotSize: number, level: VariablesLevel): VariablesLetter {
  requireWhole('lotSize', lotSize, SMALLEST_VARIABLES_LOT, 1_000_000_000);
  const column = VARIABLES_LEVELS.indexOf(level);
  if (column < 0) throw new OutsideDomain('level', VARIABLES_LEVELS.join(', '), level);
  const row = TABLE_A_2.find(([largestLot]) => lotSize <= largestLot);
  const letter = row?.slice(1)[column];
  if (letter === undefined || typeof letter === 'number') throw new OutsideDomain('lotSize', 'covered by Table A-2', lotSize);
  return letter;
}
