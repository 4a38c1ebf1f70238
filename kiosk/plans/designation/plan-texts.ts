import { FINDING_CLASSES, proposePlan } from '../../../shared/traveller/index.ts';
import type { FindingClass, GatePlan, Measured, PlanChoices, ProposedPlan } from '../../../shared/traveller/index.ts';
import { INSPECTION_LEVELS } from '../../../shared/sampling/attributes/index.ts';
import { VARIABLES_LEVELS } from '../../../shared/sampling/variables/index.ts';
import { planProposalTexts } from '../../../shared/words/plan-proposal.en.ts';
import { readNumber } from '../../desk/show.ts';
import type { WorkedDesignation } from './limit-texts.ts';

/** What an engineer puts in for a plan, as typed and chosen. AQLs and levels to begin with are common practice, no source. */
export interface PlanTexts {
  readonly id: string;
  readonly name: string;
  readonly route: string;
  readonly coated: 'yes' | 'no';
  readonly marking: string;
  readonly level: string;
  readonly aql: string;
  readonly rule: Measured['decisionRule'];
  readonly looksLevel: string;
  readonly looks: Readonly<Record<FindingClass, string>>;
  readonly radius: string;
}
export function firstPlanTexts(designation: string, name: string): PlanTexts {
  return {
    id: `ROUTE-${designation.replaceAll(/[^A-Z0-9.-]/g, '')}`, name, route: '', coated: 'yes', marking: designation, level: 'II', aql: '1', rule: 'guardedAcceptance', looksLevel: 'II',
    looks: { critical: '0.15', major: '0.65', minor: '2.5' }, radius: '',
  };
}

/** The corner radius' ±, mm: null for none, undefined where the text is no figure above 0. */
export function radiusOf({ radius }: PlanTexts): number | null | undefined {
  if (radius.trim() === '') return null;
  const value = readNumber(radius);
  return value !== null && value > 0 ? value : undefined;
}

/** The plan that the texts make. They are sound. */
export function proposedFrom(worked: WorkedDesignation, texts: PlanTexts, route: readonly GatePlan[] | null): ProposedPlan {
  const choices: PlanChoices = {
    ...worked.choices, id: texts.id.trim(), name: texts.name.trim(), route, coated: texts.coated === 'yes', marking: texts.marking.trim(), cornerRadiusPlusMinusMm: radiusOf(texts) ?? null,
    dimensions: { level: VARIABLES_LEVELS.find((level) => level === texts.level) ?? 'II', aqlPercent: Number(texts.aql), decisionRule: texts.rule },
    looks: { level: INSPECTION_LEVELS.find((level) => level === texts.looksLevel) ?? 'II', switching: 'ISO 2859-1', aqlPercent: { critical: 0, major: 0, minor: 0, ...Object.fromEntries(FINDING_CLASSES.map((each) => [each, Number(texts.looks[each])])) } },
  };
  return proposePlan(worked.designation, choices, planProposalTexts);
}
