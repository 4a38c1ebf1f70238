import { samplingStanding } from '../../../shared/traveller/index.ts';
import type { AttributesRule, CharacteristicWork, ClassPlan, Counted, CountedRule, FindingClass, InspectionPlan, SamplingStanding, SlipBody } from '../../../shared/traveller/index.ts';
import { openLot } from './little-plant.ts';
import type { LittlePlant } from './little-plant.ts';
import { gateRecord, routeWith } from './on-the-way.ts';

/** The second engineer who approves. */
export const SECOND = { badge: 'Q-402', name: 'Second engineer', roles: ['engineer'] } as const;
const CLASSES: readonly FindingClass[] = ['critical', 'major', 'minor'];

/** A look that counts by the rule given; each class has one kind of finding, with the class as its code. */
export function count(sampling: CountedRule): Counted {
  const judged: Partial<Record<FindingClass, unknown>> = 'aqlPercent' in sampling ? sampling.aqlPercent : 'points' in sampling ? sampling.points : sampling.lqPercent;
  return { kind: 'counted', id: 'count', name: 'Count', method: 'eye', destructive: false, sampling, kinds: CLASSES.filter((each) => judged[each] !== undefined).map((each) => ({ code: each, name: each, class: each })) };
}
/** A rule by AQL at level II, single on ISO 2859-1 unless changed. */
export function byAql(aqlPercent: AttributesRule['aqlPercent'], change: Partial<AttributesRule> = {}): AttributesRule {
  return { rule: 'attributes', switching: 'ISO 2859-1', level: 'II', aqlPercent, ...change };
}
/** Brings a next version of the route into force; returns its number. */
export function inForce(plant: LittlePlant, plan: InspectionPlan): number {
  const [drafted] = plant.must({ type: 'draftPlan', plan, why: 'for this test' });
  const planVersion = drafted?.type === 'planDrafted' ? drafted.planVersion : 0;
  plant.must({ type: 'approvePlan', plan: plan.id, planVersion });
  plant.must({ type: 'approvePlan', plan: plan.id, planVersion }, SECOND);
  return planVersion;
}
/** The route with one gate that counts by this rule, in force. */
export function counting(plant: LittlePlant, rule: CountedRule): number {
  return inForce(plant, routeWith(count(rule)));
}

export const at = (lot: string) => ({ subject: `lot:${lot}`, gate: 'own', characteristic: 'count' }) as const;
/** A new lot at the gate, opened there. */
export function opened(plant: LittlePlant, lot: string, quantity = 1000): void {
  openLot(plant, lot, quantity);
  plant.must({ type: 'openGate', subject: `lot:${lot}`, gate: 'own' });
}
export function workAt(plant: LittlePlant, lot: string): CharacteristicWork {
  const [work] = gateRecord(plant, `lot:${lot}`, 'own').work;
  if (work === undefined) throw new Error(`nothing is asked for of ${lot}`);
  return work;
}
export function standingAt(plant: LittlePlant, lot: string): SamplingStanding {
  const standing = samplingStanding(workAt(plant, lot));
  if (standing === null) throw new Error(`${lot} is not judged by attributes`);
  return standing;
}
export function plansOf({ demand: { basis } }: CharacteristicWork): readonly ClassPlan[] {
  return basis.by === 'attributes' ? basis.classes : [];
}
/** Enters findings at these places of the draw. */
export function found(plant: LittlePlant, lot: string, code: FindingClass, ...ordinals: readonly number[]): readonly SlipBody[] {
  return ordinals.length === 0 ? [] : plant.must({ ...at(lot), type: 'recordFinding', code, pieces: ordinals.length, ordinals });
}
/** Says that the pieces asked for now were looked at. */
export function done(plant: LittlePlant, lot: string): readonly SlipBody[] {
  return plant.must({ ...at(lot), type: 'completeSample', looked: standingAt(plant, lot).to });
}
