import { meanAndS } from '../../ground/mean-and-s.ts';
import { OutsideDomain, requireFinite } from '../../ground/outside-domain.ts';
import { percentNonconforming } from './percent-nonconforming.ts';
import { sigmaPercentNonconforming } from './quality-at-percent.ts';
import type { SideConstants, VariablesJudging } from './variables-plan-types.ts';

/** What a sample measured by variables is judged from. Limits in the unit of the values; a value on a limit conforms. */
export type VariablesSample = {
  readonly values: readonly number[];
  readonly lower?: number | undefined;
  readonly upper?: number | undefined;
  readonly plan: VariablesJudging;
};

/** One part of the verdict where each limit has its own AQL: k form Q ≥ limit, M form percent ≤ limit. */
export interface VariablesSide { readonly statistic: number; readonly limit: number; readonly accepted: boolean }

/** The verdict and the numbers it rests on, all finite, so that a slip can keep them. */
export type VariablesVerdict = {
  readonly mean: number;
  /** Of the readings, also where σ is known and judged with instead. */
  readonly s: number;
  readonly method?: 'sigma';
  readonly sigma?: number;
  /** (mean − lower) / s, or / σ; absent without a lower limit, or with s = 0, when it is no finite number. */
  readonly qLower?: number;
  /** (upper − mean) / s; absent likewise. */
  readonly qUpper?: number;
  /** Estimated percent below the lower limit; absent without one. */
  readonly pLowerPercent?: number;
  readonly pUpperPercent?: number;
  /** Estimated percent nonconforming, both sides together. */
  readonly pPercent: number;
  readonly accepted: boolean;
  /** k: Form 1, `statistic` is Q and must be `limit` or more. M: Form 2, `statistic` is percent and must be `limit` or less. */
  readonly form: 'k' | 'M';
  readonly statistic: number;
  readonly limit: number;
  /** With an AQL for each limit: every part, and the one that `statistic` and `limit` show, which has the least room. */
  readonly separate?: { readonly lower: VariablesSide; readonly upper: VariablesSide; readonly together?: VariablesSide; readonly shown: 'lower' | 'upper' | 'together' };
  /** Values outside the limits: the same readings seen as attributes. */
  readonly outside: number;
};

/**
 * Judges a sample by variables, with s or, where the plan says so, with the known σ.
 * - One limit: Q ≥ k, or in the M form the estimated percent beyond it ≤ M.
 * - Two limits with one AQL: estimated percent of both sides ≤ M.
 * - Two limits, each with its AQL: in the k form each Q ≥ its k; in the M form, which is used unless k is asked for, each percent ≤ its M
 *   and both together ≤ the larger M.
 * All at full precision; the printed table B-5 is not used.
 * All values equal (s = 0): the percent is 0 strictly within the limit, 100 beyond it, and 50 on it, which is what Q = 0 means for every
 * s above 0. Q is then no finite number, so the verdict is given by the M form.
 * @param sample as many finite values as the plan's sample size (3 or more, 2 with known σ) and at least one limit, lower below upper
 * @throws OutsideDomain otherwise
 * @see MIL-STD-414 (1957) B, Forms 1 and 2, Examples B-1 to B-4; D, Examples D-1 to D-3
 */
export function judgeVariables({ values, lower, upper, plan }: VariablesSample): VariablesVerdict {
  if (lower === undefined && upper === undefined) throw new OutsideDomain('limits', 'given on one side at least', 'none');
  if (upper !== undefined) requireFinite('upper', upper);
  if (lower !== undefined) requireFinite('lower', lower, -Infinity, upper ?? Infinity);
  if (lower === upper) throw new OutsideDomain('lower', 'below upper', lower);
  const [first, ...others] = values;
  if (first === undefined || values.length !== plan.sampleSize) {
    throw new OutsideDomain('values', `as many as the plan asks, ${plan.sampleSize}`, values.length);
  }
  values.forEach((value, at) => requireFinite(`values[${at}]`, value, -1e150, 1e150));
  const { mean, s } = meanAndS(first, others);
  const sigma = sigmaOf(plan);
  const fewest = sigma === null ? 3 : 2;
  if (s === null || values.length < fewest) throw new OutsideDomain('values', `${fewest} or more`, values.length);
  const estimated = (room: number): Estimate => (sigma === null ? estimate(room, s, values.length) : { q: room / sigma, percent: sigmaPercentNonconforming(room / sigma, values.length) });
  const low = lower === undefined ? null : estimated(mean - lower);
  const high = upper === undefined ? null : estimated(upper - mean);
  return {
    mean, s, ...(sigma === null ? {} : { method: 'sigma', sigma }),
    ...(low === null ? {} : { ...(low.q === null ? {} : { qLower: low.q }), pLowerPercent: low.percent }),
    ...(high === null ? {} : { ...(high.q === null ? {} : { qUpper: high.q }), pUpperPercent: high.percent }),
    pPercent: (low?.percent ?? 0) + (high?.percent ?? 0), ...decided(low, high, plan),
    outside: values.filter((value) => value < (lower ?? -Infinity) || value > (upper ?? Infinity)).length,
  };
}

