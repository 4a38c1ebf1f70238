import { Refused, type InspectionPlan, type PlanFault, type Refusal } from '../../../shared/traveller/index.ts';
import { requireSound } from '../../../shared/traveller/plan/require-sound.ts';
import { placeOf, type PlanPlace } from './plan-edits.ts';

/** The first thing for which a plan could not be worked. `fields` begin the keys of the fields it is shown at; empty: above the form. */
export interface PlacedFault { readonly place: PlanPlace; readonly why: PlanFault; readonly fields: readonly string[] }

const FIELDS: Partial<Readonly<Record<PlanFault, readonly string[]>>> = {
  nobodyMayWork: ['roles'], verdictFromElsewhere: ['workedOn'], noLimit: ['lower', 'upper'], limitsCrossed: ['lower', 'upper'], plausibleEmpty: ['plausible.'], guardedWorkedOut: ['decisionRule'], guardFactor: ['guardFactor'],
  everyPieceWorkedOut: ['entry'], craterLayers: ['entry.layers'], layerOfCrater: ['entry'], saturationEntry: ['entry', 'unit'], codeTwice: ['kinds.'], worstNotOnScale: ['worstAccepted'], pressLimitsNotForLot: ['pressTolerancePercent'], tooFewDecimals: ['decimals'], noThicknessLimits: ['limitsFrom'],
  noAql: ['attributes.aql.', 'limitingQuality.lq.', 'zeroAcceptance.lq.', 'twoPoint.points.', 'sequential.points.'], attributesAql: ['attributes.aql.'], nonconformitiesAql: ['attributes.aql.'],
  classWithoutAql: ['attributes.aql.', 'limitingQuality.lq.', 'zeroAcceptance.lq.', 'twoPoint.points.', 'sequential.points.'], skipLotCritical: ['attributes.skipLot'], skipLotNumbers: ['attributes.skipLot'], ownTable: ['attributes.ownTables.'],
  limitingQuality: ['limitingQuality.', 'zeroAcceptance.'], riskPoints: ['twoPoint.points.', 'sequential.points.', 'variables.points.'], variablesAql: ['variables.aqlPercent', 'variables.separate.'],
  attributesNotForLot: ['rule'], variablesNotForLot: ['rule'], barrelsElsewhere: ['rule'], positionsElsewhere: ['rule'], weighingNotForLot: ['rule'], intervalNotForLot: ['rule'],
};

/** Asks the very rules the server asks. Null where the plan can be worked. */
export function faultOfPlan(plan: InspectionPlan): PlacedFault | null {
  try {
    requireSound(plan);
    return null;
  } catch (error) {
    if (error instanceof Refused && error.refusal.code === 'planUnsound') return placedFault(error.refusal, plan);
    throw error;
  }
}
/** Where a refusal of an unsound plan belongs. */
export function placedFault({ where, why }: Extract<Refusal, { readonly code: 'planUnsound' }>, plan: Pick<InspectionPlan, 'id'>): PlacedFault {
  const place = where === plan.id || where.startsWith(`${plan.id} / `) ? placeOf('') : placeOf(where.split(' / ').join('/'));
  return { place, why, fields: FIELDS[why] ?? [] };
}
