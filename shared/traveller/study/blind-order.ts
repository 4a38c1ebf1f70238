import { drawOrder } from '../../sampling/draw/index.ts';
import type { Study } from './study.ts';

/** Which part for which trial, both from 1. */
export interface StudyPlace { readonly part: number; readonly trial: number }
type Drawn = Pick<Study, 'seed' | 'parts' | 'people' | 'trials'>;

/**
 * The order in which one person takes the parts. Each person has an order of their own and their own pace, so that people may take turns at
 * one gauge as the work allows. Trial by trial every part comes once, in a fresh order from the study's seed; where the first of a trial would
 * be the last of the one before, the order is drawn again, so that nobody measures the same part twice running and remembers.
 */
export function blindOrder({ seed, parts, people, trials }: Drawn, badge: string): StudyPlace[] {
  const person = people.findIndex((each) => each.badge === badge);
  if (person < 0) return [];
  const order: StudyPlace[] = [];
  for (let trial = 1; trial <= trials; trial += 1) {
    const before = order.at(-1)?.part ?? null;
    let drawn: number[] = [];
    for (let round = 0; ; round += 1) {
      drawn = drawOrder({ seed: `${seed}/person ${person + 1}/trial ${trial}/round ${round}`, population: parts.length });
      if (parts.length < 2 || drawn[0] !== before) break;
    }
    order.push(...drawn.map((part) => ({ part, trial })));
  }
  return order;
}

/** The place a person measures next; null where they have done all or take no part in the study. A withdrawn reading comes first. */
export function nextPlace(study: Drawn & Pick<Study, 'readings'>, badge: string): StudyPlace | null {
  const done = new Set(study.readings.filter((reading) => reading.badge === badge).map(({ part, trial }) => `${part}/${trial}`));
  return blindOrder(study, badge).find(({ part, trial }) => !done.has(`${part}/${trial}`)) ?? null;
}
