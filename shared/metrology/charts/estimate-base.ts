import { OutsideDomain } from '../../ground/outside-domain.ts';
import type { ChartBase, CountedPoint, MeasuredChart, MeasuredPoint } from './chart-spec.ts';
import { c4 } from './chart-constants.ts';
import { MOST_RANGE_VALUES, rangeMoments } from './range-moments.ts';

/** Fewest lots limits may rest on: our own floor. Twenty to twenty-five are common practice (from memory). */
export const LEAST_BASE_LOTS = 8;
/** From this many lots on nothing is said about their number. */
export const GOOD_BASE_LOTS = 20;
/** d2 of two values, 2/√π: what a mean moving range is divided by. */
export const MOVING_D2 = 2 / Math.sqrt(Math.PI);

/**
 * Centre and σ of a base period of measured lots.
 * meanAndS: mean of all values; σ = Σ hᵢ·sᵢ/c4(nᵢ) / Σ hᵢ with hᵢ = c4²/(1 − c4²), which for one n is s̄/c4. meanAndRange: likewise with
 * Rᵢ/d2(nᵢ) and hᵢ = d2²/d3². individuals, and ewma and cusum by the spread between lots: mean of the lots' means, σ = mean moving range / d2(2).
 * @param lots in the order made, 2 or more with a spread within (meanAndS, meanAndRange) or from lot to lot
 * @throws OutsideDomain where there are too few lots, or no spread at all to draw limits from
 * @see Burr, Journal of Quality Technology 1 (1969) 163 (weights for unequal n, from memory); NIST/SEMATECH e-Handbook 6.3.2.2 (moving ranges)
 */
export function estimateMeasuredBase(spec: MeasuredChart, lots: readonly MeasuredPoint[]): ChartBase {
  if (lots.length < 2) throw new OutsideDomain('lots', 'two at least', lots.length);
  const between = spec.kind === 'individuals' || ((spec.kind === 'ewma' || spec.kind === 'cusum') && spec.spread === 'betweenLots');
  const base = between ? fromLotToLot(lots) : withinLots(spec, lots);
  if (!(base.sigma > 0)) throw new OutsideDomain('lots', 'with some spread', base.sigma);
  return base;
}

function fromLotToLot(lots: readonly MeasuredPoint[]): { readonly centre: number; readonly sigma: number } {
  const moved = lots.slice(1).map(({ mean }, at) => Math.abs(mean - (lots[at]?.mean ?? mean)));
  return { centre: average(lots.map(({ mean }) => mean)), sigma: average(moved) / MOVING_D2 };
}

function withinLots(spec: MeasuredChart, lots: readonly MeasuredPoint[]): { readonly centre: number; readonly sigma: number } {
  const pieces = lots.reduce((sum, { n }) => sum + n, 0);
  const centre = lots.reduce((sum, { n, mean }) => sum + (n / pieces) * mean, 0);
  let [sum, weights] = [0, 0];
  for (const { n, s, range } of lots) {
    const seen = spec.kind === 'meanAndRange' ? range : s;
    if (n < 2 || seen === null || (spec.kind === 'meanAndRange' && n > MOST_RANGE_VALUES)) continue;
    const { estimate, weight } = spec.kind === 'meanAndRange' ? byRange(n, seen) : byS(n, seen);
    [sum, weights] = [sum + weight * estimate, weights + weight];
  }
  if (weights === 0) throw new OutsideDomain('lots', 'with two values or more in one of them', 0);
  return { centre, sigma: sum / weights };
}

function byS(n: number, s: number): { readonly estimate: number; readonly weight: number } {
  const mean = c4(n);
  return { estimate: s / mean, weight: (mean * mean) / (1 - mean * mean) };
}

function byRange(n: number, range: number): { readonly estimate: number; readonly weight: number } {
  const { d2, d3 } = rangeMoments(n);
  return { estimate: range / d2, weight: (d2 / d3) ** 2 };
}

/**
 * Centre of a base period of counts: all found over all looked at.
 * @throws OutsideDomain where nothing was looked at or nothing was found, since no limit can be drawn from that
 */
export function estimateCountedBase(lots: readonly CountedPoint[]): ChartBase {
  const of = lots.reduce((sum, lot) => sum + lot.of, 0);
  const count = lots.reduce((sum, lot) => sum + lot.count, 0);
  if (of === 0 || count === 0) throw new OutsideDomain('lots', 'with something found', count);
  return { centre: count / of, sigma: null };
}

function average(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
