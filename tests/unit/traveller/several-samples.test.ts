import { beforeEach, describe, expect, it } from 'vitest';
import { drawSample } from '../../../shared/sampling/draw/index.ts';
import { littlePlant, releasedBatch } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';
import { at, byAql, counting, done, found, opened, plansOf, standingAt, workAt } from '../../property/traveller/counting.ts';
import { gateRecord, verdictAt } from '../../property/traveller/on-the-way.ts';

let plant: LittlePlant;
beforeEach(() => {
  plant = littlePlant();
  releasedBatch(plant);
});
const types = (slips: readonly { readonly type: string }[]): readonly string[] => slips.map(({ type }) => type);
const classOf = (lot: string, wanted: string) => {
  const detail = verdictAt(plant, lot, 'own').results[0]?.detail;
  return detail?.by === 'attributes' ? detail.classes.find((each) => each.class === wanted) : undefined;
};

describe('a double plan', () => {
  // MIL-STD-105E Table III-A (from memory), letter J, AQL 1.5: 50 with Ac 1, Re 4, then 50 more with Ac 4, Re 5.
  beforeEach(() => void counting(plant, byAql({ major: 1.5 }, { samples: 'double' })));

  it('draws both samples when the gate is opened and asks for the first alone', () => {
    opened(plant, 'A1');
    const { demand } = workAt(plant, 'A1');
    expect([demand.n, demand.places.length]).toEqual([100, 100]);
    expect(standingAt(plant, 'A1')).toMatchObject({ sample: 1, samples: 2, from: 1, to: 50, looked: 0, decided: false, classes: [{ acceptAt: 1, rejectAt: 4 }] });
  });

  it('takes the first sample from all over the lot: it is a draw of its own out of the whole one', () => {
    opened(plant, 'A1');
    const { demand } = workAt(plant, 'A1');
    const pieces = demand.places.map((place) => (place.at === 'tray' ? place.piece : 0));
    const whole = drawSample({ seed: gateRecord(plant, 'lot:A1', 'own').seed ?? '', population: 1000, size: 100 });
    expect([...pieces].sort((a, b) => a - b)).toEqual(whole);
    expect(Math.max(...pieces.slice(0, 50))).toBeGreaterThan(700);
  });

  it.each([[0, 'accepted'], [1, 'accepted'], [4, 'rejected'], [7, 'rejected']] as const)('decides on the first sample with %i found: %s', (many, outcome) => {
    opened(plant, 'A1');
    found(plant, 'A1', 'major', ...Array.from({ length: many }, (_, index) => index + 1));
    expect(types(done(plant, 'A1'))).toContain('verdictGiven');
    expect(classOf('A1', 'major')).toMatchObject({ found: many, outcome, decided: { sample: 1, at: 50, ac: 1, re: 4 } });
  });

  it.each([[2, 2, 'accepted'], [3, 1, 'accepted'], [3, 2, 'rejected'], [2, 0, 'accepted']] as const)('asks for the second with %i found and adds its %i: %s', (first, second, outcome) => {
    opened(plant, 'A1');
    plant.must({ ...at('A1'), type: 'recordFinding', code: 'major', pieces: first });
    expect(done(plant, 'A1')).toEqual([{ type: 'sampleCompleted', gate: 'own', characteristic: 'count', looked: 50, goesOn: true }]);
    expect(standingAt(plant, 'A1')).toMatchObject({ sample: 2, from: 51, to: 100, looked: 50, decided: false, classes: [{ found: first, acceptAt: 4, rejectAt: 5 }] });
    if (second > 0) plant.must({ ...at('A1'), type: 'recordFinding', code: 'major', pieces: second });
    done(plant, 'A1');
    expect(classOf('A1', 'major')).toMatchObject({ found: first + second, outcome, decided: { sample: 2, at: 100 } });
  });

  it('gives its verdict at the end of a sample, not when the count reaches Re', () => {
    opened(plant, 'A1');
    expect(types(found(plant, 'A1', 'major', 1, 2, 3, 4, 5))).toEqual(['findingRecorded']);
  });

  it('takes no word of a second sample before it is asked for, nor a finding in it', () => {
    opened(plant, 'A1');
    expect(plant.ask({ ...at('A1'), type: 'completeSample', looked: 100 })).toEqual({ refusal: { code: 'sampleNotWhole', looked: 100, n: 50 } });
    expect(plant.refusalOf({ ...at('A1'), type: 'recordFinding', code: 'major', pieces: 1, ordinals: [51] })).toBe('ordinalOutside');
  });

  it('is decided by what was overlooked in the first sample, once it is entered', () => {
    opened(plant, 'A1');
    found(plant, 'A1', 'major', 1, 2, 3);
    done(plant, 'A1');
    expect(types(found(plant, 'A1', 'major', 7))).toEqual(['findingRecorded', 'sampleCompleted', 'verdictGiven', 'held', 'switchingStarted', 'lotCounted']);
    expect(classOf('A1', 'major')).toMatchObject({ found: 4, outcome: 'rejected', decided: { sample: 1 } });
  });

  it('is decided by a finding withdrawn during the second sample, where the first then accepts', () => {
    opened(plant, 'A1');
    found(plant, 'A1', 'major', 3);
    const slip = plant.lot('A1').version;
    found(plant, 'A1', 'major', 9);
    done(plant, 'A1');
    found(plant, 'A1', 'major', 60);
    // One verdict, given: there was none before it to be revised.
    expect(types(plant.must({ ...at('A1'), type: 'withdrawFinding', finding: slip, reason: 'dust' }))).toEqual(['findingWithdrawn', 'sampleCompleted', 'verdictGiven', 'switchingStarted', 'lotCounted']);
    expect(classOf('A1', 'major')).toMatchObject({ found: 1, beyond: 1, outcome: 'accepted', decided: { sample: 1 } });
  });

  it('gives no verdict through a withdrawal while the lot is on hold; the next word at the bench ends the sample', () => {
    opened(plant, 'A1');
    found(plant, 'A1', 'major', 3);
    const slip = plant.lot('A1').version;
    found(plant, 'A1', 'major', 9);
    done(plant, 'A1');
    plant.must({ type: 'hold', subject: 'lot:A1', reason: 'a doubt' });
    expect(types(plant.must({ ...at('A1'), type: 'withdrawFinding', finding: slip, reason: 'dust' }))).toEqual(['findingWithdrawn']);
    plant.must({ type: 'dispose', subject: 'lot:A1', hold: plant.lot('A1').holds[0]?.id ?? '', disposition: { kind: 'clear' }, reason: 'nothing there' });
    expect(types(done(plant, 'A1'))).toContain('verdictGiven');
  });

  it('stays rejected and asks for nothing more where a correction takes away what had decided', () => {
    opened(plant, 'A1');
    found(plant, 'A1', 'major', 1);
    const slip = plant.lot('A1').version;
    found(plant, 'A1', 'major', 2, 3, 4);
    done(plant, 'A1');
    plant.must({ ...at('A1'), type: 'withdrawFinding', finding: slip, reason: 'dust' });
    expect([verdictAt(plant, 'A1', 'own').accepted, classOf('A1', 'major')?.outcome, workAt(plant, 'A1').looked]).toEqual([false, 'undecided', 50]);
    expect(plant.refusalOf({ ...at('A1'), type: 'completeSample', looked: 100 })).toBe('gateNotOpen');
    // For switching it was a lot not accepted, and is one still.
    expect(plant.state('switching:CNMG-D1/own/count/major')).toMatchObject({ events: [{ lot: 'A1', accepted: false, found: 3 }] });
  });

  it('of a lot that the first sample takes whole is every piece on one look', () => {
    opened(plant, 'A1', 40);
    const { samples, to } = standingAt(plant, 'A1');
    expect(samples === 1 || to < 40).toBe(true);
    while (gateRecord(plant, 'lot:A1', 'own').status === 'open') done(plant, 'A1');
    expect(verdictAt(plant, 'A1', 'own').accepted).toBe(true);
  });

  it('counts for the switching score by where it was accepted: 3 on the first sample, none on the second (ISO 2859-1 9.3.3.2, from memory)', () => {
    const score = (): number | undefined => {
      const state = plant.state('switching:CNMG-D1/own/count/major');
      return state?.kind === 'switching' ? state.state.score : undefined;
    };
    opened(plant, 'A1');
    done(plant, 'A1');
    expect(score()).toBe(3);
    opened(plant, 'A2');
    found(plant, 'A2', 'major', 1, 2);
    done(plant, 'A2');
    done(plant, 'A2');
    expect(score()).toBe(0);
  });
});

