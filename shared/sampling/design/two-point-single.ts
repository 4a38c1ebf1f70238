import type { RiskModel } from '../risk/index.ts';
import { firstTrue } from './first-true.ts';
import { leastForAnyTest } from './least-for-any-test.ts';
import { aimAt } from './risk-points.ts';
import type { NoDesign, RiskPoints } from './risk-points.ts';

/** The largest single sample a design for a process is looked for in; for a lot it is the lot. */
export const LARGEST_SINGLE = 1_000_000;

/** After so many rounds the bound of the most powerful test costs less than it saves. */
const FEW_ROUNDS = 12;

/** A single plan with the risks it really has at the two points. */
export interface SingleDesign {
  readonly n: number;
  readonly ac: number;
  readonly re: number;
  readonly producerRisk: number;
  readonly consumerRisk: number;
}

/**
 * The smallest single plan through two risk points: no plan with fewer pieces meets both, whatever its acceptance number.
 *
 * An Ac asks for at least n(Ac) pieces, the first n that rejects p2 often enough, and n(Ac) never falls as Ac grows. A sample of n asks for
 * at least Ac(n), the first Ac that accepts p1 often enough, and Ac(n) never falls as n grows. So from n = 1, Ac = 0 each is raised to what
 * the other asks for until both are content; neither ever passes the answer. Where that takes many rounds, n is raised at once to where
 * the most powerful test would do.
 *
 * Where pieces are counted, n(Ac) rises with every Ac, so the Ac of the smallest n is the only one. Of nonconformities several Ac may do at
 * one n; the smallest is given, the one that accepts bad goods least.
 * @param request two points and the chance law: one lot of N pieces (p1·N rounded down, p2·N rounded up), a process, or nonconformities a piece
 * @returns n, Ac, Re and the exact risks at the points; `tooLarge` where a process needs more than LARGEST_SINGLE pieces. One lot always has
 *   a plan, at the latest every piece
 * @throws OutsideDomain unless 0 < p1 < p2 < 1 (Poisson: 1000), risks above 0 and together below 1, lot size 1 … 1e9
 * @see the search is derived (docs/methods/design.md); Guenther, Journal of Quality Technology 1 (1969) 105, goes through n(Ac) one by one
 * @example twoPointSingle({ p1: 0.01, producerRisk: 0.05, p2: 0.06, consumerRisk: 0.1, model: { kind: 'binomial' } }) // n 110, Ac 3
 */
export function twoPointSingle({ model, ...points }: RiskPoints & { readonly model: RiskModel }): SingleDesign | NoDesign {
  const aim = aimAt(model, points);
  const { good, bad, producerRisk, consumerRisk, lotSize } = aim;
  const most = lotSize ?? LARGEST_SINGLE;
  let [n, ac, stride] = [1, 0, 1];
  for (let round = 1; ; round += 1) {
    const here = ac;
    if (round === FEW_ROUNDS) n = Math.max(n, leastForAnyTest(aim, (pieces) => pieces, most));
    const before = n;
    n = firstTrue((pieces) => bad.atMost(here, pieces) <= consumerRisk, n, most, stride);
    stride = Math.max(1, Math.floor((n - before) / 2));
    if (n > most) return { none: lotSize === null ? 'tooLarge' : 'lotTooSmall' };
    const pieces = n;
    ac = firstTrue((found) => good.moreThan(found, pieces) <= producerRisk, ac, Number.MAX_SAFE_INTEGER - 1);
    if (ac === here) return { n, ac, re: ac + 1, producerRisk: good.moreThan(ac, n), consumerRisk: bad.atMost(ac, n) };
  }
}
