import { requireFinite } from '../../ground/outside-domain.ts';
import { continuedFraction } from './continued-fraction.ts';
import { deviance } from './deviance.ts';
import { exactProduct } from './exact-product.ts';
import { stirlingFactor } from './stirling-factor.ts';

/**
 * Regularised incomplete beta function I_x(a, b): the probability that a beta variable is x or less.
 * @param x a fraction 0 … 1
 * @param a ½ … 1e9
 * @param b ½ … 1e9
 * @throws OutsideDomain naming the argument, its range and the value
 * @remarks relative error ≤ 1e-12 where the value is above 1e-300; cost grows with √(a + b) at most
 * @see DiDonato & Morris, ACM Transactions on Mathematical Software 18 (1992) 360, eq. 9 (continued fraction)
 */
export function betaBelow(x: number, a: number, b: number): number {
  requireDomain(x, a, b);
  return betaTails(a, b, splitAt(x, a, b)).below;
}

/** 1 − I_x(a, b), without cancellation; arguments as for betaBelow. */
export function betaAbove(x: number, a: number, b: number): number {
  requireDomain(x, a, b);
  return betaTails(a, b, splitAt(x, a, b)).above;
}

function requireDomain(x: number, a: number, b: number): void {
  requireFinite('x', x, 0, 1);
  requireFinite('a', a, 0.5, 1e9);
  requireFinite('b', b, 0.5, 1e9);
}

/** A place 0 … 1 told from both ends, x and y = 1 − x, with the lead a·y − b·x as sharp as can be had: a, b to 1e9 make its rounding count. */
export type Split = { readonly x: number; readonly y: number; readonly lead: number };

/** The split at an exactly known x. */
export function splitAt(x: number, a: number, b: number): Split {
  // a − (a + b)·x, with what the sum and the product leave over.
  const sum = a + b;
  const [more, less] = a > b ? [a, b] : [b, a];
  const sumRest = less - (sum - more);
  const [product, productRest] = exactProduct(sum, x);
  return { x, y: 1 - x, lead: a - product - productRest - sumRest * x };
}

/** Both tails at once, unchecked: the one away from the mean is computed and the other is its complement. */
export function betaTails(a: number, b: number, { x, y, lead }: Split): { readonly below: number; readonly above: number; readonly front: number } {
  const front = betaFront(a, b, { x, y, lead });
  if (lead >= 0) {
    const below = front === 0 ? 0 : front / fraction(a, b, x, y, lead);
    return { below, above: 1 - below, front };
  }
  const above = front === 0 ? 0 : front / fraction(b, a, y, x, -lead);
  return { below: 1 - above, above, front };
}

/** x^a·y^b / B(a, b): also the density of ln(x/y). */
function betaFront(a: number, b: number, { x, y, lead }: Split): number {
  const sum = a + b;
  const steep = deviance(a, sum * x, lead) + deviance(b, sum * y, -lead);
  return ((a * (b / sum)) * stirlingFactor(sum) * Math.exp(-steep)) / (stirlingFactor(a) * stirlingFactor(b));
}

function fraction(a: number, b: number, x: number, y: number, lead: number): number {
  return continuedFraction(
    (a / (a + 1)) * (lead + 1),
    (n) => (((a + n - 1) / (a + 2 * n - 1)) * ((a + b + n - 1) / (a + 2 * n - 1))) * n * (b - n) * x * x,
    (n) => n + (n * (b - n) * x) / (a + 2 * n - 1) + ((a + n) / (a + 2 * n + 1)) * (lead + 1 + n * (1 + y)),
  );
}
