import { blindOrder } from '../shared/traveller/index.ts';
import type { Study } from '../shared/traveller/index.ts';
import { chanceFrom } from './chance.ts';
import type { Floor } from './floor.ts';
import { PEOPLE } from './people.ts';
import type { DemoPerson } from './people.ts';

/** Two studies of the gauge room's micrometer, all invented: one closed, one under way that waits for its second person. */
export function studyGauges(floor: Floor): void {
  const labels = ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H', 'I', 'J'];
  const chance = chanceFrom('gauge studies');
  const thickness = labels.map(() => chance.normal(4.76, 0.014, 4));
  const people = ['I-301', 'I-302', 'L-201'].map(personOf);
  const [engineer, overseer] = [personOf('Q-401'), personOf('L-202')];
  const at = 'Gauge room';
  const crossed = { type: 'openStudy', studyKind: 'crossed', gauge: 'MIC-11', characteristic: 'Thickness', tolerance: 0.26, plausible: { least: 4.6, most: 4.9 } } as const;

  floor.give(overseer, at, { ...crossed, study: 'S26-0001', parts: labels.map((label) => ({ label, reference: null })), people: people.map(({ badge }) => badge), trials: 3 });
  for (const [person, measurer] of people.entries()) {
    for (const { part } of blindOrder(studyOf(floor, 'S26-0001'), measurer.badge)) {
      floor.wait(0.3);
      floor.give(measurer, at, { type: 'takeStudyReading', study: 'S26-0001', part, value: Number(((thickness[part - 1] ?? 4.76) + 0.0008 * person + chance.normal(0, 0.0011, 4)).toFixed(3)) });
    }
  }
  floor.give(engineer, 'Quality desk', { type: 'closeStudy', study: 'S26-0001', poolAbove: 0.25, confidence: 0.95 });

  floor.give(overseer, at, { ...crossed, study: 'S26-0002', characteristic: 'Inscribed circle', tolerance: 0.16, plausible: { least: 12.5, most: 12.9 }, parts: ['K', 'L', 'M'].map((label) => ({ label, reference: null })), people: ['I-301', 'I-302'], trials: 2 });
  for (const { part } of blindOrder(studyOf(floor, 'S26-0002'), 'I-301')) {
    floor.wait(0.3);
    floor.give(personOf('I-301'), at, { type: 'takeStudyReading', study: 'S26-0002', part, value: Number((12.69 + 0.012 * part + chance.normal(0, 0.001, 4)).toFixed(3)) });
  }
}

function studyOf(floor: Floor, id: string): Study {
  const state = floor.state(`study:${id}`);
  if (state?.kind !== 'study') throw new Error(`the story has no study ${id}`);
  return state;
}
function personOf(badge: string): DemoPerson {
  const found = PEOPLE.find((each) => each.badge === badge);
  if (found === undefined) throw new Error(`nobody in the story has the badge ${badge}`);
  return found;
}
