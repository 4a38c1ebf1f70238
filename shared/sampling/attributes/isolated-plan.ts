import { OutsideDomain, requireFinite, requireWhole } from '../../ground/outside-domain.ts';
import { hypergeometricAtMost } from '../chance/index.ts';
import { LARGEST_LOT } from './code-letter.ts';
import type { Stage } from './stages.ts';

/** A plan for one lot on its own, worked out and not looked up. Plain data, fit for a slip. */
export interface IsolatedPlan {
  readonly kind: 'limitingQuality' | 'zeroAcceptance' | 'twoPoint';
  readonly lotSize: number;
  /** Pieces to look at; of several samples, all together. */
  readonly sampleSize: number;
  /** Accept at this count or below; of several samples, that of the last. */
  readonly ac: number;
  readonly re: number;
  /** The samples in turn, where there are several. */
  readonly stages?: readonly Stage[];
  /** The quality that is to be accepted no more often than the consumer's risk, percent nonconforming; null where the plan names none. */
  readonly lqPercent: number | null;
  /** The consumer's risk asked for, a fraction. */
  readonly consumerRisk: number;
  /** The exact probability of accepting this lot at the limiting quality. */
  readonly riskAtLq: number;
  /** The sample is the whole lot. */
  readonly everyPiece: boolean;
  readonly p1Percent?: number;
  readonly producerRisk?: number;
}

/** What a plan by limiting quality is asked for. */
export interface LimitingQualityRequest {
  readonly lotSize: number;
  readonly lqPercent: number;
  readonly consumerRisk: number;
}

const GOOD_LOT = 10; // a good lot is at a tenth of the limiting quality or better
const GOOD_LOT_ACCEPTED = 0.9;
const ROUNDING = 1e-12; // relative; a lot of 15 with one nonconforming piece meets a risk of 3/15 with n 12, and must not miss it by its last digit

/**
 * The smallest sample of one lot that accepts at limiting quality no more often than the consumer's risk, exactly (hypergeometric), for an
 * acceptance number that leaves good lots a fair chance.
 *
 * Every Ac from 0 to D − 1 has a smallest n, and n grows with Ac; ISO 2859-2 settles the choice by a table. This rule is our own, derived
 * and not the standard's: unless `ac` is given, the smallest Ac whose plan accepts a lot at a tenth of the limiting quality (whole pieces,
 * rounded down) with 0.9 or more. There always is one, at the latest every piece with Ac D − 1.
 * @param request lot size N 1 … 1e9 pieces; lqPercent above 0, up to 100; consumerRisk between 0 and 1, a fraction
 * @param request.ac the acceptance number, when it is settled elsewhere: 0 … D − 1, D = N · LQ rounded up to whole pieces
 * @throws OutsideDomain outside these ranges
 * @see idea of ISO 2859-2 procedure A (from memory); hypergeometric: Johnson, Kemp & Kotz, Univariate Discrete Distributions, ch. 6
 * @example limitingQualityPlan({ lotSize: 500, lqPercent: 5, consumerRisk: 0.1 }) // n 73, Ac 1; accepts 0.0961 at 25 in 500
 */
export function limitingQualityPlan(request: LimitingQualityRequest & { readonly ac?: number }): IsolatedPlan {
  const nonconforming = nonconformingAtLq(request);
  const { lotSize, lqPercent } = request;
  if (request.ac !== undefined) {
    requireWhole('ac', request.ac, 0, nonconforming - 1);
    return smallestPlan('limitingQuality', request, nonconforming, request.ac);
  }
  const good = Math.floor(pieces(lotSize, lqPercent / GOOD_LOT));
  for (let ac = 0; ; ac += 1) {
    const plan = smallestPlan('limitingQuality', request, nonconforming, ac);
    if (hypergeometricAtMost(ac, plan.sampleSize, lotSize, good) >= GOOD_LOT_ACCEPTED * (1 - ROUNDING)) return plan;
  }
}

/**
 * The smallest sample that accepts on none found and, at limiting quality, no more often than the consumer's risk: C(N − D, n) / C(N, n) ≤ β.
 * @param request as for `limitingQualityPlan`
 * @throws OutsideDomain outside these ranges
 * @see hypergeometric: Johnson, Kemp & Kotz, Univariate Discrete Distributions, ch. 6
 * @example zeroAcceptancePlan({ lotSize: 1000, lqPercent: 1, consumerRisk: 0.1 }) // n 205
 */
export function zeroAcceptancePlan(request: LimitingQualityRequest): IsolatedPlan {
  return smallestPlan('zeroAcceptance', request, nonconformingAtLq(request), 0);
}

/** D, the whole pieces a lot has at its limiting quality: N · LQ rounded up, so that the lot is at least as bad as that. */
function nonconformingAtLq({ lotSize, lqPercent, consumerRisk }: LimitingQualityRequest): number {
  requireWhole('lotSize', lotSize, 1, LARGEST_LOT);
  requireFinite('lqPercent', lqPercent, 0, 100);
  if (lqPercent === 0) throw new OutsideDomain('lqPercent', 'above 0, up to 100', lqPercent);
  requireFinite('consumerRisk', consumerRisk, 0, 1);
  if (consumerRisk === 0 || consumerRisk === 1) throw new OutsideDomain('consumerRisk', 'between 0 and 1', consumerRisk);
  return Math.max(1, Math.ceil(pieces(lotSize, lqPercent)));
}

/** N · percent / 100. Percentages are decimal numbers: 0.8 % of 35 000 is 280, though binary digits miss it, so the last of them are dropped. */
function pieces(lotSize: number, percent: number): number {
  return Number(((lotSize * percent) / 100).toPrecision(14));
}

/** Bisects on n: the more pieces, the less often `ac` or fewer are among them. */
function smallestPlan(kind: IsolatedPlan['kind'], { lotSize, lqPercent, consumerRisk }: LimitingQualityRequest, nonconforming: number, ac: number): IsolatedPlan {
  let [tooFew, enough] = [ac, lotSize]; // ac pieces always accept; every piece finds D > ac and rejects
  while (enough - tooFew > 1) {
    const between = Math.floor((tooFew + enough) / 2);
    if (hypergeometricAtMost(ac, between, lotSize, nonconforming) <= consumerRisk * (1 + ROUNDING)) enough = between;
    else tooFew = between;
  }
  return {
    kind, lotSize, sampleSize: enough, ac, re: ac + 1, lqPercent, consumerRisk,
    riskAtLq: hypergeometricAtMost(ac, enough, lotSize, nonconforming), everyPiece: enough === lotSize,
  };
}
