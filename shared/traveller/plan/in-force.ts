import type { Pen } from '../pen.ts';
import { refuse } from '../pen.ts';
import type { RouteStep } from '../lot/lot.ts';
import type { SubjectKind } from '../stream.ts';
import { streamName } from '../stream.ts';
import type { GatePlan, InspectionPlan } from './gate-plan.ts';

/** The version of a plan for this kind of subject that is in force, or the refusal that none is. */
export function planInForce(pen: Pen, id: string, kind: SubjectKind): { readonly plan: InspectionPlan; readonly planVersion: number } {
  const found = pen.find(streamName('plan', id), 'plan', 'plan').versions.find(({ inForce }) => inForce) ?? refuse({ code: 'planNotInForce', plan: id });
  if (found.plan.appliesTo !== kind) refuse({ code: 'planUnsound', where: id, why: 'otherSubject' });
  return found;
}

/** One gate of the version a subject was opened with. */
export function plannedGate(pen: Pen, plan: string, planVersion: number, gate: string): GatePlan {
  const version = pen.find(streamName('plan', plan), 'plan', 'plan').versions.find((each) => each.planVersion === planVersion);
  return version?.plan.gates.find(({ id }) => id === gate) ?? refuse({ code: 'notFound', what: 'gate', id: gate });
}

/** The route as a subject keeps it. */
export function routeOf(plan: InspectionPlan): RouteStep[] {
  return plan.gates.map(({ id, name, workedOn, bench }) => ({ id, name, workedOn, bench }));
}