describe('a multiple plan', () => {
  it('asks for one sample after another, as long as the numbers leave it open, and cannot accept where the table has #', () => {
    counting(plant, byAql({ major: 1.5 }, { samples: 'multiple' }));
    opened(plant, 'A1');
    const [first] = plansOf(workAt(plant, 'A1'));
    const stages = first !== undefined && !('kind' in first.plan) ? first.plan.stages ?? [] : [];
    expect(stages.map(({ sampleSize }) => sampleSize)).toEqual([20, 20, 20, 20, 20, 20, 20]);
    expect(stages[0]?.ac).toBeNull();
    expect(standingAt(plant, 'A1')).toMatchObject({ sample: 1, samples: 7, to: 20, classes: [{ acceptAt: null }] });
    done(plant, 'A1');
    expect(standingAt(plant, 'A1')).toMatchObject({ sample: 2, from: 21, to: 40, decided: false });
    done(plant, 'A1');
    expect(verdictAt(plant, 'A1', 'own').accepted).toBe(true);
    expect(classOf('A1', 'major')).toMatchObject({ decided: { sample: 2, at: 40 } });
  });
});

describe('classes with samples of their own', () => {
  // Letter J: critical 0.15 refers to the single plan 80, 0/1; major 1.5 takes 50 (1/4) and 50 (4/5) (from memory).
  beforeEach(() => void counting(plant, byAql({ critical: 0.15, major: 1.5 }, { samples: 'double' })));

  it('are judged each on its own n, and the next pieces are asked for only by what is open', () => {
    opened(plant, 'A1');
    expect(standingAt(plant, 'A1').to).toBe(80);
    expect(plant.refusalOf({ ...at('A1'), type: 'recordFinding', code: 'major', pieces: 1 })).toBe('findingNeedsPiece');
    found(plant, 'A1', 'major', 10, 20, 60);
    done(plant, 'A1');
    // Two of the first 50: open. The one at 60 belongs to its second sample.
    expect(standingAt(plant, 'A1')).toMatchObject({ sample: 2, from: 81, to: 100, classes: [{ class: 'critical', outcome: 'accepted' }, { class: 'major', outcome: 'open', found: 3 }] });
    // The critical class is decided; what shows up of it now is kept and does not count.
    found(plant, 'A1', 'critical', 90);
    done(plant, 'A1');
    expect(verdictAt(plant, 'A1', 'own').accepted).toBe(true);
    expect(classOf('A1', 'critical')).toMatchObject({ found: 0, beyond: 1, outcome: 'accepted', decided: { sample: 1, at: 80 } });
    expect(classOf('A1', 'major')).toMatchObject({ found: 3, outcome: 'accepted', decided: { sample: 2, at: 100 } });
  });

  it('end at once when one rejects; another that was open is undecided and counts for no switching', () => {
    opened(plant, 'A1');
    found(plant, 'A1', 'critical', 5);
    found(plant, 'A1', 'major', 1, 2);
    done(plant, 'A1');
    expect([classOf('A1', 'critical')?.outcome, classOf('A1', 'major')?.outcome, verdictAt(plant, 'A1', 'own').accepted]).toEqual(['rejected', 'undecided', false]);
    expect([plant.state('switching:CNMG-D1/own/count/critical')?.kind, plant.state('switching:CNMG-D1/own/count/major')]).toEqual(['switching', null]);
  });
});

