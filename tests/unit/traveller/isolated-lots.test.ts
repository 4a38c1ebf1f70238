import { beforeEach, describe, expect, it } from 'vitest';
import { acceptAt, rejectAt } from '../../../shared/sampling/sequential/index.ts';
import { littlePlant, releasedBatch } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';
import { at, byAql, count, counting, done, found, opened, plansOf, standingAt, workAt } from '../../property/traveller/counting.ts';
import { gateRecord, verdictAt } from '../../property/traveller/on-the-way.ts';

let plant: LittlePlant;
beforeEach(() => {
  plant = littlePlant();
  releasedBatch(plant);
});
const POINTS = { p1Percent: 1, producerRisk: 0.05, p2Percent: 10, consumerRisk: 0.1 };
const types = (slips: readonly { readonly type: string }[]): readonly string[] => slips.map(({ type }) => type);
const only = (lot: string) => {
  const detail = verdictAt(plant, lot, 'own').results[0]?.detail;
  return detail?.by === 'attributes' ? detail.classes[0] : undefined;
};

describe('a lot on its own', () => {
  it.each([
    // The plan of each rule is proved where it is worked out; here that the floor goes by it. Numbers: examples of the functions' own docstrings.
    { rule: { rule: 'limitingQuality' as const, lqPercent: { major: 5 }, consumerRisk: 0.1 }, quantity: 500, n: 73, ac: 1 },
    { rule: { rule: 'zeroAcceptance' as const, lqPercent: { major: 1 }, consumerRisk: 0.1 }, quantity: 1000, n: 205, ac: 0 },
  ])('is accepted by $rule.rule at n $n and Ac $ac, and moves no switching', ({ rule, quantity, n, ac }) => {
    counting(plant, rule);
    for (const [lot, many, accepted] of [['A1', ac, true], ['A2', ac + 1, false]] as const) {
      opened(plant, lot, quantity);
      expect(standingAt(plant, lot)).toMatchObject({ samples: 1, to: n, classes: [{ acceptAt: ac, rejectAt: ac + 1 }] });
      expect(plansOf(workAt(plant, lot))[0]?.switching).toBeNull();
      found(plant, lot, 'major', ...Array.from({ length: many }, (_, index) => index + 1));
      expect(types(done(plant, lot)).filter((type) => type === 'lotCounted')).toEqual([]);
      expect(verdictAt(plant, lot, 'own').accepted).toBe(accepted);
    }
  });

  it('is accepted by the smallest plan through two points, of one sample or of two', () => {
    for (const samples of ['single', 'double'] as const) {
      counting(plant, { rule: 'twoPoint', samples, points: { major: POINTS } });
      const lot = samples === 'single' ? 'A1' : 'A2';
      opened(plant, lot);
      const [plan] = plansOf(workAt(plant, lot)).map((each) => each.plan);
      expect(plan).toMatchObject({ kind: 'twoPoint', lqPercent: 10, p1Percent: 1 });
      expect(plan !== undefined && 'riskAtLq' in plan && plan.riskAtLq <= 0.1).toBe(true);
      expect(standingAt(plant, lot).samples).toBe(samples === 'single' ? 1 : 2);
      done(plant, lot);
      expect(only(lot)).toMatchObject({ outcome: 'accepted', found: 0, decided: { sample: 1 } });
    }
  });

  it('can be of any size: one piece is looked at whole', () => {
    for (const [lot, rule] of [['A1', { rule: 'limitingQuality', lqPercent: { major: 5 }, consumerRisk: 0.1 }], ['A2', { rule: 'twoPoint', samples: 'double', points: { major: POINTS } }], ['A3', { rule: 'sequential', points: { major: POINTS } }], ['A4', byAql({ major: 1.5 }, { samples: 'multiple' })]] as const) {
      counting(plant, rule);
      opened(plant, lot, 1);
      found(plant, lot, 'major', 1);
      if (gateRecord(plant, `lot:${lot}`, 'own').status === 'open') done(plant, lot);
      expect([verdictAt(plant, lot, 'own').accepted, lot]).toEqual([false, lot]);
    }
  });

  it.each([
    [{ rule: 'limitingQuality', lqPercent: { major: 100 }, consumerRisk: 0.1 }, 'limitingQuality'], [{ rule: 'zeroAcceptance', lqPercent: { major: 1 }, consumerRisk: 0.6 }, 'limitingQuality'],
    [{ rule: 'twoPoint', samples: 'single', points: { major: { ...POINTS, p2Percent: 0.5 } } }, 'riskPoints'], [{ rule: 'sequential', points: { major: { ...POINTS, producerRisk: 0 } } }, 'riskPoints'], [{ rule: 'sequential', points: {} }, 'noAql'],
  ] as const)('is not sampled by a rule that cannot be worked: %j', (rule, why) => {
    const kinds = [{ code: 'major', name: 'major', class: 'major' as const }];
    const route = { ...count(rule), kinds };
    const asked = plant.ask({ type: 'draftPlan', why: 'a try', plan: { id: 'TRY', name: 'Try', appliesTo: 'lot', gates: [{ id: 'own', name: 'Own', workedOn: 'lot', bench: 'Bench', roles: ['inspector'], cautions: [], characteristics: [route] }] } });
    expect(asked).toEqual({ refusal: { code: 'planUnsound', where: 'own / count', why } });
  });
});

