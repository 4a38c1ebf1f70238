import { requireWhole } from '../../ground/outside-domain.ts';
import { blocksOf, piecesOf } from './blocks.ts';
import type { Blocks, Judging } from './blocks.ts';
import { LARGEST_LOT, lotOf, qualityOf, requireFits, sourceOf } from './model.ts';
import type { RiskModel, Source } from './model.ts';
import { acceptedOf, outcomesFrom, outcomesOf } from './outcomes.ts';
import type { Outcomes } from './outcomes.ts';
import { shortWalker } from './walk-short.ts';
import { walk } from './walk.ts';
import type { Walked } from './walk.ts';

/**
 * Average outgoing quality: the fraction nonconforming (Poisson: nonconformities per piece) in the lots that leave, when every rejected lot
 * is looked at piece by piece and every nonconforming piece found is replaced by a good one. AOQ = p·Σ (1 − mᵢ/N)·Pᵢ, where mᵢ pieces
 * were looked at when sample i accepted with probability Pᵢ. For a single lot of D in N the Pᵢ are those of a lot of D − 1 in N − 1.
 * @param lotSize N; null for a lot so much larger than its samples that what they replace does not show
 * @param model a hypergeometric model has its own lot size, which is then the one used
 * @throws OutsideDomain as `outcomes`, and when the samples are larger than the lot
 * @see NIST/SEMATECH e-Handbook 6.2.3.2; the factor for one lot is derived in docs/methods/risk.md
 */
export function averageOutgoingQuality(plan: Judging, lotSize: number | null, model: RiskModel, p: number): number {
  return outgoingOf(blocksOf(plan), lotFor(lotSize, model), sourceOf(model, p));
}

/**
 * Average total inspection: pieces looked at per lot when every rejected lot is looked at piece by piece. ATI = Σ mᵢ·Pᵢ + N·(1 − Pa).
 * @param lotSize N, 1 … 1e9; a hypergeometric model has its own
 * @throws OutsideDomain as `outcomes`, and when the samples are larger than the lot
 * @see NIST/SEMATECH e-Handbook 6.2.3.2
 */
export function averageTotalInspection(plan: Judging, lotSize: number, model: RiskModel, p: number): number {
  const blocks = blocksOf(plan);
  const lot = lotFor(lotSize, model) ?? lotSize;
  requireFits(piecesOf(blocks.stages), lot);
  return totalInspectionOf(outcomesOf(blocks, sourceOf(model, p)), lot);
}

/** The lot size that counts: a model of one lot knows it. @throws OutsideDomain unless it is null or 1 … 1e9 pieces */
export function lotFor(lotSize: number | null, model: RiskModel): number | null {
  const lot = model.kind === 'hypergeometric' ? model.lotSize : lotSize;
  if (lot !== null) requireWhole('lotSize', lot, 1, LARGEST_LOT);
  return lot;
}

/** `averageTotalInspection` from outcomes known before. */
export function totalInspectionOf({ byStage, acceptedInGap, rejected }: Outcomes, lotSize: number): number {
  let [looked, pieces] = [0, 0];
  for (const stage of byStage) {
    pieces = stage.pieces;
    looked += pieces * stage.accepted;
  }
  return looked + pieces * acceptedInGap + lotSize * rejected;
}

/** `averageOutgoingQuality` of a plan laid out before; `known`, where it is, saves walking again. */
export function outgoingOf(blocks: Blocks, lotSize: number | null, source: Source, known?: Walked): number {
  const pieces = piecesOf(blocks.stages);
  if (lotSize !== null) requireFits(pieces, lotSize);
  const quality = qualityOf(source);
  if (quality === 0) return 0;
  const isLot = source.kind === 'hypergeometric';
  const walked = known ?? (isLot ? shortWalker(blocks)?.(source) : walk(blocks, source)) ?? null;
  if (isLot && walked !== null && walked.left !== null) return walked.left / source.lotSize;
  const passed = isLot ? passedInLot(blocks, source.lotSize, source.nonconforming) : walked && outcomesFrom(walked);
  if (passed === null) return 0;
  if (lotSize === null) return quality * acceptedOf(passed);
  let left = 0;
  for (const { pieces: looked, accepted } of passed.byStage) left += ((lotSize - looked) / lotSize) * accepted;
  return quality * (left + ((lotSize - pieces) / lotSize) * passed.acceptedInGap);
}

/** A nonconforming piece left in the lot sees the samples come from the other N − 1 pieces. Nothing is left where a sample takes the last. */
function passedInLot({ stages, stops }: Blocks, lotSize: number, nonconforming: number): Outcomes | null {
  const last = stages.at(-1);
  if (last === undefined) return null;
  if (piecesOf(stages) < lotSize) return outcomesOf({ stages, stops }, lotOf(lotSize - 1, nonconforming - 1));
  const shortened = last.sampleSize === 1 ? stages.slice(0, -1) : [...stages.slice(0, -1), { ...last, sampleSize: last.sampleSize - 1 }];
  if (shortened.length === 0) return null;
  const passed = outcomesOf({ stages: shortened, stops }, lotOf(lotSize - 1, nonconforming - 1));
  if (shortened.length < stages.length) return { ...passed, acceptedInGap: 0 };
  return { ...passed, acceptedInGap: 0, byStage: passed.byStage.slice(0, -1) };
}
