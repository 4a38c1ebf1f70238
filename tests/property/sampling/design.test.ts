import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { limitingQualitySize, twoPointDouble, twoPointSequential, twoPointSingle, twoPointVariables, zeroAcceptanceSize } from '../../../shared/sampling/design/index.ts';
import { acceptance } from '../../../shared/sampling/risk/index.ts';
import type { RiskModel } from '../../../shared/sampling/risk/index.ts';
import { noncentralTAt, noncentralTBelow, normalAt } from '../../../shared/sampling/chance/index.ts';
import { pieceByPiece } from './design-walk.ts';

/** A risk is met to within this part of it: sums of doubles cannot tell 0.2 from 3/15. */
const SLACK = 1 + 1e-12;

/* The other way to the answer: every plan is tried, with probabilities as quotients of whole numbers, which are exact here. */
const choose = (n: number, k: number): number => {
  let ways = k < 0 || k > n ? 0 : 1;
  for (let at = 1; at <= k && ways > 0; at += 1) ways = (ways * (n - k + at)) / at;
  return ways;
};
const inLot = (found: number, n: number, lot: number, bad: number): number => (choose(bad, found) * choose(lot - bad, n - found)) / choose(lot, n);
const summed = (from: number, to: number, chance: (found: number) => number): number => {
  let sum = 0;
  for (let found = from; found <= to; found += 1) sum += chance(found);
  return sum;
};
const rejectedBy = (n: number, ac: number, lot: number, bad: number): number => summed(ac + 1, n, (found) => inLot(found, n, lot, bad));
const acceptedBy = (n: number, ac: number, lot: number, bad: number): number => summed(0, ac, (found) => inLot(found, n, lot, bad));

interface Lots { readonly lot: number; readonly good: number; readonly bad: number; readonly alpha: number; readonly beta: number }

/** The smallest single plan, by trying all. */
function singleByTrying({ lot, good, bad, alpha, beta }: Lots): readonly [number, number] {
  for (let n = 1; n <= lot; n += 1) {
    for (let ac = 0; ac < n; ac += 1) if (rejectedBy(n, ac, lot, good) <= alpha * SLACK && acceptedBy(n, ac, lot, bad) <= beta * SLACK) return [n, ac];
  }
  throw new Error('every piece with Ac at the good lot always meets both');
}

/** The smallest double plan with n2 = n1, by trying all; its average sample number at the good lot beside it. */
function doubleByTrying({ lot, good, bad, alpha, beta }: Lots): { readonly n1: number; readonly average: number } | null {
  for (let n1 = 1; 2 * n1 <= lot; n1 += 1) {
    let average = Infinity;
    for (let ac1 = 0; ac1 <= n1; ac1 += 1) {
      for (let ac2 = ac1 + 1; ac2 <= 2 * n1; ac2 += 1) {
        const acceptedOf = (D: number) => summed(0, ac1, (d) => inLot(d, n1, lot, D))
          + summed(ac1 + 1, Math.min(ac2, n1), (d) => inLot(d, n1, lot, D) * acceptedBy(n1, ac2 - d, lot - n1, D - d));
        if (acceptedOf(bad) > beta * SLACK || 1 - acceptedOf(good) > alpha * SLACK + 1e-14) continue;
        average = Math.min(average, n1 + n1 * summed(ac1 + 1, Math.min(ac2, n1), (d) => inLot(d, n1, lot, good)));
      }
    }
    if (average < Infinity) return { n1, average };
  }
  return null;
}

const RISKS = [[0.05, 0.1], [0.1, 0.05], [0.2, 0.2], [0.01, 0.1], [1 / 3, 0.25]] as const;

describe('in every lot of 2 to 24 pieces, with every pair of good and bad counts', () => {
  it.each(RISKS)('the single plan for risks %d and %d is the smallest there is, and no other Ac would do', (alpha, beta) => {
    for (let lot = 2; lot <= 24; lot += 1) {
      for (let good = 0; good < lot - 1; good += 1) {
        for (let bad = good + 1; bad < lot; bad += 1) {
          const plan = twoPointSingle({ p1: (good + 0.5) / lot, producerRisk: alpha, p2: (bad - 0.25) / lot, consumerRisk: beta, model: { kind: 'hypergeometric', lotSize: lot } });
          expect('none' in plan ? plan : [plan.n, plan.ac], `N ${lot}, ${good} and ${bad}`).toEqual(singleByTrying({ lot, good, bad, alpha, beta }));
        }
      }
    }
  });
});

