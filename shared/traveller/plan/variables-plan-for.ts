import type { Severity } from '../../sampling/attributes/index.ts';
import { pointsVariablesPlan, variablesPlan } from '../../sampling/variables/index.ts';
import type { VariablesLotPlan } from '../../sampling/variables/index.ts';
import type { VariablesRule } from './characteristic.ts';

/**
 * The plan a rule by variables asks of a lot of 3 pieces or more. There is no reduced plan by variables, so normal stands for it.
 * @returns null where no plan small enough passes through the rule's two points
 * @throws OutsideDomain for a lot size or AQL the tables do not know
 */
export function variablesPlanFor({ level, aqlPercent, sigma, form, separate, points }: VariablesRule, lotSize: number, severity: Severity): VariablesLotPlan | null {
  const choices = { ...(sigma === undefined ? {} : { method: 'sigma' as const, sigma }), ...(form === undefined ? {} : { form }) };
  if (points !== undefined) return pointsVariablesPlan({ lotSize, points, ...choices });
  return variablesPlan({ lotSize, level, aqlPercent, severity: severity === 'tightened' ? 'tightened' : 'normal', ...choices, ...(separate === undefined ? {} : { separate }) });
}
