import type { Settings } from './comparison.ts';
import { numberOf } from './read-choice.ts';

const within = (text: string, sound: (value: number) => boolean): number | null => {
  const value = numberOf(text);
  return value !== null && sound(value) ? value : null;
};

/** The quality expected, a fraction; null where none is typed that can be. */
export function expectedOf({ expected, model }: Settings): number | null {
  const percent = within(expected, (value) => value > 0 && (model === 'poisson' ? value <= 100_000 : value < 100));
  return percent === null ? null : percent / 100;
}
/** Lots a year, 1 … 2,000. */
export const lotsOf = ({ lots }: Settings): number | null => within(lots, (value) => Number.isInteger(value) && value >= 1 && value <= 2000);
export const minutesOf = ({ minutes }: Settings): number | null => within(minutes, (value) => value >= 0);
/** Lots that pass uninspected before discontinued inspection goes on. */
export const resumeOf = ({ resumeAfter }: Settings): number | null => within(resumeAfter, (value) => Number.isInteger(value) && value >= 0 && value <= 2000);
/** How far the quality of single lots spreads about the expected, a fraction; null where the lots could not spread so far. */
export function spreadOf(settings: Settings): number | null {
  const p = expectedOf(settings) ?? 0;
  // A beta distribution about p spreads less than this; nonconformities per piece are not spread at all.
  const most = settings.model === 'poisson' ? 0 : Math.sqrt(p * (1 - p));
  const percent = within(settings.spread, (value) => value === 0 || (value > 0 && value / 100 < most));
  return percent === null ? null : percent / 100;
}
/** The seed as a whole number; null where none is typed that can be. */
export const seedOf = ({ seed }: Settings): number | null => within(seed, (value) => Number.isSafeInteger(value) && value >= 0);
