import { expect, it } from 'vitest';
import { sideIndex } from '../../shared/metrology/capability/index.ts';

/** Edges by root finding on scipy 1.10's noncentral t (stats.nct), for means so far from the limit that Φ of it is nothing: N values, df, distance in s, confidence, edges. */
it.each([
  [30, 29, 110, 0.95, 81.8236146999556, 138.12248304222763], [30, 29, 26, 0.95, 19.330411232511764, 32.65566900717618], [8, 7, 60, 0.95, 29.470951643450093, 90.75454504058845],
  [30, 29, -110, 0.9, -133.2554432830469, -85.95533780140717], [9, 1, 40, 0.95, 1.2535560991077304, 89.6592221094972], [200, 150, 30, 0.99, 25.58621328577941, 34.502289174318285],
])('the interval of a limit far away: %i values, %i df, %f s, confidence %f', (values, df, distance, confidence, low, high) => {
  const index = sideIndex('upper', 5 + distance * 0.01, { mean: 5, s: 0.01, values, df }, confidence);
  expect(index.value).toBeCloseTo(distance / 3, 6);
  expect(Math.abs(3 * index.low - low) / Math.abs(distance)).toBeLessThan(df < 7 ? 2e-4 : 3e-5);
  expect(Math.abs(3 * index.high - high) / Math.abs(distance)).toBeLessThan(df < 7 ? 2e-4 : 3e-5);
  expect(index.low < index.value && index.value < index.high).toBe(true);
});

it('goes on without a step where the law of the noncentral t ends', () => {
  const around = [24.999_999, 25.000_001].map((ofRoot) => sideIndex('upper', ofRoot * Math.sqrt(29 / 30), { mean: 0, s: 1, values: 30, df: 29 }, 0.95));
  expect(Math.abs((around[0]?.high ?? 0) - (around[1]?.high ?? 1))).toBeLessThan(1e-3);
  expect(Math.abs((around[0]?.low ?? 0) - (around[1]?.low ?? 1))).toBeLessThan(1e-3);
});
