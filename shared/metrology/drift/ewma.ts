import { OutsideDomain, requireFinite } from '../../ground/outside-domain.ts';

/**
 * The next exponentially weighted moving average: λ·value + (1 − λ)·before.
 * @param before the average so far; the target before the first value
 * @param lambda λ, 0 < λ ≤ 1: the weight of the newest value
 * @throws OutsideDomain unless λ is such a number
 * @see Roberts, Technometrics 1 (1959) 239; NIST/SEMATECH e-Handbook 6.3.2.4
 */
export function ewmaStep(before: number, value: number, lambda: number): number {
  requireLambda(lambda);
  return before + lambda * (value - before);
}

/**
 * Half the width of the control limits around the target after the i-th value, exact for every i and not only in the long run:
 * L·σ·√(λ/(2 − λ)·(1 − (1 − λ)^(2i))).
 * @param limitFactor L, in standard deviations of the average; above 0
 * @param sigma standard deviation of single values, their unit; 0 or more
 * @param i number of values taken in, 1 or more; Infinity gives the limits of the long run
 * @throws OutsideDomain naming the argument
 * @see Lucas & Saccucci, Technometrics 32 (1990) 1, section 2 (from memory); NIST/SEMATECH e-Handbook 6.3.2.4
 */
export function ewmaHalfWidth(lambda: number, limitFactor: number, sigma: number, i: number): number {
  requireLambda(lambda);
  requireFinite('limitFactor', limitFactor, Number.MIN_VALUE, Number.MAX_VALUE);
  requireFinite('sigma', sigma, 0, Number.MAX_VALUE);
  if (!(i >= 1)) throw new OutsideDomain('i', '1 or more', i);
  return limitFactor * sigma * Math.sqrt((lambda / (2 - lambda)) * (1 - (1 - lambda) ** (2 * i)));
}

/** Refuses a weight that is none. @throws OutsideDomain */
export function requireLambda(lambda: number): void {
  if (!(lambda > 0 && lambda <= 1)) throw new OutsideDomain('lambda', 'above 0, at most 1', lambda);
}
