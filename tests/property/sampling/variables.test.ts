import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalAt } from '../../../shared/sampling/chance/index.ts';
import { judgeVariables, percentNonconforming, pointsVariablesPlan, sigmaMethodPlan, sMethodPlan, smallestVariablesPlan, variablesAcceptance, VARIABLES_AQLS, VARIABLES_LEVELS, variablesPlan } from '../../../shared/sampling/variables/index.ts';

const seeded = { seed: 20261125, numRuns: 60 };
const request = fc.record({ lotSize: fc.integer({ min: 3, max: 200_000 }), level: fc.constantFrom(...VARIABLES_LEVELS), aqlPercent: fc.constantFrom(...VARIABLES_AQLS.slice(1)) });
const fraction = fc.double({ min: 0.0005, max: 0.6, noNaN: true });

describe('variables plans', () => {
  it('accept less the more is nonconforming, whatever method and number of limits', () => {
    fc.assert(fc.property(request, fraction, fraction, fc.option(fc.double({ min: 0.05, max: 0.95, noNaN: true })), fc.boolean(), (asked, a, b, lowerShare, known) => {
      const plan = (known ? sigmaMethodPlan : sMethodPlan)({ ...asked, severity: 'normal' });
      const judging = { sampleSize: plan.tableSampleSize, k: plan.k, mPercent: plan.mPercent, ...(known ? { method: 'sigma' as const, sigma: 1 } : {}) };
      const at = (p: number): number => variablesAcceptance(judging, { p, ...(lowerShare === null ? {} : { lowerShare }) });
      const [fewer, more] = [at(Math.min(a, b)), at(Math.max(a, b))];
      expect(more).toBeLessThanOrEqual(fewer + 1e-12);
      expect(more).toBeGreaterThanOrEqual(0);
      expect(fewer).toBeLessThanOrEqual(1 + 1e-12);
    }), seeded);
  });

  it('never accept more on tightened inspection than on normal', () => {
    fc.assert(fc.property(request, fraction, (asked, p) => {
      const [normal, tightened] = [variablesPlan({ ...asked, severity: 'normal' }), variablesPlan({ ...asked, severity: 'tightened' })];
      // An arrow may lead tightened inspection to a larger sample, whose curve crosses.
      fc.pre(normal.letter === tightened.letter);
      expect(variablesAcceptance({ ...tightened, sampleSize: tightened.tableSampleSize }, { p })).toBeLessThanOrEqual(variablesAcceptance({ ...normal, sampleSize: normal.tableSampleSize }, { p }) + 1e-12);
    }), seeded);
  });

  it('ask for fewer pieces where σ is known', () => {
    fc.assert(fc.property(request, (asked) => {
      expect(sigmaMethodPlan({ ...asked, severity: 'normal' }).tableSampleSize).toBeLessThan(sMethodPlan({ ...asked, severity: 'normal' }).tableSampleSize);
    }), seeded);
  });

  it('through two points meet both, and none of fewer pieces does (every smaller n, every k on a fine grid)', () => {
    fc.assert(fc.property(fc.double({ min: 0.002, max: 0.05, noNaN: true }), fc.double({ min: 4, max: 12, noNaN: true }), fc.constantFrom('s' as const, 'sigma' as const), (p1, times, method) => {
      const points = { p1, producerRisk: 0.05, p2: Math.min(0.5, p1 * times), consumerRisk: 0.1 };
      const found = smallestVariablesPlan({ ...points, method });
      if ('none' in found) throw new Error('no plan');
      const pa = (n: number, k: number, p: number): number => variablesAcceptance({ sampleSize: n, k, mPercent: 50, ...(method === 'sigma' ? { method, sigma: 1 } : {}) }, { p });
      expect(pa(found.n, found.k, points.p1)).toBeGreaterThanOrEqual(0.95 - 1e-12);
      expect(pa(found.n, found.k, points.p2)).toBeLessThanOrEqual(0.1 + 1e-12);
      const least = method === 's' ? 3 : 2;
      for (let n = Math.max(least, found.n - 3); n < found.n; n += 1) {
        for (let k = found.k - 0.5; k <= found.k + 0.5; k += 0.02) expect(pa(n, k, points.p1) >= 0.95 && pa(n, k, points.p2) <= 0.1, `n ${n} k ${k}`).toBe(false);
      }
    }), { ...seeded, numRuns: 12 });
  });
});

