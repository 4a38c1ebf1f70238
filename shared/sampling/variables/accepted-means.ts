import { percentNonconforming } from './percent-nonconforming.ts';
import { qualityAtPercent, sigmaPercentNonconforming } from './quality-at-percent.ts';
import type { VariablesJudging } from './variables-plan-types.ts';

/** Means from … to that a plan accepts, limits at 0 and 1. */
export type Span = readonly [from: number, to: number];

/** Which means a plan with two limits accepts, for a scatter (s or σ) as a share of the distance between the limits. */
export interface AcceptedMeans {
  readonly at: (scatter: number) => readonly Span[];
  /** Scatters at which the region changes its shape, rising; beyond the last nothing is accepted. Infinity where there is no last. */
  readonly turns: readonly number[];
}

/** The accepted means of a plan with a lower and an upper limit. */
export function acceptedMeans(plan: VariablesJudging): AcceptedMeans {
  return plan.separate !== undefined && plan.form === 'k' ? byDistances(plan.separate.lower.k, plan.separate.upper.k) : byPercents(plan);
}

function byDistances(lower: number, upper: number): AcceptedMeans {
  return {
    at: (scatter) => present([lower * scatter, 1 - upper * scatter]),
    turns: [lower + upper > 0 ? 1 / (lower + upper) : Infinity],
  };
}

/**
 * p_L ≤ M_L, p_U ≤ M_U and p_L + p_U ≤ M. The sum falls towards the middle between the limits from both sides, but for s with n = 3: there
 * the middle is a hill, once the estimates of both sides are above 0, and the region is in two parts.
 */
function byPercents({ sampleSize: n, method, mPercent: oneAql, separate }: VariablesJudging): AcceptedMeans {
  const mPercent = separate === undefined ? oneAql : Math.max(separate.lower.mPercent, separate.upper.mPercent);
  const kind = method ?? 's';
  const percent = (quality: number): number => (kind === 'sigma' ? sigmaPercentNonconforming(quality, n) : percentNonconforming(quality, n));
  const sum = (mean: number, scatter: number): number => percent(mean / scatter) + percent((1 - mean) / scatter);
  const distance = (part: number): number => (part <= 0 ? edge : qualityAtPercent(part, n, kind));
  /** Q from which on the estimate is exactly 0. */
  const edge = kind === 'sigma' ? Infinity : (n - 1) / Math.sqrt(n);
  const both = qualityAtPercent(mPercent, n, kind);
  const middle = qualityAtPercent(mPercent / 2, n, kind);
  const lower = separate === undefined ? both : qualityAtPercent(separate.lower.mPercent, n, kind);
  const upper = separate === undefined ? both : qualityAtPercent(separate.upper.mPercent, n, kind);
  const apart = 1 / (both + edge);
  const hill = kind === 's' && n === 3;
  const spans = (scatter: number): readonly Span[] => {
    const outer = both * scatter;
    if (hill) {
      if (scatter > apart) return [];
      const foot = 1 - edge * scatter;
      if (foot >= 0.5 || sum(0.5, scatter) <= mPercent) return [[outer, 1 - outer]];
      const inner = cross((mean) => sum(mean, scatter) > mPercent, foot, 0.5);
      return [[outer, inner], [1 - inner, 1 - outer]];
    }
    if (scatter <= apart) return [[outer, 1 - outer]];
    if (sum(0.5, scatter) > mPercent) return [];
    const from = cross((mean) => sum(mean, scatter) <= mPercent, outer, 0.5);
    return [[from, 1 - from]];
  };
  const [small, large] = separate === undefined ? [both, 0] : [Math.max(lower, upper), mPercent - Math.min(separate.lower.mPercent, separate.upper.mPercent)];
  const corner = 1 / (small + distance(large));
  const last = hill ? apart : 1 / (2 * middle);
  const turns = [apart, 1 / (2 * middle), corner, 1 / (lower + upper)].filter((turn) => turn > 0 && turn <= last);
  return {
    at: (scatter) => spans(scatter).flatMap(([from, to]) => present([Math.max(from, lower * scatter), Math.min(to, 1 - upper * scatter)])),
    turns: middle > 0 ? [...new Set([...turns, last])].sort((a, b) => a - b) : [Infinity],
  };
}

function present([from, to]: Span): readonly Span[] {
  return from < to ? [[from, to]] : [];
}

/** Where a rule that does not hold at `low` begins to hold on the way to `high`, to the last bit. */
function cross(holds: (mean: number) => boolean, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let middle = (low + high) / 2; middle > low && middle < high; middle = (low + high) / 2) {
    if (holds(middle)) high = middle;
    else low = middle;
  }
  return high;
}
