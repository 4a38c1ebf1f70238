import { binomialExactly, binomialMoreThan, hypergeometricExactly, hypergeometricMoreThan } from '../chance/index.ts';
import type { Aim } from './risk-points.ts';

/**
 * Probability that the first of two samples holds more than `ac` of all that were found in both, for each total from `from` to `to`. It does
 * not depend on the quality: of `total` nonconforming pieces each set of places among the n1 + n2 is equally likely (hypergeometric), and
 * of nonconformities each falls into the first sample with chance n1/(n1 + n2) (binomial). Stepped from one total to the next by adding
 * positive terms, so nothing cancels.
 * @see the two steps are derived in docs/methods/design.md
 */
export function firstHoldsMore(counts: Aim['counts'], { n1, n2, ac, from, to }: Readonly<Record<'n1' | 'n2' | 'ac' | 'from' | 'to', number>>): Float64Array {
  const all = n1 + n2;
  const share = n1 / all;
  const pieces = counts === 'pieces';
  let more = pieces ? hypergeometricMoreThan(ac, n1, all, from) : binomialMoreThan(ac, from, share);
  let exactly = pieces ? hypergeometricExactly(ac, n1, all, from) : binomialExactly(ac, from, share);
  const chances = new Float64Array(to - from + 1);
  for (let total = from; total <= to; total += 1) {
    chances[total - from] = more;
    more += exactly * (pieces ? (n1 - ac) / (all - total) : share);
    exactly *= ((total + 1) / (total + 1 - ac)) * (pieces ? Math.max(0, n2 - total + ac) / (all - total) : 1 - share);
  }
  return chances;
}
