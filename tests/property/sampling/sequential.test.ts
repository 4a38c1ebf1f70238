import fc from 'fast-check';
import { expect, it } from 'vitest';
import { acceptAt, judgeSequential, nextDecision, rejectAt, sequentialPlan } from '../../../shared/sampling/sequential/index.ts';

const aPlan = fc.record({
  lotSize: fc.integer({ min: 1, max: 5000 }),
  p1Percent: fc.constantFrom(0.1, 0.65, 1, 4, 10),
  ratio: fc.constantFrom(1.5, 3, 8),
  producerRisk: fc.constantFrom(0.01, 0.05, 0.1),
  consumerRisk: fc.constantFrom(0.01, 0.05, 0.1),
}).map(({ ratio, ...request }) => sequentialPlan({ ...request, p2Percent: request.p1Percent * ratio }));
const pieces = fc.array(fc.integer({ min: 1, max: 20 }), { maxLength: 60 });

it('judges as a look at the lines after every single piece does, and always before the cut-off has passed', () => {
  const seen = new Set<string>();
  fc.assert(fc.property(aPlan, pieces, fc.integer({ min: 1, max: 6 }), (plan, gaps, wide) => {
    const foundAt = gaps.reduce<number[]>((list, gap) => [...list, (list.at(-1) ?? 0) + gap * wide], []).filter((at) => at <= plan.truncateAt);
    let expected: { outcome: string; at: number } = { outcome: 'open', at: plan.truncateAt };
    let found = 0;
    for (let n = 1; n <= plan.truncateAt && expected.outcome === 'open'; n += 1) {
      if (foundAt.includes(n)) found += 1;
      const [ac, re] = [acceptAt(plan, n), rejectAt(plan, n)];
      if (ac !== null && found <= ac) expected = { outcome: 'accepted', at: n };
      else if (re !== null && found >= re) expected = { outcome: 'rejected', at: n };
      else if (nextDecision(plan, found, n) <= n) expect.unreachable(`after ${n} the lot is open, and accepted already`);
    }
    expect(expected.outcome).not.toBe('open');
    expect(judgeSequential(plan, foundAt, plan.truncateAt)).toEqual(expected);
    if (expected.at > 1) expect(judgeSequential(plan, foundAt.filter((at) => at < expected.at), expected.at - 1)).toEqual({ outcome: 'open', at: expected.at - 1 });
    seen.add(expected.outcome);
  }), { seed: 20_109, numRuns: 150 });
  expect(seen.size).toBe(2);
});

it('never lets the lines cross, and only ever raises them', () => {
  fc.assert(fc.property(aPlan, fc.nat(), (plan, any) => {
    const n = 1 + (any % plan.truncateAt);
    const [ac, re] = [acceptAt(plan, n), rejectAt(plan, n)];
    if (ac !== null && re !== null) expect(re).toBeGreaterThan(ac);
    if (n > 1) expect(ac ?? -1).toBeGreaterThanOrEqual(acceptAt(plan, n - 1) ?? -1);
    if (n > 1) expect(re ?? Infinity).toBeGreaterThanOrEqual(rejectAt(plan, n - 1) ?? 0);
  }), { seed: 20_110, numRuns: 2000 });
});
