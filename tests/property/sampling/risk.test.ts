import fc from 'fast-check';
import { expect, it } from 'vitest';
import { AQLS, attributesPlan, stagesOf, tableLines } from '../../../shared/sampling/attributes/index.ts';
import type { Stage } from '../../../shared/sampling/attributes/index.ts';
import {
  acceptance, acceptanceAt, averageOutgoingLimit, averageOutgoingQuality, averageSampleNumber, outcomes, qualityAt, schemeBehaviour, schemeFor,
} from '../../../shared/sampling/risk/index.ts';
import type { Judging, RiskModel } from '../../../shared/sampling/risk/index.ts';
import { sequentialPlan } from '../../../shared/sampling/sequential/index.ts';

const runs = { seed: 20_250_101, numRuns: 300 };

/** Any plan of one to seven samples: rising Ac, Re above Ac, some samples that cannot accept, sometimes a gap at the end. */
const aStagedPlan: fc.Arbitrary<{ readonly stages: readonly Stage[] }> = fc
  .array(fc.record({ sampleSize: fc.integer({ min: 1, max: 60 }), rise: fc.nat({ max: 3 }), apart: fc.integer({ min: 1, max: 5 }), accepts: fc.boolean() }), { minLength: 1, maxLength: 7 })
  .map((samples) => {
    const stages: Stage[] = [];
    let [ac, re] = [-1, 1];
    for (const [at, { sampleSize, rise, apart, accepts }] of samples.entries()) {
      const accepting = accepts || at === samples.length - 1;
      if (accepting) ac = Math.max(0, ac + rise);
      re = Math.max(re, ac + apart);
      stages.push({ sampleSize, ac: accepting ? ac : null, re });
    }
    return { stages };
  });

const aSequentialPlan = fc
  .record({ p1Percent: fc.double({ min: 0.2, max: 3, noNaN: true }), ratio: fc.double({ min: 2.5, max: 12, noNaN: true }) })
  .map(({ p1Percent, ratio }) => sequentialPlan({ lotSize: 100_000, p1Percent, producerRisk: 0.05, p2Percent: p1Percent * ratio, consumerRisk: 0.1 }));

const aPlan: fc.Arbitrary<Judging> = fc.oneof({ weight: 3, arbitrary: aStagedPlan }, { weight: 1, arbitrary: aSequentialPlan });
const aModel = fc.constantFrom<RiskModel>({ kind: 'binomial' }, { kind: 'poisson' }, { kind: 'hypergeometric', lotSize: 100_000 });
const aQuality = fc.oneof(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: -14, max: 0, noNaN: true }).map((power) => 10 ** power));

it('acceptance never rises with p', () => {
  fc.assert(fc.property(aPlan, aModel, aQuality, aQuality, (plan, model, one, other) => {
    expect(acceptance(plan, model, Math.max(one, other))).toBeLessThanOrEqual(acceptance(plan, model, Math.min(one, other)) * (1 + 1e-11) + 1e-300);
  }), runs);
});

it('accepted, accepted in the gap and rejected are shares that add up to 1', () => {
  fc.assert(fc.property(aPlan, aModel, aQuality, (plan, model, p) => {
    const { accepted, acceptedInGap, rejected } = outcomes(plan, model, p);
    for (const share of [accepted, acceptedInGap, rejected]) expect(share >= 0 && share <= 1 + 1e-12).toBe(true);
    expect(accepted + acceptedInGap + rejected).toBeCloseTo(1, 11);
  }), runs);
});

it('the sample number lies between the first sample and all of them, and curtailing never raises it', () => {
  fc.assert(fc.property(aStagedPlan, aModel, aQuality, (plan, model, p) => {
    const average = averageSampleNumber(plan, model, p);
    const curtailed = averageSampleNumber(plan, model, p, { curtailed: true });
    const all = plan.stages.reduce((sum, { sampleSize }) => sum + sampleSize, 0);
    expect(curtailed).toBeGreaterThanOrEqual((plan.stages[0]?.sampleSize ?? 0) * (1 - 1e-11));
    expect(average).toBeGreaterThanOrEqual(curtailed * (1 - 1e-11));
    expect(average).toBeLessThanOrEqual(all * (1 + 1e-11));
  }), runs);
});

it('a lot drawn from without replacement tends to a process as the lot grows', () => {
  fc.assert(fc.property(aStagedPlan, fc.integer({ min: 1, max: 400 }), (plan, perThousand) => {
    const process = acceptance(plan, { kind: 'binomial' }, perThousand / 1000);
    const apart = [10_000, 1_000_000, 1_000_000_000].map((lotSize) => Math.abs(acceptanceAt(plan, lotSize, (lotSize / 1000) * perThousand) - process));
    expect(apart[1]).toBeLessThan(2e-3);
    expect(apart[2]).toBeLessThan(2e-6);
  }), runs);
});

it('counted nonconformities tend to a process as they grow rare', () => {
  fc.assert(fc.property(aStagedPlan, fc.double({ min: 1e-9, max: 1e-4, noNaN: true }), (plan, p) => {
    expect(Math.abs(acceptance(plan, { kind: 'poisson' }, p) - acceptance(plan, { kind: 'binomial' }, p))).toBeLessThan(420 * p * p + 1e-12);
  }), runs);
});

