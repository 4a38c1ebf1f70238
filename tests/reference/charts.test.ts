import { describe, expect, it } from 'vitest';
import { countedLine, estimateCountedBase, estimateMeasuredBase, exactLimits, measuredLines, signalsOf } from '../../shared/metrology/charts/index.ts';
import type { ChartLine, MeasuredPoint } from '../../shared/metrology/charts/index.ts';
import { summarise } from '../../shared/metrology/summary/index.ts';
import { readCsv } from './read-csv.ts';

const single = (mean: number): MeasuredPoint => ({ n: 1, mean, s: null, range: null });
const line = (lines: readonly ChartLine[], at: number): ChartLine['points'] => lines[at]?.points ?? [];
const values = (lines: readonly ChartLine[], at: number): number[] => line(lines, at).map(({ value }) => value);

describe('piston-ring diameters, 25 samples of 5 (Montgomery, Introduction to Statistical Quality Control, early editions; memory, totals confirmed)', () => {
  const rings = readCsv('chart-piston-rings.csv').map((row) => summarise(['x1', 'x2', 'x3', 'x4', 'x5'].map((name) => Number(row[name]))));

  it('are those whose sums are known: means 1850.0294, ranges 0.581, s 0.2350', () => {
    const sum = (pick: (each: (typeof rings)[number]) => number): number => rings.reduce((total, each) => total + pick(each), 0);
    expect(sum(({ mean }) => mean)).toBeCloseTo(1850.0294, 4);
    expect(sum(({ range }) => range)).toBeCloseTo(0.581, 9);
    expect(sum(({ s }) => s ?? 0)).toBeCloseTo(0.235, 4);
  });

  it.each([
    { kind: 'meanAndRange' as const, sigma: 0.0099917, mean: [73.987771, 74.014581], spread: [0, 0.049141] },
    { kind: 'meanAndS' as const, sigma: 0.0099996, mean: [73.98776, 74.014592], spread: [0, 0.019636] },
  ])('$kind: limits $mean and $spread, σ $sigma, every point inside', ({ kind, sigma, mean, spread }) => {
    const base = estimateMeasuredBase({ kind }, rings);
    expect(base.centre).toBeCloseTo(74.001176, 6);
    expect(base.sigma).toBeCloseTo(sigma, 7);
    const lines = measuredLines({ kind }, rings, base);
    for (const [at, [lower, upper]] of [mean, spread].entries()) {
      const first = line(lines, at)[0];
      expect(first?.lower).toBeCloseTo(lower ?? 0, 6);
      expect(first?.upper).toBeCloseTo(upper ?? 0, 6);
    }
    expect(signalsOf(lines, ['beyondLimits'])).toEqual([]);
  });
});

describe('individuals, NIST/SEMATECH e-Handbook 6.3.2.2: flow rate (memory, confirmed by computation; exact d2)', () => {
  const points = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1].map(single);
  const base = estimateMeasuredBase({ kind: 'individuals' }, points);
  const lines = measuredLines({ kind: 'individuals' }, points, base);

  it('mean 50.81, limits 45.8176 and 55.8024 (45.8159 and 55.8041 with d2 rounded to 1.128)', () => {
    expect(base.centre).toBeCloseTo(50.81, 10);
    expect(line(lines, 0)[0]?.lower).toBeCloseTo(45.8176, 4);
    expect(line(lines, 0)[0]?.upper).toBeCloseTo(55.8024, 4);
  });
  it('moving ranges, mean 1.8778, upper limit 3.2665 times that', () => {
    const expected = [2, 2.3, 1.4, 3.5, 3.4, 1.4, 0.2, 1.2, 1.5];
    expect(values(lines, 1)).toHaveLength(expected.length);
    for (const [at, value] of values(lines, 1).entries()) expect(value).toBeCloseTo(expected[at] ?? Number.NaN, 10);
    expect(line(lines, 1)[0]?.centre).toBeCloseTo(1.8778, 4);
    // The handbook's 6.1347 has D4 rounded to 3.267.
    expect(Math.abs((line(lines, 1)[0]?.upper ?? 0) - 6.1347)).toBeLessThan(0.0015);
    expect(signalsOf(lines, ['beyondLimits'])).toEqual([]);
  });
});

