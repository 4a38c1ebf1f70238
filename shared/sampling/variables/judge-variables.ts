import { meanAndS } from '../../ground/mean-and-s.ts';
import { OutsideDomain, requireFinite } from '../../ground/outside-domain.ts';
import { percentNonconforming } from './percent-nonconforming.ts';
import type { VariablesPlan } from './s-method-plan.ts';

/** What a sample measured by variables is judged from. Limits in the unit of the values; a value on a limit conforms. */
export type VariablesSample = {
  readonly values: readonly number[];
  readonly lower?: number | undefined;
  readonly upper?: number | undefined;
  readonly plan: Pick<VariablesPlan, 'sampleSize' | 'k' | 'mPercent'>;
};

/** The verdict and the numbers it rests on, all finite, so that a slip can keep them. */
export type VariablesVerdict = {
  readonly mean: number;
  readonly s: number;
  /** (mean − lower) / s; absent without a lower limit, or with s = 0, when it is no finite number. */
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
  /** Values outside the limits: the same readings seen as attributes. */
  readonly outside: number;
};

/**
 * Judges a sample by the s-method. One limit: Form 1, Q ≥ k. Two limits with one AQL: Form 2, estimated percent of both sides ≤ M.
 * All at full precision; the printed table B-5 is not used.
 * All values equal (s = 0): the percent is 0 strictly within the limit, 100 beyond it, and 50 on it, which is what Q = 0 means for every
 * s above 0. Q is then no finite number, so the verdict is given by Form 2, which always agrees with Form 1.
 * @param sample as many finite values as the plan's sample size (3 or more) and at least one limit, lower below upper
 * @throws OutsideDomain otherwise
 * @see MIL-STD-414 (1957) B, Forms 1 and 2, Examples B-1 to B-3
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
  if (s === null || values.length < 3) throw new OutsideDomain('values', '3 or more', values.length);
  const low = lower === undefined ? null : side(mean - lower, s, values.length);
  const high = upper === undefined ? null : side(upper - mean, s, values.length);
  const pPercent = (low?.percent ?? 0) + (high?.percent ?? 0);
  const q = low !== null && high !== null ? null : (low?.q ?? high?.q ?? null);
  const decided = q === null
    ? { accepted: pPercent <= plan.mPercent, form: 'M' as const, statistic: pPercent, limit: plan.mPercent }
    : { accepted: q >= plan.k, form: 'k' as const, statistic: q, limit: plan.k };
  return {
    mean, s,
    ...(low === null ? {} : { ...(low.q === null ? {} : { qLower: low.q }), pLowerPercent: low.percent }),
    ...(high === null ? {} : { ...(high.q === null ? {} : { qUpper: high.q }), pUpperPercent: high.percent }),
    pPercent, ...decided,
    outside: values.filter((value) => value < (lower ?? -Infinity) || value > (upper ?? Infinity)).length,
  };
}

/** One limit, seen as the room between it and the mean. */
function side(room: number, s: number, n: number): { readonly q: number | null; readonly percent: number } {
  if (s === 0) return { q: null, percent: room > 0 ? 0 : room < 0 ? 100 : 50 };
  return { q: room / s, percent: percentNonconforming(room / s, n) };
}