it('the inverse comes back, and no outgoing quality passes its limit', () => {
  fc.assert(fc.property(aPlan, fc.constantFrom<RiskModel>({ kind: 'binomial' }, { kind: 'poisson' }), fc.double({ min: 0.001, max: 0.999, noNaN: true }), (plan, model, wanted) => {
    const p = qualityAt(plan, model, wanted);
    // Where even p = 1 is accepted more often, the answer is 1.
    if (p < 1 || model.kind === 'poisson') expect(acceptance(plan, model, p) / wanted).toBeCloseTo(1, 9);
    const { aoql } = averageOutgoingLimit(plan, 100_000, model);
    expect(averageOutgoingQuality(plan, 100_000, model, p)).toBeLessThanOrEqual(aoql * (1 + 1e-10));
  }), { ...runs, numRuns: 60 });
});

it('tightened never accepts more than normal, for every code letter of level II and every AQL of the single tables', () => {
  const lotSizes = [2, 9, 16, 26, 51, 91, 151, 281, 501, 1201, 3201, 10_001, 35_001, 150_001, 500_001];
  let compared = 0;
  for (const lotSize of lotSizes) {
    for (const aqlPercent of AQLS) {
      const planOn = (severity: 'normal' | 'tightened') => attributesPlan({ lotSize, level: 'II', aqlPercent, severity });
      const [normal, tightened] = [{ stages: stagesOf(planOn('normal')) }, { stages: stagesOf(planOn('tightened')) }];
      // From AQL 15 on only nonconformities are counted.
      const model = { kind: aqlPercent > 10 ? 'poisson' : 'binomial' } as const;
      for (const multiple of [0.1, 0.5, 1, 2, 5]) {
        const p = (aqlPercent / 100) * multiple;
        expect(acceptance(tightened, model, p), `${lotSize} AQL ${aqlPercent} p ${p}`).toBeLessThanOrEqual(acceptance(normal, model, p) + 1e-12);
        compared += 1;
      }
    }
  }
  expect(compared).toBe(15 * 26 * 5);
});

it('tightened never accepts more than normal in any cell of the double and multiple tables that holds a plan in both', () => {
  let compared = 0;
  for (const samples of ['double', 'multiple'] as const) {
    for (const line of tableLines(samples, 'normal') ?? []) {
      const tighter = (tableLines(samples, 'tightened') ?? []).find(({ letter }) => letter === line.letter);
      for (const [column, cell] of line.cells.entries()) {
        const other = tighter?.cells[column];
        if (typeof cell !== 'object' || typeof other !== 'object') continue;
        const stages = (pairs: typeof cell): Stage[] => pairs.map(({ ac, re }, at) => ({ sampleSize: line.sizes[at] ?? 0, ac, re }));
        for (const multiple of [0.1, 0.5, 1, 2, 5]) {
          const p = ((AQLS[column] ?? 0) / 100) * multiple;
          expect(acceptance({ stages: stages(other) }, { kind: 'poisson' }, p), `${samples} ${line.letter} ${AQLS[column]} p ${p}`).toBeLessThanOrEqual(acceptance({ stages: stages(cell) }, { kind: 'poisson' }, p) + 1e-12);
          compared += 1;
        }
      }
    }
  }
  expect(compared).toBeGreaterThan(800);
});

it('the shares of a scheme add up to 1 and its acceptance lies between those of its plans', () => {
  const aScheme = fc.record({
    rule: fc.constantFrom('ISO 2859-1' as const, 'MIL-STD-105E' as const), lotSize: fc.integer({ min: 2, max: 100_000 }),
    aqlPercent: fc.constantFrom(0.1, 0.65, 1, 2.5, 6.5), samples: fc.constantFrom('single' as const, 'double' as const),
    steady: fc.boolean(), reducedAllowed: fc.boolean(), resumeAfter: fc.nat({ max: 40 }),
  });
  fc.assert(fc.property(aScheme, aQuality, (asked, p) => {
    const scheme = schemeFor({ ...asked, level: 'II' });
    const { shares, acceptance: accepted, lotsToDiscontinuation } = schemeBehaviour(scheme, { kind: 'binomial' }, p);
    for (const share of Object.values(shares)) expect(share >= 0 && share <= 1).toBe(true);
    expect(shares.normal + shares.tightened + shares.reduced + shares.discontinued).toBeCloseTo(1, 11);
    if (!asked.steady || !asked.reducedAllowed) expect(shares.reduced).toBe(0);
    const onEach = (['normal', 'tightened', 'reduced'] as const).map((severity) => acceptance({ stages: stagesOf(scheme.plans[severity]) }, { kind: 'binomial' }, p));
    expect(accepted).toBeGreaterThanOrEqual(Math.min(...onEach) * (1 - 1e-11));
    expect(accepted).toBeLessThanOrEqual(Math.max(...onEach) * (1 + 1e-11));
    if (lotsToDiscontinuation !== null) expect(lotsToDiscontinuation).toBeGreaterThanOrEqual(7 - 1e-9);
  }), { ...runs, numRuns: 120 });
});
