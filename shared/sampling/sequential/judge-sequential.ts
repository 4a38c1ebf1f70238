import { requireWhole } from '../../ground/outside-domain.ts';
import type { SequentialPlan } from './sequential-plan.ts';

/** `at`: the piece that decided, counted from 1; while open, how many were looked at. */
export type SequentialVerdict = { readonly outcome: 'open' | 'accepted' | 'rejected'; readonly at: number };

/**
 * Where the two lines stand after n pieces, as real numbers and without the cut-off: what a chart draws.
 * @see Wald, Sequential Analysis (1947), ch. 5
 */
export function linesAt({ h1, h2, slope }: Pick<SequentialPlan, 'h1' | 'h2' | 'slope'>, looked: number): { readonly accept: number; readonly reject: number } {
  return { accept: slope * looked - h1, reject: slope * looked + h2 };
}

/**
 * The most that may have been found among the first n pieces for the lot to be accepted there; null where acceptance is not possible yet.
 * @param looked n, 1 … truncateAt
 * @throws OutsideDomain outside this range
 */
export function acceptAt(plan: SequentialPlan, looked: number): number | null {
  requireWhole('looked', looked, 1, plan.truncateAt);
  if (looked === plan.truncateAt) return plan.truncateAc;
  const most = Math.floor(linesAt(plan, looked).accept);
  return most < 0 ? null : most;
}

/**
 * The fewest found among the first n pieces that reject the lot there; null where that many cannot have been found yet. Never more than
 * one above the Ac of the cut-off: from there on no later piece could change the verdict.
 * @param looked n, 1 … truncateAt
 * @throws OutsideDomain outside this range
 */
export function rejectAt(plan: SequentialPlan, looked: number): number | null {
  requireWhole('looked', looked, 1, plan.truncateAt);
  const fewest = looked === plan.truncateAt ? plan.truncateAc + 1 : Math.min(Math.ceil(linesAt(plan, looked).reject), plan.truncateAc + 1);
  return fewest > looked ? null : fewest;
}

/**
 * Judges the pieces looked at so far, in the order they were drawn. The first piece that decides is the verdict, whatever came after.
 * @param foundAt which pieces were nonconforming, counted from 1, rising
 * @param looked how many pieces were looked at, 0 … truncateAt
 * @throws OutsideDomain outside these ranges
 * @example judgeSequential(plan, [1, 2], 2) // rejected at 2, for the plan in the example of sequentialPlan
 */
export function judgeSequential(plan: SequentialPlan, foundAt: readonly number[], looked: number): SequentialVerdict {
  requireWhole('looked', looked, 0, plan.truncateAt);
  foundAt.forEach((at, index) => requireWhole(`foundAt[${index}]`, at, (foundAt[index - 1] ?? 0) + 1, looked));
  for (let found = 0; found <= foundAt.length; found += 1) {
    const since = found === 0 ? 0 : (foundAt[found - 1] ?? 0);
    const fewest = since === 0 ? null : rejectAt(plan, since);
    if (fewest !== null && found >= fewest) return { outcome: 'rejected', at: since };
    const acceptedAt = nextDecision(plan, found, since);
    const before = foundAt[found] ?? looked + 1; // the next one found; the piece that shows it counts with it
    if (acceptedAt < before) return { outcome: 'accepted', at: acceptedAt };
  }
  return { outcome: 'open', at: looked };
}

/**
 * The piece at which the lot is accepted if no more are found, counted from 1; the cut-off when that comes first.
 * @param found so far, 0 … looked
 * @param looked so far, 0 … truncateAt
 * @returns never less than `looked`; where the lot is already rejected, `looked`
 * @throws OutsideDomain outside these ranges
 */
export function nextDecision(plan: SequentialPlan, found: number, looked: number): number {
  requireWhole('looked', looked, 0, plan.truncateAt);
  requireWhole('found', found, 0, looked);
  const fewest = looked === 0 ? null : rejectAt(plan, looked);
  if (fewest !== null && found >= fewest) return looked;
  const start = Math.max(looked, 1);
  let at = Math.max(start, Math.min(plan.truncateAt, Math.ceil((found + plan.h1) / plan.slope)));
  while (at < plan.truncateAt && (acceptAt(plan, at) ?? -1) < found) at += 1; // the division may fall a piece short of the line
  while (at > start && (acceptAt(plan, at - 1) ?? -1) >= found) at -= 1;
  return at;
}