describe('a sequential plan', () => {
  beforeEach(() => {
    counting(plant, { rule: 'sequential', points: { major: POINTS } });
    opened(plant, 'A1');
  });
  const plan = () => {
    const [first] = plansOf(workAt(plant, 'A1'));
    if (first === undefined || !('kind' in first.plan) || first.plan.kind !== 'sequential') throw new Error('not sequential');
    return first.plan;
  };

  it('asks up to the piece at which it accepts if none is found, and accepts there', () => {
    const { to } = standingAt(plant, 'A1');
    expect([acceptAt(plan(), to), acceptAt(plan(), to - 1)]).toEqual([0, null]);
    plant.must({ ...at('A1'), type: 'completeSample', looked: 5 });
    expect(standingAt(plant, 'A1')).toMatchObject({ from: 6, to, looked: 5, decided: false });
    expect(types(done(plant, 'A1'))).toContain('verdictGiven');
    expect(only('A1')).toMatchObject({ outcome: 'accepted', decided: { at: to } });
  });

  it('rejects at the very piece that crosses the line, and stops', () => {
    const places: number[] = [];
    let slips: readonly string[] = [];
    while (!slips.includes('verdictGiven')) {
      places.push(places.length + 1);
      slips = types(found(plant, 'A1', 'major', places.length));
    }
    expect([places.length, rejectAt(plan(), places.length)]).toEqual([2, 2]);
    expect(slips).toEqual(['findingRecorded', 'sampleCompleted', 'verdictGiven', 'held']);
    expect(only('A1')).toMatchObject({ outcome: 'rejected', decided: { at: places.length } });
    expect(plant.refusalOf({ ...at('A1'), type: 'recordFinding', code: 'major', pieces: 1, ordinals: [3] })).toBe('gateNotOpen');
  });

  it('takes a finding to say that the pieces before it were looked at, and moves the next decision on', () => {
    const { to } = standingAt(plant, 'A1');
    found(plant, 'A1', 'major', 10);
    const after = standingAt(plant, 'A1');
    expect([after.looked, after.from, after.to > to]).toEqual([10, 11, true]);
    expect(plant.refusalOf({ ...at('A1'), type: 'completeSample', looked: 9 })).toBe('sampleNotWhole');
  });

  it('forgets a piece named by mistake, when it is withdrawn', () => {
    const before = standingAt(plant, 'A1');
    found(plant, 'A1', 'major', 10);
    plant.must({ ...at('A1'), type: 'withdrawFinding', finding: plant.lot('A1').version, reason: 'it was another lot' });
    expect(standingAt(plant, 'A1')).toEqual(before);
  });

  it('asks for the piece of each finding, and for none beyond the next decision', () => {
    const { to } = standingAt(plant, 'A1');
    expect(plant.ask({ ...at('A1'), type: 'recordFinding', code: 'major', pieces: 1 })).toEqual({ refusal: { code: 'findingNeedsPiece', class: 'major', n: to, draw: to } });
    expect(plant.refusalOf({ ...at('A1'), type: 'recordFinding', code: 'major', pieces: 1, ordinals: [to + 1] })).toBe('ordinalOutside');
  });

  it('draws so that every beginning of the draw comes from all over the lot', () => {
    const pieces = workAt(plant, 'A1').demand.places.map((place) => (place.at === 'tray' ? place.piece : 0));
    expect([...pieces].sort((a, b) => a - b)).not.toEqual(pieces);
    expect(new Set(pieces).size).toBe(pieces.length);
  });

  it('of two classes goes on while one is open, and the piece that one rejects on decides for no other', () => {
    counting(plant, { rule: 'sequential', points: { major: POINTS, minor: { ...POINTS, p2Percent: 30 } } });
    opened(plant, 'A2');
    const first = standingAt(plant, 'A2').to;
    done(plant, 'A2');
    expect(standingAt(plant, 'A2')).toMatchObject({ looked: first, decided: false });
    expect(standingAt(plant, 'A2').classes.map(({ outcome }) => outcome).sort()).toEqual(['accepted', 'open']);
    done(plant, 'A2');
    expect(verdictAt(plant, 'A2', 'own').accepted).toBe(true);
  });
});
