import { meanAndS } from '../../ground/mean-and-s.ts';
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
 * Mean, s, least, greatest and range. Equal readings give that reading as the mean and s = 0, exactly.
 * @param values one reading or more, each finite and at most 1e150 in size
 * @throws OutsideDomain for no readings or one that is no such number
 * @see shared/ground/mean-and-s.ts (the sums and their sources)
 * @remarks On the NIST StRD sets s agrees to 13 digits or more, except NumAcc3 and 4, whose decimal inputs are not doubles.
 */
export function summarise(values: readonly number[]): Summary {
  values.forEach((value, at) => requireFinite(`values[${at}]`, value, -LARGEST_VALUE, LARGEST_VALUE));
  const [first, ...others] = values;
  if (first === undefined) throw new OutsideDomain('values', 'one reading or more', 'none');
  const { mean, s, min, max } = meanAndS(first, others);
  return { n: values.length, mean, s, min, max, range: max - min };
}
