import { requireFinite } from '../../ground/outside-domain.ts';
import type { Stage } from '../attributes/index.ts';
import { outcomes } from '../risk/index.ts';
import type { RiskModel } from '../risk/index.ts';
import { firstTrue } from './first-true.ts';
import { leastForAnyTest } from './least-for-any-test.ts';
import { aimAt, qualitiesAt } from './risk-points.ts';
import type { Aim, NoDesign, RiskPoints } from './risk-points.ts';
import { firstHoldsMore } from './split-of-total.ts';

/** The most pieces, of both samples together, that a double design is looked for in. */
export const LARGEST_DOUBLE = 10_000;

/** A double plan with the risks and the average sample number it really has. */
export interface DoubleDesign {
  readonly stages: readonly [Stage, Stage];
  readonly producerRisk: number;
  readonly consumerRisk: number;
  /** Pieces looked at per lot of quality p1, every sample begun finished. */
  readonly averageAtP1: number;
}

/**
 * The smallest double plan through two risk points, among those that accept at Ac1 or fewer in the first sample, reject where more than Ac2
 * were found, in the first sample or in both (Re1 = Re2 = Ac2 + 1), and take n2 = ratio · n1 (rounded, at least 1) for the second.
 * Smallest means: no such plan with a smaller first sample meets both points, and so none that may take fewer pieces in all; among those
 * with this n1, the one that looks at the fewest pieces per lot of quality p1.
 *
 * No test of n1 + n2 pieces can be sharper than the most powerful one, so n1 below what that asks for is left out; from there each n1 is
 * tried with every Ac1, and for each Ac1 with the smallest Ac2 that accepts p1 often enough, since a larger one looks at more pieces and
 * accepts more of p2.
 * @param request two points and the chance law as for `twoPointSingle`; ratio 0.1 … 10, 1 unless given
 * @returns `tooLarge` where more than LARGEST_DOUBLE pieces would be needed, `lotTooSmall` where the lot has too few for any such plan
 * @throws OutsideDomain as `twoPointSingle`, or for a ratio outside its range
 * @see Neyman & Pearson, Phil. Trans. Royal Society A 231 (1933) 289, for the bound; Re1 = Re2 as in NIST/SEMATECH e-Handbook 6.2.4
 * @example twoPointDouble({ p1: 0.01, producerRisk: 0.05, p2: 0.05, consumerRisk: 0.1, model: { kind: 'binomial' } }) // 69 and 69, Ac 0 and 3
 */
export function twoPointDouble({ model, ratio = 1, ...points }: RiskPoints & { readonly model: RiskModel; readonly ratio?: number }): DoubleDesign | NoDesign {
  requireFinite('ratio', ratio, 0.1, 10);
  const aim = aimAt(model, points);
  const second = (n1: number): number => Math.max(1, Math.round(ratio * n1));
  const most = Math.min(LARGEST_DOUBLE, aim.lotSize ?? LARGEST_DOUBLE);
  const mostFirst = firstTrue((n1) => n1 + second(n1) > most, 1, most) - 1;
  for (let n1 = leastForAnyTest(aim, (first) => first + second(first), mostFirst); n1 <= mostFirst; n1 += 1) {
    const numbers = leastAverage(aim, n1, second(n1));
    if (numbers !== null) return designOf(n1, second(n1), numbers, model, points);
  }
  return { none: most === aim.lotSize ? 'lotTooSmall' : 'tooLarge' };
}

interface Numbers { readonly ac1: number; readonly ac2: number }

/** Beyond this part of a risk a count no longer matters to double precision. */
const NOTHING = 1e-17;

/** Of all (Ac1, Ac2) that meet both points with these samples, the one that looks at the fewest pieces of good goods; null where none does. */
function leastAverage(aim: Aim, n1: number, n2: number): Numbers | null {
  const { good, bad, producerRisk, consumerRisk, counts } = aim;
  const all = n1 + n2;
  const nothing = NOTHING * Math.min(producerRisk, consumerRisk);
  const highest = counts === 'pieces' ? all : Number.MAX_SAFE_INTEGER - 1;
  const from = firstTrue((total) => good.atMost(total, all) > nothing, 0, highest);
  const mostAc2 = firstTrue((total) => bad.atMost(total, all) > consumerRisk, 0, highest) - 1;
  const mostAc1 = firstTrue((found) => bad.atMost(found, n1) > consumerRisk, 0, highest) - 1;
  // Ac2 stands above Ac1 even where good goods hardly ever have so many.
  const to = Math.min(highest, Math.max(mostAc1 + 1, firstTrue((total) => good.moreThan(total, all) <= nothing, from, highest)));
  const ofGood = run(good.exactly, all, from, to);
  const ofBad = run(bad.exactly, all, from, to);
  let best: (Numbers & { readonly goesOn: number }) | null = null;
  for (let ac1 = Math.max(0, firstTrue((found) => good.atMost(found, n1) > nothing, 0, highest) - 1); ac1 <= mostAc1; ac1 += 1) {
    const start = Math.max(from, ac1 + 1);
    if (start > to) break;
    const more = firstHoldsMore(counts, { n1, n2, ac: ac1, from: start, to });
    let [ac2, rejected] = [to, 0];
    for (; ac2 > start; ac2 -= 1) {
      rejected += (ofGood[ac2 - from] ?? 0) * (more[ac2 - start] ?? 0);
      if (rejected > producerRisk) break;
    }
    if (ac2 > mostAc2) continue;
    let accepted = bad.atMost(ac1, n1);
    for (let total = start; total <= ac2 && accepted <= consumerRisk; total += 1) accepted += (ofBad[total - from] ?? 0) * (more[total - start] ?? 0);
    if (accepted > consumerRisk) continue;
    const goesOn = good.atMost(ac2, n1) - good.atMost(ac1, n1);
    if (best === null || goesOn < best.goesOn) best = { ac1, ac2, goesOn };
  }
  return best;
}

function run(exactly: (found: number, pieces: number) => number, pieces: number, from: number, to: number): Float64Array {
  return Float64Array.from({ length: to - from + 1 }, (_, at) => exactly(from + at, pieces));
}

function designOf(n1: number, n2: number, { ac1, ac2 }: Numbers, model: RiskModel, { p1, p2 }: RiskPoints): DoubleDesign {
  const stages = [{ sampleSize: n1, ac: ac1, re: ac2 + 1 }, { sampleSize: n2, ac: ac2, re: ac2 + 1 }] as const;
  const at = qualitiesAt(model, p1, p2);
  const [good, bad] = [outcomes({ stages }, model, at.good), outcomes({ stages }, model, at.bad)];
  return { stages, producerRisk: good.rejected, consumerRisk: bad.accepted, averageAtP1: good.averageSampleNumber };
}
