import { describe, expect, it } from 'vitest';
import { OutsideDomain } from '../../../shared/ground/outside-domain.ts';
import { acceptAt, judgeSequential, nextDecision, rejectAt, sequentialPlan } from '../../../shared/sampling/sequential/index.ts';

// The plan of NIST/SEMATECH e-Handbook 6.2.6: p1 0.01, α 0.05, p2 0.10, β 0.10. Lines: h1 0.939, h2 1.205, slope 0.0397.
const request = { lotSize: 10_000, p1Percent: 1, producerRisk: 0.05, p2Percent: 10, consumerRisk: 0.1 };
const plan = sequentialPlan(request);

describe('a sequential plan', () => {
  it('is cut off at 100 pieces with Ac 3, the last piece for which slope · n is below 4', () => {
    expect(plan).toMatchObject({ truncateAt: 100, truncateAc: 3, sampleSize: 100 });
    expect(plan.slope * 100).toBeLessThan(4);
    expect(plan.slope * 101).toBeGreaterThan(4);
  });

  it('ends with the last piece of a smaller lot', () => {
    expect(sequentialPlan({ ...request, lotSize: 60 })).toMatchObject({ truncateAt: 60, truncateAc: 2, sampleSize: 60 });
    expect(sequentialPlan({ ...request, lotSize: 1 })).toMatchObject({ truncateAt: 1, truncateAc: 0, sampleSize: 1 });
  });

  it.each([
    { foundAt: [], looked: 0, says: { outcome: 'open', at: 0 } },
    { foundAt: [], looked: 23, says: { outcome: 'open', at: 23 } },
    { foundAt: [], looked: 24, says: { outcome: 'accepted', at: 24 } },
    { foundAt: [], looked: 30, says: { outcome: 'accepted', at: 24 } },
    { foundAt: [1, 2], looked: 2, says: { outcome: 'rejected', at: 2 } },
    { foundAt: [1, 20], looked: 20, says: { outcome: 'open', at: 20 } },
    { foundAt: [1, 19], looked: 19, says: { outcome: 'rejected', at: 19 } },
    { foundAt: [24], looked: 48, says: { outcome: 'open', at: 48 } },
    { foundAt: [24], looked: 49, says: { outcome: 'accepted', at: 49 } },
    { foundAt: [5, 40, 70], looked: 99, says: { outcome: 'open', at: 99 } },
    { foundAt: [5, 40, 70], looked: 100, says: { outcome: 'accepted', at: 100 } },
    { foundAt: [5, 40, 70, 100], looked: 100, says: { outcome: 'rejected', at: 100 } },
  ])('with pieces $foundAt found among $looked says $says', ({ foundAt, looked, says }) => {
    expect(judgeSequential(plan, foundAt, looked)).toEqual(says);
  });

  it.each([
    { found: 0, looked: 0, next: 24 }, { found: 0, looked: 10, next: 24 }, { found: 1, looked: 10, next: 49 },
    { found: 2, looked: 40, next: 74 }, { found: 3, looked: 70, next: 100 }, { found: 2, looked: 2, next: 2 },
  ])('with $found found in $looked may next accept at piece $next', ({ found, looked, next }) => {
    expect(nextDecision(plan, found, looked)).toBe(next);
  });

  it('says null where no decision is possible', () => {
    expect([acceptAt(plan, 23), acceptAt(plan, 24), rejectAt(plan, 1), rejectAt(plan, 2)]).toEqual([null, 0, null, 2]);
  });

  it.each([
    { p1Percent: 10 }, { p1Percent: 0 }, { p2Percent: 100 }, { producerRisk: 0.9 }, { producerRisk: 0 }, { consumerRisk: Number.NaN }, { lotSize: 0 },
  ])('refuses %o', (wrong) => {
    expect(() => sequentialPlan({ ...request, ...wrong })).toThrow(OutsideDomain);
  });

  it.each([[1e-300, 1.0000000000000002e-300], [1.9999999999999996, 1.9999999999999998], [5e-324, 1e-323], [5e-324, 99.9], [99.9, 99.99999999999999]])(
    'has figures, or a refusal, even for points that can hardly be told apart: %d and %d percent', (p1Percent, p2Percent) => {
      let figures: readonly number[] = [0];
      try {
        const { h1, h2, slope, truncateAt, truncateAc } = sequentialPlan({ ...request, p1Percent, p2Percent });
        figures = [h1, h2, slope, truncateAt, truncateAc];
      } catch (refusal) {
        expect(refusal).toBeInstanceOf(OutsideDomain);
      }
      expect(figures.every(Number.isFinite), String(figures)).toBe(true);
    });

  it('refuses pieces out of order, twice, or beyond those looked at', () => {
    for (const foundAt of [[3, 2], [2, 2], [0], [11], [1.5]]) expect(() => judgeSequential(plan, foundAt, 10), String(foundAt)).toThrow(OutsideDomain);
    expect(() => judgeSequential(plan, [], 101)).toThrow(OutsideDomain);
  });
});
