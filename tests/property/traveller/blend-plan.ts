import type { InspectionPlan } from '../../../shared/traveller/index.ts';
import { PLANS } from '../../../demo-data/plans.ts';
import { CREW } from './little-plant.ts';
import type { LittlePlant } from './little-plant.ts';

/** Gives Demo fine 8 a plan for blends that leaves to the parts what test pieces say. */
export function weighBlendsOf(plant: LittlePlant): void {
  const powder = PLANS.find(({ id }) => id === 'POWDER-F8');
  const grade = plant.state('grade:DEMO-F8');
  if (powder === undefined || grade?.kind !== 'grade') throw new Error('the demo plant has no Demo fine 8');
  const plan: InspectionPlan = { ...powder, id: 'BLEND-OWN', name: 'Blends', gates: powder.gates.map((gate) => ({ ...gate, characteristics: gate.characteristics.filter(({ id }) => ['moisture', 'flow', 'apparent'].includes(id)) })) };
  plant.must({ type: 'draftPlan', plan, why: 'blends' }, CREW[2]);
  for (const badge of ['Q-401', 'Q-402']) plant.must({ type: 'approvePlan', plan: plan.id, planVersion: 1 }, { badge, name: badge, roles: ['engineer'] });
  plant.must({ type: 'defineGrade', grade: { ...grade.card, blendPlan: plan.id } }, CREW[2]);
}
