import type { StagedTable } from './staged-rows.ts';

/**
 * MIL-STD-105E Table IV-B, multiple sampling in seven samples, tightened inspection.
 * Tag: the plan beside the single Ac 5 seen in 46 CFR 160.066-12 (Table 1), the others from memory; all supported by computation against
 * the single plans. That B and C say `double` in every cell is uncertain, and so is row S.
 *
 * `plans`: the single plan of the cell (Ac, or `Ac/Re` where Re is not Ac + 1), then Ac/Re of each sample in turn, cumulative; `#` =
 * acceptance is not possible yet. `rows`: letter, size of each sample (0 = the row has none), then 26 cells from AQL 0.010 to 1000. A
 * number stands for the plan of that name, `v` and `^` are arrows to the first plan below or above in the column, `S` means the single
 * plan of the cell, `D` the double plan.
 */
export const multipleTightenedCells: StagedTable = {
  samples: 7,
  plans: {
    1: '#/2 #/2 0/2 0/3 1/3 1/3 2/3',
    2: '#/2 0/3 0/3 1/4 2/4 3/5 4/5',
    3: '#/3 0/3 1/4 2/5 3/6 4/6 6/7',
    5: '#/4 1/5 2/6 3/7 5/8 7/9 9/10',
    8: '0/4 2/7 4/9 6/11 9/12 12/14 14/15',
    12: '0/6 3/9 7/12 10/15 14/17 18/20 21/22',
    18: '1/8 6/12 11/17 16/22 22/25 27/29 32/33',
    27: '3/10 10/17 17/24 24/31 32/37 40/43 48/49',
    41: '6/15 16/25 26/36 37/46 49/55 61/64 72/73',
  },
  rows: [
    ['A', 0, 'v v v v v v v v v v v v v v v v v v S S S S S S S S'],
    ['B', 0, 'v v v v v v v v v v v v v v S v v D D D D D D D D D'],
    ['C', 0, 'v v v v v v v v v v v v v S v v D D D D D D D D D ^'],
    ['D', 2, 'v v v v v v v v v v v v S v v 1 2 3 5 8 12 18 27 41 ^ ^'],
    ['E', 3, 'v v v v v v v v v v v S v v 1 2 3 5 8 12 18 27 41 ^ ^ ^'],
    ['F', 5, 'v v v v v v v v v v S v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^'],
    ['G', 8, 'v v v v v v v v v S v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^'],
    ['H', 13, 'v v v v v v v v S v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^ ^'],
    ['J', 20, 'v v v v v v v S v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['K', 32, 'v v v v v v S v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['L', 50, 'v v v v v S v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['M', 80, 'v v v v S v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['N', 125, 'v v v S v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['P', 200, 'v v S v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['Q', 315, 'v S v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['R', 500, 'S ^ v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['S', 800, '- - 1 - - - - - - - - - - - - - - - - - - - - - - -'],
  ],
};
