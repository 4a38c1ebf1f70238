import { requireFinite } from '../../ground/outside-domain.ts';
import { betaTails } from './beta.ts';
import { betaLogOddsAt } from './beta-at.ts';

/**
 * Probability that a Student t variable is t or less.
 * @param t −1e150 … 1e150
 * @param df degrees of freedom, 1 … 1e9, not necessarily whole
 * @throws OutsideDomain naming the argument, its range and the value
 * @see Abramowitz & Stegun 26.7.1 and 26.5.27
 */
export function studentBelow(t: number, df: number): number {
  requireDomain(t, df);
  const tail = oneTail(t, df);
  return t < 0 ? tail : 1 - tail;
}

/** Probability that a Student t variable is above t, without cancellation; arguments as for studentBelow. */
export function studentAbove(t: number, df: number): number {
  return studentBelow(-t, df);
}

/** The t with studentBelow(t, df) = probability, 0 < probability < 1. */
export function studentAt(probability: number, df: number): number {
  requireFinite('probability', probability, Number.MIN_VALUE, 1 - 2 ** -53);
  requireFinite('df', df, 1, 1e9);
  if (probability === 0.5) return 0;
  if (probability > 0.5) return -studentAt(1 - probability, df);
  return -Math.sqrt(df) * Math.exp(-0.5 * betaLogOddsAt(2 * probability, df / 2, 0.5));
}

function requireDomain(t: number, df: number): void {
  requireFinite('t', t, -1e150, 1e150);
  requireFinite('df', df, 1, 1e9);
}

function oneTail(t: number, df: number): number {
  const both = df + t * t;
  return 0.5 * betaTails(df / 2, 0.5, { x: df / both, y: (t / both) * t, lead: (df / 2) * (((t - 1) * (t + 1)) / both) }).below;
}
