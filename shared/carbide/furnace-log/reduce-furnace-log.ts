import type { FurnaceLog, ReducedLog } from './furnace-log.ts';

/** Most places of a reduced curve: on a drawing 240 places wide stand no further apart than its lines are thick. */
export const MOST_BUCKETS = 240;

/**
 * The curve of a log in at most 240 equal stretches of time. Each keeps the least and the greatest temperature and pressure of all its rows,
 * so every excursion stays visible with its full height; its place in time is true to one stretch. Rows whose time runs backwards fall
 * into the stretch their time names. Derived, our own choice.
 */
export function reduceFurnaceLog({ atMin, temperatureC, pressureMbar }: FurnaceLog, buckets = MOST_BUCKETS): ReducedLog {
  let [least, most] = [Infinity, -Infinity];
  for (const at of atMin) [least, most] = [Math.min(least, at), Math.max(most, at)];
  const width = (most - least) / buckets;
  const found = new Map<number, { at: number; t: [number, number]; p: [number | null, number | null] }>();
  atMin.forEach((at, row) => {
    const bucket = width === 0 ? 0 : Math.min(buckets - 1, Math.floor((at - least) / width));
    const t = temperatureC[row] ?? Number.NaN;
    const p = pressureMbar?.[row] ?? null;
    const there = found.get(bucket);
    if (there === undefined) {
      found.set(bucket, { at, t: [t, t], p: [p, p] });
      return;
    }
    there.at = Math.min(there.at, at);
    there.t = [Math.min(there.t[0], t), Math.max(there.t[1], t)];
    if (p !== null) there.p = [Math.min(there.p[0] ?? p, p), Math.max(there.p[1] ?? p, p)];
  });
  const places = [...found].sort(([a], [b]) => a - b).map(([, place]) => place);
  const pressures = pressureMbar === null ? { leastMbar: null, mostMbar: null } : { leastMbar: places.map(({ p }) => p[0]), mostMbar: places.map(({ p }) => p[1]) };
  return { atMin: places.map(({ at }) => Math.round(at * 1000) / 1000), leastC: places.map(({ t }) => t[0]), mostC: places.map(({ t }) => t[1]), ...pressures };
}
