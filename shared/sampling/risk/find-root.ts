/**
 * The place where a rising function crosses 0, between `low` (below 0) and `high` (above 0): Brent's method, to the last bits of x.
 * @see Brent, Algorithms for Minimization without Derivatives (1973), ch. 4
 */
export function findRoot(rising: (x: number) => number, low: number, high: number): number {
  let [a, b, fa, fb] = [low, high, rising(low), rising(high)];
  if (fa >= 0) return low;
  if (fb <= 0) return high;
  let [c, fc, step, before] = [a, fa, b - a, b - a];
  for (let round = 0; round < 200; round += 1) {
    if (Math.abs(fc) < Math.abs(fb)) [a, b, c, fa, fb, fc] = [b, c, b, fb, fc, fb];
    const tolerance = 2 * Number.EPSILON * Math.abs(b);
    const half = (c - b) / 2;
    if (Math.abs(half) <= tolerance || fb === 0) return b;
    if (Math.abs(before) < tolerance || Math.abs(fa) <= Math.abs(fb)) {
      [step, before] = [half, half];
    } else {
      const secant = a === c;
      const [q, r, s] = [fa / fc, fb / fc, fb / fa];
      let up = secant ? 2 * half * s : s * (2 * half * q * (q - r) - (b - a) * (r - 1));
      let down = secant ? 1 - s : (q - 1) * (r - 1) * (s - 1);
      if (up > 0) down = -down;
      else up = -up;
      const good = 2 * up < Math.min(3 * half * down - Math.abs(tolerance * down), Math.abs(before * down));
      [before, step] = good ? [step, up / down] : [half, half];
    }
    [a, fa] = [b, fb];
    b += Math.abs(step) > tolerance ? step : Math.sign(half) * tolerance;
    fb = rising(b);
    if (fb > 0 === fc > 0) [c, fc, step, before] = [a, fa, b - a, b - a];
  }
  return b;
}
