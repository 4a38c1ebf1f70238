import { OutsideDomain, requireFinite } from '../../ground/outside-domain.ts';

/** Summary of readings, in their own unit. */
export type Summary = {
  readonly n: number;
  readonly mean: number;
  /** Sample standard deviation, divisor n − 1; null for a single reading. */
  readonly s: number | null;
  readonly min: number;
  readonly max: number;
  readonly range: number;
};

/** Largest size of a value whose square still stands well inside double precision. */
export const LARGEST_VALUE = 1e150;

/**
 * Mean, s, least, greatest and range. Two passes, each sum carrying its rounding along; s takes out what the rounded mean left over. Equal
 * readings give that reading as the mean and s = 0, exactly.
 * @param values one reading or more, each finite and at most 1e150 in size
 * @throws OutsideDomain for no readings or one that is no such number
 * @see Neumaier, ZAMM 54 (1974) 39 (sums); Chan, Golub & LeVeque, American Statistician 37 (1983) 242 (corrected two-pass)
 * @remarks On the NIST StRD sets s agrees to 13 digits or more, except NumAcc3 and 4, whose decimal inputs are not doubles.
 */
export function summarise(values: readonly number[]): Summary {
  const [first] = values;
  if (first === undefined) throw new OutsideDomain('values', 'one reading or more', 'none');
  let [min, max] = [first, first];
  values.forEach((value, at) => {
    requireFinite(`values[${at}]`, value, -LARGEST_VALUE, LARGEST_VALUE);
    min = Math.min(min, value);
    max = Math.max(max, value);
  });
  const n = values.length;
  const range = max - min;
  if (range === 0) return { n, mean: min, s: n < 2 ? null : 0, min, max, range };
  const mean = carefulSum(values) / n;
  const off = values.map((value) => value - mean);
  const leftOver = carefulSum(off);
  const squares = carefulSum(off.map((distance) => distance * distance)) - (leftOver * leftOver) / n;
  return { n, mean: mean + leftOver / n, s: Math.sqrt(squares / (n - 1)), min, max, range };
}

function carefulSum(values: readonly number[]): number {
  let [sum, lost] = [0, 0];
  for (const value of values) {
    const next = sum + value;
    lost += Math.abs(sum) >= Math.abs(value) ? sum - next + value : value - next + sum;
    sum = next;
  }
  return sum + lost;
}
