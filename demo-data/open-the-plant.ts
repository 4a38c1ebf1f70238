import { EQUIPMENT, PROGRAMMES } from './charge-records.ts';
import type { Floor } from './floor.ts';
import { KEEPER, PEOPLE } from './people.ts';
import { PRESSES } from './presses.ts';
import { gaugesOn, GRADES, LAYERS, PLANT, PRODUCTS } from './plant-records.ts';
import { PLANS } from './plans.ts';

/** Opens the invented plant: keeper, people, gauges, plans approved by two engineers, grades, coatings and products. */
export function openThePlant(floor: Floor, today: string): void {
  floor.give(KEEPER, 'Office', { type: 'openPlant', plant: PLANT, keeper: KEEPER });
  for (const { badge, name, roles, pin } of PEOPLE) floor.give(KEEPER, 'Office', { type: 'enrolPerson', badge, name, roles, pin });
  for (const gauge of gaugesOn(today)) floor.give(KEEPER, 'Office', { type: 'registerGauge', gauge });
  for (const press of PRESSES) floor.give(KEEPER, 'Office', { type: 'registerPress', press });
  const [first, second] = PEOPLE.filter(({ roles }) => roles.includes('engineer'));
  if (first === undefined || second === undefined) throw new Error('the story needs two engineers');
  for (const plan of PLANS) {
    floor.wait(10);
    floor.give(first, 'Quality desk', { type: 'draftPlan', plan, why: 'First plan of the invented plant' });
    floor.give(first, 'Quality desk', { type: 'approvePlan', plan: plan.id, planVersion: 1 });
    floor.give(second, 'Quality desk', { type: 'approvePlan', plan: plan.id, planVersion: 1 });
  }
  for (const grade of GRADES) floor.give(first, 'Quality desk', { type: 'defineGrade', grade });
  for (const layer of LAYERS) floor.give(first, 'Quality desk', { type: 'defineLayer', layer });
  for (const equipment of EQUIPMENT) floor.give(first, 'Quality desk', { type: 'defineEquipment', equipment });
  for (const programme of PROGRAMMES) floor.give(first, 'Quality desk', { type: 'defineProgramme', programme });
  for (const product of PRODUCTS) floor.give(first, 'Quality desk', { type: 'defineProduct', product });
}
