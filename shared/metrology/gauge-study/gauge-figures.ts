import { requireFinite } from '../../ground/outside-domain.ts';

/** One component against the whole spread and against the drawing. */
export type ShareOfSpread = {
  /** 100 · s / s of all readings; null where the readings show no spread. Shares of s do not add up to 100. */
  readonly percentOfStudy: number | null;
  /** 100 · variance / variance of all readings; these do add up. */
  readonly percentOfVariance: number | null;
  /** 100 · 6 s / tolerance; null where no tolerance is given. */
  readonly percentOfTolerance: number | null;
};

/**
 * Shares of one component.
 * @param s standard deviation of the component, 0 or more
 * @param totalS standard deviation of all readings, 0 or more, same unit
 * @param tolerance upper minus lower limit, above 0, same unit; null for none
 * @throws OutsideDomain for values outside those ranges
 * @see measurement systems handbook of the automotive trade, 4th ed. (6 s for a spread; from memory; earlier editions used 5.15 s)
 */
export function shareOfSpread(s: number, totalS: number, tolerance: number | null): ShareOfSpread {
  requireFinite('s', s, 0);
  requireFinite('totalS', totalS, 0);
  if (tolerance !== null) requireFinite('tolerance', tolerance, Number.MIN_VALUE);
  const ofStudy = totalS === 0 ? null : s / totalS;
  return { percentOfStudy: ofStudy === null ? null : 100 * ofStudy, percentOfVariance: ofStudy === null ? null : 100 * ofStudy * ofStudy, percentOfTolerance: tolerance === null ? null : (100 * 6 * s) / tolerance };
}

/** Into how many groups of parts the gauge can tell this study's parts, before and after rounding down. */
export type DistinctCategories = { readonly exact: number; readonly whole: number };

/**
 * Number of distinct categories, √2 · s of the parts / s of the gauge, rounded down. Null where the gauge shows no spread at all: then its step is too coarse for the study to say.
 * @throws OutsideDomain for a standard deviation below 0
 * @see Wheeler & Lyday, Evaluating the Measurement Process (1989) (√2; from memory); print rounds √2 to 1.41
 */
export function distinctCategories(partS: number, gaugeS: number): DistinctCategories | null {
  requireFinite('partS', partS, 0);
  requireFinite('gaugeS', gaugeS, 0);
  if (gaugeS === 0) return null;
  const exact = (Math.SQRT2 * partS) / gaugeS;
  return { exact, whole: Math.floor(exact) };
}

/** What the spread of the gauge allows: `fit`, `conditional` (for a use that bears it) or `unfit`. */
export type GaugeFitness = 'fit' | 'conditional' | 'unfit';
/** Percent of s, and categories, at which a gauge is called fit or unfit. */
export type FitnessLimits = { readonly fitBelowPercent: number; readonly unfitAbovePercent: number; readonly leastCategories: number };
/** Common practice of measurement systems handbooks (from memory): under 10 % fit, over 30 % unfit, five categories or more. */
export const COMMON_FITNESS: FitnessLimits = { fitBelowPercent: 10, unfitAbovePercent: 30, leastCategories: 5 };

/** Fitness by one percentage, of study or of tolerance. @throws OutsideDomain for a percentage below 0 */
export function gaugeFitness(percent: number, { fitBelowPercent, unfitAbovePercent }: FitnessLimits): GaugeFitness {
  requireFinite('percent', percent, 0);
  return percent < fitBelowPercent ? 'fit' : percent > unfitAbovePercent ? 'unfit' : 'conditional';
}
