import type { Characteristic, Graded, Measured } from '../plan/characteristic.ts';
import type { GatePlan } from '../plan/gate-plan.ts';
import type { InspectionPlan } from '../plan/gate-plan.ts';

type Shared = Measured['sampling'] & Graded['sampling'];

/** The gate of a plan that already judges most of these; the first worked on the plan's own subject where none does. Null in a plan without one. */
export function gateToPropose(plan: InspectionPlan, ids: readonly string[]): GatePlan | null {
  const own = plan.gates.filter(({ workedOn }) => workedOn === plan.appliesTo);
  const known = ({ characteristics }: GatePlan): number => characteristics.filter(({ id }) => ids.includes(id)).length;
  return own.reduce<GatePlan | null>((best, gate) => (best === null || known(gate) > known(best) ? gate : best), null);
}

/** Where the gate takes its pieces: the first rule in it that measured and graded characteristics may share; null where there is none. */
export function sharedSamplingOf({ characteristics }: GatePlan): Shared | null {
  for (const { sampling } of characteristics) if (sampling.rule === 'fixed' || sampling.rule === 'barrels' || sampling.rule === 'positions') return sampling;
  return null;
}

/** The plan with the proposed characteristics in the gate: those of the same key in their old places with the sampling they had, new ones behind them. */
export function withProposed(plan: InspectionPlan, gate: string, proposed: readonly Characteristic[]): InspectionPlan {
  return { ...plan, gates: plan.gates.map((each) => (each.id === gate ? { ...each, characteristics: merged(each.characteristics, proposed) } : each)) };
}

function merged(before: readonly Characteristic[], proposed: readonly Characteristic[]): readonly Characteristic[] {
  const kept = before.map((old) => {
    const fresh = proposed.find(({ id }) => id === old.id);
    return fresh === undefined ? old : withSamplingOf(fresh, old);
  });
  return [...kept, ...proposed.filter(({ id }) => !before.some((old) => old.id === id))];
}

/** A rule that the plan has already is not changed by a proposal of limits. */
function withSamplingOf(fresh: Characteristic, old: Characteristic): Characteristic {
  if (fresh.kind === 'measured' && old.kind === 'measured') return { ...fresh, sampling: old.sampling };
  if (fresh.kind === 'graded' && old.kind === 'graded') return { ...fresh, sampling: old.sampling };
  return fresh;
}
