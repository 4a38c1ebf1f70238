import { describe, expect, it } from 'vitest';
import { emptyDrift, sigmaOf, watchDrift } from '../../../shared/metrology/drift/index.ts';
import { normalValues } from '../../property/metrology/normal-values.ts';

const rule = { lambda: 0.05, limitFactor: 5.12, target: 10, sigma: null, resolution: 0.001 };
const normal = (seed: number, count: number, mean = 10): number[] => {
  const next = normalValues(seed);
  return Array.from({ length: count }, () => Number((mean + 0.008 * next()).toFixed(3)));
};

describe('one weighing that is none of a single piece', () => {
  it.each([['two pieces on the pan', 20], ['an empty pan', 0.002]])('%s: tells no drift, and leaves σ as it was', (_what, value) => {
    const before = watchDrift(rule, emptyDrift(rule), normal(5, 500));
    const after = watchDrift(rule, before, [value, ...normal(6, 500)]);
    expect(after.alarms).toBe(0);
    // By hand: two steps of √2·6σ more among 1,000 of √2·σ make σ larger by √(1 + 72/1000), about 3.5 %.
    expect(sigmaOf(rule, after) / sigmaOf(rule, before)).toBeLessThan(1.1);
  });
  it('does not hide a drift that follows it', () => {
    const steady = watchDrift(rule, emptyDrift(rule), [...normal(5, 500), 20, ...normal(6, 200)]);
    const next = normalValues(7);
    const drifting = Array.from({ length: 600 }, (_, at) => Number((10 + at * 0.00005 + 0.008 * next()).toFixed(3)));
    expect(watchDrift(rule, steady, drifting).alarm).toMatchObject({ side: 'above', ended: null });
  });
  it('a jump of the mean far beyond 6 σ is still told within four pieces', () => {
    const before = watchDrift(rule, emptyDrift(rule), normal(5, 500));
    expect(watchDrift(rule, before, normal(8, 4, 11)).alarm).toMatchObject({ side: 'above' });
  });
});
