import fc from 'fast-check';
import { expect, it } from 'vitest';
import { acceptanceLimits, conformanceProbability, globalRisk, guardBandForConsumerRisk, nonconformanceProbability } from '../../../shared/metrology/decision-rules/index.ts';

/** A tolerance of −1 … 1 or one side of it, a process somewhere about it, a gauge from fine to coarse. */
const asked = fc.record({
  sides: fc.constantFrom({ lower: -1, upper: 1 }, { lower: -1 }, { upper: 1 }),
  mean: fc.double({ min: -1.2, max: 1.2, noNaN: true }), deviation: fc.double({ min: 0.05, max: 2, noNaN: true }), u: fc.double({ min: 0.005, max: 1, noNaN: true }),
  factors: fc.tuple(fc.double({ min: 0, max: 3, noNaN: true }), fc.double({ min: 0, max: 3, noNaN: true })),
  rule: fc.constantFrom('guardedAcceptance' as const, 'guardedRejection' as const),
});

it('a wider guard band of acceptance accepts fewer wrong pieces and rejects more good ones; one of rejection the other way round', () => {
  fc.assert(fc.property(asked, ({ sides, mean, deviation, u, factors, rule }) => {
    const [narrow, wide] = [Math.min(...factors), Math.max(...factors)].map((guardFactor) => {
      const { lower, upper } = acceptanceLimits({ ...sides, uncertainty: 2 * u, rule, guardFactor });
      return globalRisk({ tolerance: sides, acceptance: { lower, upper }, process: { mean, deviation }, standardUncertainty: u });
    });
    if (narrow === undefined || wide === undefined) throw new Error('two factors give two risks');
    const [tight, loose] = rule === 'guardedAcceptance' ? [wide, narrow] : [narrow, wide];
    const spare = 1e-14;
    expect(tight.consumer).toBeLessThanOrEqual(loose.consumer + spare);
    expect(tight.producer).toBeGreaterThanOrEqual(loose.producer - spare);
  }), { seed: 106 });
});

it('what is accepted is either conforming or a consumer’s risk: shares add up', () => {
  fc.assert(fc.property(asked, ({ sides, mean, deviation, u, factors: [guardFactor], rule }) => {
    const { lower, upper } = acceptanceLimits({ ...sides, uncertainty: 2 * u, rule, guardFactor });
    const { consumer, producer, accepted, rejected, conforming } = globalRisk({ tolerance: sides, acceptance: { lower, upper }, process: { mean, deviation }, standardUncertainty: u });
    expect(accepted + rejected).toBeCloseTo(1, 13);
    expect(accepted - consumer).toBeCloseTo(conforming - producer, 12);
  }), { seed: 107 });
});

it('the guard band for a wanted risk gives just that risk', () => {
  fc.assert(fc.property(asked, fc.double({ min: 1e-5, max: 0.05, noNaN: true }), ({ sides, mean, deviation, u }, risk) => {
    const band = guardBandForConsumerRisk({ tolerance: sides, process: { mean, deviation }, standardUncertainty: u, risk });
    fc.pre(band !== null);
    const acceptance = { ...('lower' in sides ? { lower: sides.lower + (band ?? 0) } : {}), ...('upper' in sides ? { upper: sides.upper - (band ?? 0) } : {}) };
    expect(globalRisk({ tolerance: sides, acceptance, process: { mean, deviation }, standardUncertainty: u }).consumer / risk).toBeCloseTo(1, 9);
  }), { seed: 108 });
});

it('conformance and nonconformance of one piece add up to one, with a process known or not', () => {
  fc.assert(fc.property(asked, fc.double({ min: -2, max: 2, noNaN: true }), fc.boolean(), ({ sides, mean, deviation, u }, value, known) => {
    const measurement = { value, standardUncertainty: u, ...(known ? { process: { mean, deviation } } : {}) };
    expect(conformanceProbability(sides, measurement) + nonconformanceProbability(sides, measurement)).toBeCloseTo(1, 14);
  }), { seed: 109 });
});
