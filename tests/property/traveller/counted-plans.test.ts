import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { AQLS, INSPECTION_LEVELS } from '../../../shared/sampling/attributes/index.ts';
import { evolve, FINDING_CLASSES, remainingPieces, samplingStanding, verdictOf } from '../../../shared/traveller/index.ts';
import type { AnyState, Characteristic, CharacteristicWork, ClassPlan, CountedRule, FindingClass, Slip } from '../../../shared/traveller/index.ts';
import { LittlePlant, littlePlant, openLot, releasedBatch } from './little-plant.ts';
import { gateRecord, routeWith } from './on-the-way.ts';
import { naiveVerdict } from './naive-judge.ts';
import type { Seen } from './naive-judge.ts';

fc.configureGlobal({ seed: 20261125 });

const AT = { subject: 'lot:A1', gate: 'own', characteristic: 'count' } as const;
const someClasses = fc.subarray([...FINDING_CLASSES], { minLength: 1 });
const byClass = <T>(classes: readonly FindingClass[], value: fc.Arbitrary<T>) => fc.record(Object.fromEntries(classes.map((each) => [each, value])) as Record<FindingClass, fc.Arbitrary<T>>);
const riskPoints = fc.constantFrom({ p1Percent: 1, producerRisk: 0.05, p2Percent: 8, consumerRisk: 0.1 }, { p1Percent: 2, producerRisk: 0.1, p2Percent: 20, consumerRisk: 0.05 }, { p1Percent: 0.5, producerRisk: 0.05, p2Percent: 4, consumerRisk: 0.1 });
const rule: fc.Arbitrary<CountedRule> = someClasses.chain((classes) => fc.oneof(
  fc.record({
    rule: fc.constant('attributes' as const), switching: fc.constantFrom('ISO 2859-1' as const, 'MIL-STD-105E' as const), level: fc.constantFrom(...INSPECTION_LEVELS),
    samples: fc.constantFrom('single' as const, 'double' as const, 'double' as const, 'multiple' as const, 'multiple' as const), counts: fc.constant('nonconforming' as const),
    aqlPercent: byClass(classes, fc.constantFrom(...AQLS.filter((aql) => aql >= 0.4 && aql <= 10))),
  }),
  fc.record({
    rule: fc.constant('attributes' as const), switching: fc.constant('ISO 2859-1' as const), level: fc.constantFrom(...INSPECTION_LEVELS), samples: fc.constantFrom('single' as const, 'double' as const, 'multiple' as const),
    counts: fc.constant('nonconformities' as const), aqlPercent: byClass(classes, fc.constantFrom(...AQLS.filter((aql) => aql >= 4))),
  }),
  fc.record({ rule: fc.constantFrom('limitingQuality' as const, 'zeroAcceptance' as const), lqPercent: byClass(classes, fc.constantFrom(2, 5, 12.5, 32)), consumerRisk: fc.constantFrom(0.05, 0.1, 0.2) }),
  fc.record({ rule: fc.constant('twoPoint' as const), samples: fc.constantFrom('single' as const, 'double' as const), points: byClass(classes, riskPoints) }),
  fc.record({ rule: fc.constant('sequential' as const), points: byClass(classes, riskPoints) }),
));

const counted = (sampling: CountedRule): Characteristic => ({
  kind: 'counted', id: 'count', name: 'Count', method: 'eye', destructive: false, sampling,
  kinds: FINDING_CLASSES.filter((each) => ('aqlPercent' in sampling ? sampling.aqlPercent : 'points' in sampling ? sampling.points : sampling.lqPercent)[each] !== undefined).map((each) => ({ code: each, name: each, class: each })),
});

const base = littlePlant();
releasedBatch(base);

/** A plant with the rule in force and a lot at its gate; null where the plan is refused as one that cannot be worked. */
function atTheGate(sampling: CountedRule, quantity: number): LittlePlant | null {
  const plant = new LittlePlant(base.states);
  const plan = routeWith(counted(sampling));
  const drafted = plant.give({ type: 'draftPlan', plan, why: 'for this test' });
  if ('refusal' in drafted) return null;
  plant.must({ type: 'approvePlan', plan: plan.id, planVersion: 2 });
  plant.must({ type: 'approvePlan', plan: plan.id, planVersion: 2 }, { badge: 'Q-402', name: 'Second engineer', roles: ['engineer'] });
  openLot(plant, 'A1', quantity);
  return 'refusal' in plant.give({ type: 'openGate', subject: 'lot:A1', gate: 'own' }) ? null : plant;
}

