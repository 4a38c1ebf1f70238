import { chiSquareAt, noncentralTAbove, noncentralTBelow, normalAt } from '../../sampling/chance/index.ts';
import type { CapabilitySpread } from './capability-index.ts';

/** (limit − mean)/s towards the limit's side, and the exact interval of (limit − μ)/σ. */
export type StandardDistance = { readonly value: number; readonly low: number; readonly high: number };

/**
 * How many standard deviations lie between the mean and a limit, negative beyond it, with the exact interval of the true distance for normal values:
 * those noncentralities under which what was seen lies at the edge of what half of the rest of the confidence leaves.
 * @remarks bisection to the last digits; the spread was checked by the caller. Beyond 25·√df standard errors, where the law is not to be had, `farEdges`
 */
export function standardDistance(side: 'lower' | 'upper', limit: number, { mean, s, values, df }: CapabilitySpread, confidence: number): StandardDistance {
  const value = (side === 'upper' ? limit - mean : mean - limit) / s;
  const root = Math.sqrt(values);
  const t = value * root;
  const rest = (1 - confidence) / 2;
  if (Math.abs(t) > FAR * Math.sqrt(df)) return { value, ...farEdges(value, values, df, rest) };
  // P(T > t) rises with the noncentrality, P(T ≤ t) falls with it.
  const low = edgeWhere((delta) => noncentralTAbove(t, df, delta) - rest, t, df);
  const high = edgeWhere((delta) => rest - noncentralTBelow(t, df, delta), t, df);
  return { value, low: low / root, high: high / root };
}

/** Standard errors of the mean over √df from which on the spread of s alone decides, but for a share of 2/FAR² of the variance. */
const FAR = 25;

/**
 * Edges for a mean very far from the limit: those of value·√(χ²/df), which is what the noncentral t law comes to there, widened by the mean's own
 * standard error in quadrature. Agrees with the law to 3e-5 of the distance, to 2e-4 with fewer than 7 df
 * (tests/reference/capability-far.test.ts).
 * @see derived: δ = t·√(χ²/df) + Z, the two independent
 */
function farEdges(value: number, values: number, df: number, rest: number): { readonly low: number; readonly high: number } {
  const ofMean = normalAt(rest) / Math.sqrt(values);
  const edge = (probability: number): number => {
    const bySpread = Math.abs(value) * Math.sqrt(chiSquareAt(probability, df) / df);
    return Math.abs(value) + Math.sign(bySpread - Math.abs(value)) * Math.hypot(bySpread - Math.abs(value), ofMean);
  };
  const [near, far] = [edge(rest), edge(1 - rest)];
  return value > 0 ? { low: near, high: far } : { low: -far, high: -near };
}

/** Where a rising function of the noncentrality passes 0. */
function edgeWhere(rising: (delta: number) => number, t: number, df: number): number {
  const most = Math.min(1e6, 100 * Math.sqrt(df));
  const kept = (delta: number): number => Math.min(most, Math.max(-most, delta));
  let reach = 1 + Math.abs(t) / Math.sqrt(df);
  let [low, high] = [kept(t - reach), kept(t + reach)];
  while (rising(low) > 0 && low > -most) [reach, low] = [reach * 2, kept(t - reach * 2)];
  while (rising(high) < 0 && high < most) [reach, high] = [reach * 2, kept(t + reach * 2)];
  for (let round = 0; round < 100 && high - low > 1e-12 * Math.max(1, Math.abs(low)); round += 1) {
    const middle = (low + high) / 2;
    if (rising(middle) < 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
