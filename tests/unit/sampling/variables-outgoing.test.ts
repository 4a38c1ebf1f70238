import { describe, expect, it } from 'vitest';
import { variablesAcceptance, variablesOutgoingLimit, variablesOutgoingQuality, variablesPlan, variablesQualityAt, variablesTotalInspection } from '../../../shared/sampling/variables/index.ts';

const looked = { lotSize: 1000, level: 'IV', aqlPercent: 1, severity: 'normal' } as const;
const PLANS = [
  { name: 's, one limit', plan: variablesPlan(looked) },
  { name: 'σ, one limit', plan: variablesPlan({ ...looked, method: 'sigma', sigma: 1 }) },
  { name: 's, two limits, a third of p below', plan: variablesPlan(looked), lowerShare: 1 / 3 },
  { name: 'σ, two limits, half of p below', plan: variablesPlan({ ...looked, method: 'sigma', sigma: 1 }), lowerShare: 0.5 },
  { name: 's, an AQL for each limit, all of p below', plan: variablesPlan({ ...looked, separate: { lowerAqlPercent: 1, upperAqlPercent: 4 } }), lowerShare: 1 },
];

describe.each(PLANS)('$name', ({ plan, lowerShare }) => {
  const at = (p: number) => ({ p, ...(lowerShare === undefined ? {} : { lowerShare }) });

  it.each([0.999, 0.95, 0.5, 0.1, 0.001])('the quality accepted with %d lies within 1e-10 of where the acceptance crosses it', (accepted) => {
    const p = variablesQualityAt(plan, accepted, lowerShare);
    expect(variablesAcceptance(plan, at(p * (1 - 1e-10)))).toBeGreaterThan(accepted);
    expect(variablesAcceptance(plan, at(p * (1 + 1e-10)))).toBeLessThan(accepted);
  });

  it('the quality accepted with the acceptance of p is p', () => {
    // Where σ is known and both limits are near, no mean is accepted from some p on: such a p has no way back.
    const seen = [0.005, 0.01, 0.03, 0.08].map((p) => ({ p, accepted: variablesAcceptance(plan, at(p)) })).filter(({ accepted }) => accepted > 0.001 && accepted < 0.999);
    expect(seen.length).toBeGreaterThanOrEqual(2);
    for (const { p, accepted } of seen) expect(Math.abs(variablesQualityAt(plan, accepted, lowerShare) / p - 1)).toBeLessThanOrEqual(1e-10);
  });

  it('no quality of 4,000 between 0 and 1 leaves worse lots than the AOQL, and the AOQL is left at its own place', () => {
    const { aoql, at: place } = variablesOutgoingLimit(plan, 1000, lowerShare);
    expect(variablesOutgoingQuality(plan, at(place), 1000)).toBe(aoql);
    // Two limits are integrated: fewer points there, as the test is to be quick.
    const points = lowerShare === undefined || plan.method === 'sigma' ? 4000 : 400;
    const worst = Math.max(...Array.from({ length: points - 1 }, (_, step) => variablesOutgoingQuality(plan, at((step + 1) / points), 1000)));
    expect(worst).toBeLessThanOrEqual(aoql * (1 + 1e-12));
    for (const away of [0.999, 1.001]) expect(variablesOutgoingQuality(plan, at(place * away), 1000)).toBeLessThan(aoql);
  });
});

describe('sorting rejected lots by variables', () => {
  const { plan } = PLANS[0] ?? { plan: variablesPlan(looked) };

  it('looks at n where everything is accepted, at N where nothing is, and leaves nothing bad at either end', () => {
    expect([0, 1].map((p) => variablesTotalInspection(plan, { p }, 1000))).toEqual([plan.sampleSize, 1000]);
    expect([0, 1].map((p) => variablesOutgoingQuality(plan, { p }, 1000))).toEqual([0, 0]);
  });

  it('what leaves is what the pieces not looked at bring along: AOQ = p·(1 − ATI/N) (NIST/SEMATECH e-Handbook 6.2.3.2)', () => {
    for (const p of [0.002, 0.01, 0.05, 0.2]) expect(variablesOutgoingQuality(plan, { p }, 1000)).toBeCloseTo(p * (1 - variablesTotalInspection(plan, { p }, 1000) / 1000), 15);
  });

  it('leaves nothing bad where every piece is measured', () => {
    const every = variablesPlan({ ...looked, lotSize: 3 });
    expect(every.everyPiece).toBe(true);
    expect(variablesOutgoingLimit(every, 3).aoql).toBe(0);
  });

  it('refuses a lot below its sample and a probability that is none', () => {
    expect(() => variablesOutgoingQuality(plan, { p: 0.1 }, plan.sampleSize - 1)).toThrow(/lotSize/);
    expect(() => variablesTotalInspection(plan, { p: 0.1 }, 2)).toThrow(/lotSize/);
    for (const accepted of [0, 1, Number.NaN]) expect(() => variablesQualityAt(plan, accepted)).toThrow(/accepted must be above 0 and below 1/);
  });
});

// R 4.2.2: pt with a noncentrality, the inverse by uniroot, the limit by optimize. R itself promises about ten digits here.
describe.each([
  { n: 5, k: 1.53, tenPercent: 0.284005614635, aoql: 0.0432529701055, place: 0.130172 },
  { n: 42, k: 1.9014, tenPercent: 0.0595979413416, aoql: 0.0146059330726, place: 0.0245751 },
])('n $n, k $k, s unknown, lot of 1,000, as R has it', ({ n, k, tenPercent, aoql, place }) => {
  const plan = { sampleSize: n, k, mPercent: 50 };
  it('accepts the same quality with 10 %', () => expect(Math.abs(variablesQualityAt(plan, 0.1) / tenPercent - 1)).toBeLessThanOrEqual(1e-10));
  it('has the same AOQL at the same place', () => {
    const limit = variablesOutgoingLimit(plan, 1000);
    expect(Math.abs(limit.aoql / aoql - 1)).toBeLessThanOrEqual(1e-10);
    expect(Math.abs(limit.at / place - 1)).toBeLessThanOrEqual(1e-5);
  });
});
