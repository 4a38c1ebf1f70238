import { requireWhole } from '../../ground/outside-domain.ts';
import { diceFrom } from './dice.ts';

/**
 * All of so many things in a random order: every order is equally likely, and the same seed gives the same order.
 * @param draw population 0 … 100 000 things; seed: any text, to be recorded
 * @returns their numbers 1 … population, each once
 * @throws OutsideDomain for a population outside that range
 * @see Knuth, The Art of Computer Programming, vol. 2, 3.4.2, algorithm P (from memory)
 */
export function drawOrder({ seed, population }: { readonly seed: string; readonly population: number }): number[] {
  requireWhole('population', population, 0, 100_000);
  const dice = diceFrom(seed);
  const order = Array.from({ length: population }, (_, at) => at + 1);
  for (let last = population - 1; last > 0; last -= 1) {
    const other = dice.roll(last + 1) - 1;
    [order[last], order[other]] = [order[other] ?? 0, order[last] ?? 0];
  }
  return order;
}
