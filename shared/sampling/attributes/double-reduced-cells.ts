import type { StagedTable } from './staged-rows.ts';

/**
 * MIL-STD-105E Table III-C, double sampling, reduced inspection. The second pair has the gap of reduced plans between Ac and Re.
 * Tag: from memory throughout, supported by computation (the gap counted as accepted). That rows A, B and C say `single` wherever the
 * single table has a plan is the least certain.
 *
 * `plans`: the single plan of the cell (Ac, or `Ac/Re` where Re is not Ac + 1), then Ac/Re of each sample in turn, cumulative; `#` =
 * acceptance is not possible yet. `rows`: letter, size of each sample (0 = the row has none), then 26 cells from AQL 0.010 to 1000. A
 * number stands for the plan of that name, `v` and `^` are arrows to the first plan below or above in the column, `S` means the single
 * plan of the cell.
 */
export const doubleReducedCells: StagedTable = {
  samples: 2,
  plans: {
    '0/2': '0/2 0/2',
    '1/3': '0/3 0/4',
    '1/4': '0/4 1/5',
    '2/5': '0/4 3/6',
    '3/6': '1/5 4/7',
    '5/8': '2/7 6/9',
    '7/10': '3/8 8/12',
    '10/13': '5/10 12/16',
    '14/17': '7/12 18/22',
    '21/24': '11/17 26/30',
  },
  rows: [
    ['A', 0, 'v v v v v v v v v v v v v v S v v S S S S S S S S S'],
    ['B', 0, 'v v v v v v v v v v v v v S ^ v S S S S S S S S S S'],
    ['C', 0, 'v v v v v v v v v v v v S ^ v S S S S S S S S S S ^'],
    ['D', 2, 'v v v v v v v v v v v S ^ v 0/2 1/3 1/4 2/5 3/6 5/8 7/10 10/13 14/17 21/24 ^ ^'],
    ['E', 3, 'v v v v v v v v v v S ^ v 0/2 1/3 1/4 2/5 3/6 5/8 7/10 10/13 14/17 21/24 ^ ^ ^'],
    ['F', 5, 'v v v v v v v v v S ^ v 0/2 1/3 1/4 2/5 3/6 5/8 7/10 10/13 ^ ^ ^ ^ ^ ^'],
    ['G', 8, 'v v v v v v v v S ^ v 0/2 1/3 1/4 2/5 3/6 5/8 7/10 10/13 ^ ^ ^ ^ ^ ^ ^'],
    ['H', 13, 'v v v v v v v S ^ v 0/2 1/3 1/4 2/5 3/6 5/8 7/10 10/13 ^ ^ ^ ^ ^ ^ ^ ^'],
    ['J', 20, 'v v v v v v S ^ v 0/2 1/3 1/4 2/5 3/6 5/8 7/10 10/13 ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['K', 32, 'v v v v v S ^ v 0/2 1/3 1/4 2/5 3/6 5/8 7/10 10/13 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['L', 50, 'v v v v S ^ v 0/2 1/3 1/4 2/5 3/6 5/8 7/10 10/13 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['M', 80, 'v v v S ^ v 0/2 1/3 1/4 2/5 3/6 5/8 7/10 10/13 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['N', 125, 'v v S ^ v 0/2 1/3 1/4 2/5 3/6 5/8 7/10 10/13 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['P', 200, 'v S ^ v 0/2 1/3 1/4 2/5 3/6 5/8 7/10 10/13 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['Q', 315, 'S ^ v 0/2 1/3 1/4 2/5 3/6 5/8 7/10 10/13 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['R', 500, '^ ^ 0/2 1/3 1/4 2/5 3/6 5/8 7/10 10/13 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
  ],
};
