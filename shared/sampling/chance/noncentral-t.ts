import { requireFinite } from '../../ground/outside-domain.ts';
import { logNormalBelow, normalSlope } from './normal.ts';
import { stirlingFactor } from './stirling-factor.ts';

const drop = 41;

/**
 * Probability that a noncentral t variable is t or less: the distribution behind every variables plan with s.
 * @param t −1e12 … 1e12
 * @param df degrees of freedom, 1 … 1e9, not necessarily whole
 * @param delta noncentrality, −1e6 … 1e6 and at most 100·√df in size; a plan for p = 1e-300 needs 53·√df
 * @throws OutsideDomain naming the argument, its range and the value
 * @remarks relative error ≤ 1e-12 where the value is above 1e-300. P = ∫ Φ(t·e^u − δ)·f(u) du with e^u = √(chi-square/df). The integrand is smooth and falls
 * double-exponentially on both sides, so the plain trapezoid rule gains digits exponentially with the number of points.
 * @see Johnson & Welch, Biometrika 31 (1940) 362 (the integral); Trefethen & Weideman, SIAM Review 56 (2014) 385 (the trapezoid rule)
 */
export function noncentralTBelow(t: number, df: number, delta: number): number {
  requireDomain(t, df, delta);
  return integrate(t, df, delta);
}

/** Probability that a noncentral t variable is above t, integrated for itself and so without cancellation; arguments as for noncentralTBelow. */
export function noncentralTAbove(t: number, df: number, delta: number): number {
  requireDomain(t, df, delta);
  return integrate(-t, df, -delta);
}

function requireDomain(t: number, df: number, delta: number): void {
  requireFinite('t', t, -1e12, 1e12);
  requireFinite('df', df, 1, 1e9);
  requireDelta(delta, df);
}

/** @throws OutsideDomain where the step of Φ would be so much narrower than the density of s that the rule would need many thousand points. */
export function requireDelta(delta: number, df: number): void {
  const most = Math.min(1e6, 100 * Math.sqrt(df));
  requireFinite('delta', delta, -most, most);
}

/** P(T ≤ t); the upper tail is the lower tail of −T, whose noncentrality is −delta. */
function integrate(t: number, df: number, delta: number): number {
  const height = (u: number): number => logNormalBelow(place(t, delta, u)) - (df / 2) * expm1Less(2 * u);
  const mode = modeOf(t, df, delta);
  const top = height(mode);
  const left = edge(height, mode, -1, top - drop);
  const right = edge(height, mode, 1, top - drop);
  // Φ rises from 0 to 1 over about 1/delta where its argument passes 0; the points must not step over that.
  let steps = Math.max(32, t * delta > 0 ? Math.ceil(((right - left) * Math.abs(delta)) / 2) : 0);
  let width = (right - left) / steps;
  let sum = 0;
  for (let step = 0; step <= steps; step += 1) sum += Math.exp(height(left + step * width) - top);
  for (let round = 0; round < 8; round += 1) {
    let between = 0;
    for (let step = 0; step < steps; step += 1) between += Math.exp(height(left + (step + 0.5) * width) - top);
    // Halving the width squares the error, so an agreement in nine digits leaves none to be seen.
    const isSettled = Math.abs(between - sum) <= 1e-9 * sum;
    [sum, steps, width] = [sum + between, steps * 2, width / 2];
    if (isSettled) break;
  }
  const total = sum * width * (df / stirlingFactor(df / 2)) * Math.exp(top);
  return Math.min(1, total);
}

/** Where the integrand is largest. Its logarithm is concave in w = e^u, so the slope there falls through 0 once. */
function modeOf(t: number, df: number, delta: number): number {
  const slope = (u: number): number => {
    const w = Math.exp(u);
    return -df * Math.expm1(2 * u) + t * w * normalSlope(place(t, delta, u));
  };
  // A thousandth of the hump's width or less.
  const narrow = 1e-3 / Math.hypot(Math.sqrt(df), t, delta);
  let [low, high] = [-1, 1];
  while (slope(low) < 0) low *= 2;
  while (slope(high) > 0) high *= 2;
  for (let round = 0; round < 80 && high - low > narrow; round += 1) {
    const middle = (low + high) / 2;
    if (slope(middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** t·e^u − delta, by the way that keeps its digits. */
function place(t: number, delta: number, u: number): number {
  return Math.abs(u) < 0.7 ? t * Math.expm1(u) + (t - delta) : t * Math.exp(u) - delta;
}

/** Goes out from the mode until the height has fallen to `floor`. */
function edge(height: (u: number) => number, mode: number, side: 1 | -1, floor: number): number {
  let [near, far] = [0, 1e-9];
  while (height(mode + side * far) > floor) [near, far] = [far, far * 2];
  for (let round = 0; round < 5; round += 1) {
    const middle = (near + far) / 2;
    if (height(mode + side * middle) > floor) near = middle;
    else far = middle;
  }
  return mode + side * far;
}

/** e^v − 1 − v, sharp near 0. */
function expm1Less(v: number): number {
  if (Math.abs(v) > 0.5) return Math.expm1(v) - v;
  let [term, sum] = [(v * v) / 2, (v * v) / 2];
  for (let n = 3; ; n += 1) {
    term *= v / n;
    if (sum + term === sum) return sum;
    sum += term;
  }
}
