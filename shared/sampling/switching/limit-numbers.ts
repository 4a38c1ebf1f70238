import { requireWhole } from '../../ground/outside-domain.ts';
import { aqlColumn } from '../attributes/index.ts';

/**
 * MIL-STD-105E Table VIII, limit numbers for reduced inspection: smallest number of units of the row, then the 26 cells from AQL 0.010
 * to 1000. `*` = ten lots are not enough units for this AQL, `.` = not tabulated.
 * Tag: digits seen as a run-together extraction of the 2003 American edition; the last row from memory.
 */
const TABLE_VIII: readonly (readonly [leastUnits: number, cells: string])[] = [
  [20, '* * * * * * * * * * * * * * * 0 0 2 4 8 14 22 40 68 115 181'],
  [30, '* * * * * * * * * * * * * * 0 0 1 3 7 13 22 36 63 105 178 277'],
  [50, '* * * * * * * * * * * * * 0 0 2 3 7 14 25 40 63 110 181 301 .'],
  [80, '* * * * * * * * * * * * 0 0 2 4 7 14 24 42 68 105 181 297 . .'],
  [130, '* * * * * * * * * * * 0 0 2 4 7 13 25 42 72 115 177 301 490 . .'],
  [200, '* * * * * * * * * * 0 0 2 4 8 14 22 40 68 115 181 277 471 . . .'],
  [320, '* * * * * * * * * 0 0 1 4 8 14 24 39 68 113 189 . . . . . .'],
  [500, '* * * * * * * * 0 0 2 3 7 14 25 40 63 110 181 . . . . . . .'],
  [800, '* * * * * * * 0 0 2 4 7 14 24 42 68 105 181 . . . . . . . .'],
  [1250, '* * * * * * 0 0 2 4 7 13 24 40 69 110 169 . . . . . . . . .'],
  [2000, '* * * * * 0 0 2 4 8 14 22 40 68 115 181 . . . . . . . . . .'],
  [3150, '* * * * 0 0 1 4 8 14 24 38 67 111 186 . . . . . . . . . . .'],
  [5000, '* * * 0 0 2 3 7 14 25 40 63 110 181 . . . . . . . . . . . .'],
  [8000, '* * 0 0 2 4 7 14 24 42 68 105 181 . . . . . . . . . . . . .'],
  [12500, '* 0 0 2 4 7 13 24 40 69 110 169 . . . . . . . . . . . . . .'],
  [20000, '0 0 2 4 8 14 22 40 68 115 181 . . . . . . . . . . . . . . .'],
  [31500, '0 1 4 8 14 24 38 67 111 186 . . . . . . . . . . . . . . . .'],
  [50000, '2 3 7 14 25 40 63 110 181 301 . . . . . . . . . . . . . . . .'],
];

/**
 * The limit number for the units in the samples of the last ten or more lots on normal inspection.
 * @param units sample sizes added up, 0 or more
 * @returns the largest total of nonconforming units that still allows reduced inspection; 'tooFewUnits' where the table has a star (or
 *   begins later), so that more lots may be taken in; null where the table has no number
 * @throws OutsideDomain for an AQL that is no column
 * @see MIL-STD-105E 4.7.3 b and Table VIII with its note
 */
export function limitNumber(aqlPercent: number, units: number): number | 'tooFewUnits' | null {
  requireWhole('units', units, 0, Number.MAX_SAFE_INTEGER);
  const column = aqlColumn(aqlPercent);
  const row = TABLE_VIII.findLast(([leastUnits]) => units >= leastUnits);
  const cell = row?.[1].split(' ')[column] ?? '*';
  if (cell === '*') return 'tooFewUnits';
  return cell === '.' ? null : Number(cell);
}
