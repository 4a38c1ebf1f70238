import { OutsideDomain, requireFinite } from '../../ground/outside-domain.ts';
import { bracketedRoot } from '../../sampling/chance/bracketed-root.ts';
import { normalAt } from '../../sampling/chance/index.ts';
import { normalOutside } from './conformance-probability.ts';
import type { Limits, Normal } from './conformance-probability.ts';
import { globalRisk } from './global-risk.ts';

/**
 * Guard band, in the unit of u, that keeps the specific risk at or under `risk` for a reading on a limit of acceptance: z u for one limit;
 * for two, the w with P(outside TL … TU | reading TU − w) = risk.
 * @param width upper − lower; left out for one limit
 * @returns null where even a reading in the middle is riskier: the gauge is too coarse
 * @throws OutsideDomain unless 0 < risk ≤ ½ and u > 0
 * @see ISO 14253-1:2017 (from secondary texts: 95 % by default), worked out here
 * @example guardBandForSpecificRisk({ standardUncertainty: 1, risk: 0.05, width: 4 }) // 1.796213
 */
export function guardBandForSpecificRisk({ standardUncertainty: u, risk, width }: { readonly standardUncertainty: number; readonly risk: number; readonly width?: number | undefined }): number | null {
  requireFinite('standardUncertainty', u, Number.MIN_VALUE);
  requireFinite('risk', risk, Number.MIN_VALUE, 0.5);
  const oneSided = -normalAt(risk) * u;
  if (width === undefined) return oneSided;
  requireFinite('width', width, Number.MIN_VALUE);
  const spare = (w: number): number => risk - normalOutside({ lower: 0, upper: width }, { mean: width - w, deviation: u });
  return spare(width / 2) < 0 ? null : bracketedRoot(spare, Math.min(oneSided, width / 2), width / 2);
}

/**
 * Guard band on each side, in the unit of u, that makes the global consumer's risk just `risk`. Negative where even simple acceptance is
 * better than asked for: acceptance may then reach beyond the tolerance.
 * @returns null where no band brings the risk so low, or none lets it grow so high
 * @throws OutsideDomain unless 0 < risk < 1, and as `globalRisk`
 */
export function guardBandForConsumerRisk({ tolerance, process: made, standardUncertainty, risk }: { readonly tolerance: Limits; readonly process: Normal; readonly standardUncertainty: number; readonly risk: number }): number | null {
  if (!(risk > 0 && risk < 1)) throw new OutsideDomain('risk', 'between 0 and 1', risk);
  const { lower, upper } = tolerance;
  const spare = (w: number): number => {
    const acceptance = { ...(lower === undefined ? {} : { lower: lower + w }), ...(upper === undefined ? {} : { upper: upper - w }) };
    return risk - globalRisk({ tolerance, acceptance, process: made, standardUncertainty }).consumer;
  };
  const most = 12 * Math.hypot(made.deviation, standardUncertainty);
  const closed = lower === undefined || upper === undefined ? most : (upper - lower) / 2;
  return spare(-most) > 0 || spare(closed) < 0 ? null : bracketedRoot(spare, -most, closed);
}
