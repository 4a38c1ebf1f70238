import type { StagedTable } from './staged-rows.ts';

/**
 * MIL-STD-105E Table III-A, double sampling, normal inspection.
 * Tag: from memory throughout; every pair supported by computation against the single plan of the same cell.
 *
 * `plans`: the single plan of the cell (Ac, or `Ac/Re` where Re is not Ac + 1), then Ac/Re of each sample in turn, cumulative; `#` =
 * acceptance is not possible yet. `rows`: letter, size of each sample (0 = the row has none), then 26 cells from AQL 0.010 to 1000. A
 * number stands for the plan of that name, `v` and `^` are arrows to the first plan below or above in the column, `S` means the single
 * plan of the cell.
 */
export const doubleNormalCells: StagedTable = {
  samples: 2,
  plans: {
    1: '0/2 1/2',
    2: '0/3 3/4',
    3: '1/4 4/5',
    5: '2/5 6/7',
    7: '3/7 8/9',
    10: '5/9 12/13',
    14: '7/11 18/19',
    21: '11/16 26/27',
    30: '17/22 37/38',
    44: '25/31 56/57',
  },
  rows: [
    ['A', 0, 'v v v v v v v v v v v v v v S v v S S S S S S S S S'],
    ['B', 2, 'v v v v v v v v v v v v v S ^ v 1 2 3 5 7 10 14 21 30 44'],
    ['C', 3, 'v v v v v v v v v v v v S ^ v 1 2 3 5 7 10 14 21 30 44 ^'],
    ['D', 5, 'v v v v v v v v v v v S ^ v 1 2 3 5 7 10 14 21 30 44 ^ ^'],
    ['E', 8, 'v v v v v v v v v v S ^ v 1 2 3 5 7 10 14 21 30 44 ^ ^ ^'],
    ['F', 13, 'v v v v v v v v v S ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^'],
    ['G', 20, 'v v v v v v v v S ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^'],
    ['H', 32, 'v v v v v v v S ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^ ^'],
    ['J', 50, 'v v v v v v S ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['K', 80, 'v v v v v S ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['L', 125, 'v v v v S ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['M', 200, 'v v v S ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['N', 315, 'v v S ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['P', 500, 'v S ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['Q', 800, 'S ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['R', 1250, '^ ^ 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
  ],
};
