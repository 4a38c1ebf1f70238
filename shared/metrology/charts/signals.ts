import { requireWhole } from '../../ground/outside-domain.ts';
import type { ChartLine, LineName, LinePoint } from './chart-line.ts';

/**
 * When a chart speaks. The zone rules of 1956: one beyond three σ, two of three beyond two σ, four of five beyond one σ, eight in a row on one side.
 * The tests of 1984 have the first three too, and: nine in a row on one side, six in a row rising or falling, fourteen in a row turning
 * up and down, fifteen in a row within one σ, eight in a row with none within one σ.
 * @see Statistical Quality Control Handbook, Western Electric (1956) (zone rules, from memory); Nelson, Journal of Quality Technology 16 (1984) 237 (from memory)
 */
export const CHART_RULES = ['beyondLimits', 'twoOfThreeBeyondTwo', 'fourOfFiveBeyondOne', 'eightOnOneSide', 'nineOnOneSide', 'sixRisingOrFalling', 'fourteenAlternating', 'fifteenWithinOne', 'eightWithoutOne'] as const;
export type ChartRule = (typeof CHART_RULES)[number];
export type SignalSide = 'above' | 'below' | 'rising' | 'falling' | 'both';

/** A rule that speaks at the point `at`, for the points `from` … `at` of one line. */
export type ChartSignal = { readonly line: LineName; readonly rule: ChartRule; readonly side: SignalSide; readonly at: number; readonly from: number };

/** Lines whose points stand for themselves and have zones; on all others only `beyondLimits` is asked, since their points hang together or lie skewed. */
const ZONED: readonly LineName[] = ['mean', 'share', 'count', 'rate'];
/** Points a rule looks at, the newest last. */
const LOOKS_BACK: Readonly<Record<ChartRule, number>> = { beyondLimits: 1, twoOfThreeBeyondTwo: 3, fourOfFiveBeyondOne: 5, eightOnOneSide: 8, nineOnOneSide: 9, sixRisingOrFalling: 6, fourteenAlternating: 14, fifteenWithinOne: 15, eightWithoutOne: 8 };

/** True when the rule can speak on this line. */
export function ruleApplies(rule: ChartRule, line: LineName): boolean {
  return rule === 'beyondLimits' || ZONED.includes(line);
}

/**
 * Every signal at one point of a line: a rule speaks at the point that completes it. A point on the centre is on neither side, one on a
 * limit of a zone is not beyond it. No rule looks back past a start.
 * @param index place in line.points, not the lot's place on the chart
 * @param starts places on the chart where counting began anew
 * @throws OutsideDomain for an index the line does not have
 */
export function signalsAt(line: ChartLine, index: number, rules: readonly ChartRule[], starts: readonly number[] = []): readonly ChartSignal[] {
  requireWhole('index', index, 0, line.points.length - 1);
  const newest = line.points[index];
  if (newest === undefined) return [];
  const start = starts.reduce((latest, each) => (each <= newest.at ? Math.max(latest, each) : latest), 0);
  return rules.flatMap((rule): ChartSignal[] => {
    if (!ruleApplies(rule, line.name)) return [];
    const run = line.points.slice(Math.max(0, index + 1 - LOOKS_BACK[rule]), index + 1);
    const from = run[0]?.at ?? 0;
    // A rule over several of fewer points, as two of three, may speak before the stretch is full.
    const isWhole = run.length === LOOKS_BACK[rule] && from >= start;
    const within = isWhole ? run : run.filter(({ at }) => at >= start);
    const side = sideOf(rule, within, isWhole, line.name);
    return side === null ? [] : [{ line: line.name, rule, side, at: newest.at, from: within[0]?.at ?? newest.at }];
  });
}

/** Every signal of every line, in the order made. */
export function signalsOf(lines: readonly ChartLine[], rules: readonly ChartRule[], starts: readonly number[] = []): readonly ChartSignal[] {
  return lines.flatMap((line) => line.points.flatMap((_, index) => signalsAt(line, index, rules, starts))).sort((one, other) => one.at - other.at);
}

function sideOf(rule: ChartRule, run: readonly LinePoint[], isWhole: boolean, name: LineName): SignalSide | null {
  switch (rule) {
    case 'beyondLimits': return beyondLimits(run, name);
    case 'twoOfThreeBeyondTwo': return severalBeyond(run, 2, 2);
    case 'fourOfFiveBeyondOne': return severalBeyond(run, 4, 1);
    case 'eightOnOneSide': case 'nineOnOneSide': return isWhole ? oneSide(run) : null;
    case 'sixRisingOrFalling': return isWhole ? steadily(run) : null;
    case 'fourteenAlternating': return isWhole && alternates(run) ? 'both' : null;
    case 'fifteenWithinOne': return isWhole && run.every((point) => Math.abs(distance(point)) < 1) ? 'both' : null;
    case 'eightWithoutOne': return isWhole && run.every((point) => Math.abs(distance(point)) > 1) ? 'both' : null;
  }
}

/** In standard deviations from the centre. */
function distance({ value, centre, sigma }: LinePoint): number {
  return sigma === null ? 0 : (value - centre) / sigma;
}

/** Limits are worked out and values are sums: what stands on a limit but for the last digits is on it. */
const ROUNDING = 1e-12;

/** The sum downwards grows as the means fall: beyond its limit they lie below. */
function beyondLimits(run: readonly LinePoint[], name: LineName): SignalSide | null {
  const newest = run.at(-1);
  if (newest === undefined) return null;
  const { value, lower, upper } = newest;
  const slack = ROUNDING * Math.max(Math.abs(value), Math.abs(upper ?? 0));
  if (upper !== null && value > upper + slack) return name === 'cusumDown' ? 'below' : 'above';
  return lower !== null && value < lower - slack ? 'below' : null;
}

function severalBeyond(run: readonly LinePoint[], wanted: number, zones: number): SignalSide | null {
  const newest = run.at(-1);
  if (newest === undefined) return null;
  const side = distance(newest) > 0 ? 1 : -1;
  const isBeyond = (point: LinePoint): boolean => side * distance(point) > zones;
  if (!isBeyond(newest) || run.filter(isBeyond).length < wanted) return null;
  return side > 0 ? 'above' : 'below';
}

function oneSide(run: readonly LinePoint[]): SignalSide | null {
  if (run.every(({ value, centre }) => value > centre)) return 'above';
  return run.every(({ value, centre }) => value < centre) ? 'below' : null;
}

function steps(run: readonly LinePoint[]): readonly number[] {
  return run.slice(1).map(({ value }, at) => Math.sign(value - (run[at]?.value ?? value)));
}

function steadily(run: readonly LinePoint[]): SignalSide | null {
  const taken = steps(run);
  if (taken.every((step) => step > 0)) return 'rising';
  return taken.every((step) => step < 0) ? 'falling' : null;
}

function alternates(run: readonly LinePoint[]): boolean {
  const taken = steps(run);
  return taken.every((step, at) => step !== 0 && (at === 0 || step === -(taken[at - 1] ?? 0)));
}