describe('judging by variables', () => {
  const readings = fc.array(fc.double({ min: -3, max: 3, noNaN: true }), { minLength: 3, maxLength: 20 });

  it('gives one limit the same verdict by k and by the M that belongs to it', () => {
    fc.assert(fc.property(readings, fc.double({ min: 0, max: 4, noNaN: true }), fc.double({ min: -0.2, max: 2.5, noNaN: true }), (values, upper, k) => {
      const n = values.length;
      const plan = { sampleSize: n, k, mPercent: percentNonconforming(k, n) };
      const byK = judgeVariables({ values, upper, plan });
      fc.pre(byK.form === 'k' && Math.abs(byK.statistic - k) > 1e-9 && k < (n - 1) / Math.sqrt(n));
      expect(judgeVariables({ values, upper, plan: { ...plan, form: 'M' } }).accepted).toBe(byK.accepted);
    }), { ...seeded, numRuns: 300 });
  });

  it('needs every side to pass where each has its AQL', () => {
    fc.assert(fc.property(readings, fc.constantFrom('k' as const, 'M' as const), (values, form) => {
      const side = (k: number) => ({ aqlPercent: 1, k, mPercent: percentNonconforming(k, values.length) });
      const separate = { lower: side(0.3), upper: side(0.6) };
      const verdict = judgeVariables({ values, lower: -3.5, upper: 3, plan: { sampleSize: values.length, k: 0.6, mPercent: separate.lower.mPercent, form, separate } });
      const parts = verdict.separate;
      if (parts === undefined) throw new Error('no parts');
      expect(verdict.accepted).toBe(parts.lower.accepted && parts.upper.accepted && (parts.together?.accepted ?? true));
      if (!verdict.accepted) expect(parts[parts.shown]?.accepted).toBe(false);
    }), { ...seeded, numRuns: 200 });
  });
});

it.each([
  { n: 3, mPercent: 7.59, p: 0.05, lowerShare: 0.3 }, { n: 3, mPercent: 40.47, p: 0.3, lowerShare: 0.5 }, { n: 3, mPercent: 33.69, p: 0.45, lowerShare: 0.5 }, { n: 4, mPercent: 16.45, p: 0.1, lowerShare: 0.5 },
])('the exact two-limit acceptance lies where 40 000 seeded samples judged by the very rule put it: n $n, M $mPercent, p $p', ({ n, mPercent, p, lowerShare }) => {
  const [zLower, zUpper] = [-normalAt(p * lowerShare), -normalAt(p * (1 - lowerShare))];
  const sigma = 1 / (zLower + zUpper);
  let state = 20261125;
  const uniform = (): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
  const plan = { sampleSize: n, k: 1, mPercent };
  const lots = 40_000;
  let accepted = 0;
  for (let lot = 0; lot < lots; lot += 1) {
    const values = Array.from({ length: n }, () => zLower * sigma + sigma * normalAt(uniform()));
    if (judgeVariables({ values, lower: 0, upper: 1, plan }).accepted) accepted += 1;
  }
  const exact = variablesAcceptance(plan, { p, lowerShare });
  // Four standard errors of the simulated share.
  expect(Math.abs(accepted / lots - exact)).toBeLessThanOrEqual(4 * Math.sqrt((exact * (1 - exact)) / lots));
});

it('a plan through two points is cut down to the lot, and its M is the same rule as its k', () => {
  const points = { p1Percent: 1, producerRisk: 0.05, p2Percent: 6, consumerRisk: 0.1 };
  expect(pointsVariablesPlan({ lotSize: 1000, points })).toMatchObject({ origin: 'points', sampleSize: 42, everyPiece: false, aqlPercent: 1 });
  expect(pointsVariablesPlan({ lotSize: 30, points })).toMatchObject({ sampleSize: 30, tableSampleSize: 42, everyPiece: true });
  expect(pointsVariablesPlan({ lotSize: 1000, points: { ...points, p2Percent: 1.05 } })).toBeNull();
});