describe('CUSUM, NIST/SEMATECH e-Handbook 6.3.2.3: target 325, k 0.3175, h 4.1959, σ 0.635 (memory, confirmed; data quoted)', () => {
  const means = [324.925, 324.675, 324.725, 324.35, 325.35, 325.225, 324.125, 324.525, 325.225, 324.6, 324.625, 325.15, 328.325, 327.25, 327.825, 328.5, 326.675, 327.775, 326.875, 328.35];
  const lines = measuredLines({ kind: 'cusum', k: 0.3175 / 0.635, h: 4.1959 / 0.635, spread: 'betweenLots' }, means.map(single), { centre: 325, sigma: 0.635 });
  const high = [0, 0, 0, 0, 0.0325, 0, 0, 0, 0, 0, 0, 0, 3.0075, 4.94, 7.4475, 10.63, 11.9875, 14.445, 16.0025, 19.035];
  const low = [0, 0.0075, 0, 0.3325, 0, 0, 0.5575, 0.715, 0.1725, 0.255, 0.3125, 0, 0, 0, 0, 0, 0, 0, 0, 0];

  it('both sums, point by point', () => {
    for (const [at, [up, down]] of high.map((value, point) => [value, low[point] ?? Number.NaN] as const).entries()) {
      expect((values(lines, 0)[at] ?? 0) * 0.635).toBeCloseTo(up, 9);
      expect((values(lines, 1)[at] ?? 0) * 0.635).toBeCloseTo(down, 9);
    }
  });
  it('speaks first at group 14, upwards, and at each one after', () => {
    expect(signalsOf(lines, ['beyondLimits']).map(({ at, line: name }) => `${at + 1} ${name}`)).toEqual([14, 15, 16, 17, 18, 19, 20].map((group) => `${group} cusumUp`));
  });
  it('begins anew where it is told to', () => {
    const again = measuredLines({ kind: 'cusum', k: 0.5, h: 5, spread: 'betweenLots' }, means.map(single), { centre: 325, sigma: 0.635 }, [13]);
    expect((values(again, 0)[13] ?? 0) * 0.635).toBeCloseTo(327.25 - 325 - 0.3175, 9);
  });
});

describe('EWMA, NIST/SEMATECH e-Handbook 6.3.2.4: λ 0.3, centre 50, σ 2.0539 (data and printed series seen as quoted)', () => {
  const points = [52, 47, 53, 49.3, 50.1, 47, 51, 50.1, 51.2, 50.5, 49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1].map(single);
  const lines = measuredLines({ kind: 'ewma', lambda: 0.3, width: 3, spread: 'betweenLots' }, points, { centre: 50, sigma: 2.0539 });

  it('the printed series to two decimals', () => {
    const printed = [50.6, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33, 50.11, 49.36, 49.52, 50.05, 49.38, 49.92, 50.73, 51.23, 51.94, 51.99];
    for (const [at, value] of printed.entries()) expect(Math.abs((values(lines, 0)[at] ?? 0) - value), `${at + 1}`).toBeLessThanOrEqual(0.0051);
  });
  it('limits widen from 48.1515 … 51.8485 at the first lot (computed) towards 47.4116 … 52.5884 (printed 47.4115)', () => {
    const widening: readonly (readonly [number, number])[] = [[51.8485, 48.1515], [52.2564, 47.7436], [52.4314, 47.5686], [52.5127, 47.4873], [52.5516, 47.4484]];
    for (const [at, [upper, lower]] of widening.entries()) {
      expect(line(lines, 0)[at]?.upper).toBeCloseTo(upper, 4);
      expect(line(lines, 0)[at]?.lower).toBeCloseTo(lower, 4);
    }
    expect(Math.abs((line(lines, 0)[19]?.upper ?? 0) - 52.5884)).toBeLessThan(1e-3);
    expect(signalsOf(lines, ['beyondLimits'])).toEqual([]);
  });
  it('with lots of unequal n the variance is followed lot by lot: n 4 then 16 from σ 2 (by hand: z variance 0.09 and 0.0666)', () => {
    const [first, second] = line(measuredLines({ kind: 'ewma', lambda: 0.3, width: 3, spread: 'withinLots' }, [{ ...single(10), n: 4 }, { ...single(10), n: 16 }], { centre: 10, sigma: 2 }), 0);
    expect(first?.upper).toBeCloseTo(10 + 3 * Math.sqrt(0.09 * 1), 12);
    expect(second?.upper).toBeCloseTo(10 + 3 * Math.sqrt(0.09 * 0.25 + 0.49 * 0.09), 12);
  });
});

describe('counts', () => {
  it('p: centre all found over all looked at, limits p ± 3√(p(1 − p)/n) by hand, no lower limit where it would be below 0', () => {
    const lots = [{ of: 80, count: 4 }, { of: 125, count: 9 }, { of: 50, count: 12 }];
    const base = estimateCountedBase(lots);
    expect(base.centre).toBe(25 / 255);
    const { points } = countedLine({ kind: 'p', limits: 'threeSigma' }, lots, base);
    expect(points[1]?.upper).toBeCloseTo(25 / 255 + 3 * Math.sqrt((25 / 255) * (230 / 255) / 125), 12);
    expect(points[0]?.lower).toBeNull();
    expect(signalsOf([{ name: 'share', points }], ['beyondLimits'])).toEqual([{ line: 'share', rule: 'beyondLimits', side: 'above', at: 2, from: 2 }]);
  });

  it.each(readCsv('chart-exact-limits.csv'))('exact limits by the $law law at n $of, centre $centre: $lower and $upper (scipy)', (row) => {
    const expected = { lower: row['lower'] === '' ? null : Number(row['lower']), upper: Number(row['upper']) };
    expect(exactLimits(row['law'] === 'binom', Number(row['of']), Number(row['centre']))).toEqual(expected);
  });
});
