import { firstTrue } from './first-true.ts';
import type { Aim } from './risk-points.ts';

/**
 * The first size for which the most powerful test of all its pieces meets both risks: accept on fewer than Ac found, at Ac by lot, so that
 * p1 is accepted just as seldom as allowed. A test of fewer pieces, however it goes about them, cannot meet both, for the number
 * found tells all there is to tell about the quality and its likelihood ratio is monotone. More pieces never make that test weaker.
 * @param piecesOf pieces looked at in all, never falling with the size
 * @param most the largest size tried; the answer is most + 1 where it is not enough
 * @see Lehmann & Romano, Testing Statistical Hypotheses, 3rd ed., theorem 3.4.1 (monotone likelihood ratio)
 */
export function leastForAnyTest({ good, bad, producerRisk, consumerRisk }: Aim, piecesOf: (size: number) => number, most: number): number {
  return firstTrue((size) => {
    const pieces = piecesOf(size);
    const ac = firstTrue((found) => good.moreThan(found, pieces) <= producerRisk, 0, Number.MAX_SAFE_INTEGER - 1);
    const rejectedAtAc = Math.min(1, Math.max(0, (producerRisk - good.moreThan(ac, pieces)) / good.exactly(ac, pieces)));
    return bad.atMost(ac - 1, pieces) + (1 - rejectedAtAc) * bad.exactly(ac, pieces) <= consumerRisk * (1 + 1e-9);
  }, 1, most);
}
