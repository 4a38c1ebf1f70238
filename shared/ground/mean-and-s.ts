import { carefulSum } from './careful-sum.ts';

/** Mean and sample standard deviation with the least and greatest value. */
export type MeanAndS = { readonly mean: number; readonly s: number | null; readonly min: number; readonly max: number };

/**
 * Mean and s (divisor n − 1) of one value or more; s is null for a single one. Two passes, each sum carrying its rounding along; s takes out
 * what the rounded mean left over. Equal values give that value as the mean and s = 0, exactly. The caller has checked the values: finite,
 * and at most 1e150 in size, so that squares stay inside double precision.
 * @see Neumaier, ZAMM 54 (1974) 39 (sums); Chan, Golub & LeVeque, American Statistician 37 (1983) 242 (corrected two-pass)
 */
export function meanAndS(first: number, others: readonly number[]): MeanAndS {
  const n = others.length + 1;
  let [min, max] = [first, first];
  for (const value of others) [min, max] = [Math.min(min, value), Math.max(max, value)];
  if (min === max) return { mean: min, s: n < 2 ? null : 0, min, max };
  const values = [first, ...others];
  const mean = carefulSum(values) / n;
  const off = values.map((value) => value - mean);
  const leftOver = carefulSum(off);
  const squares = carefulSum(off.map((distance) => distance * distance)) - (leftOver * leftOver) / n;
  return { mean: mean + leftOver / n, s: Math.sqrt(squares / (n - 1)), min, max };
}
