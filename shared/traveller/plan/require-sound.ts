import { AQLS } from '../../sampling/attributes/index.ts';
import { VARIABLES_AQLS } from '../../sampling/variables/index.ts';
import { refuse } from '../pen.ts';
import type { Characteristic } from './characteristic.ts';
import { FINDING_CLASSES } from './characteristic.ts';
import type { GatePlan, InspectionPlan } from './gate-plan.ts';

/** Refuses a plan that could not be worked: it names the first place that is wrong and why. */
export function requireSound(plan: InspectionPlan): void {
  const unsound = (where: string, why: string): never => refuse({ code: 'planUnsound', where, why });
  if (plan.gates.length === 0) unsound(plan.id, 'a route has at least one gate');
  requireDistinct(plan.gates.map(({ id }) => id), plan.id);
  for (const gate of plan.gates) {
    if (gate.workedOn !== plan.appliesTo && plan.appliesTo !== 'lot') unsound(gate.id, 'only a lot takes verdicts from another subject');
    if (gate.workedOn === plan.appliesTo) soundGate(gate, plan);
    else if (gate.characteristics.length > 0) unsound(gate.id, 'a gate worked on another subject has its characteristics in that subject’s plan');
  }
}

function soundGate(gate: GatePlan, plan: InspectionPlan): void {
  if (gate.characteristics.length === 0) refuse({ code: 'planUnsound', where: gate.id, why: 'a gate has at least one characteristic' });
  if (gate.roles.length === 0) refuse({ code: 'planUnsound', where: gate.id, why: 'somebody must be allowed to work the gate' });
  requireDistinct(gate.characteristics.map(({ id }) => id), gate.id);
  for (const characteristic of gate.characteristics) {
    const why = faultOf(characteristic, plan);
    if (why !== null) refuse({ code: 'planUnsound', where: `${gate.id} / ${characteristic.id}`, why });
  }
}

function faultOf(characteristic: Characteristic, plan: InspectionPlan): string | null {
  const { sampling } = characteristic;
  if (characteristic.kind === 'measured') {
    const { lower, upper, entry, decisionRule, pressTolerancePercent } = characteristic;
    if (pressTolerancePercent !== null && plan.appliesTo !== 'lot') return 'limits that follow from the powder are for lots';
    if (sampling.rule === 'everyPiece' && entry.how !== 'direct') return 'every piece is weighed or measured as it is';
    if (lower === null && upper === null && pressTolerancePercent === null) return 'a measured characteristic has at least one limit';
    if (lower !== null && upper !== null && lower >= upper) return 'the lower limit lies below the upper';
    if (characteristic.plausible.least >= characteristic.plausible.most) return 'the plausible range is empty';
    if (entry.how !== 'direct' && decisionRule !== 'simple') return 'a value that is worked out is judged by simple acceptance';
  }
  if (characteristic.kind === 'counted' && new Set(characteristic.kinds.map(({ code }) => code)).size !== characteristic.kinds.length) return 'each nonconformity has a code of its own';
  if (characteristic.kind === 'graded' && !characteristic.scale.includes(characteristic.worstAccepted)) return 'the worst accepted rating stands on the scale';
  switch (sampling.rule) {
    case 'attributes': {
      const classes = FINDING_CLASSES.filter((each) => sampling.aqlPercent[each] !== undefined);
      if (plan.appliesTo !== 'lot') return 'attributes plans are for lots of pieces';
      if (classes.length === 0) return 'at least one class has an AQL';
      if (classes.some((each) => !AQLS.includes(sampling.aqlPercent[each] ?? 0) || (sampling.aqlPercent[each] ?? 0) > 10)) return 'AQL in percent nonconforming is one of the preferred values 0.010 to 10';
      if (characteristic.kind === 'counted' && characteristic.kinds.some((kind) => sampling.aqlPercent[kind.class] === undefined)) return 'every nonconformity belongs to a class with an AQL';
      return null;
    }
    case 'variables':
      if (plan.appliesTo !== 'lot') return 'variables plans are for lots of pieces';
      // The smallest column has no tightened plan beside it, so it cannot follow the switching rules.
      return VARIABLES_AQLS.slice(1).includes(sampling.aqlPercent) ? null : 'AQL of a variables plan is one of the preferred values 0.065 to 15';
    case 'fixed': return sampling.n >= 1 ? null : 'n is at least 1';
    case 'barrels': return plan.appliesTo === 'batch' && sampling.barrels >= 1 && sampling.each >= 1 ? null : 'barrels are drawn from a powder batch, at least one';
    case 'positions': return (plan.appliesTo === 'furnace' || plan.appliesTo === 'coating') && sampling.positions.length >= 1 && sampling.each >= 1 ? null : 'positions belong to a charge, at least one';
    case 'everyPiece': return plan.appliesTo === 'lot' && sampling.ejectAtMostPercent >= 0 ? null : 'every-piece weighing is for lots';
    case 'interval': return plan.appliesTo === 'lot' && sampling.everyPieces >= 1 && sampling.n >= 1 ? null : 'looks at intervals are for lots';
    case 'once': return null;
  }
}

function requireDistinct(ids: readonly string[], where: string): void {
  const twice = ids.find((id, index) => ids.indexOf(id) !== index);
  if (twice !== undefined) refuse({ code: 'planUnsound', where, why: `${twice} stands twice` });
}
