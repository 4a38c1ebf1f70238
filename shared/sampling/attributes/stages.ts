import { OutsideDomain, requireWhole } from '../../ground/outside-domain.ts';

/** One sample of a plan that may take several. Acceptance and rejection numbers are cumulative: they are held against all found so far. */
export interface Stage {
  /** Pieces of this sample alone. */
  readonly sampleSize: number;
  /** Accept at this many or fewer; null where acceptance is not possible yet. */
  readonly ac: number | null;
  /** Reject at this many or more. */
  readonly re: number;
}

/** A plan of one sample or more. Its last stage always decides. */
export interface StagedPlan {
  readonly stages: readonly Stage[];
}

/** What the samples looked at so far say; `stage` counts from 1: the sample that decided, or the one to take next. */
export type StagesVerdict =
  | { readonly outcome: 'accepted' | 'acceptedInGap' | 'rejected'; readonly stage: number }
  | { readonly outcome: 'open'; readonly stage: number };

/**
 * Judges a plan of one sample or more by what was found so far. At or below Ac the lot is accepted, at or above Re rejected, between them
 * the next sample is taken; after the last one a count between Ac and Re (reduced plans) is accepted in the gap. The first sample that
 * decides is the verdict, whatever was found afterwards.
 * @param found nonconforming pieces, added up over the samples, after each sample looked at so far; never falling
 * @throws OutsideDomain when a count is no count, falls, or belongs to a sample the plan does not have
 * @see MIL-STD-105E 4.10.1.1 to 4.10.1.4 (seen)
 * @example judgeStages({ stages: [{ sampleSize: 50, ac: 1, re: 4 }, { sampleSize: 50, ac: 4, re: 5 }] }, [2]) // open, stage 2
 */
export function judgeStages({ stages }: StagedPlan, found: readonly number[]): StagesVerdict {
  if (found.length > stages.length) throw new OutsideDomain('found', `counts of ${stages.length} samples or fewer`, found.length);
  found.forEach((count, at) => requireWhole(`found[${at}]`, count, found[at - 1] ?? 0, Number.MAX_SAFE_INTEGER));
  for (const [at, count] of found.entries()) {
    const stage = stages[at];
    if (stage === undefined) break;
    if (stage.ac !== null && count <= stage.ac) return { outcome: 'accepted', stage: at + 1 };
    if (count >= stage.re) return { outcome: 'rejected', stage: at + 1 };
    if (at === stages.length - 1) return { outcome: 'acceptedInGap', stage: at + 1 };
  }
  return { outcome: 'open', stage: found.length + 1 };
}

/** The samples of any plan by attributes with its numbers; a single plan has one. */
export function stagesOf(plan: { readonly sampleSize: number; readonly ac: number; readonly re: number; readonly stages?: readonly Stage[] }): readonly Stage[] {
  return plan.stages ?? [{ sampleSize: plan.sampleSize, ac: plan.ac, re: plan.re }];
}
