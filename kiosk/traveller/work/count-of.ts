import { isSequential, samplingStanding } from '../../../shared/traveller/index.ts';
import type { CharacteristicWork, FindingClass, LotPlan } from '../../../shared/traveller/index.ts';

/** How one class of a counted sample stands: what was found in the pieces asked for so far, and the numbers it is held against now; null where that is not possible yet. */
export interface ClassTally { readonly class: FindingClass; readonly found: number; readonly n: number; readonly ac: number | null; readonly re: number | null; readonly outcome: 'open' | 'accepted' | 'acceptedInGap' | 'rejected' }

/** The tally of each class, with pieces beyond the class's own n left out, as the verdict will. */
export function classTallies(work: CharacteristicWork): ClassTally[] {
  const standing = samplingStanding(work);
  return (standing?.classes ?? []).map(({ class: each, found, outcome, at, acceptAt, rejectAt }) => ({ class: each, found, n: at, ac: acceptAt, re: rejectAt, outcome }));
}

/** The plan of a class where it is judged piece by piece; null for one judged sample by sample. */
export function sequentialOf(plan: LotPlan): Extract<LotPlan, { readonly kind: 'sequential' }> | null {
  return isSequential(plan) ? plan : null;
}

/** Places in the draw of a class's pieces that showed something, rising; each piece once. */
export function foundAt(work: CharacteristicWork, findingClass: FindingClass): number[] {
  const named = work.findings.filter((finding) => finding.class === findingClass && !finding.withdrawn).flatMap(({ ordinals }) => ordinals);
  return [...new Set(named)].sort((a, b) => a - b);
}

/** All that was found in any class and sample and still stands: pieces, or nonconformities where the plan counts those. */
export function foundInAll(work: CharacteristicWork): number {
  return (samplingStanding(work)?.classes ?? []).reduce((sum, { found, beyond }) => sum + found + beyond, 0);
}

/** Pieces recorded under one kind, those withdrawn left out. */
export function countOfKind(work: CharacteristicWork, code: string): number {
  return work.findings.filter((finding) => finding.code === code && !finding.withdrawn).reduce((sum, { pieces }) => sum + pieces, 0);
}

/** The newest finding of this kind that still counts, named by its slip; null without one. */
export function newestOfKind(work: CharacteristicWork, code: string): number | null {
  return work.findings.findLast((finding) => finding.code === code && !finding.withdrawn)?.slip ?? null;
}