function workOf(plant: LittlePlant): CharacteristicWork {
  const [work] = gateRecord(plant, 'lot:A1', 'own').work;
  if (work === undefined) throw new Error('nothing is asked for');
  return work;
}
const classesOf = ({ demand: { basis } }: CharacteristicWork): readonly ClassPlan[] => (basis.by === 'attributes' ? basis.classes : []);

/** What each place of the draw would show, by class: so many nonconformities there. */
function truth(work: CharacteristicWork, dice: readonly number[], badPercent: number, several: boolean): Seen {
  let turn = 0;
  const next = (): number => dice[(turn += 1) % dice.length] ?? 0;
  return Object.fromEntries(classesOf(work).map(({ class: each }) => [each, Array.from({ length: work.demand.n }, (_, at) => ((next() + 7919 * at) % 1000 < 10 * badPercent ? 1 + (several ? next() % 3 : 0) : 0))]));
}

/** An honest inspector: looks at the pieces asked for, enters what they show, says when a sample is done. With `slips`, a wrong finding now and then, withdrawn again. */
function inspect(plant: LittlePlant, seen: Seen, errs: (ordinal: number) => boolean): void {
  for (let guard = 0; guard < 20_000; guard += 1) {
    if (gateRecord(plant, 'lot:A1', 'own').status !== 'open') return;
    const work = workOf(plant);
    const standing = samplingStanding(work);
    if (standing === null || standing.decided) throw new Error('the gate is open and nothing is asked for');
    const isSequential = classesOf(work).some(({ plan }) => 'kind' in plan && plan.kind === 'sequential');
    const recorded = new Set(work.findings.filter(({ withdrawn }) => !withdrawn).flatMap((finding) => finding.ordinals.map((ordinal) => `${finding.class} ${ordinal}`)));
    const isNew = (each: FindingClass, ordinal: number): boolean => (seen[each]?.[ordinal - 1] ?? 0) > 0 && !recorded.has(`${each} ${ordinal}`);
    let wasEntered = false;
    // Sequential: a piece just found may show another class too, so the search begins at the last piece looked at.
    for (let ordinal = Math.max(1, standing.from - 1); ordinal <= standing.to && !(wasEntered && isSequential); ordinal += 1) for (const { class: each } of classesOf(work)) {
      if (gateRecord(plant, 'lot:A1', 'own').status !== 'open') return;
      if (errs(ordinal) && !isNew(each, ordinal) && !recorded.has(`${each} ${ordinal}`) && ordinal >= standing.from && !isSequential) {
        plant.must({ ...AT, type: 'recordFinding', code: each, pieces: 1, ordinals: [ordinal] });
        plant.must({ ...AT, type: 'withdrawFinding', finding: plant.lot('A1').version, reason: 'it was a speck of dust' });
      }
      if (!isNew(each, ordinal)) continue;
      const times = seen[each]?.[ordinal - 1] ?? 1;
      plant.must({ ...AT, type: 'recordFinding', code: each, pieces: times, ordinals: Array.from({ length: times }, () => ordinal) });
      wasEntered = true;
    }
    if (gateRecord(plant, 'lot:A1', 'own').status === 'open' && !(wasEntered && isSequential)) plant.must({ ...AT, type: 'completeSample', looked: standing.to });
  }
  throw new Error('the gate never closes');
}

const quantity = fc.oneof(fc.integer({ min: 1, max: 60 }), fc.constantFrom(150, 500, 1200, 3200));
const dice = fc.array(fc.noBias(fc.nat(999)), { minLength: 30, maxLength: 120 });
const bad = fc.constantFrom(0, 0.5, 1, 3, 8, 20, 60);

