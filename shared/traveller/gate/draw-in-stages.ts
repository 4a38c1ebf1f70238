import { diceFrom } from '../../sampling/draw/dice.ts';
import { drawSample } from '../../sampling/draw/index.ts';

/**
 * The pieces of the largest of several samples, in an order whose first n are a random sample of n for every size asked for: the pieces of
 * the smallest sample first, each stage ascending, so that trays are walked through in order. A class with a smaller n is so judged on
 * pieces from all over the lot, not on those of the first trays. The whole draw is what `drawSample` gives for the seed.
 * @param sizes one size or more, each 1 … population
 */
export function drawInStages(population: number, sizes: readonly number[], seed: string): number[] {
  const stages = [...new Set(sizes)].sort((one, other) => other - one);
  const [whole = [], ...nested] = stages.reduce<number[][]>((samples, size) => [...samples, drawnOutOf(samples.at(-1) ?? null, population, size, seed)], []);
  const inner = nested.reduceRight<number[]>((before, sample) => [...before, ...sample.filter((piece) => !before.includes(piece))], []);
  const taken = new Set(inner);
  return [...inner, ...whole.filter((piece) => !taken.has(piece))];
}

function drawnOutOf(sample: readonly number[] | null, population: number, size: number, seed: string): number[] {
  if (sample === null) return drawSample({ seed, population, size });
  return drawSample({ seed: `${seed} / ${size}`, population: sample.length, size }).flatMap((place) => sample[place - 1] ?? []);
}

/**
 * The pieces `drawSample` gives for the seed, in an order in which every beginning of the draw is a random sample of its own: for looking
 * piece by piece. Shuffled from the back (Fisher and Yates).
 */
export function drawInTurn(population: number, size: number, seed: string): number[] {
  const pieces = drawSample({ seed, population, size });
  const dice = diceFrom(`${seed} / in turn`);
  for (let at = pieces.length - 1; at > 0; at -= 1) {
    const other = dice.roll(at + 1) - 1;
    [pieces[at], pieces[other]] = [pieces[other] ?? 0, pieces[at] ?? 0];
  }
  return pieces;
}
