import { globalRisk, measurementCapability, processDeviation } from '../../metrology/decision-rules/index.ts';
import type { GlobalRisk } from '../../metrology/decision-rules/index.ts';
import { judgedLimits } from '../gate/judge.ts';
import type { JudgedLimits } from '../gate/verdict.ts';
import type { Measured } from '../plan/characteristic.ts';

/** A gauge and the readings it gives: U with its coverage factor, and mean and s of the readings of many pieces, the gauge's scatter among it. */
export interface RiskInputs { readonly uncertainty: number; readonly coverageFactor?: number | undefined; readonly mean: number; readonly s: number | null }

export type DecisionRisk =
  | { readonly known: true; readonly limits: JudgedLimits; /** U / k. */ readonly standardUncertainty: number; /** Of the true values: s² less u². */ readonly deviation: number; /** T / (2 U); null for one limit. */ readonly capability: number | null; readonly risk: GlobalRisk }
  | { readonly known: false; readonly why: 'workedOut' | 'noLimit' | 'noUncertainty' | 'noSpread' | 'gaugeExplainsAll' };

/**
 * How often one piece of this process is wrongly accepted or rejected when it is measured once with this gauge and judged by the
 * characteristic's rule. It speaks of single pieces: what a sampling plan then makes of them is the plan's own risk.
 * @see JCGM 106:2012 clause 9.5 (from memory), with a normal process and a normal measuring error
 */
export function decisionRisk(characteristic: Pick<Measured, 'lower' | 'upper' | 'decisionRule' | 'guardFactor' | 'entry'>, { uncertainty, coverageFactor = 2, mean, s }: RiskInputs): DecisionRisk {
  const { lower, upper } = characteristic;
  if (characteristic.entry.how !== 'direct') return { known: false, why: 'workedOut' };
  if ((lower === null && upper === null) || (lower !== null && upper !== null && lower >= upper)) return { known: false, why: 'noLimit' };
  if (!(uncertainty > 0) || !(coverageFactor > 0)) return { known: false, why: 'noUncertainty' };
  if (s === null || s === 0) return { known: false, why: 'noSpread' };
  const standardUncertainty = uncertainty / coverageFactor;
  const deviation = processDeviation(s, standardUncertainty);
  if (deviation === null) return { known: false, why: 'gaugeExplainsAll' };
  const limits = judgedLimits(characteristic, uncertainty);
  const risk = globalRisk({
    tolerance: { lower: lower ?? undefined, upper: upper ?? undefined }, acceptance: { lower: limits.acceptLower ?? undefined, upper: limits.acceptUpper ?? undefined },
    process: { mean, deviation }, standardUncertainty,
  });
  return { known: true, limits, standardUncertainty, deviation, capability: lower === null || upper === null ? null : measurementCapability(lower, upper, standardUncertainty), risk };
}
