import { describe, expect, it } from 'vitest';
import { alarmShare, averageRunLength, DRIFT_LAMBDAS, DRIFT_PROMISE, emptyDrift, ewmaHalfWidth, ewmaStep, limitFactorFor, LIMIT_FACTORS, ppPpkOf, watchDrift } from '../../shared/metrology/drift/index.ts';

/** NIST/SEMATECH e-Handbook of Statistical Methods 6.3.2.4, example: EWMA₀ = 50, s = 2.0539, λ = 0.3, k = 3 (from memory). */
const NIST = {
  values: [52.0, 47.0, 53.0, 49.3, 50.1, 47.0, 51.0, 50.1, 51.2, 50.5, 49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1],
  averages: [50.6, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33, 50.11, 49.36, 49.52, 50.05, 49.38, 49.92, 50.73, 51.23, 51.94, 51.99],
  lower: 47.4115, upper: 52.5884,
} as const;
const rule = { lambda: 0.3, limitFactor: 3, target: 50, sigma: 2.0539, resolution: 0 } as const;

describe('NIST e-Handbook 6.3.2.4', () => {
  it('the averages agree to the two decimals printed', () => {
    let average = 50;
    for (const [at, value] of NIST.values.entries()) {
      average = ewmaStep(average, value, 0.3);
      expect(Math.abs(average - (NIST.averages[at] ?? 0)), `value ${at + 1}`).toBeLessThanOrEqual(0.0051);
    }
  });
  it('the limits of the long run agree to the fourth decimal', () => {
    const half = ewmaHalfWidth(0.3, 3, 2.0539, Infinity);
    expect(Math.abs(50 + half - NIST.upper)).toBeLessThan(1.5e-4);
    expect(Math.abs(50 - half - NIST.lower)).toBeLessThan(1.5e-4);
  });
  it('the process is in control, and the watch takes the same averages', () => {
    const state = watchDrift(rule, emptyDrift(rule), NIST.values);
    expect(state.alarms).toBe(0);
    expect(Math.abs(state.ewma - 51.99)).toBeLessThan(0.0051);
  });
});

it('the first limits are those of one value: λ·L·σ', () => {
  expect(ewmaHalfWidth(0.2, 3, 1, 1)).toBeCloseTo(0.6, 14);
});

describe('average run length of charts with constant limits', () => {
  it.each([
    // Reference check list of the project: integral equation, 200 nodes, worked out apart from this code with numpy (derived).
    { lambda: 0.1, limitFactor: 2.814, shift: 0, length: 499.57955, source: 'integral equation, 200 nodes, numpy' },
    { lambda: 0.1, limitFactor: 2.814, shift: 0.5, length: 31.2974352, source: 'integral equation, 200 nodes, numpy' },
    { lambda: 0.1, limitFactor: 2.814, shift: 3, length: 2.86800351, source: 'integral equation, 200 nodes, numpy' },
    { lambda: 0.2, limitFactor: 2.962, shift: 0, length: 499.735122, source: 'integral equation, 200 nodes, numpy' },
    { lambda: 0.2, limitFactor: 3, shift: 0, length: 559.874075, source: 'integral equation, 200 nodes, numpy' },
    { lambda: 0.2, limitFactor: 3, shift: 1, length: 10.8358792, source: 'integral equation, 200 nodes, numpy' },
    { lambda: 0.3, limitFactor: 3, shift: 0, length: 465.553434, source: 'integral equation, 200 nodes, numpy' },
    { lambda: 0.25, limitFactor: 2.998, shift: 0.5, length: 48.2938751, source: 'integral equation, 200 nodes, numpy' },
  ])('λ=$lambda L=$limitFactor shift $shift: $length ($source)', ({ length, shift, ...chart }) => {
    expect(averageRunLength(chart, shift) / length - 1).toBeCloseTo(0, 7);
  });
  // Lucas & Saccucci, Technometrics 32 (1990) 1, as reprinted in textbooks (from memory): printed to three figures.
  it.each([
    { lambda: 0.4, limitFactor: 3.054, shift: 0, length: 500 }, { lambda: 0.4, limitFactor: 3.054, shift: 0.5, length: 71.2 }, { lambda: 0.4, limitFactor: 3.054, shift: 1, length: 14.3 },
    { lambda: 0.25, limitFactor: 2.998, shift: 1, length: 11.1 }, { lambda: 0.2, limitFactor: 2.962, shift: 0.5, length: 41.8 }, { lambda: 0.1, limitFactor: 2.814, shift: 1, length: 10.3 },
    { lambda: 0.05, limitFactor: 2.615, shift: 0, length: 500 }, { lambda: 0.05, limitFactor: 2.615, shift: 1, length: 11.4 },
  ])('Lucas & Saccucci 1990 (from memory): λ=$lambda L=$limitFactor shift $shift: $length', ({ length, shift, ...chart }) => {
    expect(Math.abs(averageRunLength(chart, shift) / length - 1)).toBeLessThan(0.006);
  });
  it('with λ = 1 it is a chart of single values: 1/(2Φ(−L)); Φ(−3.09) = 0.00100078 (normal tables, from memory)', () => {
    expect(averageRunLength({ lambda: 1, limitFactor: 3.09 }) / (1 / (2 * 0.00100078)) - 1).toBeCloseTo(0, 4);
  });
});

describe('the promise about false alarms', () => {
  it.each(DRIFT_LAMBDAS.map((lambda) => ({ lambda })))('L for λ = $lambda is the smallest to two decimals that keeps it', ({ lambda }) => {
    expect(LIMIT_FACTORS[lambda]).toBe(limitFactorFor(lambda, DRIFT_PROMISE.falseAlarmShare, DRIFT_PROMISE.pieces));
    expect(alarmShare({ lambda, limitFactor: LIMIT_FACTORS[lambda] }, DRIFT_PROMISE.pieces)).toBeLessThanOrEqual(DRIFT_PROMISE.falseAlarmShare);
  });
});

it('Pp and Ppk by hand: mean 10.2, s 0.1 between 9.9 and 10.4', () => {
  const { pp, ppk } = ppPpkOf({ mean: 10.2, s: 0.1 }, { lower: 9.9, upper: 10.4 });
  expect(pp).toBeCloseTo(0.5 / 0.6, 12);
  expect(ppk).toBeCloseTo(0.2 / 0.3, 12);
});
