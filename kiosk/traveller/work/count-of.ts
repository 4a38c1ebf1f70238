import { piecesFound } from '../../../shared/traveller/index.ts';
import type { CharacteristicWork, Demand, FindingClass } from '../../../shared/traveller/index.ts';

/** How one class of a counted sample stands. */
export interface ClassTally { readonly class: FindingClass; readonly found: number; readonly n: number; readonly ac: number; readonly re: number }

/** The tally of each class, with pieces beyond the class's own n left out, as the verdict will. */
export function classTallies(work: CharacteristicWork): ClassTally[] {
  const { basis } = work.demand;
  if (basis.by !== 'attributes') return [];
  return basis.classes.map(({ class: each, plan }) => {
    const found = piecesFound(work.findings.filter((finding) => finding.class === each && !finding.withdrawn), plan.sampleSize);
    return { class: each, found, n: plan.sampleSize, ac: plan.ac, re: plan.re };
  });
}

/** Pieces recorded under one kind, those withdrawn left out. */
export function countOfKind(work: CharacteristicWork, code: string): number {
  return work.findings.filter((finding) => finding.code === code && !finding.withdrawn).reduce((sum, { pieces }) => sum + pieces, 0);
}

/** The newest finding of this kind that still counts, named by its slip; null without one. */
export function newestOfKind(work: CharacteristicWork, code: string): number | null {
  return work.findings.findLast((finding) => finding.code === code && !finding.withdrawn)?.slip ?? null;
}

/** True when a finding of this class must name its piece: the class looks at fewer pieces than are drawn. */
export function needsPiece(demand: Demand, findingClass: FindingClass): boolean {
  const plan = demand.basis.by === 'attributes' ? demand.basis.classes.find((each) => each.class === findingClass)?.plan : undefined;
  return plan !== undefined && plan.sampleSize < demand.n;
}
