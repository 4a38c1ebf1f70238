import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as chance from '../../../shared/sampling/chance/index.ts';
import { OutsideDomain } from '../../../shared/ground/outside-domain.ts';

const runs = { numRuns: 2000, seed: 2859 };
const size = fc.oneof(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 1, max: 1_000_000_000 }));
const fraction = fc.oneof(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: -300, max: 0, noNaN: true }).map((power) => 10 ** power), fc.constantFrom(0, 1, Number.MIN_VALUE, 1 - 2 ** -53));
const anyWhole = fc.oneof(fc.integer({ min: -3, max: 70 }), fc.maxSafeInteger());

/** n, p and a count, mostly within some standard deviations of the mean. */
const binomialCase = fc.record({ n: size, p: fraction, off: fc.double({ min: -12, max: 12, noNaN: true }), wild: anyWhole, near: fc.boolean() }).map(({ n, p, off, wild, near }) => ({
  n, p, k: near ? Math.round(n * p + off * Math.sqrt(n * p * (1 - p) + 1)) : wild,
}));
const drawCase = fc.record({ N: size, a: fraction, b: fraction, off: fc.double({ min: -12, max: 12, noNaN: true }), wild: anyWhole, near: fc.boolean() }).map(({ N, a, b, off, wild, near }) => {
  const [n, D] = [Math.round(a * N), Math.round(b * N)];
  return { N, n, D, k: near ? Math.round(n * b + off * Math.sqrt(n * b * (1 - b) * (1 - a) + 1)) : wild };
});
const shape = fc.oneof(fc.double({ min: 0.5, max: 50, noNaN: true }), fc.double({ min: -0.3, max: 9, noNaN: true }).map((power) => 10 ** power));
const df = fc.oneof(fc.integer({ min: 1, max: 200 }), fc.double({ min: 0, max: 9, noNaN: true }).map((power) => 10 ** power));

function expectTails(lower: number, upper: number): void {
  for (const tail of [lower, upper]) {
    expect(tail).toBeGreaterThanOrEqual(0);
    expect(tail).toBeLessThanOrEqual(1);
  }
  expect(Math.abs(lower + upper - 1)).toBeLessThanOrEqual(1e-12);
}

