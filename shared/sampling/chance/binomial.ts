import { requireFinite, requireWhole } from '../../ground/outside-domain.ts';
import { betaTails, splitAt } from './beta.ts';
import { deviance } from './deviance.ts';
import { exactProduct } from './exact-product.ts';
import { fromNone, isNearNone } from './from-none.ts';
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

/** Probability of k nonconforming or fewer; arguments as for binomialExactly. */
export function binomialAtMost(k: number, n: number, p: number): number {
  requireDomain(k, n, p);
  if (k < 0) return 0;
  if (k >= n) return 1;
  const logNone = n * Math.log1p(-p);
  return isNearNone(k, logNone) ? fromNone(Math.exp(logNone), k, n, p / (1 - p), 'atMost') : tails(k, n, p).atMost;
}

/** Probability of more than k nonconforming: what binomialAtMost leaves, without the loss of digits that 1 − P would bring. */
export function binomialMoreThan(k: number, n: number, p: number): number {
  requireDomain(k, n, p);
  if (k < 0) return 1;
  if (k >= n) return 0;
  const logNone = n * Math.log1p(-p);
  return isNearNone(k, logNone) ? fromNone(Math.exp(logNone), k, n, p / (1 - p), 'moreThan') : tails(k, n, p).moreThan;
}

function requireDomain(k: number, n: number, p: number): void {
  requireWhole('k', k, -Number.MAX_SAFE_INTEGER, Number.MAX_SAFE_INTEGER);
  requireWhole('n', n, 0, 1e9);
  requireFinite('p', p, 0, 1);
}

/**
 * Sums the tail away from the likeliest count. Where that would be long, from a standard deviation of 100 pieces on, the incomplete beta function
 * gives the same in fewer steps (Abramowitz & Stegun 26.5.24).
 */
function tails(k: number, n: number, p: number): { readonly atMost: number; readonly moreThan: number } {
  if (n * p * (1 - p) > 1e4) {
    const { below, above } = betaTails(k + 1, n - k, splitAt(p, k + 1, n - k));
    return { atMost: above, moreThan: below };
  }
  const weightAt = (count: number): number => weight(count, n, p);
  if (k < Math.floor((n + 1) * p)) {
    const atMost = tailSum(k, -1, weightAt, (count) => (count * (1 - p)) / ((n - count + 1) * p));
    return { atMost, moreThan: 1 - atMost };
  }
  const moreThan = tailSum(k + 1, 1, weightAt, (count) => ((n - count) * p) / ((count + 1) * (1 - p)));
  return { atMost: 1 - moreThan, moreThan };
}

function weight(k: number, n: number, p: number): number {
  const [expected, leftOver] = exactProduct(n, p);
  const excess = k - expected - leftOver;
  const steep = deviance(k, expected, excess) + deviance(n - k, n - expected - leftOver, -excess);
  return (stirlingFactor(n) / (stirlingFactor(k) * stirlingFactor(n - k))) * Math.exp(-steep);
}
