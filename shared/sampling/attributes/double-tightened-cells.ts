import type { StagedTable } from './staged-rows.ts';

/**
 * MIL-STD-105E Table III-B, double sampling, tightened inspection.
 * Tag: from memory throughout; every pair supported by computation against the single plan of the same cell.
 * Row S has one plan and is reached only by the arrow from R; `-` stands where nothing can arrive.
 *
 * `plans`: the single plan of the cell (Ac, or `Ac/Re` where Re is not Ac + 1), then Ac/Re of each sample in turn, cumulative; `#` =
 * acceptance is not possible yet. `rows`: letter, size of each sample (0 = the row has none), then 26 cells from AQL 0.010 to 1000. A
 * number stands for the plan of that name, `v` and `^` are arrows to the first plan below or above in the column, `S` means the single
 * plan of the cell.
 */
export const doubleTightenedCells: StagedTable = {
  samples: 2,
  plans: {
    1: '0/2 1/2',
    2: '0/3 3/4',
    3: '1/4 4/5',
    5: '2/5 6/7',
    8: '3/7 11/12',
    12: '6/10 15/16',
    18: '9/14 23/24',
    27: '15/20 34/35',
    41: '23/29 52/53',
  },
  rows: [
    ['A', 0, 'v v v v v v v v v v v v v v v v v v S S S S S S S S'],
    ['B', 2, 'v v v v v v v v v v v v v v S v v 1 2 3 5 8 12 18 27 41'],
    ['C', 3, 'v v v v v v v v v v v v v S v v 1 2 3 5 8 12 18 27 41 ^'],
    ['D', 5, 'v v v v v v v v v v v v S v v 1 2 3 5 8 12 18 27 41 ^ ^'],
    ['E', 8, 'v v v v v v v v v v v S v v 1 2 3 5 8 12 18 27 41 ^ ^ ^'],
    ['F', 13, 'v v v v v v v v v v S v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^'],
    ['G', 20, 'v v v v v v v v v S v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^'],
    ['H', 32, 'v v v v v v v v S v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^ ^'],
    ['J', 50, 'v v v v v v v S v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['K', 80, 'v v v v v v S v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['L', 125, 'v v v v v S v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['M', 200, 'v v v v S v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['N', 315, 'v v v S v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['P', 500, 'v v S v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['Q', 800, 'v S v v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['R', 1250, 'S ^ v 1 2 3 5 8 12 18 ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^ ^'],
    ['S', 2000, '- - 1 - - - - - - - - - - - - - - - - - - - - - - -'],
  ],
};
