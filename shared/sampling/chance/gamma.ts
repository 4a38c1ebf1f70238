import { requireFinite } from '../../ground/outside-domain.ts';
import { continuedFraction } from './continued-fraction.ts';
import { deviance } from './deviance.ts';
import { stirlingFactor } from './stirling-factor.ts';

/**
 * Regularised incomplete gamma function P(a, x) = ∫₀ˣ u^(a−1)·e^(−u) du / Γ(a).
 * @param a shape, ½ … 1e9
 * @param x 0 or more
 * @throws OutsideDomain naming the argument, its range and the value
 * @remarks relative error ≤ 1e-12 where the value is above 1e-300; cost grows with √a at most
 * @see Abramowitz & Stegun 6.5.29 (series, x ≤ a), 6.5.31 (continued fraction, x > a)
 */
export function gammaBelow(a: number, x: number): number {
  requireDomain(a, x);
  return gammaTails(a, x).below;
}

/** Q(a, x) = 1 − P(a, x), without cancellation; arguments as for gammaBelow. */
export function gammaAbove(a: number, x: number): number {
  requireDomain(a, x);
  return gammaTails(a, x).above;
}

function requireDomain(a: number, x: number): void {
  requireFinite('a', a, 0.5, 1e9);
  requireFinite('x', x, 0);
}

/** Both tails at once, unchecked: the smaller is computed and the other is its complement. */
export function gammaTails(a: number, x: number): { readonly below: number; readonly above: number } {
  const front = gammaFront(a, x);
  if (x > a) {
    const above = front === 0 ? 0 : (front * a) / continuedFraction(x + 1 - a, (i) => i * (a - i), (i) => x + 1 - a + 2 * i);
    return { below: 1 - above, above };
  }
  let [term, sum] = [1, 1];
  for (let i = 1; front > 0; i += 1) {
    const falls = x / (a + i);
    if (term * falls <= 1e-17 * (1 - falls) * sum) break;
    term *= falls;
    sum += term;
  }
  return { below: front * sum, above: 1 - front * sum };
}

/** x^a·e^(−x) / Γ(a + 1). */
export function gammaFront(a: number, x: number): number {
  return Math.exp(-deviance(a, x, a - x)) / stirlingFactor(a);
}
