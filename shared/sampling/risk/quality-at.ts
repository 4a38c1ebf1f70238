import { OutsideDomain } from '../../ground/outside-domain.ts';
import { blocksOf, piecesOf } from './blocks.ts';
import type { Blocks, Judging } from './blocks.ts';
import { findRoot } from './find-root.ts';
import { lotOf, requireFits, sourceOf } from './model.ts';
import type { RiskModel, Source } from './model.ts';
import { acceptedOf, outcomesOf } from './outcomes.ts';

/**
 * The quality that a plan accepts with a given probability: the limiting quality at a consumer's risk, or the producer's point. The largest p
 * whose acceptance is not less than that; 1 where a plan accepts even p = 1 so often. For one lot it is a whole number of pieces over N:
 * one more nonconforming piece and the acceptance falls below.
 * @param wanted the probability of acceptance, above 0 and below 1
 * @returns p, as `outcomes` takes it
 * @throws OutsideDomain for a probability outside this range, or as `outcomes`
 * @remarks relative error ≤ 1e-10; acceptance never rises with p, so there is one crossing
 * @example qualityAt({ stages: [{ sampleSize: 80, ac: 2, re: 3 }] }, { kind: 'binomial' }, 0.1) // 0.0652
 */
export function qualityAt(plan: Judging, model: RiskModel, wanted: number): number {
  if (!(wanted > 0 && wanted < 1)) throw new OutsideDomain('acceptance', 'above 0 and below 1', wanted);
  const blocks = blocksOf(plan);
  return model.kind === 'hypergeometric' ? inLot(blocks, model.lotSize, wanted) : inProcess(blocks, model, wanted);
}

function inLot(blocks: Blocks, lotSize: number, wanted: number): number {
  requireFits(piecesOf(blocks.stages), lotSize);
  const accepts = (nonconforming: number): boolean => surplus(blocks, lotOf(lotSize, nonconforming), wanted) >= 0;
  if (accepts(lotSize)) return 1;
  let [most, tooMany] = [0, lotSize];
  while (tooMany - most > 1) {
    const middle = Math.floor((most + tooMany) / 2);
    if (accepts(middle)) most = middle;
    else tooMany = middle;
  }
  return most / lotSize;
}

function inProcess(blocks: Blocks, model: RiskModel, wanted: number): number {
  const shortfall = (logP: number): number => -surplus(blocks, sourceOf(model, Math.min(Math.exp(logP), model.kind === 'poisson' ? 1e6 : 1)), wanted);
  const highest = model.kind === 'poisson' ? Math.log(1e6) : 0;
  if (model.kind === 'binomial' && shortfall(0) <= 0) return 1;
  const last = blocks.stages.at(-1)?.re ?? 1;
  let low = Math.min(highest, Math.log(last / piecesOf(blocks.stages)));
  let high = low;
  while (high < highest && shortfall(high) < 0) high = Math.min(highest, high + 1);
  while (low > -700 && shortfall(low) > 0) low -= 1;
  return Math.exp(findRoot(shortfall, low, high));
}

/** How much more is accepted than wanted, on the scale of the logarithm of the smaller probability, where it is sharp. */
function surplus(blocks: Blocks, source: Source, wanted: number): number {
  const reached = outcomesOf(blocks, source);
  const logOf = (chance: number): number => Math.max(-800, Math.log(chance));
  return wanted <= 0.5 ? logOf(acceptedOf(reached)) - Math.log(wanted) : Math.log1p(-wanted) - logOf(reached.rejected);
}
