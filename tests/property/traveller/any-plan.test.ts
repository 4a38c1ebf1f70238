import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { AQLS, INSPECTION_LEVELS } from '../../../shared/sampling/attributes/index.ts';
import { VARIABLES_AQLS, VARIABLES_LEVELS } from '../../../shared/sampling/variables/index.ts';
import { judgedClasses, samplingStanding, verdictOf } from '../../../shared/traveller/index.ts';
import type { Characteristic, Command, CountedRule, IntervalRule } from '../../../shared/traveller/index.ts';
import { inputsGiving } from '../../../demo-data/inputs-giving.ts';
import { LittlePlant, littlePlant, MASTER, openLot, releasedBatch } from './little-plant.ts';
import { gateRecord, length, routeWith } from './on-the-way.ts';

const aql = fc.option(fc.constantFrom(...AQLS), { nil: undefined, freq: 3 });
const limit = fc.oneof(fc.constant(null), fc.constantFrom(0, 9.999, 10, 10.001, 11, 1e-6, -5, 1e12));
const measured = fc.record({
  decimals: fc.integer({ min: 0, max: 6 }), lower: limit, upper: limit, pressTolerancePercent: fc.option(fc.constantFrom(1e-9, 0.5, 50, 99.9), { nil: null }), destructive: fc.boolean(),
  gaugeKind: fc.option(fc.constant('micrometer'), { nil: null }), rule: fc.constantFrom({ decisionRule: 'simple' as const }, { decisionRule: 'guardedAcceptance' as const }, { decisionRule: 'guardedAcceptance' as const, guardFactor: 0.825 }, { decisionRule: 'guardedRejection' as const }, { decisionRule: 'guardedRejection' as const, guardFactor: 3 }),
  entry: fc.constantFrom({ how: 'direct' as const }, { how: 'direct' as const }, { how: 'crater' as const, ballDiameterMm: 30 }, { how: 'shrinkage' as const, dieMm: 25 }, { how: 'crater' as const, ballDiameterMm: 20, layers: 2 }, { how: 'archimedes' as const }, { how: 'saturation' as const, unit: 'G·cm³/g' as const, cobaltFraction: 0.1 }),
  sampling: fc.oneof(
    fc.record({ rule: fc.constant('variables' as const), level: fc.constantFrom(...VARIABLES_LEVELS), aqlPercent: fc.constantFrom(...VARIABLES_AQLS) }),
    fc.record({ rule: fc.constant('fixed' as const), n: fc.integer({ min: 1, max: 20 }), accept: fc.constantFrom('each' as const, 'mean' as const) }),
    fc.record({ rule: fc.constant('everyPiece' as const), ejectAtMostPercent: fc.constantFrom(0, 2, 100) }),
  ),
}).map(({ rule, ...change }): Characteristic => length({ ...change, ...rule, ...(change.entry.how === 'saturation' ? { unit: '%' } : {}) }));
const percent = fc.option(fc.constantFrom(0, 0.01, 0.5, 5, 40, 99.9, 100), { nil: undefined, freq: 4 });
const risk = fc.constantFrom(0, 0.0001, 0.05, 0.1, 0.5, 0.6);
const points = fc.option(fc.record({ p1Percent: fc.constantFrom(0.01, 1, 2, 30), producerRisk: risk, p2Percent: fc.constantFrom(0.02, 5, 30, 99.9), consumerRisk: risk }), { nil: undefined, freq: 4 });
const counted = fc.record({
  destructive: fc.boolean(),
  sampling: fc.oneof(
    fc.record({
      rule: fc.constant('attributes' as const), switching: fc.constantFrom('ISO 2859-1' as const, 'MIL-STD-105E' as const), level: fc.constantFrom(...INSPECTION_LEVELS), aqlPercent: fc.record({ critical: aql, major: aql, minor: aql }),
      samples: fc.constantFrom('single' as const, 'double' as const, 'multiple' as const), counts: fc.constantFrom('nonconforming' as const, 'nonconformities' as const),
    }),
    fc.record({ rule: fc.constantFrom('limitingQuality' as const, 'zeroAcceptance' as const), lqPercent: fc.record({ critical: percent, major: percent, minor: percent }), consumerRisk: risk }),
    fc.record({ rule: fc.constant('twoPoint' as const), samples: fc.constantFrom('single' as const, 'double' as const), points: fc.record({ critical: points, major: points, minor: points }) }),
    fc.record({ rule: fc.constant('sequential' as const), points: fc.record({ critical: points, major: points, minor: points }) }),
    fc.record({ rule: fc.constant('interval' as const), everyPieces: fc.integer({ min: 1, max: 60 }), n: fc.integer({ min: 1, max: 9 }) }),
  ),
}).map(({ destructive, sampling }): Characteristic => {
  // A class left out is left out, and not there as undefined.
  const rule = JSON.parse(JSON.stringify(sampling)) as CountedRule | IntervalRule;
  const classes = rule.rule === 'interval' ? ['major' as const] : judgedClasses(rule);
  return { kind: 'counted', id: 'count', name: 'Count', method: 'eye', destructive, kinds: classes.map((each) => ({ code: each, name: each, class: each })), sampling: rule };
});
const graded = fc.record({ n: fc.integer({ min: 1, max: 9 }), destructive: fc.boolean() })
  .map(({ n, destructive }): Characteristic => ({ kind: 'graded', id: 'grade', name: 'Grade', method: 'eye', destructive, scale: ['0', '1', '2'], worstAccepted: '1', sampling: { rule: 'fixed', n, accept: 'each' } }));

const VALUES = [9.9, 10, 10.5, 10.001, 11, 11.2, 0, -3, 1e6];

