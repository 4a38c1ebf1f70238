import { requireWhole } from '../../ground/outside-domain.ts';
import { deviance } from './deviance.ts';
import { exactProduct } from './exact-product.ts';
import { stirlingFactor } from './stirling-factor.ts';
import { tailSum } from './tail-sum.ts';

/**
 * Probability of exactly k nonconforming in a sample drawn without replacement from one lot: C(D,k)·C(N−D,n−k) / C(N,n).
 * @param k any whole number; 0 comes back where k cannot be
 * @param sampleSize n, pieces drawn, 0 ≤ n ≤ N
 * @param lotSize N, pieces, 1 … 1 000 000 000
 * @param nonconforming D, pieces in the whole lot, 0 ≤ D ≤ N
 * @throws OutsideDomain naming the argument, its range and the value
 * @remarks relative error ≤ 1e-12 where the value is above 1e-300 (tests/reference/chance.test.ts); cost does not grow with N
 * @see Johnson, Kemp & Kotz, Univariate Discrete Distributions, 3rd ed., ch. 6; Loader (2000) for the saddle-point form
 */
export function hypergeometricExactly(k: number, sampleSize: number, lotSize: number, nonconforming: number): number {
  const draw = drawOf(k, sampleSize, lotSize, nonconforming);
  return k < draw.least || k > draw.most ? 0 : weight(k, draw);
}

/** Probability of k nonconforming or fewer; arguments as for hypergeometricExactly. Cost: about nine standard deviations of terms at most, 75 000 at N = 1e9. */
export function hypergeometricAtMost(k: number, sampleSize: number, lotSize: number, nonconforming: number): number {
  const draw = drawOf(k, sampleSize, lotSize, nonconforming);
  if (k < draw.least) return 0;
  return k >= draw.most ? 1 : tails(k, draw).atMost;
}

/** Probability of more than k nonconforming: what hypergeometricAtMost leaves, without the loss of digits that 1 − P would bring. */
export function hypergeometricMoreThan(k: number, sampleSize: number, lotSize: number, nonconforming: number): number {
  const draw = drawOf(k, sampleSize, lotSize, nonconforming);
  if (k < draw.least) return 1;
  return k >= draw.most ? 0 : tails(k, draw).moreThan;
}

type Draw = { readonly n: number; readonly N: number; readonly D: number; readonly least: number; readonly most: number };

function drawOf(k: number, n: number, N: number, D: number): Draw {
  requireWhole('k', k, -Number.MAX_SAFE_INTEGER, Number.MAX_SAFE_INTEGER);
  requireWhole('lotSize', N, 1, 1e9);
  requireWhole('sampleSize', n, 0, N);
  requireWhole('nonconforming', D, 0, N);
  return { n, N, D, least: Math.max(0, n + D - N), most: Math.min(n, D) };
}

/** Sums the tail away from the likeliest count; the other tail is then at least a third and loses nothing as a complement. */
function tails(k: number, draw: Draw): { readonly atMost: number; readonly moreThan: number } {
  const { n, N, D } = draw;
  const weightAt = (count: number): number => weight(count, draw);
  if (k < Math.floor(((n + 1) * (D + 1)) / (N + 2))) {
    const atMost = tailSum(k, -1, weightAt, (count) => (count * (N - D - n + count)) / ((D - count + 1) * (n - count + 1)));
    return { atMost, moreThan: 1 - atMost };
  }
  const moreThan = tailSum(k + 1, 1, weightAt, (count) => ((D - count) * (n - count)) / ((count + 1) * (N - D - n + count + 1)));
  return { atMost: 1 - moreThan, moreThan };
}

/** The four cells found/not found × drawn/left, each against what is expected of it; all four lie off by the same excess k − nD/N. */
function weight(k: number, { n, N, D }: Draw): number {
  const [seen, seenRest] = exactProduct(k, N);
  const [due, dueRest] = exactProduct(n, D);
  const excess = (seen - due + (seenRest - dueRest)) / N;
  const cells = [k, n - k, D - k, N - D - n + k] as const;
  const steep =
    deviance(cells[0], (n * D) / N, excess) +
    deviance(cells[1], (n * (N - D)) / N, -excess) +
    deviance(cells[2], ((N - n) * D) / N, -excess) +
    deviance(cells[3], ((N - n) * (N - D)) / N, excess);
  const margins = (stirlingFactor(D) * stirlingFactor(N - D) * stirlingFactor(n) * stirlingFactor(N - n)) / stirlingFactor(N);
  return (margins / (stirlingFactor(cells[0]) * stirlingFactor(cells[1]) * stirlingFactor(cells[2]) * stirlingFactor(cells[3]))) * Math.exp(-steep);
}
