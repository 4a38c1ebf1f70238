import { blocksOf } from './blocks.ts';
import type { Blocks, Judging } from './blocks.ts';
import { lotOf, sourceOf } from './model.ts';
import type { RiskModel, Source } from './model.ts';
import { walk } from './walk.ts';
import type { StageOutcome, Walked } from './walk.ts';

/** How lots of one quality fare under a plan, as fractions 0 … 1. Accepted, accepted in the gap and rejected add up to 1. */
export interface Outcomes {
  /** At or below an acceptance number; the gap of a reduced plan is not in here. */
  readonly accepted: number;
  /** After the last sample between Ac and Re: accepted, and the next lot is on normal inspection. 0 where a plan has no gap. */
  readonly acceptedInGap: number;
  readonly rejected: number;
  /** By sample; of a sequential plan, by stretch between two steps of its lines. */
  readonly byStage: readonly StageOutcome[];
  /** Pieces looked at per lot: every sample begun is finished, a sequential plan stops at once. */
  readonly averageSampleNumber: number;
}

/**
 * What becomes of lots of quality p under a plan: one sample, several, or a sequential plan with its cut-off.
 * @param plan samples of 1 piece or more, cumulative Ac < Re that never fall, the last with an Ac; or a sequential plan
 * @param model one lot drawn from without replacement (p is then round(p·N) of N pieces), a process, or nonconformities counted
 * @param p a fraction 0 … 1; with the Poisson model nonconformities per piece
 * @throws OutsideDomain for a plan that is none, a quality outside its range, samples larger than the lot
 * @remarks relative error ≤ 1e-10 for every part above 1e-300 (tests/reference/risk.test.ts); no loop over the lot
 * @see MIL-STD-105E 4.10.1 (the verdicts); formulas in docs/methods/risk.md
 * @example outcomes({ stages: [{ sampleSize: 50, ac: 2, re: 7 }, { sampleSize: 100, ac: 6, re: 7 }] }, { kind: 'binomial' }, 0.06) // first sample: 0.416 accepted, 0.029 rejected
 */
export function outcomes(plan: Judging, model: RiskModel, p: number): Outcomes {
  return outcomesOf(blocksOf(plan), sourceOf(model, p));
}

/** Probability that a lot is accepted, in the gap too. Never rises with p: a lot with more to find is rejected no later. Arguments as for `outcomes`. */
export function acceptance(plan: Judging, model: RiskModel, p: number): number {
  return acceptedOf(outcomes(plan, model, p));
}

/** Probability that one lot with so many nonconforming pieces is accepted, drawn from without replacement (type A). */
export function acceptanceAt(plan: Judging, lotSize: number, nonconforming: number): number {
  return acceptedOf(outcomesOf(blocksOf(plan), lotOf(lotSize, nonconforming)));
}

/** Probability that a lot is rejected, as sharp where it is small as acceptance is. Arguments as for `outcomes`. */
export function rejection(plan: Judging, model: RiskModel, p: number): number {
  return outcomes(plan, model, p).rejected;
}

/**
 * Pieces looked at per lot, on average. By default every sample begun is finished, as the tables of the standards reckon;
 * curtailed, looking stops at the piece that rejects from the second sample on, and the first is always finished, for it also tells
 * the quality of the process. A sequential plan always stops at once. Arguments as for `outcomes`.
 * @see NIST/SEMATECH e-Handbook 6.2.4, for a double plan
 */
export function averageSampleNumber(plan: Judging, model: RiskModel, p: number, { curtailed = false }: { readonly curtailed?: boolean } = {}): number {
  return walk(blocksOf(plan, curtailed), sourceOf(model, p)).averageSampleNumber;
}

/** `outcomes` of a plan laid out before. */
export function outcomesOf(blocks: Blocks, source: Source): Outcomes {
  return outcomesFrom(walk(blocks, source));
}

/** What a walk adds up to. */
export function outcomesFrom({ byStage, acceptedInGap, averageSampleNumber: average }: Walked): Outcomes {
  let [accepted, rejected] = [0, 0];
  for (const stage of byStage) {
    accepted += stage.accepted;
    rejected += stage.rejected;
  }
  return { accepted, acceptedInGap, rejected, byStage, averageSampleNumber: average };
}

/** All that is accepted, the gap too. */
export function acceptedOf({ accepted, acceptedInGap }: Pick<Outcomes, 'accepted' | 'acceptedInGap'>): number {
  return accepted + acceptedInGap;
}