describe('in every lot of 4 to 16 pieces, with every pair of good and bad counts', () => {
  it.each(RISKS)('the double plan for risks %d and %d has the smallest first sample there is, and looks at fewest pieces with it', (alpha, beta) => {
    for (let lot = 4; lot <= 16; lot += 1) {
      for (let good = 0; good < lot - 1; good += 1) {
        for (let bad = good + 1; bad < lot; bad += 1) {
          const plan = twoPointDouble({ p1: (good + 0.5) / lot, producerRisk: alpha, p2: (bad - 0.25) / lot, consumerRisk: beta, model: { kind: 'hypergeometric', lotSize: lot } });
          const tried = doubleByTrying({ lot, good, bad, alpha, beta });
          const where = `N ${lot}, ${good} and ${bad}`;
          if (tried === null || 'none' in plan) expect(plan, where).toEqual(tried === null ? { none: 'lotTooSmall' } : 'a plan');
          else {
            expect(plan.stages[0].sampleSize, where).toBe(tried.n1);
            expect(plan.averageAtP1, where).toBeCloseTo(tried.average, 10);
          }
        }
      }
    }
  });
});

const somePoints = fc.record({
  p1: fc.double({ min: 0.0005, max: 0.2, noNaN: true }),
  times: fc.double({ min: 1.6, max: 12, noNaN: true }),
  producerRisk: fc.double({ min: 0.005, max: 0.3, noNaN: true }),
  consumerRisk: fc.double({ min: 0.005, max: 0.3, noNaN: true }),
}).map(({ times, ...points }) => ({ ...points, p2: Math.min(0.95, points.p1 * times) }));
const someModel: fc.Arbitrary<RiskModel> = fc.oneof(
  fc.constant({ kind: 'binomial' } as const), fc.constant({ kind: 'poisson' } as const),
  fc.integer({ min: 50, max: 1_000_000 }).map((lotSize) => ({ kind: 'hypergeometric', lotSize }) as const),
);
const wholePieces = (model: RiskModel, { p1, p2 }: { readonly p1: number; readonly p2: number }) => (model.kind === 'hypergeometric'
  ? { good: Math.floor(p1 * model.lotSize) / model.lotSize, bad: Math.ceil(p2 * model.lotSize) / model.lotSize } : { good: p1, bad: p2 });

it('a single plan meets both points, reckoned by the risk room, and no acceptance number does so with one piece fewer', () => {
  fc.assert(fc.property(somePoints, someModel, (points, model) => {
    const plan = twoPointSingle({ ...points, model });
    if ('none' in plan) return expect(plan.none).toBe('tooLarge');
    const { good, bad } = wholePieces(model, points);
    const judged = (n: number, ac: number, p: number) => acceptance({ stages: [{ sampleSize: n, ac, re: ac + 1 }] }, model, p);
    expect(1 - judged(plan.n, plan.ac, good)).toBeLessThanOrEqual(points.producerRisk + 1e-12);
    expect(judged(plan.n, plan.ac, bad)).toBeLessThanOrEqual(points.consumerRisk * SLACK);
    for (let ac = 0; ac <= plan.ac + 2 && plan.n > 1; ac += 1) {
      const meets = 1 - judged(plan.n - 1, ac, good) <= points.producerRisk - 1e-12 && judged(plan.n - 1, ac, bad) <= points.consumerRisk;
      expect(meets, `n ${plan.n - 1}, Ac ${ac}`).toBe(false);
    }
  }), { seed: 20_301, numRuns: 300 });
});

it('a double plan meets both points, and on good goods its average stands between its bounds', () => {
  fc.assert(fc.property(somePoints, someModel, fc.constantFrom(0.5, 1, 2), (points, model, ratio) => {
    const plan = twoPointDouble({ ...points, model, ratio });
    if ('none' in plan) return;
    const [first, second] = plan.stages;
    const { good, bad } = wholePieces(model, points);
    expect(1 - acceptance(plan, model, good)).toBeLessThanOrEqual(points.producerRisk + 1e-12);
    expect(acceptance(plan, model, bad)).toBeLessThanOrEqual(points.consumerRisk * SLACK);
    expect(second.sampleSize).toBe(Math.max(1, Math.round(ratio * first.sampleSize)));
    expect(plan.averageAtP1).toBeGreaterThanOrEqual(first.sampleSize);
    expect(plan.averageAtP1).toBeLessThanOrEqual(first.sampleSize + second.sampleSize);
  }), { seed: 20_302, numRuns: 120 });
});

