import { diceFrom } from '../shared/sampling/draw/dice.ts';

/** The dice of the invented history: the same seed gives the same plant. */
export interface Chance {
  /** 0 ≤ x < 1. */
  readonly fraction: () => number;
  /** A value of a normal process, rounded to the decimals given (sum of twelve: bounded at ± 6 s, good enough for a story). */
  readonly normal: (mean: number, s: number, decimals: number) => number;
  readonly whole: (least: number, most: number) => number;
  readonly pick: <T>(from: readonly [T, ...T[]]) => T;
}
/** Chance for the invented history: the same seed gives the same history. `normal` is the sum of twelve even draws less 6, enough for a story and no statistics (common practice). */
export function chanceFrom(seed: string): Chance {
  const dice = diceFrom(seed);
  const fraction = (): number => (dice.roll(1_000_000) - 1) / 1_000_000;
  const rounded = (value: number, decimals: number): number => Number(value.toFixed(decimals));
  return {
    fraction,
    normal: (mean, s, decimals) => rounded(mean + s * (Array.from({ length: 12 }, fraction).reduce((sum, each) => sum + each, 0) - 6), decimals),
    whole: (least, most) => least - 1 + dice.roll(most - least + 1),
    pick: (from) => from[dice.roll(from.length) - 1] ?? from[0],
  };
}
