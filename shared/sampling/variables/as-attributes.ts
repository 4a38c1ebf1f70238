import { singlePlan } from '../attributes/index.ts';
import type { InspectionLevel } from '../attributes/index.ts';
import type { VariablesLevel } from './variables-letter.ts';
import type { VariablesLotPlan } from './variables-plan-types.ts';

interface CountedPlan { readonly level: InspectionLevel; readonly letter: string; readonly sampleSize: number; readonly ac: number; readonly re: number }

/** What the readings of a variables sample say when each piece is only counted as within or outside the limits. */
export interface AttributesView {
  readonly outside: number;
  /** The single attributes plan of the same lot, AQL and severity; absent where there is none: two AQLs, two points, an AQL above 10. */
  readonly plan?: CountedPlan;
  /** By that plan: `open` where it wants more pieces than were measured and Ac is not passed yet, or where there is no plan. */
  readonly outcome: 'accepted' | 'rejected' | 'open';
  /**
   * The two views disagree: accepted by variables with more outside than the plan accepts (with any outside where there is no plan), or
   * rejected by variables with no reading outside or where the plan accepts.
   */
  readonly disagrees: boolean;
}

/** Levels that stand side by side in the two families: ANSI Z1.9 gave I … V of MIL-STD-414 these names of the attributes standard (seen: its Table A-2). */
const LEVELS: Readonly<Record<VariablesLevel, InspectionLevel>> = { I: 'S-3', II: 'S-4', III: 'I', IV: 'II', V: 'III' };

/**
 * The same readings as attributes: counted against the single plan of MIL-STD-105E for the same lot, AQL and severity at the level that
 * stands beside the variables level. It changes no verdict; where it disagrees, that is to be shown.
 * @param outside readings outside the limits as judged
 * @param accepted the verdict by variables
 */
export function asAttributes(plan: VariablesLotPlan, outside: number, accepted: boolean): AttributesView {
  const counted = countedPlan(plan);
  if (counted === null) return { outside, outcome: 'open', disagrees: accepted === outside > 0 };
  const outcome = outside >= counted.re ? 'rejected' : plan.sampleSize >= counted.sampleSize ? 'accepted' : 'open';
  return { outside, plan: counted, outcome, disagrees: accepted ? outcome === 'rejected' : outside === 0 || outcome === 'accepted' };
}

function countedPlan(plan: VariablesLotPlan): CountedPlan | null {
  if (plan.origin === 'points' || plan.separate !== undefined || plan.aqlPercent > 10) return null;
  const level = LEVELS[plan.level];
  const { letter, sampleSize, ac, re } = singlePlan({ lotSize: plan.lotSize, level, aqlPercent: plan.aqlPercent, severity: plan.severity });
  return { level, letter, sampleSize, ac, re };
}
