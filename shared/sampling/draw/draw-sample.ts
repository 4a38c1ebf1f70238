import { OutsideDomain, requireWhole } from '../../ground/outside-domain.ts';
import { diceFrom } from './dice.ts';
import type { Dice } from './dice.ts';

/** The most pieces any draw is made from. */
export const LARGEST_POPULATION = 10_000_000;

/** A part of the population drawn from on its own, such as one furnace position. */
export type Stratum = { readonly name: string; readonly population: number };

/** The pieces drawn from one stratum, numbered from 1 within it, ascending. */
export type StratumDraw = { readonly name: string; readonly pieces: number[] };

/**
 * A simple random sample without replacement: every set of `size` pieces is equally likely, and the same seed draws the same pieces.
 * @param draw population 1 … 10 000 000 pieces; size 0 … population; seed: any text, to be recorded beside the pieces
 * @returns piece numbers 1 … population, ascending, no two alike
 * @throws OutsideDomain for a population or size outside those ranges
 * @see ISO 24153 (principles: random, recorded, repeatable); Bentley & Floyd, Comm. ACM 30 (1987) 754 (the way of drawing)
 * @example drawSample({ seed: 'L-0417 final visual 1', population: 1200, size: 80 })
 */
export function drawSample({ seed, population, size }: { readonly seed: string; readonly population: number; readonly size: number }): number[] {
  requireWhole('population', population, 1, LARGEST_POPULATION);
  requireWhole('size', size, 0, population);
  return drawnFrom(diceFrom(seed), population, size);
}

/**
 * A sample over strata in proportion to their populations. Each stratum gives its share rounded down or up; a random start decides which,
 * so that every piece of the whole has exactly the chance size / total. A stratum whose share is below one piece may give none.
 * @param draw strata with distinct names, each 1 piece or more, 10 000 000 together; size 0 … total
 * @returns one entry a stratum, in the order given
 * @throws OutsideDomain for no strata, a name used twice, or a population or size outside those ranges
 * @see Cochran, Sampling Techniques, 3rd ed., 5.3 (proportional shares); the rounding by a random start is systematic sampling of the shares
 */
export function drawStratified(draw: { readonly seed: string; readonly strata: readonly Stratum[]; readonly size: number }): StratumDraw[] {
  const { seed, strata, size } = draw;
  if (new Set(strata.map(({ name }) => name)).size !== strata.length) throw new OutsideDomain('strata', 'named apart', strata.map(({ name }) => name));
  for (const { name, population } of strata) requireWhole(`population of ${name}`, population, 1, LARGEST_POPULATION);
  const total = strata.reduce((sum, { population }) => sum + population, 0);
  requireWhole('population of all strata', total, 1, LARGEST_POPULATION);
  requireWhole('size', size, 0, total);
  const dice = diceFrom(seed);
  const start = dice.roll(total) - 1;
  let passed = 0;
  return strata.map(({ name, population }) => {
    const before = Math.floor((size * passed + start) / total);
    passed += population;
    const share = Math.floor((size * passed + start) / total) - before;
    return { name, pieces: drawnFrom(dice, population, share) };
  });
}

/**
 * Every so-manieth piece from a random start, for pieces that come one after another.
 * @param draw population 1 … 10 000 000 pieces; every 1 … population
 * @returns start, start + every, … up to the population; the start is 1 … every, each equally likely
 * @throws OutsideDomain for a population or step outside those ranges
 */
export function drawSystematic({ seed, population, every }: { readonly seed: string; readonly population: number; readonly every: number }): number[] {
  requireWhole('population', population, 1, LARGEST_POPULATION);
  requireWhole('every', every, 1, population);
  const start = diceFrom(seed).roll(every);
  return Array.from({ length: Math.floor((population - start) / every) + 1 }, (_, step) => start + step * every);
}

function drawnFrom(dice: Dice, population: number, size: number): number[] {
  const drawn = new Set<number>();
  for (let last = population - size + 1; last <= population; last += 1) {
    const piece = dice.roll(last);
    drawn.add(drawn.has(piece) ? last : piece);
  }
  return [...drawn].sort((one, other) => one - other);
}
