import { AQLS } from '../../sampling/attributes/index.ts';
import { VARIABLES_AQLS } from '../../sampling/variables/index.ts';
import { refuse } from '../pen.ts';
import type { Characteristic } from './characteristic.ts';
import { FINDING_CLASSES } from './characteristic.ts';
import type { GatePlan, InspectionPlan } from './gate-plan.ts';
import type { PlanFault } from './plan-fault.ts';

/** Refuses a plan that could not be worked: it names the first place that is wrong and why. */
export function requireSound(plan: InspectionPlan): void {
  const unsound = (where: string, why: PlanFault): never => refuse({ code: 'planUnsound', where, why });
  if (plan.gates.length === 0) unsound(plan.id, 'noGate');
  requireDistinct(plan.gates.map(({ id }) => id), plan.id);
  for (const gate of plan.gates) {
    if (gate.workedOn !== plan.appliesTo && plan.appliesTo !== 'lot') unsound(gate.id, 'verdictFromElsewhere');
    if (gate.workedOn === plan.appliesTo) soundGate(gate, plan);
    else if (gate.characteristics.length > 0) unsound(gate.id, 'characteristicsElsewhere');
  }
}

function soundGate(gate: GatePlan, plan: InspectionPlan): void {
  if (gate.characteristics.length === 0) refuse({ code: 'planUnsound', where: gate.id, why: 'noCharacteristic' });
  if (gate.roles.length === 0) refuse({ code: 'planUnsound', where: gate.id, why: 'nobodyMayWork' });
  requireDistinct(gate.characteristics.map(({ id }) => id), gate.id);
  for (const characteristic of gate.characteristics) {
    const why = faultOf(characteristic, plan);
    if (why !== null) refuse({ code: 'planUnsound', where: `${gate.id} / ${characteristic.id}`, why });
  }
}

function faultOf(characteristic: Characteristic, plan: InspectionPlan): PlanFault | null {
  const { sampling } = characteristic;
  if (characteristic.kind === 'measured') {
    const { lower, upper, entry, decisionRule, pressTolerancePercent } = characteristic;
    if (pressTolerancePercent !== null && plan.appliesTo !== 'lot') return 'pressLimitsNotForLot';
    if (sampling.rule === 'everyPiece' && entry.how !== 'direct') return 'everyPieceWorkedOut';
    if (lower === null && upper === null && pressTolerancePercent === null) return 'noLimit';
    if (lower !== null && upper !== null && lower >= upper) return 'limitsCrossed';
    if (characteristic.plausible.least >= characteristic.plausible.most) return 'plausibleEmpty';
    if (entry.how !== 'direct' && decisionRule !== 'simple') return 'guardedWorkedOut';
  }
  if (characteristic.kind === 'counted' && new Set(characteristic.kinds.map(({ code }) => code)).size !== characteristic.kinds.length) return 'codeTwice';
  if (characteristic.kind === 'graded' && !characteristic.scale.includes(characteristic.worstAccepted)) return 'worstNotOnScale';
  switch (sampling.rule) {
    case 'attributes': {
      const classes = FINDING_CLASSES.filter((each) => sampling.aqlPercent[each] !== undefined);
      if (plan.appliesTo !== 'lot') return 'attributesNotForLot';
      if (classes.length === 0) return 'noAql';
      if (classes.some((each) => !AQLS.includes(sampling.aqlPercent[each] ?? 0) || (sampling.aqlPercent[each] ?? 0) > 10)) return 'attributesAql';
      if (characteristic.kind === 'counted' && characteristic.kinds.some((kind) => sampling.aqlPercent[kind.class] === undefined)) return 'classWithoutAql';
      return null;
    }
    case 'variables':
      if (plan.appliesTo !== 'lot') return 'variablesNotForLot';
      // The smallest column has no tightened plan beside it, so it cannot follow the switching rules.
      return VARIABLES_AQLS.slice(1).includes(sampling.aqlPercent) ? null : 'variablesAql';
    case 'fixed': return sampling.n >= 1 ? null : 'fixedTooFew';
    case 'barrels': return plan.appliesTo === 'batch' && sampling.barrels >= 1 && sampling.each >= 1 ? null : 'barrelsElsewhere';
    case 'positions': return (plan.appliesTo === 'furnace' || plan.appliesTo === 'coating') && sampling.positions.length >= 1 && sampling.each >= 1 ? null : 'positionsElsewhere';
    case 'everyPiece': return plan.appliesTo === 'lot' && sampling.ejectAtMostPercent >= 0 ? null : 'weighingNotForLot';
    case 'interval': return plan.appliesTo === 'lot' && sampling.everyPieces >= 1 && sampling.n >= 1 ? null : 'intervalNotForLot';
    case 'once': return null;
  }
}

function requireDistinct(ids: readonly string[], where: string): void {
  const twice = ids.find((id, index) => ids.indexOf(id) !== index);
  if (twice !== undefined) refuse({ code: 'planUnsound', where: `${where} / ${twice}`, why: 'twice' });
}
