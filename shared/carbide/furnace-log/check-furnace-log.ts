import type { FurnaceLog, LogCheck, LogFinding, ProgrammeLimits, ProgrammeSegment, RampSegment, SegmentOutcome, SoakSegment } from './furnace-log.ts';
import { partsOf } from './segments-in-log.ts';
import type { LogPart } from './segments-in-log.ts';
import { inOrder } from './rows-in-order.ts';
import type { LogRow } from './rows-in-order.ts';

/** Most findings a check keeps; the rest are counted. */
export const MOST_FINDINGS = 100;
/** Room for binary dust in a rate worked out from decimals. */
const DUST = 1e-9;

/**
 * Holds a log against its programme's limits, segment by segment (where each lies: `partsOf`). Limits themselves are within. Between rows
 * nothing is made up: a stretch outside begins with its first row outside and lasts until the first row within again. A soak's minutes are
 * those between neighbouring rows that are both within its window. A rate is that between a row and the last one `rateOverMin` or more
 * before it. Rows whose time does not go on are not judged and are findings themselves. Derived, our own choice; the limits are the plant's.
 */
export function checkFurnaceLog(log: FurnaceLog, limits: ProgrammeLimits): LogCheck {
  const { rows, findings: ofTime } = inOrder(log, limits.largestGapMin);
  const parts = partsOf(rows, limits.segments);
  const found = [...ofTime, ...limits.segments.flatMap((segment, at) => ofSegment(segment, at, parts[at] ?? null, rows, limits, log.pressureMbar !== null))];
  return { within: !found.some(({ kind }) => kind !== 'repeated'), findings: found.slice(0, MOST_FINDINGS), more: Math.max(0, found.length - MOST_FINDINGS), segments: limits.segments.map((segment, at) => outcomeOf(segment, parts[at] ?? null, rows)) };
}

function ofSegment(segment: ProgrammeSegment, at: number, part: LogPart | null, rows: readonly LogRow[], { rateOverMin }: ProgrammeLimits, hasPressure: boolean): readonly LogFinding[] {
  if (part === null) return [];
  const own = rows.slice(part.from, part.to + 1);
  if (segment.kind === 'soak') return [...ofSoak(segment, own), ...ofPressure(segment, own, hasPressure)];
  const late: LogFinding[] = at === 0 && part.from === part.to ? [about('startsLate', segment, own, own[0]?.temperatureC ?? segment.toC, segment.toC)] : [];
  const short: LogFinding[] = part.reached ? [] : [about('notReached', segment, own, farthest(segment, own), segment.toC)];
  return [...late, ...short, ...ofRates(segment, own, rateOverMin)];
}

function about(kind: LogFinding['kind'], segment: ProgrammeSegment, rows: readonly LogRow[], value: number, limit: number | null): LogFinding {
  return { kind, segment: segment.name, fromMin: rows[0]?.atMin ?? 0, toMin: rows.at(-1)?.atMin ?? 0, value: rounded(value), limit };
}

function farthest({ kind }: RampSegment, rows: readonly LogRow[]): number {
  return rows.reduce((most, { temperatureC }) => (kind === 'heat' ? Math.max(most, temperatureC) : Math.min(most, temperatureC)), kind === 'heat' ? -Infinity : Infinity);
}

function ofRates(segment: RampSegment, rows: readonly LogRow[], overMin: number): readonly LogFinding[] {
  const sign = segment.kind === 'heat' ? 1 : -1;
  const { leastRateCPerMin: least, mostRateCPerMin: most } = segment;
  const rates: { readonly from: LogRow; readonly to: LogRow; readonly rate: number }[] = [];
  let before = 0;
  rows.forEach((to, at) => {
    while (before + 1 < at && to.atMin - (rows[before + 1]?.atMin ?? 0) >= overMin) before += 1;
    const from = rows[before];
    // A ramp shorter than the time a rate is taken over has one rate: that of the whole.
    const whole = at === rows.length - 1 && before === 0;
    if (from === undefined || at === 0 || (to.atMin - from.atMin < overMin && !whole)) return;
    rates.push({ from, to, rate: (sign * (to.temperatureC - from.temperatureC)) / (to.atMin - from.atMin) });
  });
  const fast = most === null ? [] : stretches(rates, ({ rate }) => rate > most + DUST).map(({ run }) => rateFinding('tooFast', segment, run, most));
  const slow = least === null ? [] : stretches(rates, ({ rate }) => rate < least - DUST).map(({ run }) => rateFinding('tooSlow', segment, run, least));
  return [...fast, ...slow];
}

function rateFinding(kind: 'tooFast' | 'tooSlow', segment: RampSegment, run: readonly { readonly from: LogRow; readonly to: LogRow; readonly rate: number }[], limit: number): LogFinding {
  const rates = run.map(({ rate }) => rate);
  const value = rates.reduce((a, b) => (kind === 'tooFast' ? Math.max(a, b) : Math.min(a, b)));
  return { kind, segment: segment.name, fromMin: run[0]?.from.atMin ?? 0, toMin: run.at(-1)?.to.atMin ?? 0, value: rounded(value), limit };
}

