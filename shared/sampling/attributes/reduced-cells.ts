import type { TableRow } from './master-table.ts';

/**
 * MIL-STD-105E Table II-C, single sampling, reduced inspection, with its gap between Ac and Re.
 * Tag: from memory, supported by computation against the other tables; row B at AQL 25 … 65 is the least certain.
 *
 * One row a code letter: letter, sample size, then 26 cells from AQL 0.010 to 1000. A number is Ac (Re = Ac + 1), `Ac/Re` a pair,
 * `v` and `^` an arrow to the first plan below or above in the column.
 */
export const reducedCells: readonly TableRow[] = [
  ['A', 2, 'v v v v v v v v v v v v v v 0 v v 1 2 3 5 7 10 14 21 30'],
  ['B', 2, 'v v v v v v v v v v v v v 0 ^ v 0/2 1/3 2/4 3/5 5 7 10 14 21 30'],
  ['C', 2, 'v v v v v v v v v v v v 0 ^ v 0/2 1/3 1/4 2/5 3/6 5/8 7/10 10/13 14/17 21/24 ^'],
  ['D', 3, 'v v v v v v v v v v v 0 ^ v 0/2 1/3 1/4 2/5 3/6 5/8 7/10 10/13 14/17 21/24 ^ ^'],
  ['E', 5, 'v v v v v v v v v v 0 ^ v 0/2 1/3 1/4 2/5 3/6 5/8 7/10 10/13 14/17 21/24 ^ ^ ^'],
  ['F', 8, 'v v v v v v v v v 0 ^ v 0/2 1/3 1/4 2/5 3/6 5/8 7/10 10/13 ^ ^ ^ ^ ^ ^'],
  ['G', 13, 'v v v v v v v v 0 ^ v 0/2 1/3 1/4 2/5 3/6 5/8 7/10 10/13 ^ ^ ^ ^ ^ ^ ^'],
  ['H', 20, 'v v v v v v v 0 ^ v 0/2 1/3 1/4 2/5 3/6 5/8 7/10 10/13 ^ ^ ^ ^ ^ ^ ^ ^'],
  ['J', 32, 'v v v v v v 0 ^ v 0/2 1/3 1/4 2/5 3/6 5/8 7/10 10/13 ^ ^ ^ ^ ^ ^ ^ ^ ^'],
  ['K', 50, 'v v v v v 0 ^ v 0/2 1/3 1/4 2/5 3/6 5/8 7/10 10/13 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
  ['L', 80, 'v v v v 0 ^ v 0/2 1/3 1/4 2/5 3/6 5/8 7/10 10/13 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
  ['M', 125, 'v v v 0 ^ v 0/2 1/3 1/4 2/5 3/6 5/8 7/10 10/13 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
  ['N', 200, 'v v 0 ^ v 0/2 1/3 1/4 2/5 3/6 5/8 7/10 10/13 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
  ['P', 315, 'v 0 ^ v 0/2 1/3 1/4 2/5 3/6 5/8 7/10 10/13 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
  ['Q', 500, '0 ^ v 0/2 1/3 1/4 2/5 3/6 5/8 7/10 10/13 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
  ['R', 800, '^ ^ 0/2 1/3 1/4 2/5 3/6 5/8 7/10 10/13 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
];
