import { beforeEach, describe, expect, it } from 'vitest';
import type { Switching } from '../../../shared/traveller/index.ts';
import { byAql, counting, done, found, opened } from '../../property/traveller/counting.ts';
import { littlePlant, releasedBatch } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';

let plant: LittlePlant;
beforeEach(() => {
  plant = littlePlant();
  releasedBatch(plant);
});
const state = (): Switching => {
  const switching = plant.state('switching:CNMG-D1/own/count/major');
  if (switching?.kind !== 'switching') throw new Error('nothing was counted');
  return switching;
};
/** A new lot of 1,000 with so many found at the beginning of the draw. */
function judge(lot: string, many: number): void {
  opened(plant, lot);
  found(plant, lot, 'major', ...Array.from({ length: many }, (_, at) => at + 1));
  done(plant, lot);
}

describe('a stream whose plan changes', () => {
  it('takes over AQL and rules with the first lot under the plan now in force; the severity stands, what was earned does not', () => {
    counting(plant, byAql({ major: 4 }));
    for (const lot of ['A1', 'A2', 'A3']) judge(lot, 0);
    expect(state().state.score).toBeGreaterThan(0);
    counting(plant, byAql({ major: 0.65 }, { switching: 'MIL-STD-105E' }));
    judge('B1', 0);
    expect(state()).toMatchObject({ rule: 'MIL-STD-105E', aqlPercent: 0.65, state: { rule: 'MIL-STD-105E', aqlPercent: 0.65, severity: 'normal', score: 0, acceptedInRow: 1, recent: [{ lot: 'B1' }] } });
  });

  it('keeps tightened when the AQL changes', () => {
    counting(plant, byAql({ major: 0.65 }));
    for (const lot of ['A1', 'A2']) judge(lot, 5);
    expect(state().state.severity).toBe('tightened');
    counting(plant, byAql({ major: 1 }));
    judge('B1', 0);
    expect(state()).toMatchObject({ aqlPercent: 1, state: { severity: 'tightened', acceptedInRow: 1 } });
  });

  it('is not taken back by a lot still on the earlier version, and that lot does not count', () => {
    counting(plant, byAql({ major: 4 }));
    opened(plant, 'OLD');
    counting(plant, byAql({ major: 0.65 }));
    judge('B1', 0);
    done(plant, 'OLD');
    expect(state()).toMatchObject({ aqlPercent: 0.65, state: { recent: [{ lot: 'B1' }] } });
    expect(plant.slips.at(-1)?.body).toMatchObject({ type: 'lotCounted', counts: false, moved: null });
  });

  it('is counted anew from its beginning by the rules that held then', () => {
    counting(plant, byAql({ major: 0.65 }));
    judge('A1', 5);
    judge('A2', 5);
    counting(plant, byAql({ major: 1 }));
    judge('B1', 0);
    const finding = plant.slips.filter(({ body, stream }) => stream === 'lot:A2' && body.type === 'findingRecorded').length;
    expect(finding).toBe(1);
    const version = plant.slips.filter(({ stream }) => stream === 'lot:A2').findIndex(({ body }) => body.type === 'findingRecorded') + 1;
    plant.must({ subject: 'lot:A2', gate: 'own', characteristic: 'count', type: 'withdrawFinding', finding: version, reason: 'dust' });
    // With A2 accepted the stream never came onto tightened; B1 was opened there and so does not count.
    expect(state()).toMatchObject({ begunWith: { aqlPercent: 0.65 }, aqlPercent: 1, state: { severity: 'normal', aqlPercent: null, recent: [] } });
  });
});
