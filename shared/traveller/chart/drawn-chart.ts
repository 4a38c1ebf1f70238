import { countedLine, estimateCountedBase, estimateMeasuredBase, isCounted, LEAST_BASE_LOTS, measuredLines, signalsOf } from '../../metrology/charts/index.ts';
import type { ChartBase, ChartLine, ChartSignal, ChartSpec, CountedPoint, MeasuredPoint } from '../../metrology/charts/index.ts';
import { OutsideDomain } from '../../ground/outside-domain.ts';
import type { ChartCard, ChartPoint, ChartRecord, ChartState } from './chart.ts';

/** Why no limits can be estimated from these lots. */
export type BaseFault = 'tooFew' | 'noSpread' | 'noneFound' | 'notOnChart';

/** A chart as it is drawn: lines with limits and every signal they give now. `places` are the chart's points that are on it, by their place in the state. */
export interface DrawnChart {
  readonly base: ChartBase;
  /** Limits are not signed yet and move with every lot. */
  readonly provisional: boolean;
  readonly places: readonly number[];
  /** `at` of a line's point counts `places`. */
  readonly lines: readonly ChartLine[];
  readonly signals: readonly ChartSignal[];
}

/** The chart's lines by its frozen limits, or by provisional ones from all its lots; a fault where there are none to be had. */
export function drawnChart(state: ChartState, record: ChartRecord): DrawnChart | BaseFault {
  const { card, frozen, starts } = record;
  const places = state.points.flatMap((point, at) => (valueOn(card, point) === null ? [] : [at]));
  const base = frozen?.base ?? baseFrom(card, state.points);
  if (typeof base === 'string') return base;
  const own = starts.map((start) => places.filter((place) => place < start).length);
  const lines = linesOf(card, places.flatMap((place) => state.points[place] ?? []), base, own);
  const since = own[0] ?? 0;
  return { base, provisional: frozen === null, places, lines, signals: signalsOf(lines, card.rules, own).filter(({ at }) => at >= since) };
}

/** Centre and σ from these points, or why not. */
export function baseFrom({ spec, class: each }: Pick<ChartCard, 'spec' | 'class'>, points: readonly ChartPoint[]): ChartBase | BaseFault {
  const values = points.flatMap((point) => valueOn({ spec, class: each }, point) ?? []);
  if (values.length < LEAST_BASE_LOTS) return 'tooFew';
  try {
    return isCounted(spec) ? estimateCountedBase(counted(values)) : estimateMeasuredBase(spec, measured(values));
  } catch (error) {
    // Whether there is spread, or anything found, shows only in the sums.
    if (error instanceof OutsideDomain) return isCounted(spec) ? 'noneFound' : 'noSpread';
    throw error;
  }
}

function linesOf({ spec, class: each }: ChartCard, points: readonly ChartPoint[], base: ChartBase, starts: readonly number[]): readonly ChartLine[] {
  const values = points.flatMap((point) => valueOn({ spec, class: each }, point) ?? []);
  return isCounted(spec) ? [countedLine(spec, counted(values), base)] : measuredLines(spec, measured(values), base, starts);
}

type OnChart = MeasuredPoint | CountedPoint;
/** What a lot brings to this chart; null where it brings nothing, as a lot whose plan did not judge the class. */
function valueOn({ spec, class: each }: { readonly spec: ChartSpec; readonly class: ChartCard['class'] }, { value }: ChartPoint): OnChart | null {
  if (value.by === 'measured') return isCounted(spec) ? null : { n: value.n, mean: value.mean, s: value.s, range: value.n < 2 ? null : value.max - value.min };
  if (!isCounted(spec)) return null;
  const found = each === null ? value : value.classes.find((classed) => classed.class === each);
  if (found === undefined || found.of < 1) return null;
  const isShare = spec.kind === 'p' || spec.kind === 'np';
  // A piece found in two classes counts in both; no more than all pieces can be nonconforming.
  return { of: found.of, count: isShare ? Math.min(found.of, found.count) : found.count };
}

function counted(values: readonly OnChart[]): readonly CountedPoint[] {
  return values.flatMap((value) => ('of' in value ? [value] : []));
}
function measured(values: readonly OnChart[]): readonly MeasuredPoint[] {
  return values.flatMap((value) => ('n' in value ? [value] : []));
}
