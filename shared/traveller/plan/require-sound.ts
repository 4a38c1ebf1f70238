import { AQLS } from '../../sampling/attributes/index.ts';
import { smallestVariablesPlan, VARIABLES_AQLS } from '../../sampling/variables/index.ts';
import { refuse } from '../pen.ts';
import type { Characteristic, CountedRule, FindingClass, Measured, RiskPoints, VariablesRule } from './characteristic.ts';
import { judgedClasses, takesPressLimits } from './characteristic.ts';
import type { GatePlan, InspectionPlan } from './gate-plan.ts';
import { entryFault } from './entry-fault.ts';
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
    const why = faultOf(characteristic, plan) ?? entryFault(characteristic, gate);
    if (why !== null) refuse({ code: 'planUnsound', where: `${gate.id} / ${characteristic.id}`, why });
  }
}

function faultOf(characteristic: Characteristic, plan: InspectionPlan): PlanFault | null {
  const { sampling } = characteristic;
  if (characteristic.kind === 'measured') {
    const { lower, upper, entry, decisionRule, guardFactor } = characteristic;
    if (takesPressLimits(characteristic) && plan.appliesTo !== 'lot') return 'pressLimitsNotForLot';
    if (sampling.rule === 'everyPiece' && entry.how !== 'direct') return 'everyPieceWorkedOut';
    if (lower === null && upper === null && !takesPressLimits(characteristic)) return 'noLimit';
    if (lower !== null && upper !== null && lower >= upper) return 'limitsCrossed';
    if (characteristic.plausible.least >= characteristic.plausible.most) return 'plausibleEmpty';
    if (guardFactor !== undefined && (decisionRule === 'simple' || !(guardFactor > 0 && guardFactor <= 3))) return 'guardFactor';
    if (entry.how !== 'direct' && decisionRule !== 'simple') return 'guardedWorkedOut';
  }
  if (characteristic.kind === 'counted' && new Set(characteristic.kinds.map(({ code }) => code)).size !== characteristic.kinds.length) return 'codeTwice';
  if (characteristic.kind === 'graded' && !characteristic.scale.includes(characteristic.worstAccepted)) return 'worstNotOnScale';
  switch (sampling.rule) {
    case 'attributes': case 'limitingQuality': case 'zeroAcceptance': case 'twoPoint': case 'sequential':
      return plan.appliesTo === 'lot' && characteristic.kind === 'counted' ? countedFault(sampling, characteristic.kinds.map((kind) => kind.class)) : 'attributesNotForLot';
    case 'variables':
      if (plan.appliesTo !== 'lot') return 'variablesNotForLot';
      return characteristic.kind === 'measured' ? variablesFault(sampling, characteristic) : 'variablesNotForLot';
    case 'fixed': return sampling.n >= 1 ? null : 'fixedTooFew';
    case 'barrels': return plan.appliesTo === 'batch' && sampling.barrels >= 1 && sampling.each >= 1 ? null : 'barrelsElsewhere';
    case 'positions': return (plan.appliesTo === 'furnace' || plan.appliesTo === 'coating') && sampling.positions.length >= 1 && sampling.each >= 1 ? null : 'positionsElsewhere';
    case 'everyPiece': return plan.appliesTo === 'lot' && sampling.ejectAtMostPercent >= 0 ? null : 'weighingNotForLot';
    case 'interval': return plan.appliesTo === 'lot' && sampling.everyPieces >= 1 && sampling.n >= 1 ? null : 'intervalNotForLot';
    case 'once': return characteristic.kind === 'confirmed' && characteristic.backedBy === 'furnaceLog' && plan.appliesTo !== 'furnace' ? 'logNotForFurnace' : null;
  }
}

/** What is wrong with a rule that counts findings by class. */
function countedFault(rule: CountedRule, classesFound: readonly FindingClass[]): PlanFault | null {
  const judged = judgedClasses(rule);
  if (judged.length === 0) return 'noAql';
  if (classesFound.some((each) => !judged.includes(each))) return 'classWithoutAql';
  switch (rule.rule) {
    case 'attributes': {
      const most = rule.counts === 'nonconformities' ? Infinity : 10;
      if (judged.some((each) => !AQLS.includes(rule.aqlPercent[each] ?? 0) || (rule.aqlPercent[each] ?? 0) > most)) return most === 10 ? 'attributesAql' : 'nonconformitiesAql';
      if (rule.skipLot === undefined) return null;
      const { clearance, oneIn } = rule.skipLot;
      if (!whole(clearance, 1, 1000) || !whole(oneIn, 2, 1000)) return 'skipLotNumbers';
      return judged.includes('critical') ? 'skipLotCritical' : null;
    }
    case 'limitingQuality': case 'zeroAcceptance':
      return judged.every((each) => between(rule.lqPercent[each] ?? 0, 0, 100)) && rule.consumerRisk >= 0.001 && rule.consumerRisk <= 0.5 ? null : 'limitingQuality';
    case 'twoPoint': case 'sequential':
      return judged.every((each) => areRiskPoints(rule.points[each])) ? null : 'riskPoints';
  }
}

/** What is wrong with a rule by variables. */
function variablesFault({ aqlPercent, sigma, form, separate, points }: VariablesRule, measured: Measured): PlanFault | null {
  const hasTwo = (measured.lower !== null && measured.upper !== null) || takesPressLimits(measured);
  if (hasTwo && form === 'k' && separate === undefined) return 'variablesForm';
  if (separate !== undefined && (!hasTwo || points !== undefined || aqlPercent !== Math.min(separate.lowerAqlPercent, separate.upperAqlPercent))) return 'variablesSides';
  if (points !== undefined) return !areRiskPoints(points) ? 'riskPoints' : isDesigned(points, sigma === undefined ? 's' : 'sigma') ? null : 'noDesign';
  // The smallest column has no tightened plan beside it, so it cannot follow the switching rules.
  const known = VARIABLES_AQLS.slice(1);
  return (separate === undefined ? [aqlPercent] : [separate.lowerAqlPercent, separate.upperAqlPercent]).every((aql) => known.includes(aql)) ? null : 'variablesAql';
}

/** Some plan small enough passes through both points. */
function isDesigned({ p1Percent, producerRisk, p2Percent, consumerRisk }: RiskPoints, method: 's' | 'sigma'): boolean {
  return !('none' in smallestVariablesPlan({ p1: p1Percent / 100, producerRisk, p2: p2Percent / 100, consumerRisk, method }));
}

function areRiskPoints(points: RiskPoints | undefined): boolean {
  if (points === undefined) return false;
  const { p1Percent, producerRisk, p2Percent, consumerRisk } = points;
  return between(p1Percent, 0, 100) && between(p2Percent, p1Percent, 100) && [producerRisk, consumerRisk].every((risk) => risk >= 0.0001 && risk <= 0.5) && producerRisk + consumerRisk < 1;
}

function whole(value: number, least: number, most: number): boolean {
  return Number.isInteger(value) && value >= least && value <= most;
}

function between(value: number, above: number, below: number): boolean {
  return value > above && value < below;
}

function requireDistinct(ids: readonly string[], where: string): void {
  const twice = ids.find((id, index) => ids.indexOf(id) !== index);
  if (twice !== undefined) refuse({ code: 'planUnsound', where: `${where} / ${twice}`, why: 'twice' });
}
