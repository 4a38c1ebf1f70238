import { requireFinite } from '../../ground/outside-domain.ts';
import { betaTails } from './beta.ts';
import { betaLogOddsAt } from './beta-at.ts';

/**
 * Probability that a variable of Fisher's F is f or less: the ratio of two mean squares of equal expectation.
 * @param f 0 … 1e150
 * @param above degrees of freedom above the line, 1 … 1e9, not necessarily whole
 * @param below degrees of freedom below the line, 1 … 1e9, not necessarily whole
 * @throws OutsideDomain naming the argument, its range and the value
 * @see Abramowitz & Stegun 26.6.2 and 26.5.28
 */
export function fisherBelow(f: number, above: number, below: number): number {
  return tails(f, above, below).below;
}

/** Probability that a variable of Fisher's F is above f, without cancellation: the p of a test. Arguments as for fisherBelow. */
export function fisherAbove(f: number, above: number, below: number): number {
  return tails(f, above, below).above;
}

/** The f with fisherBelow(f, above, below) = probability, 0 < probability < 1. */
export function fisherAt(probability: number, above: number, below: number): number {
  requireFinite('probability', probability, Number.MIN_VALUE, 1 - 2 ** -53);
  requireDf(above, below);
  return (below / above) * Math.exp(betaLogOddsAt(probability, above / 2, below / 2));
}

function requireDf(above: number, below: number): void {
  requireFinite('above', above, 1, 1e9);
  requireFinite('below', below, 1, 1e9);
}

function tails(f: number, above: number, below: number): { readonly below: number; readonly above: number } {
  requireFinite('f', f, 0, 1e150);
  requireDf(above, below);
  if (f === 0) return { below: 0, above: 1 };
  const both = below + above * f;
  // a·y − b·x with x = above·f/both, y = below/both, a = above/2, b = below/2: no digits are lost near f = 1.
  return betaTails(above / 2, below / 2, { x: (above / both) * f, y: below / both, lead: ((above * below) / 2) * ((1 - f) / both) });
}