it('asking for less risk never makes a single plan smaller', () => {
  fc.assert(fc.property(somePoints, someModel, fc.double({ min: 0.2, max: 1, noNaN: true }), (points, model, part) => {
    const [loose, strict] = [twoPointSingle({ ...points, model }), twoPointSingle({ ...points, producerRisk: points.producerRisk * part, consumerRisk: points.consumerRisk * part, model })];
    if (!('none' in loose || 'none' in strict)) expect(strict.n).toBeGreaterThanOrEqual(loose.n);
  }), { seed: 20_303, numRuns: 300 });
});

it('a variables plan leaves room for k, and no smaller n does, down to the smallest', () => {
  fc.assert(fc.property(somePoints.filter(({ p1, p2 }) => p2 > 3 * p1), (points) => {
    const plan = twoPointVariables({ ...points, method: 's' });
    if ('none' in plan) return;
    expect(plan.producerRisk).toBeLessThanOrEqual(points.producerRisk * (1 + 1e-9));
    expect(plan.consumerRisk).toBeLessThanOrEqual(points.consumerRisk * (1 + 1e-9));
    for (let n = 3; n < plan.n; n += 1 + Math.floor(n / 12)) expect(hasRoom(points, n), `n ${n} below ${plan.n}`).toBe(false);
    if (plan.n > 3) expect(hasRoom(points, plan.n - 1)).toBe(false);
    const known = twoPointVariables({ ...points, method: 'sigma' });
    if (!('none' in known)) expect(known.n).toBeLessThanOrEqual(plan.n);
  }), { seed: 20_304, numRuns: 25 });
});

function hasRoom({ p1, producerRisk, p2, consumerRisk }: { readonly p1: number; readonly producerRisk: number; readonly p2: number; readonly consumerRisk: number }, n: number): boolean {
  const least = noncentralTAt(1 - consumerRisk, n - 1, -normalAt(p2) * Math.sqrt(n));
  return noncentralTBelow(least, n - 1, -normalAt(p1) * Math.sqrt(n)) <= producerRisk;
}

it('the risks and averages given beside a sequential plan are those of looking piece by piece', () => {
  fc.assert(fc.property(somePoints.filter(({ p1, p2 }) => p2 > 2 * p1 && p1 > 0.002), fc.integer({ min: 20, max: 1200 }), (points, lotSize) => {
    const { plan, ...reached } = twoPointSequential({ ...points, lotSize });
    const [good, bad] = [pieceByPiece(plan, points.p1), pieceByPiece(plan, points.p2)];
    expect(reached.producerRisk / good.rejected - 1).toBeCloseTo(0, 9);
    expect(1 - reached.consumerRisk).toBeCloseTo(bad.rejected, 10);
    expect([reached.averageAtP1 / good.average - 1, reached.averageAtP2 / bad.average - 1]).toEqual([expect.closeTo(0, 10), expect.closeTo(0, 10)]);
    expect(Math.max(reached.averageAtP1, reached.averageAtP2)).toBeLessThanOrEqual(plan.truncateAt);
  }), { seed: 20_305, numRuns: 80 });
});

it('a zero-acceptance size is the smallest, by trying, in every lot of 1 to 40 pieces', () => {
  for (let lot = 1; lot <= 40; lot += 1) {
    for (let bad = 1; bad <= lot; bad += 1) {
      for (const risk of [0.05, 0.1, 0.25]) {
        const tried = Array.from({ length: lot }, (_, at) => at + 1).find((n) => inLot(0, n, lot, bad) <= risk * SLACK);
        const size = zeroAcceptanceSize({ lotSize: lot, lq: bad / lot, consumerRisk: risk });
        expect(size, `N ${lot}, D ${bad}`).toMatchObject({ n: tried, ac: 0, re: 1, everyPiece: tried === lot });
        for (let ac = 0; ac < Math.min(bad, 3); ac += 1) {
          const n = Array.from({ length: lot }, (_, at) => at + 1).find((pieces) => acceptedBy(pieces, ac, lot, bad) <= risk * SLACK);
          expect(limitingQualitySize({ lotSize: lot, lq: bad / lot, consumerRisk: risk, ac }).n).toBe(n);
        }
      }
    }
  }
});
