import { normalAbove, normalAt } from '../chance/index.ts';
import { requireWhole } from '../../ground/outside-domain.ts';
import type { OutgoingLimit } from '../risk/index.ts';
import { variablesAcceptance } from './variables-acceptance.ts';
import type { VariablesQuality } from './variables-acceptance.ts';
import type { VariablesJudging } from './variables-plan-types.ts';
import { variablesQualityAt } from './variables-quality-at.ts';

const LARGEST_LOT = 1_000_000_000;

/**
 * Average outgoing quality of a plan by variables: the fraction nonconforming in the lots that leave, when every rejected lot is measured
 * piece by piece and every nonconforming piece found, in a sample too, is replaced by a good one. AOQ = p·Pa·(N − n)/N; the pieces left in
 * an accepted lot of a process do not depend on those measured.
 * @param lotSize N, from the sample up to 1e9
 * @throws OutsideDomain for a lot below its sample, or as variablesAcceptance
 * @see MIL-STD-105E 11.3 and NIST/SEMATECH e-Handbook 6.2.3.2, where Pa is that of a plan by attributes; the same sorting by variables is derived
 */
export function variablesOutgoingQuality(plan: VariablesJudging, quality: VariablesQuality, lotSize: number): number {
  requireWhole('lotSize', lotSize, plan.sampleSize, LARGEST_LOT);
  return (quality.p * variablesAcceptance(plan, quality) * (lotSize - plan.sampleSize)) / lotSize;
}

/**
 * Average total inspection of a plan by variables: pieces looked at per lot when every rejected lot is looked at piece by piece.
 * ATI = n + (1 − Pa)·(N − n).
 * @throws OutsideDomain as variablesOutgoingQuality
 * @see NIST/SEMATECH e-Handbook 6.2.3.2
 */
export function variablesTotalInspection(plan: VariablesJudging, quality: VariablesQuality, lotSize: number): number {
  requireWhole('lotSize', lotSize, plan.sampleSize, LARGEST_LOT);
  return plan.sampleSize + (1 - variablesAcceptance(plan, quality)) * (lotSize - plan.sampleSize);
}

/**
 * Average outgoing quality limit of a plan by variables: the largest average outgoing quality over all incoming qualities, narrowed by golden
 * sections over the distance of the limit between the qualities accepted with 0.9999 and 0.000001; there is one hill.
 * @param lowerShare as in VariablesQuality; absent where there is one limit
 * @returns the limit to 1e-10 (relative); the place, where the hill is flat, to about 1e-7
 * @throws OutsideDomain as variablesOutgoingQuality
 * @see MIL-STD-105E 11.4 for the idea; golden sections: Kiefer, Proc. Amer. Math. Soc. 4 (1953) 502
 */
export function variablesOutgoingLimit(plan: VariablesJudging, lotSize: number, lowerShare?: number): OutgoingLimit {
  const share = lowerShare === undefined ? {} : { lowerShare };
  const outgoing = (distance: number): number => variablesOutgoingQuality(plan, { p: normalAbove(distance), ...share }, lotSize);
  const golden = (Math.sqrt(5) - 1) / 2;
  const distanceAt = (accepted: number): number => -normalAt(variablesQualityAt(plan, accepted, lowerShare));
  let [from, to] = [distanceAt(1e-6), distanceAt(0.9999)];
  let [left, right] = [to - golden * (to - from), from + golden * (to - from)];
  let [atLeft, atRight] = [outgoing(left), outgoing(right)];
  while (to - from > 1e-8) {
    if (atLeft < atRight) {
      [from, left, atLeft] = [left, right, atRight];
      right = from + golden * (to - from);
      atRight = outgoing(right);
    } else {
      [to, right, atRight] = [right, left, atLeft];
      left = to - golden * (to - from);
      atLeft = outgoing(left);
    }
  }
  const at = (from + to) / 2;
  return { aoql: outgoing(at), at: normalAbove(at) };
}