type Decided = Pick<VariablesVerdict, 'accepted' | 'form' | 'statistic' | 'limit' | 'separate'>;
/** One limit, seen from the mean. */
interface Estimate { readonly q: number | null; readonly percent: number }

function sigmaOf({ method, sigma }: VariablesJudging): number | null {
  if (method === undefined) return null;
  if (sigma === undefined) throw new OutsideDomain('plan.sigma', 'given with the σ-method', sigma);
  requireFinite('plan.sigma', sigma, Number.MIN_VALUE);
  return sigma;
}

/** From the room between limit and mean. */
function estimate(room: number, s: number, n: number): Estimate {
  if (s === 0) return { q: null, percent: room > 0 ? 0 : room < 0 ? 100 : 50 };
  return { q: room / s, percent: percentNonconforming(room / s, n) };
}

function decided(low: Estimate | null, high: Estimate | null, plan: VariablesJudging): Decided {
  if (low !== null && high !== null) return plan.separate === undefined ? judged(byPercent(low.percent + high.percent, plan), 'M') : eachSide(low, high, plan.separate, plan.form ?? 'M');
  const [only, constants] = low === null ? [high, plan.separate?.upper ?? plan] : [low, plan.separate?.lower ?? plan];
  if (only === null) throw new OutsideDomain('limits', 'given on one side at least', 'none');
  return only.q === null || plan.form === 'M' ? judged(byPercent(only.percent, constants), 'M') : judged(byDistance(only.q, constants), 'k');
}

/** The part with the least room is the one shown: a rejecting one where there is any. */
function eachSide(low: Estimate, high: Estimate, separate: { readonly lower: SideConstants; readonly upper: SideConstants }, form: 'k' | 'M'): Decided {
  if (form === 'k' && low.q !== null && high.q !== null) {
    const [lower, upper] = [byDistance(low.q, separate.lower), byDistance(high.q, separate.upper)];
    const shown = lower.statistic - lower.limit <= upper.statistic - upper.limit ? 'lower' : 'upper';
    return { ...judged(shown === 'lower' ? lower : upper, 'k'), accepted: lower.accepted && upper.accepted, separate: { lower, upper, shown } };
  }
  const [lower, upper] = [byPercent(low.percent, separate.lower), byPercent(high.percent, separate.upper)];
  const together = byPercent(low.percent + high.percent, { mPercent: Math.max(separate.lower.mPercent, separate.upper.mPercent) });
  const parts = { lower, upper, together };
  const shown = (['lower', 'upper', 'together'] as const).reduce((a, b) => (parts[b].statistic / parts[b].limit > parts[a].statistic / parts[a].limit ? b : a));
  return { ...judged(parts[shown], 'M'), accepted: lower.accepted && upper.accepted && together.accepted, separate: { ...parts, shown } };
}

function judged(part: VariablesSide, form: 'k' | 'M'): Decided {
  return { accepted: part.accepted, form, statistic: part.statistic, limit: part.limit };
}

function byDistance(q: number, { k }: { readonly k: number }): VariablesSide {
  return { statistic: q, limit: k, accepted: q >= k };
}

function byPercent(percent: number, { mPercent }: { readonly mPercent: number }): VariablesSide {
  return { statistic: percent, limit: mPercent, accepted: percent <= mPercent };
}
