import { gateToPropose, proposeSinteredSet, sharedSamplingOf, withProposed, type GradeCard, type InspectionPlan, type PlanState } from '../../../shared/traveller/index.ts';
import { sinteredSetNames } from '../../../shared/words/sintered-set.en.ts';
import { link } from '../../link/index.ts';
import { keepDraft, keptDraft } from '../write/draft-store.ts';

/** What came of it: a draft was begun from this version, or why none was. */
export type Proposed = { readonly from: number } | { readonly not: 'nothing' | 'noGate' | 'kept' };

/** A plan with its gate judged by the grade's limits; null where no gate of it takes pieces in a way that the set can share. */
export function planWithGrade(plan: InspectionPlan, grade: GradeCard): InspectionPlan | null {
  const probe = proposeSinteredSet(grade, { rule: 'fixed', n: 1, accept: 'each' }, sinteredSetNames, false);
  const gate = gateToPropose(plan, probe.map(({ id }) => id));
  const sampling = gate === null ? null : sharedSamplingOf(gate);
  return gate === null || sampling === null ? null : withProposed(plan, gate.id, proposeSinteredSet(grade, sampling, sinteredSetNames, plan.appliesTo === 'batch'));
}

/** Begins a draft of the plan with the grade's limits in it, from the version in force or the latest. It stays on this kiosk until it is drafted. */
export async function beginDraft(badge: string, planId: string, grade: GradeCard, at: string): Promise<Proposed> {
  const { state } = await link.ask<{ readonly state: PlanState | null }>(`/api/states?stream=${encodeURIComponent(`plan:${planId}`)}`);
  const version = state?.versions.find(({ inForce }) => inForce) ?? state?.versions.at(-1);
  if (version === undefined) return { not: 'noGate' };
  if (keptDraft(badge, planId) !== null) return { not: 'kept' };
  if (proposeSinteredSet(grade, { rule: 'fixed', n: 1, accept: 'each' }, sinteredSetNames, false).length === 0) return { not: 'nothing' };
  const now = planWithGrade(version.plan, grade);
  if (now === null) return { not: 'noGate' };
  keepDraft(badge, { plan: planId, from: version.planVersion, before: version.plan, now, steps: [version.plan], why: '', at });
  return { from: version.planVersion };
}
