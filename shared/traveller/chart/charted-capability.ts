import { capability, fractionCounted } from '../../metrology/capability/index.ts';
import type { Capability, FractionOutside } from '../../metrology/capability/index.ts';
import { normality } from '../../sampling/variables/index.ts';
import type { Normality } from '../../sampling/variables/index.ts';
import type { ChartPoint } from './chart.ts';

/** Capability of a charted characteristic by the limits of its newest lot, with what may be wrong about it. */
export interface ChartedCapability {
  readonly lower: number | null;
  readonly upper: number | null;
  /** Limits were not the same for every lot, as those of a press weight that follows from the powder. */
  readonly limitsDiffer: boolean;
  readonly figures: Capability | 'tooFew' | 'noSpread' | 'noLimit';
  /** Seen outside, by each lot's own limits as judged. null where no lot is there. */
  readonly counted: FractionOutside | null;
  /** Asked of the readings that are kept. */
  readonly normality: Normality;
  readonly keptValues: readonly number[];
}

/**
 * @param points lots on the chart; counts are passed over
 * @param confidence of the two-sided intervals, above 0 and below 1
 */
export function chartedCapability(points: readonly ChartPoint[], confidence: number): ChartedCapability {
  const lots = points.flatMap(({ value }) => (value.by === 'measured' ? [value] : []));
  const newest = lots.at(-1);
  const [lower, upper] = [newest?.lower ?? null, newest?.upper ?? null];
  const values = lots.reduce((sum, { n }) => sum + n, 0);
  const keptValues = lots.flatMap((lot) => lot.values ?? []);
  const limits = { ...(lower === null ? {} : { lower }), ...(upper === null ? {} : { upper }) };
  return {
    lower, upper, limitsDiffer: lots.some((lot) => lot.lower !== lower || lot.upper !== upper),
    figures: lots.length === 0 ? 'tooFew' : lower === null && upper === null ? 'noLimit' : capability(limits, lots, confidence),
    counted: values === 0 ? null : fractionCounted(lots.reduce((sum, { outside }) => sum + outside, 0), values, confidence),
    normality: normality(keptValues), keptValues,
  };
}
