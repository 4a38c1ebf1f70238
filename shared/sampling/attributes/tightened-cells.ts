import type { TableRow } from './master-table.ts';

/**
 * MIL-STD-105E Table II-B, single sampling, tightened inspection; ISO 2859-1:1999 Table 2-B holds the same cells.
 * Tag: rows A … L for AQL 0.65 … 15 seen in a reproduction, the rest from memory and by the diagonal rule.
 * Row S has one plan and is reached only by the arrow from R; `-` stands where nothing can arrive.
 *
 * One row a code letter: letter, sample size, then 26 cells from AQL 0.010 to 1000. A number is Ac (Re = Ac + 1), `Ac/Re` a pair,
 * `v` and `^` an arrow to the first plan below or above in the column.
 */
export const tightenedCells: readonly TableRow[] = [
  ['A', 2, 'v v v v v v v v v v v v v v v v v v 1 2 3 5 8 12 18 27'],
  ['B', 3, 'v v v v v v v v v v v v v v 0 v v 1 2 3 5 8 12 18 27 41'],
  ['C', 5, 'v v v v v v v v v v v v v 0 v v 1 2 3 5 8 12 18 27 41 ^'],
  ['D', 8, 'v v v v v v v v v v v v 0 v v 1 2 3 5 8 12 18 27 41 ^ ^'],
  ['E', 13, 'v v v v v v v v v v v 0 v v 1 2 3 5 8 12 18 27 41 ^ ^ ^'],
  ['F', 20, 'v v v v v v v v v v 0 v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^'],
  ['G', 32, 'v v v v v v v v v 0 v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^'],
  ['H', 50, 'v v v v v v v v 0 v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^ ^'],
  ['J', 80, 'v v v v v v v 0 v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^ ^ ^'],
  ['K', 125, 'v v v v v v 0 v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
  ['L', 200, 'v v v v v 0 v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
  ['M', 315, 'v v v v 0 v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
  ['N', 500, 'v v v 0 v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
  ['P', 800, 'v v 0 v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
  ['Q', 1250, 'v 0 v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
  ['R', 2000, '0 ^ v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
  ['S', 3150, '- - 1 - - - - - - - - - - - - - - - - - - - - - - -'],
];
