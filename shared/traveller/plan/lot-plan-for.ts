import { attributesPlan, limitingQualityPlan, zeroAcceptancePlan } from '../../sampling/attributes/index.ts';
import type { IsolatedPlan, OwnTable, Severity } from '../../sampling/attributes/index.ts';
import { twoPointDouble, twoPointSingle } from '../../sampling/design/index.ts';
import { sequentialPlan } from '../../sampling/sequential/index.ts';
import type { LotPlan } from '../../sampling/sequential/index.ts';
import type { CountedRule, FindingClass, RiskPoints } from './characteristic.ts';

/** What a lot brings to the look-up. */
export interface LotAsked { readonly lotSize: number; readonly severity: Severity; /** The plant's own copies of master tables that the rule names. */ readonly tables: readonly OwnTable[] }

/**
 * The plan a rule that counts asks of one lot, for one class. The severity matters to plans by AQL alone.
 * @returns null where the rule does not judge the class, or no plan small enough passes through its two points
 * @throws OutsideDomain for a lot size or AQL the tables do not know
 */
export function lotPlanFor(rule: CountedRule, each: FindingClass, { lotSize, severity, tables }: LotAsked): LotPlan | null {
  switch (rule.rule) {
    case 'attributes': {
      const aqlPercent = rule.aqlPercent[each];
      return aqlPercent === undefined ? null : attributesPlan({ lotSize, level: rule.level, aqlPercent, severity, tables, ...(rule.samples === undefined ? {} : { samples: rule.samples }) });
    }
    case 'limitingQuality': case 'zeroAcceptance': {
      const lqPercent = rule.lqPercent[each];
      if (lqPercent === undefined) return null;
      const asked = { lotSize, lqPercent, consumerRisk: rule.consumerRisk };
      return rule.rule === 'zeroAcceptance' ? zeroAcceptancePlan(asked) : limitingQualityPlan(asked);
    }
    case 'twoPoint': {
      const points = rule.points[each];
      return points === undefined ? null : designed(rule.samples, points, lotSize);
    }
    case 'sequential': {
      const points = rule.points[each];
      return points === undefined ? null : sequentialPlan({ lotSize, ...points });
    }
  }
}

/** The smallest plan for this very lot through both points, its pieces counted without replacement. */
function designed(samples: 'single' | 'double', { p1Percent, producerRisk, p2Percent, consumerRisk }: RiskPoints, lotSize: number): IsolatedPlan | null {
  const asked = { p1: p1Percent / 100, producerRisk, p2: p2Percent / 100, consumerRisk, model: { kind: 'hypergeometric' as const, lotSize } };
  const about = { kind: 'twoPoint' as const, lotSize, lqPercent: p2Percent, consumerRisk, p1Percent, producerRisk };
  const two = samples === 'double' ? twoPointDouble(asked) : null;
  if (two !== null && !('none' in two)) {
    const [first, second] = two.stages;
    const sampleSize = first.sampleSize + second.sampleSize;
    return { ...about, sampleSize, ac: second.ac ?? 0, re: second.re, stages: two.stages, riskAtLq: two.consumerRisk, everyPiece: sampleSize >= lotSize };
  }
  // A lot too small for two samples is judged by one.
  const one = twoPointSingle(asked);
  return 'none' in one ? null : { ...about, sampleSize: one.n, ac: one.ac, re: one.re, riskAtLq: one.consumerRisk, everyPiece: one.n >= lotSize };
}