describe('the two tails are fractions and make 1, over the whole domain', () => {
  it('binomial, and one count more or a smaller p never accepts less', () => {
    fc.assert(fc.property(binomialCase, fraction, ({ k, n, p }, share) => {
      const atMost = chance.binomialAtMost(k, n, p);
      expectTails(atMost, chance.binomialMoreThan(k, n, p));
      expect(chance.binomialAtMost(k + 1, n, p)).toBeGreaterThanOrEqual(atMost * (1 - 1e-12));
      expect(chance.binomialAtMost(k, n, p * share)).toBeGreaterThanOrEqual(atMost * (1 - 1e-12));
      expect(chance.binomialExactly(k, n, p)).toBeLessThanOrEqual(atMost + 1e-12);
    }), runs);
  });

  it('hypergeometric, the same with sample and nonconforming changed over, and never better with one more nonconforming', () => {
    fc.assert(fc.property(drawCase, ({ k, n, N, D }) => {
      const atMost = chance.hypergeometricAtMost(k, n, N, D);
      expectTails(atMost, chance.hypergeometricMoreThan(k, n, N, D));
      expect(chance.hypergeometricAtMost(k + 1, n, N, D)).toBeGreaterThanOrEqual(atMost * (1 - 1e-12));
      if (D < N) expect(chance.hypergeometricAtMost(k, n, N, D + 1)).toBeLessThanOrEqual(atMost * (1 + 1e-12) + 1e-300);
      const turned = chance.hypergeometricAtMost(k, D, N, n);
      if (atMost > 1e-300) expect(Math.abs(turned / atMost - 1)).toBeLessThanOrEqual(1e-12);
      const one = chance.hypergeometricExactly(k, n, N, D);
      expect(one).toBeGreaterThanOrEqual(0);
      expect(one).toBeLessThanOrEqual(atMost * (1 + 1e-12));
    }), { ...runs, numRuns: 600 });
  });

  it('Poisson, gamma and chi-square', () => {
    fc.assert(fc.property(anyWhole, shape, fraction, fc.double({ min: -12, max: 12, noNaN: true }), (k, a, share, off) => {
      const mean = Math.max(0, Math.min(1e9, a + off * Math.sqrt(a)));
      for (const count of [Math.min(k, Number.MAX_SAFE_INTEGER - 1), Math.floor(a)]) {
        expectTails(chance.poissonAtMost(count, mean), chance.poissonMoreThan(count, mean));
        expectTails(chance.poissonAtMost(count, mean * share), chance.poissonMoreThan(count, mean * share));
        expect(chance.poissonExactly(count, mean)).toBeLessThanOrEqual(1);
      }
      for (const x of [mean, mean * share, mean / Math.max(share, 1e-9)]) {
        expectTails(chance.gammaBelow(a, x), chance.gammaAbove(a, x));
        expectTails(chance.chiSquareBelow(x, 2 * Math.min(a, 5e8)), chance.chiSquareAbove(x, 2 * Math.min(a, 5e8)));
      }
    }), { ...runs, numRuns: 1000 });
  });

  it('beta and Student t', () => {
    fc.assert(fc.property(fraction, shape, shape, df, fc.double({ min: -150, max: 150, noNaN: true }), (x, a, b, freedom, power) => {
      for (const place of [x, a / (a + b)]) expectTails(chance.betaBelow(place, a, b), chance.betaAbove(place, a, b));
      for (const t of [10 ** power, -(10 ** (power / 100)), 0]) expectTails(chance.studentBelow(t, freedom), chance.studentAbove(t, freedom));
    }), { ...runs, numRuns: 1000 });
  });

  it('normal', () => {
    fc.assert(fc.property(fc.oneof(fc.double({ min: -45, max: 45, noNaN: true }), fc.double({ min: -1e300, max: 1e300, noNaN: true })), (z) => {
      expectTails(chance.normalBelow(z), chance.normalAbove(z));
      expect(chance.normalBelow(z + Math.abs(z) * 1e-6)).toBeGreaterThanOrEqual(chance.normalBelow(z) * (1 - 1e-13));
    }), runs);
  });

  it('noncentral t, at plan sizes and far outside them, and never more below with a larger delta', () => {
    const wide = fc.double({ min: -6, max: 6, noNaN: true }).map((power) => Math.sign(power) * 10 ** Math.abs(power));
    const place = fc.oneof(fc.double({ min: -60, max: 60, noNaN: true }), wide);
    fc.assert(fc.property(place, df, place, fc.double({ min: 0, max: 3, noNaN: true }), (t, freedom, anyDelta, more) => {
      const most = Math.min(1e6, 100 * Math.sqrt(freedom));
      const delta = Math.max(-most, Math.min(most, anyDelta));
      const below = chance.noncentralTBelow(t, freedom, delta);
      expectTails(below, chance.noncentralTAbove(t, freedom, delta));
      expect(chance.noncentralTBelow(t, freedom, Math.min(most, delta + more))).toBeLessThanOrEqual(below * (1 + 1e-10) + 1e-300);
    }), { ...runs, numRuns: 1000 });
  });
});