function ofSoak(segment: SoakSegment, rows: readonly LogRow[]): readonly LogFinding[] {
  const { lowerC, upperC, leastMin, mostMin } = segment;
  const minutes = minutesWithin(rows, ({ temperatureC }) => temperatureC >= lowerC && temperatureC <= upperC);
  return [
    ...outside('tooHot', segment, rows, ({ temperatureC }) => (temperatureC > upperC ? temperatureC : null), upperC),
    ...outside('tooCold', segment, rows, ({ temperatureC }) => (temperatureC < lowerC ? temperatureC : null), lowerC),
    ...(minutes < leastMin - DUST ? [about('soakShort', segment, rows, minutes, leastMin)] : []),
    ...(mostMin !== null && minutes > mostMin + DUST ? [about('soakLong', segment, rows, minutes, mostMin)] : []),
  ];
}

function ofPressure(segment: SoakSegment, rows: readonly LogRow[], hasPressure: boolean): readonly LogFinding[] {
  if (segment.pressure === null) return [];
  const { lowerMbar, upperMbar, leastMin } = segment.pressure;
  if (!hasPressure) return [about('pressureMissing', segment, rows, 0, null)];
  const isWithin = ({ pressureMbar }: LogRow): boolean => pressureMbar !== null && pressureMbar >= lowerMbar && pressureMbar <= upperMbar;
  const minutes = minutesWithin(rows, isWithin);
  // The stage runs from the first row at pressure to the last: building it up and letting it off are no excursions.
  const stage = rows.slice(rows.findIndex(isWithin), rows.findLastIndex(isWithin) + 1);
  return [
    ...outside('pressureHigh', segment, stage, ({ pressureMbar }) => (pressureMbar !== null && pressureMbar > upperMbar ? pressureMbar : null), upperMbar),
    ...outside('pressureLow', segment, stage, ({ pressureMbar }) => (pressureMbar !== null && pressureMbar < lowerMbar ? pressureMbar : null), lowerMbar),
    ...(minutes < leastMin - DUST ? [about('pressureShort', segment, rows, minutes, leastMin)] : []),
  ];
}

/** Each stretch of rows with a value outside, with the worst of them; it is over at the row after it. */
function outside(kind: LogFinding['kind'], segment: ProgrammeSegment, rows: readonly LogRow[], outsideOf: (row: LogRow) => number | null, limit: number): readonly LogFinding[] {
  return stretches(rows, (row) => outsideOf(row) !== null).map(({ run, after }): LogFinding => {
    const values = run.flatMap((row) => outsideOf(row) ?? []);
    return { kind, segment: segment.name, fromMin: run[0]?.atMin ?? 0, toMin: (after ?? run.at(-1))?.atMin ?? 0, value: values.reduce((a, b) => (Math.abs(b - limit) > Math.abs(a - limit) ? b : a)), limit };
  });
}

/** Runs of neighbouring items for which something holds, each with the item that ended it. */
function stretches<Item>(items: readonly Item[], is: (item: Item) => boolean): readonly { readonly run: readonly Item[]; readonly after: Item | null }[] {
  const runs: { run: Item[]; after: Item | null }[] = [];
  let open: { run: Item[]; after: Item | null } | null = null;
  for (const item of items) {
    if (is(item)) {
      if (open === null) runs.push((open = { run: [], after: null }));
      open.run.push(item);
    } else if (open !== null) {
      open.after = item;
      open = null;
    }
  }
  return runs;
}

function minutesWithin(rows: readonly LogRow[], isWithin: (row: LogRow) => boolean): number {
  let minutes = 0;
  rows.forEach((row, at) => {
    const before = rows[at - 1];
    if (before !== undefined && isWithin(before) && isWithin(row)) minutes += row.atMin - before.atMin;
  });
  return rounded(minutes);
}

function outcomeOf(segment: ProgrammeSegment, part: LogPart | null, rows: readonly LogRow[]): SegmentOutcome {
  if (part === null) return { name: segment.name, kind: segment.kind, fromMin: null, toMin: null, minutesWithin: null, leastC: null, mostC: null };
  const own = rows.slice(part.from, part.to + 1);
  const minutes = segment.kind === 'soak' ? minutesWithin(own, ({ temperatureC }) => temperatureC >= segment.lowerC && temperatureC <= segment.upperC) : null;
  const [first] = own;
  let [leastC, mostC] = [first?.temperatureC ?? null, first?.temperatureC ?? null];
  for (const { temperatureC } of own) [leastC, mostC] = [Math.min(leastC ?? temperatureC, temperatureC), Math.max(mostC ?? temperatureC, temperatureC)];
  return { name: segment.name, kind: segment.kind, fromMin: first?.atMin ?? null, toMin: own.at(-1)?.atMin ?? null, minutesWithin: minutes, leastC, mostC };
}

function rounded(value: number): number {
  return Math.round(value * 1e6) / 1e6;
}
