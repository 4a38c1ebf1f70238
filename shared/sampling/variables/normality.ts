import { normalAt } from '../chance/index.ts';
import { OutsideDomain } from '../../ground/outside-domain.ts';
import { LARGEST_SHAPIRO_WILK, shapiroWilk } from './shapiro-wilk.ts';

/** A p-value below this is announced beside the verdict (common practice, no source). */
export const NORMALITY_ALERT = 0.05;
/** Below this many values the test sees none but gross departures, and that is said (common practice, no source). */
export const FEW_FOR_NORMALITY = 8;

/**
 * Whether readings look normal, which every verdict by variables takes for granted. It is a caution beside the verdict and changes none.
 * `doubtful`: p below NORMALITY_ALERT. `fewReadings`: nothing was seen, in too few readings to see much. `noScatter`: all are equal.
 * `notTested`: fewer than 3 or more than 5000 readings.
 */
export type Normality =
  | { readonly says: 'fits' | 'doubtful' | 'fewReadings'; readonly test: 'Shapiro–Wilk'; readonly n: number; readonly statistic: number; readonly pValue: number }
  | { readonly says: 'noScatter' | 'notTested'; readonly n: number };

/**
 * Tests readings for a normal distribution.
 * @throws OutsideDomain for a value that is no finite number
 * @see shapiroWilk (Royston, Applied Statistics 44 (1995) 547)
 */
export function normality(values: readonly number[]): Normality {
  const n = values.length;
  if (n < 3 || n > LARGEST_SHAPIRO_WILK) return { says: 'notTested', n };
  if (values.every((value) => value === values[0])) return { says: 'noScatter', n };
  const { statistic, pValue } = shapiroWilk(values);
  return { says: pValue < NORMALITY_ALERT ? 'doubtful' : n < FEW_FOR_NORMALITY ? 'fewReadings' : 'fits', test: 'Shapiro–Wilk', n, statistic, pValue };
}

/** One reading on normal probability paper: where a normal distribution would have it, in standard deviations, and where it is. */
export interface NormalPoint { readonly z: number; readonly value: number }

/**
 * The points of a normal probability plot, in rising order; normal readings lie along a straight line.
 * Plotting positions (i − 3/8) / (n + 1/4).
 * @throws OutsideDomain without a value
 * @see Blom, Statistical Estimates and Transformed Beta-Variables (1958), for the positions
 */
export function normalPoints(values: readonly number[]): readonly NormalPoint[] {
  if (values.length === 0) throw new OutsideDomain('values', 'one at least', values.length);
  return [...values].sort((a, b) => a - b).map((value, at) => ({ z: normalAt((at + 0.625) / (values.length + 0.25)), value }));
}
