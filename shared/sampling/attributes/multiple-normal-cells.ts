import type { StagedTable } from './staged-rows.ts';

/**
 * MIL-STD-105E Table IV-A, multiple sampling in seven samples, normal inspection.
 * Tag: the plans beside the single Ac 5, 7, 10, 14 and 21 seen in 46 CFR 160.066-12 (Table 1) with samples of 8 to 50, the others from
 * memory; all supported by computation against the single plans. That B and C say `double` in every cell is uncertain.
 *
 * `plans`: the single plan of the cell (Ac, or `Ac/Re` where Re is not Ac + 1), then Ac/Re of each sample in turn, cumulative; `#` =
 * acceptance is not possible yet. `rows`: letter, size of each sample (0 = the row has none), then 26 cells from AQL 0.010 to 1000. A
 * number stands for the plan of that name, `v` and `^` are arrows to the first plan below or above in the column, `S` means the single
 * plan of the cell, `D` the double plan.
 */
export const multipleNormalCells: StagedTable = {
  samples: 7,
  plans: {
    1: '#/2 #/2 0/2 0/3 1/3 1/3 2/3',
    2: '#/2 0/3 0/3 1/4 2/4 3/5 4/5',
    3: '#/3 0/3 1/4 2/5 3/6 4/6 6/7',
    5: '#/4 1/5 2/6 3/7 5/8 7/9 9/10',
    7: '0/4 1/6 3/8 5/10 7/11 10/12 13/14',
    10: '0/5 3/8 6/10 8/13 11/15 14/17 18/19',
    14: '1/7 4/10 8/13 12/17 17/20 21/23 25/26',
    21: '2/9 7/14 13/19 19/25 25/29 31/33 37/38',
    30: '4/12 11/19 19/27 27/34 36/40 45/47 53/54',
    44: '6/16 17/27 29/39 40/49 53/58 65/68 77/78',
  },
  rows: [
    ['A', 0, 'v v v v v v v v v v v v v v S v v S S S S S S S S S'],
    ['B', 0, 'v v v v v v v v v v v v v S ^ v D D D D D D D D D D'],
    ['C', 0, 'v v v v v v v v v v v v S ^ v D D D D D D D D D D ^'],
    ['D', 2, 'v v v v v v v v v v v S ^ v 1 2 3 5 7 10 14 21 30 44 ^ ^'],
    ['E', 3, 'v v v v v v v v v v S ^ v 1 2 3 5 7 10 14 21 30 44 ^ ^ ^'],
    ['F', 5, 'v v v v v v v v v S ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^'],
    ['G', 8, 'v v v v v v v v S ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^'],
    ['H', 13, 'v v v v v v v S ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^ ^'],
    ['J', 20, 'v v v v v v S ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['K', 32, 'v v v v v S ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['L', 50, 'v v v v S ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['M', 80, 'v v v S ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['N', 125, 'v v S ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['P', 200, 'v S ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['Q', 315, 'S ^ v 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['R', 500, '^ ^ 1 2 3 5 7 10 14 21 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
  ],
};
