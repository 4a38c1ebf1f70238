import { requireFinite, requireWhole } from '../../ground/outside-domain.ts';
import { deviance } from './deviance.ts';
import { exactProduct } from './exact-product.ts';
import { stirlingFactor } from './stirling-factor.ts';
import { tailSum } from './tail-sum.ts';

/**
 * Probability of exactly k nonconforming among n pieces, each nonconforming with chance p: C(n,k)·p^k·(1−p)^(n−k).
 * @param k any whole number; 0 comes back outside 0 … n
 * @param n pieces, 0 … 1 000 000 000
 * @param p a fraction 0 … 1
 * @throws OutsideDomain naming the argument, its range and the value
 * @remarks relative error ≤ 1e-12 where the value is above 1e-300 (tests/reference/chance.test.ts); cost does not grow with n
 * @see Loader, Fast and Accurate Computation of Binomial Probabilities (2000)
 */
export function binomialExactly(k: number, n: number, p: number): number {
  requireDomain(k, n, p);
  return k < 0 || k > n ? 0 : weight(k, n, p);
}

/** Probability of k nonconforming or fewer; arguments as for binomialExactly. Cost: at most about nine standard deviations of terms, 140 000 at n = 1e9. */
export function binomialAtMost(k: number, n: number, p: number): number {
  requireDomain(k, n, p);
  if (k < 0) return 0;
  if (k >= n) return 1;
  return isBelowLikeliest(k, n, p) ? below(k, n, p) : 1 - above(k, n, p);
}

/** Probability of more than k nonconforming: what binomialAtMost leaves, without the loss of digits that 1 − P would bring. */
export function binomialMoreThan(k: number, n: number, p: number): number {
  requireDomain(k, n, p);
  if (k < 0) return 1;
  if (k >= n) return 0;
  return isBelowLikeliest(k, n, p) ? 1 - below(k, n, p) : above(k, n, p);
}

function requireDomain(k: number, n: number, p: number): void {
  requireWhole('k', k, -Number.MAX_SAFE_INTEGER, Number.MAX_SAFE_INTEGER);
  requireWhole('n', n, 0, 1e9);
  requireFinite('p', p, 0, 1);
}

function isBelowLikeliest(k: number, n: number, p: number): boolean {
  return k < Math.floor((n + 1) * p);
}

function below(k: number, n: number, p: number): number {
  return tailSum(k, -1, (count) => weight(count, n, p), (count) => (count * (1 - p)) / ((n - count + 1) * p));
}

function above(k: number, n: number, p: number): number {
  return tailSum(k + 1, 1, (count) => weight(count, n, p), (count) => ((n - count) * p) / ((count + 1) * (1 - p)));
}

function weight(k: number, n: number, p: number): number {
  const [expected, leftOver] = exactProduct(n, p);
  const excess = k - expected - leftOver;
  const steep = deviance(k, expected, excess) + deviance(n - k, n - expected - leftOver, -excess);
  return (stirlingFactor(n) / (stirlingFactor(k) * stirlingFactor(n - k))) * Math.exp(-steep);
}
