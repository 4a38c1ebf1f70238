import { OutsideDomain, requireFinite, requireWhole } from '../../ground/outside-domain.ts';
import { blocksOf } from './blocks.ts';
import type { Judging } from './blocks.ts';
import { qualityOf, sourceOf } from './model.ts';
import type { RiskModel } from './model.ts';
import { lotFor, outgoingOf, totalInspectionOf } from './outgoing.ts';
import { acceptedOf, outcomesFrom } from './outcomes.ts';
import { walker } from './walk.ts';

/** One point of a plan's curves. `p` and `aoq` are fractions (Poisson: per piece); `asn` and `ati` pieces per lot. */
export interface CurvePoint {
  readonly p: number;
  /** In the gap too. */
  readonly accepted: number;
  readonly rejected: number;
  readonly asn: number;
  readonly aoq: number;
  /** null where no lot size is known. */
  readonly ati: number | null;
}

/**
 * Points of the operating characteristic with sample number, outgoing quality and total inspection, evenly spaced from `from` to `to`. For
 * one lot each point lies at a whole number of nonconforming pieces, and points that fall on the same one are given once.
 * @param lotSize N for outgoing quality and total inspection under a process model; left out: a very large lot, and no total inspection
 * @throws OutsideDomain unless from < to and points is 2 … 100 000, or as `outcomes`
 */
export function ocCurve(
  plan: Judging, model: RiskModel,
  { from, to, points, lotSize = null }: { readonly from: number; readonly to: number; readonly points: number; readonly lotSize?: number | null },
): readonly CurvePoint[] {
  requireWhole('points', points, 2, 100_000);
  requireFinite('from', from);
  requireFinite('to', to);
  if (from >= to) throw new OutsideDomain('from', 'less than to', from);
  const blocks = blocksOf(plan);
  const lot = lotFor(lotSize, model);
  const walkAt = walker(blocks);
  const curve: CurvePoint[] = [];
  for (let at = 0; at < points; at += 1) {
    const source = sourceOf(model, at === points - 1 ? to : from + ((to - from) * at) / (points - 1));
    const p = qualityOf(source);
    if (p === curve.at(-1)?.p) continue;
    const walked = walkAt(source);
    const reached = outcomesFrom(walked);
    curve.push({
      p, accepted: acceptedOf(reached), rejected: reached.rejected, asn: reached.averageSampleNumber,
      aoq: outgoingOf(blocks, lot, source, walked), ati: lot === null ? null : totalInspectionOf(reached, lot),
    });
  }
  return curve;
}
