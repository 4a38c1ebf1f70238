import { variablesAcceptance } from '../../../shared/sampling/variables/index.ts';
import type { MeasuredPlan } from './compared-plan.ts';

/** How often a plan by variables accepts a normal process with p outside one limit. */
export function measuredAcceptance({ method, sampleSize, k }: MeasuredPlan, p: number): number {
  if (p <= 0) return 1;
  if (p >= 1) return 0;
  return variablesAcceptance({ sampleSize, k, mPercent: 100, form: 'k', ...(method === 'sigma' ? { method, sigma: 1 } : {}) }, { p });
}

/** AOQ: pieces outside that leave, where those of the sample and of rejected lots are found. As for plans that count: MIL-STD-105E 11.3. */
export function measuredOutgoing(plan: MeasuredPlan, lotSize: number, p: number): number {
  return (p * measuredAcceptance(plan, p) * (lotSize - plan.sampleSize)) / lotSize;
}

/** ATI: n where the lot is accepted, every piece where it is not. */
export function measuredTotal(plan: MeasuredPlan, lotSize: number, p: number): number {
  return plan.sampleSize + (1 - measuredAcceptance(plan, p)) * (lotSize - plan.sampleSize);
}

/** The p that is accepted with this probability, by bisection over the logarithm of p to about 1e-9. */
export function measuredQualityAt(plan: MeasuredPlan, accepted: number): number {
  let [low, high] = [Math.log(1e-9), Math.log(1 - 1e-9)];
  for (let turn = 0; turn < 44; turn += 1) {
    const between = (low + high) / 2;
    if (measuredAcceptance(plan, Math.exp(between)) > accepted) low = between;
    else high = between;
  }
  return Math.exp((low + high) / 2);
}

/** The largest AOQ over p, found on a grid and narrowed by golden sections: the hill has one top. */
export function measuredOutgoingLimit(plan: MeasuredPlan, lotSize: number): { readonly aoql: number; readonly at: number } {
  const golden = (Math.sqrt(5) - 1) / 2;
  const aoq = (logP: number): number => measuredOutgoing(plan, lotSize, Math.exp(logP));
  let [low, high] = [Math.log(measuredQualityAt(plan, 0.999)), Math.log(measuredQualityAt(plan, 0.001))];
  for (let turn = 0; turn < 40; turn += 1) {
    const [left, right] = [high - golden * (high - low), low + golden * (high - low)];
    if (aoq(left) > aoq(right)) high = right;
    else low = left;
  }
  const at = Math.exp((low + high) / 2);
  return { aoql: measuredOutgoing(plan, lotSize, at), at };
}
