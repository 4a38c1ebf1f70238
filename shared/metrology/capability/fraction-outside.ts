import { OutsideDomain } from '../../ground/outside-domain.ts';
import { requireWhole } from '../../ground/outside-domain.ts';
import { betaAt, normalAbove } from '../../sampling/chance/index.ts';
import type { CapabilitySpread } from './capability-index.ts';
import { requireSpread } from './capability-index.ts';
import { standardDistance } from './standard-distance.ts';

/** A share 0 … 1 of pieces beyond the limits, with its interval. `by` says from what. */
export type FractionOutside = { readonly value: number; readonly low: number; readonly high: number; readonly by: 'noncentralT' | 'noncentralTBothSides' | 'clopperPearson' };

/**
 * The share beyond the limits that a normal law with this mean and s has. One limit: exact interval by the noncentral t law. Two limits: the sum of both
 * sides' limits, each at half the risk (Bonferroni), so that the interval holds at least the confidence asked for and is wider than need be.
 * @throws OutsideDomain without a limit
 * @see NIST/SEMATECH e-Handbook 6.1.6 (the share, from memory); interval derived
 * @example fractionOutside({ lower: 8, upper: 20 }, { mean: 16, s: 2, values: 50, df: 49 }, 0.95).value // 0.0227818
 */
export function fractionOutside(limits: { readonly lower?: number | undefined; readonly upper?: number | undefined }, spread: CapabilitySpread, confidence: number): FractionOutside {
  requireSpread(spread, confidence);
  const { lower, upper } = limits;
  const given = [...(lower === undefined ? [] : [{ side: 'lower' as const, limit: lower }]), ...(upper === undefined ? [] : [{ side: 'upper' as const, limit: upper }])];
  if (given.length === 0) throw new OutsideDomain('limits', 'given on one side at least', 'none');
  const each = given.length === 1 ? confidence : 1 - (1 - confidence) / 2;
  const sides = given.map(({ side, limit }) => standardDistance(side, limit, spread, each));
  const sum = (pick: (side: (typeof sides)[number]) => number): number => Math.min(1, sides.reduce((total, side) => total + normalAbove(pick(side)), 0));
  return { value: sum(({ value }) => value), low: sum(({ high }) => high), high: sum(({ low }) => low), by: given.length === 1 ? 'noncentralT' : 'noncentralTBothSides' };
}

/**
 * The share counted beyond the limits, without any law: count / of, exact interval.
 * @throws OutsideDomain unless 0 ≤ count ≤ of, 1 ≤ of
 * @see Clopper & Pearson, Biometrika 26 (1934) 404; NIST/SEMATECH e-Handbook 7.2.4.1
 */
export function fractionCounted(count: number, of: number, confidence: number): FractionOutside {
  requireWhole('of', of, 1, 1e9);
  requireWhole('count', count, 0, of);
  if (!(confidence > 0 && confidence < 1)) throw new OutsideDomain('confidence', 'above 0 and below 1', confidence);
  const side = (1 - confidence) / 2;
  return {
    value: count / of, by: 'clopperPearson',
    low: count === 0 ? 0 : betaAt(side, count, of - count + 1),
    high: count === of ? 1 : betaAt(1 - side, count + 1, of - count),
  };
}
