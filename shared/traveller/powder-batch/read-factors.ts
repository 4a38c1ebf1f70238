import { blendedFactors } from '../../carbide/index.ts';
import { verdictOf } from '../gate/work.ts';
import { NEEDED_FACTORS, POWDER_FACTORS } from '../plan/powder-factor.ts';
import type { PowderFactor } from '../plan/powder-factor.ts';
import type { Batch, BlendShare, PowderFactors } from './batch.ts';

/** The factors, or which one of which batch is missing. */
export type FactorsRead = { readonly factors: PowderFactors } | { readonly missing: { readonly batch: string; readonly factor: PowderFactor } };

/** Beyond these no press target can be worked out: percent, density in g/cm³. */
const MOST: Readonly<Record<PowderFactor, number>> = { linearShrinkagePercent: 50, widthShrinkagePercent: 50, heightShrinkagePercent: 50, binderPercent: 20, sinteredDensityGPerCm3: 25, furtherLossPercent: 5 };

interface Mean { readonly mean: number; readonly u: number | null }
type Means = Partial<Record<PowderFactor, Mean>>;

/**
 * What pressing needs of a batch, from the lab's readings as they stand, corrections included. What was measured on a blend itself counts; what its plan does not ask for
 * is weighted from its parts. A factor that pressing always needs, or that the plan asks for and has no possible mean, is missing.
 * @param batchOf the batch of this number; asked only for parts of a blend
 */
export function readFactors(batch: Batch, batchOf: (id: string) => Batch): FactorsRead {
  const measured: Means = {};
  for (const factor of POWDER_FACTORS) {
    const mean = measuredMean(batch, factor);
    if (mean === 'missing') return { missing: { batch: batch.id, factor } };
    if (mean !== null) measured[factor] = mean;
  }
  const wanted = NEEDED_FACTORS.filter((factor) => measured[factor] === undefined);
  if (batch.blendedFrom.length === 0) {
    const [factor] = wanted;
    return factor === undefined ? { factors: factorsFrom(measured, []) } : { missing: { batch: batch.id, factor } };
  }
  const optional = POWDER_FACTORS.some((factor) => measured[factor] === undefined);
  if (!optional) return { factors: factorsFrom(measured, []) };
  const weighted = weightedMeans(batch.blendedFrom, batchOf);
  // A part that cannot be read stops the blend only where the blend does not know better itself.
  if ('missing' in weighted) return wanted.length === 0 ? { factors: factorsFrom(measured, []) } : weighted;
  const taken = POWDER_FACTORS.filter((factor) => measured[factor] === undefined && weighted.means[factor] !== undefined);
  return { factors: factorsFrom({ ...weighted.means, ...measured }, taken) };
}

/** The mean of the lab's readings; null where no gate of the batch asks for the factor. */
function measuredMean(batch: Batch, factor: PowderFactor): Mean | 'missing' | null {
  let asked = false;
  for (const gate of batch.gates) {
    const work = gate.work.find(({ demand: { characteristic } }) => characteristic.kind === 'measured' && characteristic.factor === factor);
    if (work === undefined) continue;
    asked = true;
    const detail = verdictOf(gate)?.verdict.results.find(({ characteristic }) => characteristic === work.demand.characteristic.id)?.detail;
    if (detail === undefined || !('summary' in detail)) continue;
    const { mean, s, n } = detail.summary;
    const least = factor === 'furtherLossPercent' ? mean >= 0 : mean > 0;
    if (least && mean < MOST[factor]) return { mean, u: s === null ? null : s / Math.sqrt(n) };
  }
  return asked ? 'missing' : null;
}

function weightedMeans(shares: readonly BlendShare[], batchOf: (id: string) => Batch): { readonly means: Means } | Extract<FactorsRead, { readonly missing: unknown }> {
  const parts: { readonly kg: number; readonly factors: PowderFactors }[] = [];
  for (const { batch, kg } of shares) {
    const read = readFactors(batchOf(batch), batchOf);
    if ('missing' in read) return read;
    parts.push({ kg, factors: read.factors });
  }
  return { means: blendMeans(parts) };
}

/**
 * Factors of a blend from those of its parts, by the masses given; how each is weighted: shared/carbide/blend.ts. A direction that one part was not measured in is not
 * known of the blend either. Uncertainties are those of means weighted by mass, u² = Σ (wᵢ uᵢ)², the parts taken as independent.
 */
export function blendMeans(parts: readonly { readonly kg: number; readonly factors: PowderFactors }[]): Means {
  const directions = (['linearShrinkagePercent', 'widthShrinkagePercent', 'heightShrinkagePercent'] as const).filter((factor) => parts.every(({ factors }) => factors[factor] !== undefined));
  const blend = blendedFactors(parts.map(({ kg, factors }) => ({
    massKg: kg, sinteredDensityGPerCm3: factors.sinteredDensityGPerCm3, binderFraction: factors.binderPercent / 100, furtherLossFraction: (factors.furtherLossPercent ?? 0) / 100,
    shrinkages: directions.map((factor) => (factors[factor] ?? 0) / 100),
  })));
  const whole = parts.reduce((sum, { kg }) => sum + kg, 0);
  const mean = (factor: PowderFactor, value: number): Mean => {
    const each = parts.map(({ kg, factors }) => ({ w: kg / whole, u: factors.standardUncertainty?.[factor] }));
    // Percent and fraction differ by a binary digit: a mean stays between its parts all the same.
    const values = parts.map(({ factors }) => factors[factor] ?? 0);
    return { mean: Math.min(Math.max(value, Math.min(...values)), Math.max(...values)), u: each.some(({ u }) => u === undefined) ? null : Math.hypot(...each.map(({ w, u }) => w * (u ?? 0))) };
  };
  return {
    sinteredDensityGPerCm3: mean('sinteredDensityGPerCm3', blend.sinteredDensityGPerCm3), binderPercent: mean('binderPercent', 100 * blend.binderFraction),
    ...(parts.some(({ factors }) => factors.furtherLossPercent !== undefined) ? { furtherLossPercent: mean('furtherLossPercent', 100 * blend.furtherLossFraction) } : {}),
    ...Object.fromEntries(directions.map((factor, at) => [factor, mean(factor, 100 * (blend.shrinkages[at] ?? 0))])),
  };
}

/** Factors as they are kept; the three that pressing always needs are there. */
export function factorsFrom(means: Means, weighted: readonly PowderFactor[]): PowderFactors {
  const value = (factor: PowderFactor): number => means[factor]?.mean ?? 0;
  const optional = (['widthShrinkagePercent', 'heightShrinkagePercent', 'furtherLossPercent'] as const).filter((factor) => means[factor] !== undefined);
  const known = POWDER_FACTORS.flatMap((factor) => {
    const u = means[factor]?.u;
    return u === undefined || u === null ? [] : [[factor, u] as const];
  });
  return {
    linearShrinkagePercent: value('linearShrinkagePercent'), sinteredDensityGPerCm3: value('sinteredDensityGPerCm3'), binderPercent: value('binderPercent'),
    ...Object.fromEntries(optional.map((factor) => [factor, value(factor)])), ...(known.length === 0 ? {} : { standardUncertainty: Object.fromEntries(known) }),
    ...(weighted.length === 0 ? {} : { weighted }),
  };
}

/** True when both give the same press targets; how well they are known is left aside. */
export function sameFactors(a: PowderFactors, b: PowderFactors): boolean {
  return POWDER_FACTORS.every((factor) => a[factor] === b[factor]);
}
