import { gateToPropose, proposeLayerSet, proposeSinteredSet, sharedSamplingOf, withProposed, type GradeCard, type InspectionPlan, type LayerCard, type PlanState } from '../../../shared/traveller/index.ts';
import { layerSetNames, sinteredSetNames } from '../../../shared/words/sintered-set.en.ts';
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

/** A plan with its gate judging a coating layer by layer, from one crater a piece; null where the layers are not named or no gate takes pieces at places. */
export function planWithLayers(plan: InspectionPlan, layer: LayerCard): InspectionPlan | null {
  const gate = gateToPropose(plan, ['thickness']);
  const lead = gate?.characteristics.find(({ id }) => id === 'thickness');
  const sampling = gate === null ? null : sharedSamplingOf(gate);
  if (gate === null || sampling === null || (sampling.rule !== 'positions' && sampling.rule !== 'fixed')) return null;
  const before = lead?.kind === 'measured' ? lead : null;
  const set = proposeLayerSet(layer, before?.entry.how === 'crater' ? before.entry.ballDiameterMm : USUAL_BALL_MM, before?.sampling.rule === sampling.rule ? before.sampling : sampling, { ...layerSetNames, ...(before === null ? {} : { total: before.name, method: before.method, gaugeKind: before.gaugeKind }) });
  // Layers of an earlier proposal that the coating has no more go out with it.
  const kept = { ...gate, characteristics: gate.characteristics.filter((each) => each.kind !== 'measured' || each.entry.how !== 'craterLayer') };
  return set.length === 0 ? null : withProposed({ ...plan, gates: plan.gates.map((each) => (each.id === gate.id ? kept : each)) }, gate.id, set);
}
/** The ball most benches have, mm. Common practice, no source. */
const USUAL_BALL_MM = 30;

/** Begins a draft of the plan with the grade's or coating's limits in it, from the version in force or the latest. It stays on this kiosk until it is drafted. */
export async function beginDraft(badge: string, planId: string, propose: (plan: InspectionPlan) => InspectionPlan | null, at: string): Promise<Proposed> {
  const { state } = await link.ask<{ readonly state: PlanState | null }>(`/api/states?stream=${encodeURIComponent(`plan:${planId}`)}`);
  const version = state?.versions.find(({ inForce }) => inForce) ?? state?.versions.at(-1);
  if (version === undefined) return { not: 'noGate' };
  if (keptDraft(badge, planId) !== null) return { not: 'kept' };
  const now = propose(version.plan);
  if (now === null) return { not: 'noGate' };
  if (JSON.stringify(now) === JSON.stringify(version.plan)) return { not: 'nothing' };
  keepDraft(badge, { plan: planId, from: version.planVersion, before: version.plan, now, steps: [version.plan], why: '', at });
  return { from: version.planVersion };
}
