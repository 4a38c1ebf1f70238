import { limitingQualityPlan, zeroAcceptancePlan } from '../attributes/index.ts';
import type { IsolatedPlan } from '../attributes/index.ts';

/** One lot and the quality it is to be guarded against, fractions. */
export interface LimitingPoint {
  readonly lotSize: number;
  readonly lq: number;
  readonly consumerRisk: number;
}

/** A plan for one lot with the risk it really has at the limiting quality. */
export interface LimitingSize {
  readonly n: number;
  readonly ac: number;
  readonly re: number;
  readonly consumerRisk: number;
  readonly everyPiece: boolean;
}

/**
 * The smallest sample with Ac 0 that accepts a lot at limiting quality no more often than the consumer's risk.
 * @param point lot size 1 … 1e9; lq above 0, up to 1; consumerRisk between 0 and 1
 * @throws OutsideDomain outside these ranges
 * @see zeroAcceptancePlan, of which this is the figure in fractions
 * @example zeroAcceptanceSize({ lotSize: 1000, lq: 0.01, consumerRisk: 0.1 }) // n 205
 */
export function zeroAcceptanceSize({ lotSize, lq, consumerRisk }: LimitingPoint): LimitingSize {
  return sizeOf(zeroAcceptancePlan({ lotSize, lqPercent: lq * 100, consumerRisk }));
}

/**
 * The smallest sample that accepts a lot at limiting quality no more often than the consumer's risk, for the Ac given, or for the smallest
 * Ac that leaves good lots a fair chance (limitingQualityPlan says which).
 * @param point as for `zeroAcceptanceSize`; ac 0 … D − 1, D = N · LQ rounded up
 * @throws OutsideDomain outside these ranges
 */
export function limitingQualitySize({ lotSize, lq, consumerRisk, ac }: LimitingPoint & { readonly ac?: number }): LimitingSize {
  return sizeOf(limitingQualityPlan({ lotSize, lqPercent: lq * 100, consumerRisk, ...(ac === undefined ? {} : { ac }) }));
}

function sizeOf({ sampleSize, ac, re, riskAtLq, everyPiece }: IsolatedPlan): LimitingSize {
  return { n: sampleSize, ac, re, consumerRisk: riskAtLq, everyPiece };
}
