import type { TableRow } from './master-table.ts';

/**
 * MIL-STD-105E Table II-A, single sampling, normal inspection; ISO 2859-1:1999 Table 2-A holds the same cells.
 * Tag: Ac/Re sequence of every row and AQL 0.65 … 15 seen in reproductions, the other positions from memory and by the diagonal rule.
 *
 * One row a code letter: letter, sample size, then 26 cells from AQL 0.010 to 1000. A number is Ac (Re = Ac + 1), `Ac/Re` a pair,
 * `v` and `^` an arrow to the first plan below or above in the column.
 */
export const normalCells: readonly TableRow[] = [
  ['A', 2, 'v v v v v v v v v v v v v v 0 v v 1 2 3 5 7 10 14 21 30'],
  ['B', 3, 'v v v v v v v v v v v v v 0 ^ v 1 2 3 5 7 10 14 21 30 44'],
  ['C', 5, 'v v v v v v v v v v v v 0 ^ v 1 2 3 5 7 10 14 21 30 44 ^'],
  ['D', 8, 'v v v v v v v v v v v 0 ^ v 1 2 3 5 7 10 14 21 30 44 ^ ^'],
  ['E', 13, 'v v v v v v v v v v 0 ^ v 1 2 3 5 7 10 14 21 30 44 ^ ^ ^'],
  ['F', 20, 'v v v v v v v v v 0 ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^'],
  ['G', 32, 'v v v v v v v v 0 ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^'],
  ['H', 50, 'v v v v v v v 0 ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^ ^'],
  ['J', 80, 'v v v v v v 0 ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^ ^ ^'],
  ['K', 125, 'v v v v v 0 ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
  ['L', 200, 'v v v v 0 ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
  ['M', 315, 'v v v 0 ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
  ['N', 500, 'v v 0 ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
  ['P', 800, 'v 0 ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
  ['Q', 1250, '0 ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
  ['R', 2000, '^ ^ 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
];
