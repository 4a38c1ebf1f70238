import type { LogCheck, LogFindingKind, ProgrammeLimits, ReducedLog } from './furnace-log.ts';

/** A place on a drawing, both from 0 (left, bottom) to 1 (right, top). */
interface Place { readonly x: number; readonly y: number }
/** A stretch of the curve from its least to its greatest value. */
export interface DrawnStretch { readonly x: number; readonly low: number; readonly high: number }
/** A window the curve has to stay in. */
export interface DrawnWindow { readonly name: string; readonly x1: number; readonly x2: number; readonly low: number; readonly high: number }
/** One finding, numbered from 1 in the order of the findings; `upper` says whether it lies in the temperature or in the pressure field. */
export interface DrawnMark extends Place { readonly number: number; readonly kind: LogFindingKind; readonly field: 'temperature' | 'pressure' }
export interface DrawnTick { readonly at: number; readonly value: number }
/** What a drawing of a log shows, freed of pixels: the screen and the paper scale it to their room. */
export interface LogDrawing {
  readonly temperature: readonly DrawnStretch[];
  readonly windows: readonly DrawnWindow[];
  /** How steep a ramp may be at most: from where it began. */
  readonly rates: readonly { readonly name: string; readonly from: Place; readonly to: Place }[];
  /** Null where the log has no pressure. Its axis is logarithmic. */
  readonly pressure: null | { readonly curve: readonly DrawnStretch[]; readonly windows: readonly DrawnWindow[]; readonly ticks: readonly DrawnTick[] };
  readonly marks: readonly DrawnMark[];
  readonly minutes: readonly DrawnTick[];
  readonly celsius: readonly DrawnTick[];
}

/** Pressures below lie on the floor of the drawing, mbar. */
const LEAST_MBAR = 0.01;
const OF_PRESSURE: readonly LogFindingKind[] = ['pressureHigh', 'pressureLow', 'pressureShort', 'pressureMissing'];

/** Lays a reduced curve out with its programme's windows, steepest ramps and findings. The axes end at round values. */
export function logDrawing(curve: ReducedLog, check: LogCheck, { segments }: Pick<ProgrammeLimits, 'segments'>): LogDrawing {
  const length = Math.max(curve.atMin.at(-1) ?? 1, 1);
  const step = [10, 30, 60, 120, 300, 600].find((each) => length / each <= 9) ?? 1200;
  const topC = Math.max(200, Math.ceil(Math.max(...curve.mostC, ...segments.map((segment) => (segment.kind === 'soak' ? segment.upperC : segment.toC))) / 200) * 200);
  const [x, y] = [(at: number): number => at / length, (celsius: number): number => Math.max(0, celsius / topC)];
  const [leastMbar, mostMbar] = [curve.leastMbar, curve.mostMbar];
  const topDecade = Math.max(1, Math.ceil(Math.log10(Math.max(10, ...(mostMbar ?? []).flatMap((value) => value ?? [])))));
  const low = Math.log10(LEAST_MBAR);
  const p = (mbar: number): number => (Math.log10(Math.max(LEAST_MBAR, mbar)) - low) / (topDecade - low);
  const parts = segments.map((segment, at) => ({ segment, outcome: check.segments[at] }));
  const windows = parts.flatMap(({ segment, outcome }) => (segment.kind === 'soak' && outcome?.fromMin != null && outcome.toMin !== null ? [{ segment, x1: x(outcome.fromMin), x2: x(outcome.toMin) }] : []));
  return {
    temperature: curve.atMin.map((at, place) => ({ x: x(at), low: y(curve.leastC[place] ?? 0), high: y(curve.mostC[place] ?? 0) })),
    windows: windows.map(({ segment: { name, lowerC, upperC }, x1, x2 }) => ({ name, x1, x2, low: y(lowerC), high: y(upperC) })),
    rates: parts.flatMap(({ segment, outcome }) => {
      if (segment.kind === 'soak' || segment.mostRateCPerMin === null || segment.mostRateCPerMin === 0 || outcome?.fromMin == null) return [];
      const from = segment.kind === 'heat' ? outcome.leastC ?? 0 : outcome.mostC ?? 0;
      const until = outcome.fromMin + Math.abs(segment.toC - from) / segment.mostRateCPerMin;
      const share = Math.min(1, (length - outcome.fromMin) / Math.max(until - outcome.fromMin, 1e-9));
      return [{ name: segment.name, from: { x: x(outcome.fromMin), y: y(from) }, to: { x: x(outcome.fromMin + (until - outcome.fromMin) * share), y: y(from + (segment.toC - from) * share) } }];
    }),
    pressure: leastMbar === null || mostMbar === null ? null : {
      curve: curve.atMin.flatMap((at, place) => {
        const [least, most] = [leastMbar[place] ?? null, mostMbar[place] ?? null];
        return least === null || most === null ? [] : [{ x: x(at), low: p(least), high: p(most) }];
      }),
      windows: windows.flatMap(({ segment: { name, pressure }, x1, x2 }) => (pressure === null ? [] : [{ name, x1, x2, low: p(pressure.lowerMbar), high: p(pressure.upperMbar) }])),
      ticks: Array.from({ length: topDecade - low + 1 }, (_, at) => low + at).map((decade) => ({ at: (decade - low) / (topDecade - low), value: 10 ** decade })),
    },
    marks: check.findings.map((finding, at): DrawnMark => {
      const middle = x((finding.fromMin + finding.toMin) / 2);
      const field = OF_PRESSURE.includes(finding.kind) && leastMbar !== null ? 'pressure' : 'temperature';
      const isCelsius = ['tooHot', 'tooCold', 'notReached', 'startsLate'].includes(finding.kind);
      const isMbar = finding.kind === 'pressureHigh' || finding.kind === 'pressureLow';
      const place = curve.atMin.findLastIndex((each) => each <= (finding.fromMin + finding.toMin) / 2);
      const own = field === 'pressure' ? p(isMbar ? finding.value : mostMbar?.[place] ?? LEAST_MBAR) : y(isCelsius ? finding.value : curve.mostC[place] ?? 0);
      return { number: at + 1, kind: finding.kind, field, x: middle, y: Math.min(1, own) };
    }),
    minutes: Array.from({ length: Math.floor(length / step) + 1 }, (_, at) => ({ at: x(at * step), value: at * step })),
    celsius: Array.from({ length: topC / 200 + 1 }, (_, at) => ({ at: y(at * 200), value: at * 200 })),
  };
}
