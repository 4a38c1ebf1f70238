import { requireFinite } from '../../ground/outside-domain.ts';
import { LEARNING_VALUES, OUTLIER_FROM, OUTLIER_SIGMAS } from './drift-rule.ts';
import type { DriftRule } from './drift-rule.ts';
import { ewmaHalfWidth, requireLambda } from './ewma.ts';
import { emptyTrend, takeIntoTrend } from './trend.ts';
import type { Trend } from './trend.ts';

/** A stream watched for drift, in constant memory however long it is. Plain data: it travels as a snapshot. */
export interface DriftState {
  /** Values taken in. */
  readonly n: number;
  readonly last: number | null;
  /** Sum of the squared differences between each value and the one before it. */
  readonly squaredSteps: number;
  /** The average; the target before the first value. */
  readonly ewma: number;
  /** Values since the average last crossed the target, with the line through them: where the drift began, as far as can be told. */
  readonly trend: Trend;
  /** The latest alarm. */
  readonly alarm: null | { readonly side: DriftSide; /** The value, counted from 1, at which it fell. */ readonly at: number; /** The value at which it ended; null while it stands. */ readonly ended: number | null };
  /** Alarms so far, those that have ended included. */
  readonly alarms: number;
}
export type DriftSide = 'above' | 'below';

/** Nothing taken in yet. */
export function emptyDrift({ target }: DriftRule): DriftState {
  return { n: 0, last: null, squaredSteps: 0, ewma: target, trend: emptyTrend(), alarm: null, alarms: 0 };
}

/**
 * Takes values in, in the order made. An alarm falls where the average leaves its limits; it stands until the average is back within half
 * of them, and then ends.
 * A value further than 6 σ from the average, such as two pieces on the pan at once, counts as if it lay there: alone it neither alarms nor hides what follows.
 * @throws OutsideDomain for a value that is not finite, or a rule that is none
 * @see docs/methods/drift.md; Lucas & Saccucci 1990; the crossing as the change point: Nishina, Technometrics 34 (1992) 303; all from memory
 */
export function watchDrift(rule: DriftRule, before: DriftState, values: readonly number[]): DriftState {
  requireLambda(rule.lambda);
  requireFinite('target', rule.target, -Number.MAX_VALUE, Number.MAX_VALUE);
  let { n, last, squaredSteps, ewma, trend, alarm, alarms } = before;
  for (const value of values) {
    requireFinite('value', value, -1e150, 1e150);
    n += 1;
    const known = n > OUTLIER_FROM ? sigmaOf(rule, { n: n - 1, squaredSteps }) : Infinity;
    if (last !== null) squaredSteps += Math.min((value - last) ** 2, 2 * (OUTLIER_SIGMAS * known) ** 2);
    last = value;
    const side = Math.sign(ewma - rule.target);
    const counted = Math.min(Math.max(value, ewma - OUTLIER_SIGMAS * known), ewma + OUTLIER_SIGMAS * known);
    ewma += rule.lambda * (counted - ewma);
    const crossed = side !== 0 && Math.sign(ewma - rule.target) !== side;
    trend = takeIntoTrend(crossed ? emptyTrend() : trend, n, counted - rule.target);
    const off = Math.abs(ewma - rule.target);
    const limit = isWatching(rule, n) ? ewmaHalfWidth(rule.lambda, rule.limitFactor, sigmaOf(rule, { n, squaredSteps }), n) : Infinity;
    if (alarm?.ended === null && (off <= limit / 2 || alarm.side !== sideOf(ewma, rule))) alarm = { ...alarm, ended: n };
    if (off > limit && alarm?.ended !== null) {
      alarm = { side: sideOf(ewma, rule), at: n, ended: null };
      alarms += 1;
    }
  }
  return { n, last, squaredSteps, ewma, trend, alarm, alarms };
}

function sideOf(ewma: number, { target }: DriftRule): DriftSide {
  return ewma > target ? 'above' : 'below';
}

/** False while too few values are there to know σ by. */
export function isWatching({ sigma }: Pick<DriftRule, 'sigma'>, n: number): boolean {
  return n >= (sigma === null ? LEARNING_VALUES : 1);
}

/**
 * σ of single values: as given, or from the mean squared difference between neighbours, which a slow drift hardly touches:
 * √(Σ(xᵢ₊₁ − xᵢ)² / (2(n − 1))).
 * @see von Neumann, Kent, Bellinson & Hart, Annals of Mathematical Statistics 12 (1941) 153 (from memory)
 */
export function sigmaOf({ sigma, resolution }: Pick<DriftRule, 'sigma' | 'resolution'>, { n, squaredSteps }: Pick<DriftState, 'n' | 'squaredSteps'>): number {
  if (sigma !== null) return sigma;
  return Math.max(n < 2 ? 0 : Math.sqrt(squaredSteps / (2 * (n - 1))), resolution / Math.sqrt(12));
}

/** The chart's limits as they stand after the values so far; null while σ is learned. */
export function driftLimits(rule: DriftRule, state: Pick<DriftState, 'n' | 'squaredSteps'>): null | { readonly lower: number; readonly upper: number } {
  if (state.n < 1 || !isWatching(rule, state.n)) return null;
  const half = ewmaHalfWidth(rule.lambda, rule.limitFactor, sigmaOf(rule, state), state.n);
  return { lower: rule.target - half, upper: rule.target + half };
}
