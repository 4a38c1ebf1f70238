import { normalAt } from '../chance/index.ts';
import type { Dice } from '../draw/dice.ts';
import { fractionBy } from './draw-lot.ts';

/**
 * A quality 0 … 1 by a beta distribution, as a ratio of gamma draws.
 * @param a above 0; mean a/(a + b)
 * @param b above 0
 * @see Marsaglia & Tsang, ACM Transactions on Mathematical Software 26 (2000), for the gamma draws
 */
export function betaBy(dice: Dice, a: number, b: number): number {
  const [above, below] = [gammaBy(dice, a), gammaBy(dice, b)];
  if (above + below > 0) return above / (above + below);
  return fractionBy(dice) < a / (a + b) ? 1 : 0; // both too small to be told from 0: all the weight lies at the ends
}

function gammaBy(dice: Dice, shape: number): number {
  if (shape < 1) return gammaBy(dice, shape + 1) * fractionBy(dice) ** (1 / shape);
  const size = shape - 1 / 3;
  for (;;) {
    const z = normalAt(fractionBy(dice));
    const cube = (1 + z / Math.sqrt(9 * size)) ** 3;
    if (cube > 0 && Math.log(fractionBy(dice)) < z * z / 2 + size * (1 - cube + Math.log(cube))) return size * cube;
  }
}
