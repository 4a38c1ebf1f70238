import { normalAbove, normalAt } from '../chance/index.ts';
import { OutsideDomain, requireFinite } from '../../ground/outside-domain.ts';

/** The largest sample the test's approximations are made for. */
export const LARGEST_SHAPIRO_WILK = 5000;

/** W, 1 for values that lie on the normal line, and the probability that normal values give this W or less. */
export interface ShapiroWilk { readonly statistic: number; readonly pValue: number }

/**
 * The Shapiro–Wilk test for departure from a normal distribution.
 * W is the squared correlation of the ordered values with weights near the expected normal order statistics; the p-value comes from a
 * normal approximation of ln(1 − W) (n 4 … 11: of −ln(γ − ln(1 − W))), exact for n = 3.
 * @param values 3 … 5000 finite values, not all equal
 * @throws OutsideDomain otherwise
 * @remarks agrees with scipy 1.17.1 to 1e-7 in p and W, whose normal quantiles have 7 digits: tests/reference. The weights and the p-value are fitted formulas.
 * @see Royston, Applied Statistics 44 (1995) 547, algorithm AS R94; Shapiro & Wilk, Biometrika 52 (1965) 591
 */
export function shapiroWilk(values: readonly number[]): ShapiroWilk {
  const n = values.length;
  if (n < 3 || n > LARGEST_SHAPIRO_WILK) throw new OutsideDomain('values', `3 … ${LARGEST_SHAPIRO_WILK} of them`, n);
  values.forEach((value, at) => requireFinite(`values[${at}]`, value, -1e150, 1e150));
  const ordered = [...values].sort((a, b) => a - b);
  const [least, most] = [ordered[0] ?? 0, ordered[n - 1] ?? 0];
  if (least === most) throw new OutsideDomain('values', 'not all equal', least);
  const weights = weightsOf(n);
  // Scaled by the range, so that neither very small nor very large readings leave double precision.
  const scaled = ordered.map((value) => (value - least) / (most - least));
  const mean = scaled.reduce((sum, value) => sum + value, 0) / n;
  const squares = scaled.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  const length = weights.reduce((sum, weight) => sum + weight * weight, 0);
  const product = scaled.reduce((sum, value, at) => sum + (weights[at] ?? 0) * (value - mean), 0);
  const root = Math.sqrt(length * squares);
  // 1 − W as a product, as W is near 1 and its difference from 1 is what counts.
  const missing = Math.max(0, ((root - product) * (root + product)) / (length * squares));
  return { statistic: 1 - missing, pValue: missing === 0 ? 1 : pValueOf(missing, n) };
}

const FIRST = [0, 0.221157, -0.147981, -2.07119, 4.434685, -2.706056];
const SECOND = [0, 0.042981, -0.293762, -1.752461, 5.682633, -3.582633];

/** The weights of the ordered values, antisymmetric about the middle. */
function weightsOf(n: number): number[] {
  if (n === 3) return [-Math.SQRT1_2, 0, Math.SQRT1_2];
  const expected = Array.from({ length: n }, (_, at) => normalAt((at + 1 - 0.375) / (n + 0.25)));
  const squares = expected.reduce((sum, value) => sum + value * value, 0);
  const from = (end: number): number => -(expected[end] ?? 0);
  const small = 1 / Math.sqrt(n);
  const last = polynomial(FIRST, small) + from(0) / Math.sqrt(squares);
  const ends = n <= 5 ? [last] : [last, polynomial(SECOND, small) + from(1) / Math.sqrt(squares)];
  const rest = squares - 2 * ends.reduce((sum, _, end) => sum + from(end) ** 2, 0);
  const share = Math.sqrt(rest / (1 - 2 * ends.reduce((sum, weight) => sum + weight * weight, 0)));
  return expected.map((value, at) => {
    const [low, high] = [ends[at], ends[n - 1 - at]];
    return low !== undefined ? -low : high ?? value / share;
  });
}

function pValueOf(missing: number, n: number): number {
  if (n === 3) return Math.max(0, (6 / Math.PI) * (Math.asin(Math.sqrt(1 - missing)) - Math.asin(Math.sqrt(0.75))));
  const log = Math.log(missing);
  if (n <= 11) {
    const gamma = polynomial([-2.273, 0.459], n);
    if (log >= gamma) return 0;
    return normalAbove((-Math.log(gamma - log) - polynomial([0.544, -0.39978, 0.025054, -6.714e-4], n)) / Math.exp(polynomial([1.3822, -0.77857, 0.062767, -0.0020322], n)));
  }
  const x = Math.log(n);
  return normalAbove((log - polynomial([-1.5861, -0.31082, -0.083751, 0.0038915], x)) / Math.exp(polynomial([-0.4803, -0.082676, 0.0030302], x)));
}

/** Σ cᵢ xⁱ. */
function polynomial(coefficients: readonly number[], x: number): number {
  return coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);
}
