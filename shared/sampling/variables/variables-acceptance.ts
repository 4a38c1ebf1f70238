import { logGamma, noncentralTAbove, normalAbove, normalAt, normalBelow } from '../chance/index.ts';
import { OutsideDomain, requireFinite, requireWhole } from '../../ground/outside-domain.ts';
import { acceptedMeans } from './accepted-means.ts';
import { integrate } from './integrate.ts';
import { qualityAtPercent } from './quality-at-percent.ts';
import type { VariablesJudging } from './variables-plan-types.ts';

/** A process quality: p nonconforming; `lowerShare` of it below the lower of two limits, absent where there is one limit. Fractions. */
export interface VariablesQuality { readonly p: number; readonly lowerShare?: number }

/**
 * Probability that a plan by variables accepts a lot of a normal process: one point of its operating characteristic.
 * - One limit: s by the noncentral t, P(T ≥ k√n) with noncentrality z_p·√n; known σ by the normal, Φ((z_p − k)√n). In the M form k is
 *   the distance that M stands for.
 * - Two limits: the process mean and σ follow from p and its share below; then the probability of an accepted mean, exact for a given s,
 *   integrated over the distribution of s.
 * @param plan as judgeVariables takes it; a plan with an AQL for each limit needs `lowerShare`
 * @param quality p and lowerShare 0 … 1; with lowerShare 0 or 1 all lies on one side and the other limit is out of reach
 * @remarks one limit: relative error ≤ 1e-11; two limits: ≤ 1e-10 where the value is above 1e-6, absolute ≤ 1e-15 below. Held by tests/reference.
 * @throws OutsideDomain outside those ranges
 * @see Lieberman & Resnikoff, JASA 50 (1955) 457; Johnson & Welch, Biometrika 31 (1940) 362
 * @example variablesAcceptance({ sampleSize: 5, k: 1.53, mPercent: 3.32 }, { p: 0.01 }) // 0.9004…
 */
export function variablesAcceptance(plan: VariablesJudging, { p, lowerShare }: VariablesQuality): number {
  requireFinite('p', p, 0, 1);
  requireWhole('plan.sampleSize', plan.sampleSize, plan.method === 'sigma' ? 2 : 3, 10_000);
  if (lowerShare === undefined && plan.separate !== undefined) throw new OutsideDomain('lowerShare', 'given where each limit has its own AQL', lowerShare);
  if (p === 0) return 1;
  if (p === 1) return 0;
  if (lowerShare === undefined) return oneLimit(plan, distanceOf(plan, plan.form ?? 'k'), p);
  requireFinite('lowerShare', lowerShare, 0, 1);
  if (lowerShare === 0 || lowerShare === 1) {
    const constants = (lowerShare === 0 ? plan.separate?.upper : plan.separate?.lower) ?? plan;
    return oneLimit(plan, distanceOf({ ...plan, ...constants }, plan.separate === undefined ? 'M' : plan.form ?? 'M'), p);
  }
  return twoLimits(plan, -normalAt(p * lowerShare), -normalAt(p * (1 - lowerShare)));
}

function distanceOf({ k, mPercent, sampleSize, method }: VariablesJudging, form: 'k' | 'M'): number {
  return form === 'k' ? k : qualityAtPercent(mPercent, sampleSize, method ?? 's');
}

function oneLimit({ sampleSize, method }: VariablesJudging, k: number, p: number): number {
  const root = Math.sqrt(sampleSize);
  return method === 'sigma' ? normalAbove((k + normalAt(p)) * root) : noncentralTAbove(k * root, sampleSize - 1, -normalAt(p) * root);
}

/** Limits at 0 and 1: σ = 1/(z_L + z_U), mean = z_L·σ. */
function twoLimits(plan: VariablesJudging, zLower: number, zUpper: number): number {
  const n = plan.sampleSize;
  const sigma = 1 / (zLower + zUpper);
  const root = Math.sqrt(n) / sigma;
  const means = acceptedMeans(plan);
  const given = (scatter: number): number => means.at(scatter).reduce((sum, [from, to]) => sum + between((from - zLower * sigma) * root, (to - zLower * sigma) * root), 0);
  if (plan.method === 'sigma') return given(sigma);
  // s/σ lies between these but for a probability below 1e-20.
  const spread = 12 / Math.sqrt(2 * (n - 1));
  const [least, most] = [Math.max(0, 1 - spread), 1 + spread];
  const ends = [least, ...means.turns.map((turn) => turn / sigma).filter((turn) => turn > least && turn < most), ...((means.turns.at(-1) ?? Infinity) / sigma >= most ? [most] : [])];
  return ends.slice(1).reduce((sum, end, at) => sum + integrate((ratio) => density(ratio, n - 1) * given(ratio * sigma), ends[at] ?? end, end), 0);
}

/** P(a < Z < b), from the tails of the nearer side. */
function between(a: number, b: number): number {
  return a > 0 ? normalAbove(a) - normalAbove(b) : normalBelow(b) - normalBelow(a);
}

/** Density of s/σ, the root of a chi-square over its degrees of freedom. */
function density(ratio: number, df: number): number {
  return ratio <= 0 ? 0 : Math.exp(Math.LN2 + (df / 2) * Math.log(df / 2) - logGamma(df / 2) + (df - 1) * Math.log(ratio) - (df * ratio * ratio) / 2);
}
