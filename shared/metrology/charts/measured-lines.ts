import { requireFinite } from '../../ground/outside-domain.ts';
import { c4 } from './chart-constants.ts';
import type { ChartLine, LinePoint } from './chart-line.ts';
import type { ChartBase, MeasuredChart, MeasuredPoint } from './chart-spec.ts';
import { requireChartBase, requireChartSpec } from './chart-spec.ts';
import { MOVING_D2 } from './estimate-base.ts';
import { MOST_RANGE_VALUES, rangeMoments } from './range-moments.ts';

/** d3 of two values, √(2 − 4/π). */
const MOVING_D3 = Math.sqrt(2 - 4 / Math.PI);

/**
 * The lines of a chart of a measured characteristic with their limits, three standard deviations unless the chart says otherwise.
 * mean: centre ± 3σ/√n. s: c4σ, limits B5σ and B6σ. range: d2σ, D1σ and D2σ. individuals: centre ± 3σ (which is E2 times the mean moving
 * range); moving range: d2σ, up to (d2 + 3d3)σ. ewma: z = λx + (1 − λ)z, started at the centre, its exact variance v = λ²σᵢ² + (1 − λ)²v, which for one σ
 * is σ²·λ/(2 − λ)·(1 − (1 − λ)^2i). cusum: C = max(0, C ± (x − centre)/σᵢ − k), limit h.
 * A lot of more values than a range is charted of has its mean only.
 * @param starts places (counted from 0) where sums and moving ranges begin anew, for instance after a cause was removed
 * @throws OutsideDomain for a base or constants the chart cannot be drawn with
 * @see ISO 7870-2; NIST/SEMATECH e-Handbook 6.3.2.1 … 6.3.2.4 (numbers checked in tests/reference/charts.test.ts); EWMA variance: Lucas & Saccucci,
 *   Technometrics 32 (1990) 1 (from memory); CUSUM: Page, Biometrika 41 (1954) 100 (from memory)
 */
export function measuredLines(spec: MeasuredChart, points: readonly MeasuredPoint[], base: ChartBase, starts: readonly number[] = []): readonly ChartLine[] {
  requireChartSpec(spec);
  requireChartBase(spec, base);
  points.forEach(({ mean }, at) => requireFinite(`points[${at}].mean`, mean));
  const [centre, sigma] = [base.centre, base.sigma ?? Number.NaN];
  switch (spec.kind) {
    case 'meanAndS': return [meanLine(points, centre, sigma), spreadLine('s', points, sigma)];
    case 'meanAndRange': return [meanLine(points, centre, sigma), spreadLine('range', points, sigma)];
    case 'individuals': return [individualLine(points, centre, sigma), movingLine(points, sigma, starts)];
    case 'ewma': return [ewmaLine(spec, points, centre, sigma, starts)];
    case 'cusum': return [cusumLine(spec, points, centre, sigma, starts, 1), cusumLine(spec, points, centre, sigma, starts, -1)];
  }
}

function around(at: number, value: number, centre: number, sigma: number, width = 3): LinePoint {
  return { at, value, centre, lower: centre - width * sigma, upper: centre + width * sigma, sigma };
}

function meanLine(points: readonly MeasuredPoint[], centre: number, sigma: number): ChartLine {
  return { name: 'mean', points: points.map(({ n, mean }, at) => around(at, mean, centre, sigma / Math.sqrt(n))) };
}

function individualLine(points: readonly MeasuredPoint[], centre: number, sigma: number): ChartLine {
  return { name: 'mean', points: points.map(({ mean }, at) => around(at, mean, centre, sigma)) };
}

function spreadLine(name: 's' | 'range', points: readonly MeasuredPoint[], sigma: number): ChartLine {
  return {
    name,
    points: points.flatMap((point, at): LinePoint[] => {
      const value = name === 's' ? point.s : point.range;
      if (value === null || point.n < 2 || (name === 'range' && point.n > MOST_RANGE_VALUES)) return [];
      const { mean, sd } = momentsOf(name, point.n);
      return [{ at, value, centre: mean * sigma, lower: Math.max(0, mean - 3 * sd) * sigma, upper: (mean + 3 * sd) * sigma, sigma: null }];
    }),
  };
}

function momentsOf(name: 's' | 'range', n: number): { readonly mean: number; readonly sd: number } {
  if (name === 's') return { mean: c4(n), sd: Math.sqrt(1 - c4(n) ** 2) };
  const { d2, d3 } = rangeMoments(n);
  return { mean: d2, sd: d3 };
}

function movingLine(points: readonly MeasuredPoint[], sigma: number, starts: readonly number[]): ChartLine {
  return {
    name: 'movingRange',
    points: points.flatMap(({ mean }, at): LinePoint[] => {
      const before = points[at - 1];
      if (before === undefined || starts.includes(at)) return [];
      return [{ at, value: Math.abs(mean - before.mean), centre: MOVING_D2 * sigma, lower: 0, upper: (MOVING_D2 + 3 * MOVING_D3) * sigma, sigma: null }];
    }),
  };
}

function sigmaOfMean(spec: Extract<MeasuredChart, { readonly spread: unknown }>, sigma: number, n: number): number {
  return spec.spread === 'withinLots' ? sigma / Math.sqrt(n) : sigma;
}

function ewmaLine(spec: Extract<MeasuredChart, { kind: 'ewma' }>, points: readonly MeasuredPoint[], centre: number, sigma: number, starts: readonly number[]): ChartLine {
  const { lambda, width } = spec;
  let [weighted, variance] = [centre, 0];
  return {
    name: 'ewma',
    points: points.map(({ n, mean }, at) => {
      if (starts.includes(at)) [weighted, variance] = [centre, 0];
      weighted = lambda * mean + (1 - lambda) * weighted;
      variance = (lambda * sigmaOfMean(spec, sigma, n)) ** 2 + (1 - lambda) ** 2 * variance;
      return { ...around(at, weighted, centre, Math.sqrt(variance), width), sigma: null };
    }),
  };
}

function cusumLine(spec: Extract<MeasuredChart, { kind: 'cusum' }>, points: readonly MeasuredPoint[], centre: number, sigma: number, starts: readonly number[], side: 1 | -1): ChartLine {
  let sum = 0;
  return {
    name: side === 1 ? 'cusumUp' : 'cusumDown',
    points: points.map(({ n, mean }, at) => {
      if (starts.includes(at)) sum = 0;
      sum = Math.max(0, sum + (side * (mean - centre)) / sigmaOfMean(spec, sigma, n) - spec.k);
      return { at, value: sum, centre: 0, lower: null, upper: spec.h, sigma: null };
    }),
  };
}
