import { OutsideDomain, requireFinite } from '../../ground/outside-domain.ts';
import { chiSquareAt, normalAt } from '../../sampling/chance/index.ts';
import { standardDistance } from './standard-distance.ts';

/** Mean and standard deviation of `values` values, the latter with its degrees of freedom; all in the characteristic's unit. */
export type CapabilitySpread = { readonly mean: number; readonly s: number; readonly values: number; readonly df: number };
/** How an interval was found. exact rests on the chi-square or noncentral t law, approximate on Bissell's normal approximation. */
export type IntervalBy = 'chiSquare' | 'noncentralT' | 'bissell';
/** An index with its two-sided confidence interval. */
export type CapabilityIndex = { readonly value: number; readonly low: number; readonly high: number; readonly by: IntervalBy };

/** @throws OutsideDomain unless s is above 0, df 1 or more, values 2 or more, and confidence above 0 and below 1 */
export function requireSpread({ mean, s, values, df }: CapabilitySpread, confidence: number): void {
  requireFinite('mean', mean);
  requireFinite('s', s, Number.MIN_VALUE);
  requireFinite('values', values, 2, 1e9);
  requireFinite('df', df, 1, 1e9);
  if (!(confidence > 0 && confidence < 1)) throw new OutsideDomain('confidence', 'above 0 and below 1', confidence);
}

/**
 * Width of the tolerance over six standard deviations: Cp with the spread within lots, Pp with the overall one.
 * Interval Cp·√(χ²(α/2; df)/df) … Cp·√(χ²(1 − α/2; df)/df), exact for a normal characteristic.
 * @throws OutsideDomain unless lower < upper
 * @see NIST/SEMATECH e-Handbook 6.1.6 (from memory); Kane, Journal of Quality Technology 18 (1986) 41 (from memory)
 * @example widthIndex({ lower: 8, upper: 20 }, { mean: 16, s: 2, values: 20, df: 19 }, 0.95) // 1, 0.6847 … 1.3149
 */
export function widthIndex(limits: { readonly lower: number; readonly upper: number }, spread: CapabilitySpread, confidence: number): CapabilityIndex {
  requireSpread(spread, confidence);
  if (!(limits.lower < limits.upper)) throw new OutsideDomain('lower', 'below upper', limits.lower);
  const value = (limits.upper - limits.lower) / (6 * spread.s);
  const side = (1 - confidence) / 2;
  const factor = (probability: number): number => Math.sqrt(chiSquareAt(probability, spread.df) / spread.df);
  return { value, low: value * factor(side), high: value * factor(1 - side), by: 'chiSquare' };
}

/**
 * Distance of the mean from one limit over three standard deviations: CPU or CPL, PPU or PPL.
 * Interval exact for normal values that do not differ from lot to lot more than within them: (limit − mean)/s·√N is noncentral t with df and
 * noncentrality 3·index·√N.
 * @throws OutsideDomain for a spread outside its domain
 * @see Kushler & Hurley, Journal of Quality Technology 24 (1992) 188 (from memory); the law: NIST/SEMATECH e-Handbook 7.2.6.3 uses it for tolerance limits
 */
export function sideIndex(side: 'lower' | 'upper', limit: number, spread: CapabilitySpread, confidence: number): CapabilityIndex {
  requireSpread(spread, confidence);
  const { value, low, high } = standardDistance(side, limit, spread, confidence);
  return { value: value / 3, low: low / 3, high: high / 3, by: 'noncentralT' };
}

/**
 * The smaller of the two one-sided indices: Cpk or Ppk. With one limit the exact one-sided interval; with two
 * Cpk ± z·√(1/(9N) + Cpk²/(2·df)), an approximation that is good from about 30 values on.
 * @throws OutsideDomain without a limit
 * @see Bissell, Applied Statistics 39 (1990) 331 (from memory, as NIST/SEMATECH e-Handbook 6.1.6 gives it)
 * @example centredIndex({ lower: 8, upper: 20 }, { mean: 16, s: 2, values: 20, df: 19 }, 0.95) // 0.6667, 0.4093 … 0.9241
 */
export function centredIndex(limits: { readonly lower?: number | undefined; readonly upper?: number | undefined }, spread: CapabilitySpread, confidence: number): CapabilityIndex {
  requireSpread(spread, confidence);
  const { lower, upper } = limits;
  if (lower === undefined && upper === undefined) throw new OutsideDomain('limits', 'given on one side at least', 'none');
  if (upper === undefined && lower !== undefined) return sideIndex('lower', lower, spread, confidence);
  if (lower === undefined && upper !== undefined) return sideIndex('upper', upper, spread, confidence);
  const { mean, s, values, df } = spread;
  const value = Math.min((upper ?? 0) - mean, mean - (lower ?? 0)) / (3 * s);
  const half = normalAt(1 - (1 - confidence) / 2) * Math.sqrt(1 / (9 * values) + (value * value) / (2 * df));
  return { value, low: value - half, high: value + half, by: 'bissell' };
}
