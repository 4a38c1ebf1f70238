import { describe, expect, it } from 'vitest';
import { CHART_RULES, measuredLines, signalsAt } from '../../shared/metrology/charts/index.ts';
import type { ChartRule, LinePoint, MeasuredChart, MeasuredPoint } from '../../shared/metrology/charts/index.ts';
import { diceFrom } from '../../shared/sampling/draw/dice.ts';
import { normalAbove } from '../../shared/sampling/chance/index.ts';

/** Standard normal values from seeded dice, by Box and Muller. */
function normals(seed: string): () => number {
  const dice = diceFrom(seed);
  const share = (): number => (dice.roll(2 ** 32) - 0.5) / 2 ** 32;
  let kept: number | null = null;
  return () => {
    if (kept !== null) {
      const value = kept;
      kept = null;
      return value;
    }
    const [radius, angle] = [Math.sqrt(-2 * Math.log(share())), 2 * Math.PI * share()];
    kept = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
}

/** Mean number of points to the first signal, and its standard error, over `runs` runs of steady values of mean `shift`. */
function runLength(runs: number, rules: readonly ChartRule[], shift: number, seed: string): { readonly mean: number; readonly error: number } {
  const draw = normals(seed);
  const lengths = Array.from({ length: runs }, () => {
    const points: LinePoint[] = [];
    for (;;) {
      points.push({ at: points.length, value: shift + draw(), centre: 0, lower: -3, upper: 3, sigma: 1 });
      if (signalsAt({ name: 'mean', points }, points.length - 1, rules).length > 0) return points.length;
    }
  });
  return meanAndError(lengths);
}

function meanAndError(lengths: readonly number[]): { readonly mean: number; readonly error: number } {
  const mean = lengths.reduce((sum, each) => sum + each, 0) / lengths.length;
  const squares = lengths.reduce((sum, each) => sum + (each - mean) ** 2, 0);
  return { mean, error: Math.sqrt(squares / (lengths.length - 1) / lengths.length) };
}

/** Likewise for charts whose points hang together: the chart is drawn over a growing run. */
function runLengthOf(spec: MeasuredChart, runs: number, shift: number, seed: string): { readonly mean: number; readonly error: number } {
  const draw = normals(seed);
  const lengths = Array.from({ length: runs }, () => {
    const points: MeasuredPoint[] = [];
    for (let seen = 0; ; seen = points.length) {
      for (let more = Math.max(16, seen); more > 0; more -= 1) points.push({ n: 1, mean: shift + draw(), s: null, range: null });
      const lines = measuredLines(spec, points, { centre: 0, sigma: 1 });
      const first = lines.flatMap((line) => line.points.filter(({ value, upper, lower }) => value > (upper ?? Infinity) || value < (lower ?? -Infinity)).slice(0, 1).map(({ at }) => at));
      if (first.length > 0) return Math.min(...first) + 1;
    }
  });
  return meanAndError(lengths);
}

describe('mean run length of a process in control', () => {
  it('one point beyond three σ: 1 / (2·P(Z > 3)) = 370.4, exact', () => expect(1 / (2 * normalAbove(3))).toBeCloseTo(370.398, 3));

  it.each([
    { rules: ['beyondLimits'] as const, expected: 370.4, runs: 1200 },
    { rules: ['beyondLimits', 'twoOfThreeBeyondTwo'] as const, expected: 225.44, runs: 1600 },
    { rules: ['beyondLimits', 'fourOfFiveBeyondOne'] as const, expected: 166.05, runs: 1600 },
    { rules: ['beyondLimits', 'eightOnOneSide'] as const, expected: 152.73, runs: 1600 },
    { rules: ['beyondLimits', 'twoOfThreeBeyondTwo', 'fourOfFiveBeyondOne'] as const, expected: 132.89, runs: 1600 },
    { rules: ['beyondLimits', 'twoOfThreeBeyondTwo', 'fourOfFiveBeyondOne', 'eightOnOneSide'] as const, expected: 91.75, runs: 2500 },
  ])('$rules: $expected (Champ & Woodall, Technometrics 29 (1987) 393, from memory), by simulation', ({ rules, expected, runs }) => {
    const { mean, error } = runLength(runs, rules, 0, `in control ${rules.join()}`);
    expect(Math.abs(mean - expected), `${mean} ± ${error}`).toBeLessThan(4 * error);
    expect(error / mean).toBeLessThan(0.03);
  });

  it('a shift of one σ: three σ alone 43.9, four zone rules 9.22 (exact 1/(P(Z > 2) + P(Z > 4)); Champ & Woodall, from memory), by simulation', () => {
    const alone = runLength(3000, ['beyondLimits'], 1, 'shifted');
    expect(Math.abs(alone.mean - 1 / (normalAbove(2) + normalAbove(4)))).toBeLessThan(4 * alone.error);
    const zones = runLength(4000, ['beyondLimits', 'twoOfThreeBeyondTwo', 'fourOfFiveBeyondOne', 'eightOnOneSide'], 1, 'shifted zones');
    expect(Math.abs(zones.mean - 9.22), `${zones.mean} ± ${zones.error}`).toBeLessThan(4 * zones.error);
  });

  it.each([
    { h: 4, shift: 0, expected: 167.683789, runs: 2000 }, { h: 4, shift: 1, expected: 8.38313187, runs: 4000 }, { h: 5, shift: 0, expected: 465.443506, runs: 1000 }, { h: 5, shift: 0.5, expected: 37.9961432, runs: 3000 },
  ])('CUSUM k 0.5, h $h, shift $shift σ: $expected (NIST/SEMATECH e-Handbook 6.3.2.3.1, digits by an integral equation), by simulation', ({ h, shift, expected, runs }) => {
    const { mean, error } = runLengthOf({ kind: 'cusum', k: 0.5, h, spread: 'betweenLots' }, runs, shift, `cusum ${h} ${shift}`);
    expect(Math.abs(mean - expected), `${mean} ± ${error}`).toBeLessThan(4 * error);
  });

  it('EWMA λ 0.2, width 3: a little under the 559.9 of limits fixed at their final width (integral equation), since the exact ones start narrow', () => {
    const { mean, error } = runLengthOf({ kind: 'ewma', lambda: 0.2, width: 3, spread: 'betweenLots' }, 1500, 0, 'ewma');
    expect(mean).toBeLessThan(559.874075 + 2 * error);
    expect(mean).toBeGreaterThan(0.94 * 559.874075 - 3 * error);
  });
});

it('with all nine rules the mean run length of a process in control lies below that of the four zone rules, and above 30', () => {
  const { mean } = runLength(800, CHART_RULES, 0, 'all rules');
  expect(mean).toBeGreaterThan(30);
  expect(mean).toBeLessThan(91.75);
});
