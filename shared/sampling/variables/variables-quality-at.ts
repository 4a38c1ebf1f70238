import { normalAbove } from '../chance/index.ts';
import { OutsideDomain } from '../../ground/outside-domain.ts';
import { findRoot } from '../risk/find-root.ts';
import { variablesAcceptance } from './variables-acceptance.ts';
import type { VariablesJudging } from './variables-plan-types.ts';

/** How far from the mean, in standard deviations, a limit is looked for: p from 1 − 1e-15 down to 3e-308. */
const [NEAREST, FARTHEST] = [-8, 37.5];

/**
 * The quality that a plan by variables accepts with a given probability: the inverse of variablesAcceptance, looked for over the distance
 * of the limit, where the acceptance rises.
 * @param accepted the probability of acceptance, above 0 and below 1
 * @param lowerShare as in VariablesQuality: what part of p lies below the lower of two limits; absent where there is one limit
 * @returns p, a fraction
 * @throws OutsideDomain for a probability outside this range, or as variablesAcceptance
 * @remarks relative error ≤ 1e-10 for 0.001 ≤ accepted ≤ 0.999; held by tests/unit/sampling/variables-outgoing.test.ts
 * @see Lieberman & Resnikoff, JASA 50 (1955) 457
 * @example variablesQualityAt({ sampleSize: 5, k: 1.53, mPercent: 3.32 }, 0.1) // 0.2840…
 */
export function variablesQualityAt(plan: VariablesJudging, accepted: number, lowerShare?: number): number {
  if (!(accepted > 0 && accepted < 1)) throw new OutsideDomain('accepted', 'above 0 and below 1', accepted);
  const share = lowerShare === undefined ? {} : { lowerShare };
  return normalAbove(findRoot((distance) => variablesAcceptance(plan, { p: normalAbove(distance), ...share }) - accepted, NEAREST, FARTHEST));
}