describe('whatever rule counts what is found', () => {
  it('gives the verdict of a judge who knows only the plan and the pieces, on as many pieces, whatever was entered wrongly and withdrawn', () => {
    const met = new Map<string, number>();
    fc.assert(fc.property(rule, quantity, dice, bad, fc.nat(12), (sampling, pieces, thrown, badPercent, every) => {
      const plant = atTheGate(sampling, pieces);
      if (plant === null) return;
      const seen = truth(workOf(plant), thrown, badPercent, sampling.rule === 'attributes' && sampling.counts === 'nonconformities');
      const wanted = naiveVerdict(classesOf(workOf(plant)), seen);
      inspect(plant, seen, (ordinal) => every > 1 && ordinal % every === 0);
      const verdict = verdictOf(gateRecord(plant, 'lot:A1', 'own'))?.verdict;
      const detail = verdict?.results[0]?.detail;
      if (detail?.by !== 'attributes') throw new Error('not judged by attributes');
      expect([verdict?.accepted, workOf(plant).looked]).toEqual([wanted.accepted, wanted.looked]);
      expect(detail.classes.map(({ class: each, outcome, found, decided }) => ({ class: each, outcome, found, sample: decided?.sample }))).toEqual(wanted.classes);
      const key = `${sampling.rule} ${'samples' in sampling ? sampling.samples : ''} ${wanted.accepted}`;
      met.set(key, (met.get(key) ?? 0) + 1);
      const state = plant.lot('A1');
      expect(remainingPieces(state.balance)).toBe(pieces);
    }), { numRuns: 400 });
    for (const name of ['attributes single', 'attributes double', 'attributes multiple', 'limitingQuality ', 'zeroAcceptance ', 'twoPoint single', 'twoPoint double', 'sequential ']) {
      for (const accepted of [true, false]) expect(met.get(`${name} ${accepted}`) ?? 0, `${name} ${accepted}`).toBeGreaterThan(0);
    }
  });

  it('asks for no further sample after a correction: it is judged on the samples taken, the same whenever it is asked', () => {
    let undecided = 0;
    fc.assert(fc.property(rule, quantity, dice, fc.constantFrom(3, 8, 20), (sampling, pieces, thrown, badPercent) => {
      const plant = atTheGate(sampling, pieces);
      if (plant === null) return;
      const seen = truth(workOf(plant), thrown, badPercent, false);
      inspect(plant, seen, () => false);
      const left = Object.fromEntries(Object.entries(seen).map(([each, counts]) => [each, [...counts]]));
      for (const finding of workOf(plant).findings) {
        const { looked } = workOf(plant);
        plant.must({ ...AT, type: 'withdrawFinding', finding: finding.slip, reason: 'it was a speck of dust' });
        for (const ordinal of finding.ordinals) if (left[finding.class]?.[ordinal - 1] !== undefined) (left[finding.class] ?? [])[ordinal - 1] = 0;
        const verdict = verdictOf(gateRecord(plant, 'lot:A1', 'own'))?.verdict;
        const wanted = naiveVerdict(classesOf(workOf(plant)), left, looked ?? 0);
        const detail = verdict?.results[0]?.detail;
        expect([verdict?.accepted, workOf(plant).looked]).toEqual([wanted.accepted, looked]);
        if (detail?.by === 'attributes' && detail.classes.some(({ outcome }) => outcome === 'undecided') && detail.classes.every(({ outcome }) => outcome !== 'rejected')) undecided += 1;
        expect(plant.refusalOf({ ...AT, type: 'completeSample', looked: workOf(plant).demand.n })).toBe('gateNotOpen');
      }
    }), { numRuns: 120 });
    expect(undecided, 'some corrections must take a decision away').toBeGreaterThan(0);
  });

  it('folds to the same state in any batching, also through a snapshot as text', () => {
    fc.assert(fc.property(rule, quantity, dice, bad, fc.array(fc.nat(30), { minLength: 1, maxLength: 20 }), (sampling, pieces, thrown, badPercent, cuts) => {
      const plant = atTheGate(sampling, pieces);
      if (plant === null) return;
      inspect(plant, truth(workOf(plant), thrown, badPercent, false), () => false);
      let state: AnyState | null = null;
      plant.slips.filter(({ stream }) => stream === 'lot:A1').forEach((slip, at) => {
        state = evolve(state, JSON.parse(JSON.stringify(slip)) as Slip);
        if (cuts.includes(at % 31)) state = JSON.parse(JSON.stringify(state)) as AnyState;
      });
      expect(state).toEqual(JSON.parse(JSON.stringify(plant.lot('A1'))));
    }), { numRuns: 60 });
  });

  it('takes no finding and no word of a sample beyond the pieces asked for', () => {
    fc.assert(fc.property(rule, quantity, dice, fc.integer({ min: 1, max: 400 }), (sampling, pieces, thrown, beyond) => {
      const plant = atTheGate(sampling, pieces);
      if (plant === null) return;
      const standing = samplingStanding(workOf(plant));
      const [first] = classesOf(workOf(plant));
      if (standing === null || first === undefined) throw new Error('nothing is asked for');
      expect(plant.refusalOf({ ...AT, type: 'recordFinding', code: first.class, pieces: 1, ordinals: [standing.to + beyond] })).toBe('ordinalOutside');
      expect(plant.refusalOf({ ...AT, type: 'completeSample', looked: standing.to + beyond })).toBe('sampleNotWhole');
      expect(plant.refusalOf({ ...AT, type: 'completeSample', looked: 0 })).toBe('sampleNotWhole');
      expect(thrown.length).toBeGreaterThan(0);
    }), { numRuns: 60 });
  });
});