/** Enters at one gate what it asks for, with values of the dice, until its verdict; unlikely ones are said to be right. */
function work(plant: LittlePlant, lot: string, dice: readonly number[]): void {
  const subject = `lot:${lot}`;
  let turn = 0;
  const next = (): number => dice[(turn += 1) % dice.length] ?? 0;
  const give = (command: Command): void => void plant.give(command, MASTER);
  give({ type: 'openGate', subject, gate: 'own' });
  for (const { demand: { characteristic, basis, n } } of gateRecord(plant, subject, 'own').work) {
    const at = { subject, gate: 'own', characteristic: characteristic.id };
    const gauge = characteristic.kind === 'measured' && characteristic.gaugeKind !== null ? { gauge: 'MIC-11' } : {};
    switch (basis.by) {
      case 'attributes':
        if (characteristic.kind === 'counted') give({ ...at, type: 'recordFinding', code: characteristic.kinds[next() % characteristic.kinds.length]?.code ?? '', pieces: 1, ordinals: [1 + (next() % n)] });
        for (let sample = 0; sample < n && gateRecord(plant, subject, 'own').status === 'open'; sample += 1) {
          const [now] = gateRecord(plant, subject, 'own').work;
          give({ ...at, type: 'completeSample', looked: (now === undefined ? null : samplingStanding(now))?.to ?? n });
        }
        break;
      case 'interval':
        for (let look = 1; look <= basis.looks; look += 1) give({ ...at, type: 'takeLook', look, found: next() % 5 === 0 ? 1 : 0, code: 'major' });
        break;
      case 'everyPiece':
        for (let from = 1; from <= n; from += 5000) give({ ...at, type: 'takeWeights', fromPiece: from, values: Array.from({ length: Math.min(5000, n - from + 1) }, () => Math.min(25, Math.max(0.1, VALUES[next() % VALUES.length] ?? 1))), ...gauge });
        break;
      default:
        for (let ordinal = 1; ordinal <= n; ordinal += 1) {
          if (characteristic.kind === 'graded') give({ ...at, type: 'takeReading', ordinal, value: String(next() % 3) });
          else if (characteristic.kind === 'measured' && characteristic.entry.how !== 'direct') {
            const inputs = inputsGiving(characteristic.entry, { crater: 1 + (next() % 9), craterLayer: 1, shrinkage: 10 + (next() % 9), archimedes: 10 + (next() % 6), saturation: 70 + (next() % 30) }[characteristic.entry.how]);
            if (inputs !== null) give({ ...at, type: 'takeReading', ordinal, value: null, inputs, sure: true, ...gauge });
          }
          else if (characteristic.kind === 'measured') {
            // A value too fine, or out of the gauge's range, is refused; then the piece is read at the nearest decimal in range.
            give({ ...at, type: 'takeReading', ordinal, value: VALUES[next() % VALUES.length] ?? 1, sure: true, ...gauge });
            give({ ...at, type: 'takeReading', ordinal, value: 10, sure: true, ...gauge });
          }
        }
    }
  }
}

fc.configureGlobal({ seed: 20261120 });

describe('whatever plan two engineers approve', () => {
  it('is refused as unsound when drafted, or every lot from one piece up can be worked by it to a verdict', () => {
    const base = littlePlant();
    releasedBatch(base);
    const met = { unsound: 0, notOpened: 0, accepted: 0, rejected: 0 };
    fc.assert(fc.property(fc.oneof(measured, counted, graded), fc.oneof({ weight: 3, arbitrary: fc.integer({ min: 1, max: 40 }) }, fc.constantFrom(150, 3200, 12_000)), fc.array(fc.noBias(fc.nat()), { minLength: 5, maxLength: 40 }), (characteristic, quantity, dice) => {
      const plant = new LittlePlant(base.states);
      const plan = routeWith(characteristic);
      const drafted = plant.give({ type: 'draftPlan', plan, why: 'for this test' });
      if ('refusal' in drafted) {
        expect(drafted.refusal.code).toBe('planUnsound');
        met.unsound += 1;
        return;
      }
      plant.must({ type: 'approvePlan', plan: plan.id, planVersion: 2 });
      plant.must({ type: 'approvePlan', plan: plan.id, planVersion: 2 }, { badge: 'Q-402', name: 'Second engineer', roles: ['engineer'] });
      openLot(plant, 'A1', quantity);
      const opening = plant.ask({ type: 'openGate', subject: 'lot:A1', gate: 'own' });
      if ('refusal' in opening) {
        // Only a press weight whose tolerance vanishes in rounding, and two points that no plan for this lot passes through, are met first at the gate.
        expect([opening.refusal.code, (characteristic.kind === 'measured' && characteristic.pressTolerancePercent !== null) || characteristic.sampling.rule === 'twoPoint']).toEqual(['planUnsound', true]);
        met.notOpened += 1;
        return;
      }
      work(plant, 'A1', dice);
      const verdict = verdictOf(gateRecord(plant, 'lot:A1', 'own'))?.verdict;
      const tooCoarse = characteristic.kind === 'measured' && characteristic.decisionRule === 'guardedAcceptance';
      if (verdict === undefined) expect(tooCoarse, JSON.stringify(characteristic)).toBe(true);
      else met[verdict.accepted ? 'accepted' : 'rejected'] += 1;
      for (const count of Object.values(plant.lot('A1').balance)) expect(count).toBeGreaterThanOrEqual(0);
    }), { numRuns: 400 });
    for (const [what, times] of Object.entries(met)) expect(times, what).toBeGreaterThan(0);
  });
});
