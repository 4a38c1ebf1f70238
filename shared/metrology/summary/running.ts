import { OutsideDomain, requireFinite } from '../../ground/outside-domain.ts';
import { LARGEST_VALUE } from './summarise.ts';
import type { Summary } from './summarise.ts';

/** What is known of values taken in one at a time, in constant memory. Plain data; two of them can be merged. */
export type Running = {
  readonly n: number;
  readonly mean: number;
  /** Sum of squared differences from the mean. */
  readonly squares: number;
  /** null while no value was taken in. */
  readonly min: number | null;
  readonly max: number | null;
};

/** Nothing taken in yet. */
export function emptyRunning(): Running {
  return { n: 0, mean: 0, squares: 0, min: null, max: null };
}

/**
 * Takes one value in. Relative error of s on the NIST StRD sets: 1e-11 or better, except where the decimal inputs are not doubles.
 * @throws OutsideDomain unless `value` is finite, at most 1e150 in size
 * @see Welford, Technometrics 4 (1962) 419
 */
export function takeInto(running: Running, value: number): Running {
  requireFinite('value', value, -LARGEST_VALUE, LARGEST_VALUE);
  const n = running.n + 1;
  const off = value - running.mean;
  const mean = running.mean + off / n;
  return {
    n, mean, squares: running.squares + off * (value - mean),
    min: Math.min(running.min ?? value, value), max: Math.max(running.max ?? value, value),
  };
}

/**
 * What would be known had the values of both been taken in together.
 * @see Chan, Golub & LeVeque, American Statistician 37 (1983) 242
 */
export function merge(one: Running, other: Running): Running {
  if (one.min === null || one.max === null) return other;
  if (other.min === null || other.max === null) return one;
  const n = one.n + other.n;
  const off = other.mean - one.mean;
  return {
    n, mean: one.mean + off * (other.n / n), squares: one.squares + other.squares + off * off * ((one.n * other.n) / n),
    min: Math.min(one.min, other.min), max: Math.max(one.max, other.max),
  };
}

/**
 * The summary of what was taken in.
 * @throws OutsideDomain while nothing was
 */
export function summaryOf({ n, mean, squares, min, max }: Running): Summary {
  if (min === null || max === null) throw new OutsideDomain('running', 'at least one value taken in', n);
  return { n, mean: min === max ? min : mean, s: n < 2 ? null : min === max ? 0 : Math.sqrt(squares / (n - 1)), min, max, range: max - min };
}
