import { requireFinite } from '../../ground/outside-domain.ts';
import { gammaFront, gammaTails } from './gamma.ts';
import { logRoot } from './log-root.ts';

/**
 * Probability that a chi-square variable is x or less.
 * @param x 0 or more
 * @param df degrees of freedom, 1 … 1e9, not necessarily whole
 * @throws OutsideDomain naming the argument, its range and the value
 * @see Abramowitz & Stegun 26.4.19
 */
export function chiSquareBelow(x: number, df: number): number {
  requireDomain(x, df);
  return gammaTails(df / 2, x / 2).below;
}

/** Probability that a chi-square variable is above x, without cancellation; arguments as for chiSquareBelow. */
export function chiSquareAbove(x: number, df: number): number {
  requireDomain(x, df);
  return gammaTails(df / 2, x / 2).above;
}

/** The x with chiSquareBelow(x, df) = probability, 0 ≤ probability < 1. */
export function chiSquareAt(probability: number, df: number): number {
  requireFinite('probability', probability, 0, 1 - 2 ** -53);
  requireFinite('df', df, 1, 1e9);
  if (probability === 0) return 0;
  const a = df / 2;
  const logX = logRoot(probability, Math.log(a), (at) => {
    const x = Math.exp(at);
    return { ...gammaTails(a, x), density: a * gammaFront(a, x) };
  });
  return 2 * Math.exp(logX);
}

function requireDomain(x: number, df: number): void {
  requireFinite('x', x, 0);
  requireFinite('df', df, 1, 1e9);
}