describe('one function through another', () => {
  it('binomial tails are incomplete beta functions, worked out another way', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 40_000 }), fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true }), fc.double({ min: -9, max: 9, noNaN: true }), (n, p, off) => {
      const k = Math.round(n * p + off * Math.sqrt(n * p * (1 - p)));
      if (k < 0 || k >= n) return;
      expect(Math.abs(chance.binomialMoreThan(k, n, p) / chance.betaBelow(p, k + 1, n - k) - 1)).toBeLessThanOrEqual(1e-12);
      expect(Math.abs(chance.binomialAtMost(k, n, p) / chance.betaAbove(p, k + 1, n - k) - 1)).toBeLessThanOrEqual(1e-12);
    }), runs);
  });

  it('noncentral t with delta 0 is Student t', () => {
    fc.assert(fc.property(fc.double({ min: -50, max: 50, noNaN: true }), df, (t, freedom) => {
      const student = chance.studentBelow(t, freedom);
      if (student > 1e-290) expect(Math.abs(chance.noncentralTBelow(t, freedom, 0) / student - 1)).toBeLessThanOrEqual(2e-12);
    }), { ...runs, numRuns: 500 });
  });

  it('a sample of everything finds what is there', () => {
    fc.assert(fc.property(size, fraction, (N, share) => {
      const D = Math.round(N * share);
      expect(chance.hypergeometricExactly(D, N, N, D)).toBeCloseTo(1, 11);
      expect([chance.hypergeometricAtMost(D, N, N, D), chance.hypergeometricAtMost(D - 1, N, N, D)]).toEqual([1, 0]);
    }), runs);
  });
});

describe('quantiles lead back', () => {
  const probability = fc.oneof(fc.double({ min: 1e-12, max: 1 - 1e-12, noNaN: true }), fc.double({ min: -250, max: -1, noNaN: true }).map((power) => 10 ** power));
  /** Back to the probability, as far as the nearest doubles to the place allow: `slope` is d ln P / d ln place. */
  function expectBack(again: number, wanted: number, allowed: number): void {
    expect(Math.abs(again / wanted - 1), `${again} for ${wanted}`).toBeLessThanOrEqual(allowed);
  }

  it('normal, Student t, chi-square, beta', () => {
    fc.assert(fc.property(probability, df, fc.double({ min: 0.5, max: 300, noNaN: true }), fc.double({ min: 0.5, max: 300, noNaN: true }), (wanted, freedom, a, b) => {
      expectBack(chance.normalBelow(chance.normalAt(wanted)), wanted, 1e-12);
      const t = chance.studentAt(wanted, freedom);
      if (Math.abs(t) < 1e149) expectBack(chance.studentBelow(t, freedom), wanted, 1e-11);
      const x = chance.chiSquareAt(wanted, Math.min(freedom, 1e4));
      if (x > 1e-290) expectBack(chance.chiSquareBelow(x, Math.min(freedom, 1e4)), wanted, 1e-10);
      const share = chance.betaAt(wanted, a, b);
      if (share > 1e-290 && share < 0.999) expectBack(chance.betaBelow(share, a, b), wanted, 1e-11);
    }), { ...runs, numRuns: 1000 });
  });

  it('noncentral t', () => {
    const wide = fc.double({ min: 1e-9, max: 1 - 1e-9, noNaN: true });
    fc.assert(fc.property(wide, fc.integer({ min: 3, max: 2000 }), fc.double({ min: -60, max: 60, noNaN: true }), (wanted, freedom, delta) => {
      expectBack(chance.noncentralTBelow(chance.noncentralTAt(wanted, freedom, delta), freedom, delta), wanted, 1e-10);
    }), { ...runs, numRuns: 60 });
  });
});

it('says which argument lies outside the domain', () => {
  const outside = [
    () => chance.binomialAtMost(1, 10, 1.5), () => chance.binomialAtMost(1.5, 10, 0.5), () => chance.binomialExactly(1, 2e9, 0.5), () => chance.hypergeometricAtMost(1, 11, 10, 3), () => chance.hypergeometricMoreThan(1, 5, 10, 11),
    () => chance.poissonAtMost(1, -1), () => chance.betaBelow(0.5, 0.1, 2), () => chance.gammaAbove(0, 1), () => chance.normalAt(0), () => chance.normalAt(1), () => chance.normalBelow(NaN), () => chance.studentBelow(0, 0.5),
    () => chance.noncentralTBelow(Infinity, 5, 1), () => chance.noncentralTAt(1e-300, 1, 0), () => chance.logGamma(0), () => chance.logChoose(3, 4), () => chance.chiSquareAt(1, 3), () => chance.betaAt(-0.1, 2, 2), () => chance.studentAt(0, 3),
  ];
  for (const call of outside) expect(call).toThrow(OutsideDomain);
});
