import { outcomes } from '../risk/index.ts';
import type { RiskModel } from '../risk/index.ts';
import { sequentialPlan } from '../sequential/index.ts';
import type { SequentialPlan } from '../sequential/index.ts';
import { qualitiesAt } from './risk-points.ts';
import type { RiskPoints } from './risk-points.ts';

/** A sequential plan with the risks and average sample numbers it really has at the two points. */
export interface SequentialDesign {
  readonly plan: SequentialPlan;
  readonly producerRisk: number;
  readonly consumerRisk: number;
  /** Pieces looked at per lot of quality p1, and of quality p2. */
  readonly averageAtP1: number;
  readonly averageAtP2: number;
}

/**
 * The sequential plan through two risk points, cut off (sequentialPlan), with what it really does. Wald's lines bound the two risks
 * together, not each alone, and the cut-off moves both a little; so the exact risks are reckoned piece by piece and given beside the plan.
 * @param request two points; lotSize, pieces, which ends the plan at the latest
 * @param request.model a process (binomial) unless given; a lot must have the lot size given
 * @throws OutsideDomain outside the ranges of sequentialPlan
 * @see Wald, Sequential Analysis (1947), ch. 5; outcomes of shared/sampling/risk for the exact figures
 */
export function twoPointSequential({ lotSize, p1, producerRisk, p2, consumerRisk, model = { kind: 'binomial' } }: RiskPoints & {
  readonly lotSize: number;
  readonly model?: RiskModel;
}): SequentialDesign {
  const plan = sequentialPlan({ lotSize, p1Percent: p1 * 100, producerRisk, p2Percent: p2 * 100, consumerRisk });
  const at = qualitiesAt(model, p1, p2);
  const [good, bad] = [outcomes(plan, model, at.good), outcomes(plan, model, at.bad)];
  return { plan, producerRisk: good.rejected, consumerRisk: bad.accepted + bad.acceptedInGap, averageAtP1: good.averageSampleNumber, averageAtP2: bad.averageSampleNumber };
}
