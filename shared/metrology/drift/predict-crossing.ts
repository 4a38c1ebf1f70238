import type { DriftRule } from './drift-rule.ts';
import type { DriftState } from './drift-state.ts';
import { sigmaOf } from './drift-state.ts';

/** Where the drift comes to a limit if it goes on as now: the likeliest piece, and an interval of about 95 %. Pieces of the stream, from 1. */
export interface Crossing { readonly piece: number; readonly from: number; /** Null where the line may as well never get there. */ readonly to: number | null }

/** The limit counts as reached when the mean is so many σ from it: 0.135 % of the pieces then lie outside (normal values). */
export const REACHED_SIGMAS = 3;
/** Values since the drift began before anything is foretold. */
const fewest = 20;
/** Two-sided 95 % of the normal distribution. */
const z95 = 1.959964;
/** No prediction beyond so many pieces: it would be no help. */
const farthest = 10_000_000;

/**
 * Foretells at which piece the mean, running on along its line, is `REACHED_SIGMAS` σ from a limit.
 * The line is fitted to the values since the average last crossed the target. Its interval holds the places at which the 95 % band of the
 * line meets the level (inverse regression, Fieller); σ is that of single values.
 * @param limit the tolerance limit on the side of the drift, unit of the values
 * @returns null where none can be given: too few values, no slope towards the limit that stands out from chance, or too far away
 * @see Draper & Smith, Applied Regression Analysis, 3rd ed., 3.2 (from memory)
 */
export function predictCrossing(rule: DriftRule, state: DriftState, limit: number): Crossing | null {
  const { n, trend, alarm } = state;
  if (alarm === null || alarm.ended !== null) return null;
  const sigma = sigmaOf(rule, state);
  const towards = alarm.side === 'above' ? 1 : -1;
  const level = towards * (limit - rule.target) - REACHED_SIGMAS * sigma;
  // From here on everything is turned so that the drift goes up.
  const [off, slope] = [towards * trend.off, (towards * trend.products) / trend.places];
  if (towards * (state.ewma - rule.target) >= level) return { piece: n, from: n, to: n };
  if (trend.weight < fewest || !(slope > 0)) return null;
  const doubt = (z95 * z95 * sigma * sigma) / trend.places;
  const rise = level - off;
  // (rise − slope·u)² = z²σ²(1/weight + u²/places), u counted from the mean place.
  const [a, b, c] = [slope * slope - doubt, rise * slope, rise * rise - (z95 * z95 * sigma * sigma) / trend.weight];
  const root = b * b - a * c;
  if (a <= 0 || root < 0) return null;
  const piece = trend.place + rise / slope;
  const [from, to] = [trend.place + (b - Math.sqrt(root)) / a, trend.place + (b + Math.sqrt(root)) / a];
  if (piece - n > farthest) return null;
  return { piece: Math.max(n, Math.round(piece)), from: Math.max(n, Math.floor(from)), to: to - n > farthest ? null : Math.max(n, Math.ceil(to)) };
}
