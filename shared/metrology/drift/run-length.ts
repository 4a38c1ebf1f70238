import { OutsideDomain, requireFinite } from '../../ground/outside-domain.ts';
import { requireLambda } from './ewma.ts';
import { legendreNodes } from './legendre-nodes.ts';

/** An EWMA chart of independent normal values with constant limits: λ and L. */
export interface EwmaChart { readonly lambda: number; /** L, in long-run standard deviations of the average. */ readonly limitFactor: number }

/** Steps until the distribution of the average, given that no alarm fell, has settled to twelve digits: (1 − λ)^k. */
const stepsToSettle = (lambda: number): number => Math.ceil(Math.log(1e-13) / Math.log1p(-Math.min(lambda, 0.999))) + 20;

/**
 * The share of streams of `pieces` values that give at least one alarm.
 * The density of the average before its first alarm is carried from value to value on Gauss–Legendre nodes; once it has settled, each
 * further value loses the same share of what is left, so that long streams cost no more than short ones.
 * @param pieces number of values, 1 … 1e12, whole
 * @param shift mean of the values less the target, in their standard deviation; 0 for a process in control
 * @returns fraction 0 … 1
 * @throws OutsideDomain naming the argument
 * @remarks Constant limits, values independent, normal, σ known. Relative error about 1e-6 for λ of 0.02 or more (derived, against more nodes).
 * @see Crowder, Technometrics 29 (1987) 401 (the integral equation); Lucas & Saccucci, Technometrics 32 (1990) 1; both from memory
 */
export function alarmShare(chart: EwmaChart, pieces: number, shift = 0): number {
  if (!Number.isInteger(pieces)) throw new OutsideDomain('pieces', 'a whole number', pieces);
  requireFinite('pieces', pieces, 1, 1e12);
  const { left, logKept, steps } = settle(chart, shift, pieces);
  return pieces <= steps || left === 0 ? 1 - left : -Math.expm1(Math.log(left) + (pieces - steps) * logKept);
}

/**
 * Average run length: values until the first alarm, on average.
 * @see Lucas & Saccucci, Technometrics 32 (1990) 1, Table 3 (from memory): λ 0.1, L 2.814 gives 500 in control
 * @throws OutsideDomain naming the argument
 */
export function averageRunLength(chart: EwmaChart, shift = 0): number {
  const { sum, left, logKept } = settle(chart, shift, Infinity);
  return left > 0 ? sum + left * (Math.exp(logKept) / -Math.expm1(logKept)) : sum;
}

/**
 * The smallest L, to two decimals and rounded up, at which at most this share of in-control streams gives a false alarm.
 * @param share fraction, 1e-9 … 0.5
 * @throws OutsideDomain naming the argument, or where no L up to 9 is enough
 */
export function limitFactorFor(lambda: number, share: number, pieces: number): number {
  requireFinite('share', share, 1e-9, 0.5);
  let [low, high] = [100, 900];
  if (alarmShare({ lambda, limitFactor: high / 100 }, pieces) > share) throw new OutsideDomain('share', 'reached by an L of at most 9', share);
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (alarmShare({ lambda, limitFactor: middle / 100 }, pieces) <= share) high = middle;
    else low = middle;
  }
  return high / 100;
}

/** Follows the average until its density has settled, or to the end of the stream. In units of σ of single values. */
function settle({ lambda, limitFactor }: EwmaChart, shift: number, pieces: number): { readonly left: number; readonly logKept: number; readonly steps: number; readonly sum: number } {
  requireLambda(lambda);
  requireFinite('limitFactor', limitFactor, 0.1, 20);
  requireFinite('shift', shift, -20, 20);
  const width = limitFactor * Math.sqrt(lambda / (2 - lambda));
  // The kernel is λ wide: some four nodes to each such width resolve it.
  const { nodes, weights } = legendreNodes(Math.min(400, Math.max(60, Math.ceil((6 * width) / lambda))));
  const at = nodes.map((node) => node * width);
  const share = Float64Array.from(weights, (weight) => weight * width);
  const density = (to: number, from: number): number => Math.exp(-0.5 * ((to - (1 - lambda) * from) / lambda - shift) ** 2) / (lambda * Math.sqrt(2 * Math.PI));
  const kernel = at.map((to) => Float64Array.from(at, (from, k) => density(to, from) * (share[k] ?? 0)));
  const steps = Math.min(pieces, stepsToSettle(lambda));
  let here = Float64Array.from(at, (to) => density(to, 0));
  let left = dot(here, share);
  let [logKept, sum] = [Math.log(left), 1 + left];
  for (let step = 2; step <= steps && left > 0; step += 1) {
    const next = new Float64Array(here.length);
    for (let row = 0; row < next.length; row += 1) next[row] = dot(kernel[row] ?? next, here);
    here = next;
    const now = dot(here, share);
    logKept = Math.log(now / left);
    left = now;
    sum += now;
  }
  return { left, logKept, steps, sum };
}

function dot(one: Float64Array, other: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < one.length; k += 1) sum += (one[k] ?? 0) * (other[k] ?? 0);
  return sum;
}
