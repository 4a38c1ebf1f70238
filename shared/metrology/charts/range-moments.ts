import { requireWhole } from '../../ground/outside-domain.ts';
import { normalBelow } from '../../sampling/chance/index.ts';

/** Mean d2 and standard deviation d3 of the range of n values of a standard normal variable. */
export type RangeMoments = { readonly d2: number; readonly d3: number };

/** Largest sample whose range is charted; of more values s tells everything better. */
export const MOST_RANGE_VALUES = 1000;

/**
 * d2 and d3 by quadrature of the exact distribution of the range.
 * d2 = ∫ 1 − Φⁿ − (1 − Φ)ⁿ dx; F(w) = n ∫ φ(x)·(Φ(x + w) − Φ(x))ⁿ⁻¹ dx; E W² = 2 ∫ w·(1 − F(w)) dw with w = e^u. Every integrand is smooth and falls
 * at least exponentially on both sides, so the plain trapezoid rule gains digits exponentially with the number of points.
 * @param n values in a sample, 2 … 1000
 * @throws OutsideDomain outside that range
 * @remarks relative error below 1e-9 (tests/reference/chart-constants.test.ts); about 50 ms the first time an n is asked for
 * @see Tippett, Biometrika 17 (1925) 364 (the integrals, from memory); Trefethen & Weideman, SIAM Review 56 (2014) 385 (the rule)
 * @example rangeMoments(2) // d2 = 2/√π, d3 = √(2 − 4/π)
 */
export function rangeMoments(n: number): RangeMoments {
  requireWhole('n', n, 2, MOST_RANGE_VALUES);
  const known = reckoned.get(n) ?? reckon(n);
  reckoned.set(n, known);
  return known;
}

/** What was reckoned before; the same for the same n for ever. */
const reckoned = new Map<number, RangeMoments>();

function reckon(n: number): RangeMoments {
  let d2 = 0;
  for (let at = -reach; at <= reach; at += step) d2 += 1 - normalBelow(at) ** n - normalBelow(-at) ** n;
  d2 *= step;
  const squares = meanSquare(n);
  return { d2, d3: Math.sqrt(squares - d2 * d2) };
}

const [reach, step] = [12, 0.1];
const outerStep = 0.05;

function meanSquare(n: number): number {
  const grid = Array.from({ length: Math.round((2 * reach) / step) + 1 }, (_, at) => {
    const x = -reach + at * step;
    return { x, weight: (n * step * Math.exp(-0.5 * x * x)) / Math.sqrt(2 * Math.PI), below: normalBelow(x) };
  });
  const above = (w: number): number => 1 - grid.reduce((sum, { x, weight, below }) => sum + weight * (normalBelow(x + w) - below) ** (n - 1), 0);
  let sum = 0;
  // Below e⁻¹⁶ what is left out is under 1e-14; above w = 24 the range of a thousand values has no chance left.
  for (let u = -16; u <= Math.log(2 * reach); u += outerStep) {
    const w = Math.exp(u);
    sum += w * w * above(w);
  }
  return 2 * sum * outerStep;
}
