import { OutsideDomain, requireFinite } from '../../ground/outside-domain.ts';

/** One lot on a chart of a measured characteristic, in the characteristic's unit. */
export type MeasuredPoint = { readonly n: number; readonly mean: number; /** Divisor n − 1; null for one value. */ readonly s: number | null; readonly range: number | null };
/** One lot on a chart of counts: `count` found, in `of` pieces looked at. */
export type CountedPoint = { readonly of: number; readonly count: number };

/**
 * What is drawn. meanAndS, meanAndRange: the lot's mean against the spread within lots. individuals: the lot's mean as one value against the
 * spread from lot to lot. ewma: exponentially weighted mean of the lots' means. cusum: sums of what exceeds k, upwards and downwards.
 * p: share, np: number of nonconforming pieces. u: nonconformities a piece, c: number of nonconformities.
 */
export type MeasuredChart =
  | { readonly kind: 'meanAndS' | 'meanAndRange' | 'individuals' }
  /** `lambda` above 0 and up to 1, the weight of the newest lot; `width` of the limits in standard deviations. */
  | { readonly kind: 'ewma'; readonly lambda: number; readonly width: number; readonly spread: SpreadOf }
  /** `k` the allowance and `h` the decision interval, in standard deviations of a lot's mean. */
  | { readonly kind: 'cusum'; readonly k: number; readonly h: number; readonly spread: SpreadOf };
/** `threeSigma`: by the normal approximation. `exact`: counts beyond which the binomial or Poisson law leaves 0.00135 on a side. */
export type CountedChart = { readonly kind: 'p' | 'np' | 'c' | 'u'; readonly limits: 'threeSigma' | 'exact' };
export type ChartSpec = MeasuredChart | CountedChart;
export type ChartKind = ChartSpec['kind'];

/** Where the standard deviation of a lot's mean comes from: from lot to lot (moving ranges), or from within lots divided by √n. */
export type SpreadOf = 'betweenLots' | 'withinLots';

/**
 * What the limits of a chart rest on: the centre (mean, share a piece, nonconformities a piece) and σ, of one value for meanAndS,
 * meanAndRange and spread within lots, of a lot's mean for the others. null for counts, whose law gives σ.
 */
export type ChartBase = { readonly centre: number; readonly sigma: number | null };

/** True for a chart of counts. */
export function isCounted(spec: ChartSpec): spec is CountedChart {
  return spec.kind === 'p' || spec.kind === 'np' || spec.kind === 'c' || spec.kind === 'u';
}

/** @throws OutsideDomain unless the constants of an EWMA or CUSUM chart can be worked with */
export function requireChartSpec(spec: ChartSpec): void {
  if (spec.kind === 'ewma') {
    requireFinite('lambda', spec.lambda, 0.01, 1);
    requireFinite('width', spec.width, 0.5, 10);
  }
  if (spec.kind === 'cusum') {
    requireFinite('k', spec.k, 0, 5);
    requireFinite('h', spec.h, 0.5, 50);
  }
}

/** @throws OutsideDomain unless the base fits the kind of chart */
export function requireChartBase(spec: ChartSpec, base: ChartBase): void {
  if (!isCounted(spec)) {
    requireFinite('centre', base.centre);
    if (base.sigma === null || !(base.sigma > 0)) throw new OutsideDomain('sigma', 'above 0', base.sigma);
    return;
  }
  requireFinite('centre', base.centre, 0, spec.kind === 'p' || spec.kind === 'np' ? 1 : 1e6);
  if (base.centre === 0) throw new OutsideDomain('centre', 'above 0', 0);
}