describe('nonconformities', () => {
  it('count as often as a piece has them, also at AQLs above 10', () => {
    counting(plant, byAql({ minor: 40 }, { counts: 'nonconformities' }));
    opened(plant, 'A1', 100);
    const { to, classes } = standingAt(plant, 'A1');
    const acceptAt = classes[0]?.acceptAt ?? 0;
    expect(acceptAt).toBeGreaterThan(to / 10);
    found(plant, 'A1', 'minor', ...Array.from({ length: acceptAt }, () => 1));
    done(plant, 'A1');
    expect(classOf('A1', 'minor')).toMatchObject({ found: acceptAt, outcome: 'accepted' });
    opened(plant, 'A2', 100);
    plant.must({ ...at('A2'), type: 'recordFinding', code: 'minor', pieces: to * 3 });
    done(plant, 'A2');
    expect(classOf('A2', 'minor')).toMatchObject({ found: to * 3, outcome: 'rejected' });
  });

  it('are what an AQL above 10 is for: a plan that counts pieces is refused with it', () => {
    expect(() => counting(plant, byAql({ minor: 40 }))).toThrow('attributesAql');
    expect(() => counting(plant, byAql({ minor: 41 }, { counts: 'nonconformities' }))).toThrow('nonconformitiesAql');
  });
});
