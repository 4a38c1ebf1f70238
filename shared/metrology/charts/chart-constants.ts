import { requireWhole } from '../../ground/outside-domain.ts';
import { logGamma } from '../../sampling/chance/index.ts';
import { rangeMoments } from './range-moments.ts';

/**
 * The constants of control charts for one sample size, without unit. Limits at three standard deviations; a lower limit below 0 is 0.
 * Mean: A with σ given, A2 by the mean range, A3 by the mean s. s: B3, B4 by the mean s, B5, B6 with σ. Range: D1, D2 with σ, D3, D4 by the
 * mean range. Individuals: E2 by the mean range.
 */
export type ChartConstants = {
  readonly n: number; readonly c4: number; readonly d2: number; readonly d3: number;
  readonly A: number; readonly A2: number; readonly A3: number; readonly E2: number;
  readonly B3: number; readonly B4: number; readonly B5: number; readonly B6: number;
  readonly D1: number; readonly D2: number; readonly D3: number; readonly D4: number;
};

/**
 * c4 = E(s)/σ of a normal sample = √(2/(n − 1))·Γ(n/2)/Γ((n − 1)/2).
 * @param n values in a sample, 2 … 10⁹: a lot weighed piece by piece is one sample
 * @throws OutsideDomain outside that range
 * @see NIST/SEMATECH e-Handbook 6.3.2 (from memory); from n 1000 on ln c4 = −1/(8x) + 1/(192x³) with x = (n − 1)/2, the next term of the series of
 *   ln Γ(x + ½) − ln Γ(x) being below 1e-16 (Abramowitz & Stegun 6.1.40, derived): the difference of two large logarithms would lose digits there
 * @example c4(2) // √(2/π)
 */
export function c4(n: number): number {
  requireWhole('n', n, 2, 1e9);
  if (n >= 1000) return Math.exp(-0.25 / (n - 1) + 1 / (24 * (n - 1) ** 3));
  return Math.sqrt(2 / (n - 1)) * Math.exp(logGamma(n / 2) - logGamma((n - 1) / 2));
}

/**
 * All constants for samples of n, worked out and never read from a table: printed ones carry old roundings in the third decimal
 * (D4 of 3, 5, 18, 19, 22; D3 of 19, 22, 24).
 * @param n values in a sample, 2 … 1000
 * @throws OutsideDomain outside that range
 * @see ISO 7870-2 and NIST/SEMATECH e-Handbook 6.3.2 (definitions, from memory)
 */
export function chartConstants(n: number): ChartConstants {
  const { d2, d3 } = rangeMoments(n);
  const mean = c4(n);
  const spread = Math.sqrt(1 - mean * mean);
  const root = Math.sqrt(n);
  const low = (value: number): number => Math.max(0, value);
  return {
    n, c4: mean, d2, d3, A: 3 / root, A2: 3 / (d2 * root), A3: 3 / (mean * root), E2: 3 / d2,
    B3: low(1 - (3 * spread) / mean), B4: 1 + (3 * spread) / mean, B5: low(mean - 3 * spread), B6: mean + 3 * spread,
    D1: low(d2 - 3 * d3), D2: d2 + 3 * d3, D3: low(1 - (3 * d3) / d2), D4: 1 + (3 * d3) / d2,
  };
}
