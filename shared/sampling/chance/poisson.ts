import { requireFinite, requireWhole } from '../../ground/outside-domain.ts';
import { fromNone, isNearNone } from './from-none.ts';
import { gammaFront, gammaTails } from './gamma.ts';

/**
 * Probability of exactly k nonconformities where `mean` are expected: e^(−mean)·mean^k / k!.
 * @param k any whole number; 0 comes back below 0
 * @param mean 0 … 1e9, for instance pieces times nonconformities a piece
 * @throws OutsideDomain naming the argument, its range and the value
 * @remarks relative error ≤ 1e-12 where the value is above 1e-300 (tests/reference/chance.test.ts)
 * @see Johnson, Kemp & Kotz, Univariate Discrete Distributions, 3rd ed., ch. 4
 */
export function poissonExactly(k: number, mean: number): number {
  requireDomain(k, mean);
  return k < 0 ? 0 : gammaFront(k, mean);
}

/** Probability of k nonconformities or fewer; arguments as for poissonExactly. */
export function poissonAtMost(k: number, mean: number): number {
  requireDomain(k, mean);
  if (k < 0) return 0;
  return isNearNone(k, -mean) ? fromNone(Math.exp(-mean), k, null, mean, 'atMost') : gammaTails(k + 1, mean).above;
}

/** Probability of more than k nonconformities: what poissonAtMost leaves, without the loss of digits that 1 − P would bring. */
export function poissonMoreThan(k: number, mean: number): number {
  requireDomain(k, mean);
  if (k < 0) return 1;
  return isNearNone(k, -mean) ? fromNone(Math.exp(-mean), k, null, mean, 'moreThan') : gammaTails(k + 1, mean).below;
}

function requireDomain(k: number, mean: number): void {
  requireWhole('k', k, -Number.MAX_SAFE_INTEGER, Number.MAX_SAFE_INTEGER - 1);
  requireFinite('mean', mean, 0, 1e9);
}
