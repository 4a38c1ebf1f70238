import { requireFinite } from '../ground/outside-domain.ts';

/**
 * Linear shrinkage S on the green size, a fraction: (green − sintered) / green.
 * @param greenMm size as pressed, above 0
 * @param sinteredMm size after the furnace, above 0, not above greenMm
 * @throws OutsideDomain otherwise
 * @example linearShrinkage(15.488, 12.7) // 0.18
 */
export function linearShrinkage(greenMm: number, sinteredMm: number): number {
  requireFinite('greenMm', greenMm, Number.MIN_VALUE);
  requireFinite('sinteredMm', sinteredMm, Number.MIN_VALUE, greenMm);
  return (greenMm - sinteredMm) / greenMm;
}

/** What follows from a linear shrinkage: die factor K, and the shares of the volume that stay and go. */
export type ShrinkageNumbers = { readonly dieFactor: number; readonly volumeRatio: number; readonly volumeShrinkage: number };

/**
 * K = 1/(1 − S), V_sintered/V_green = (1 − S)³, and what is missing to 1.
 * @param shrinkage S, a fraction, 0 … 0.5
 * @throws OutsideDomain outside that range
 */
export function shrinkageNumbers(shrinkage: number): ShrinkageNumbers {
  requireFinite('shrinkage', shrinkage, 0, 0.5);
  const volumeRatio = (1 - shrinkage) ** 3;
  return { dieFactor: 1 / (1 - shrinkage), volumeRatio, volumeShrinkage: 1 - volumeRatio };
}

/** The sintered piece that is wanted, and what the powder loses on the way. */
export type PressRequest = {
  readonly sinteredVolumeMm3: number;
  readonly sinteredDensityGPerCm3: number;
  /** Organic binder's share of the pressed mass, 0 … 0.2; all of it leaves. */
  readonly binderFraction: number;
  /** Further loss of the mass left (oxygen, carbon), 0 … 0.05; 0 when left out. */
  readonly furtherLossFraction?: number | undefined;
  /** Linear shrinkage on the green size, a fraction, 0 … 0.5. */
  readonly linearShrinkage: number;
  /** The size of the sintered piece whose green size is asked for, such as its thickness. */
  readonly sinteredLengthMm: number;
};

/** What to press. */
export type PressTargets = {
  readonly pressWeightG: number;
  readonly greenVolumeMm3: number;
  readonly greenDensityGPerCm3: number;
  readonly greenLengthMm: number;
  readonly dieFactor: number;
};

/**
 * Press targets from the sintered piece: m = V ρ / ((1 − b)(1 − q)), V_green = V/(1 − S)³, green size = sintered size · K.
 * Shrinkage is taken as even in all directions; a real piece shrinks differently in height: `pressTargetsByDirection`.
 * @throws OutsideDomain for values outside the ranges beside each field, or a volume, density or size not above 0
 * @see mass balance, derived: the pressed mass less what leaves is the sintered mass
 */
export function pressTargets(request: PressRequest): PressTargets {
  const { sinteredVolumeMm3, sinteredDensityGPerCm3, binderFraction, furtherLossFraction = 0, linearShrinkage: shrinkage, sinteredLengthMm } = request;
  requireFinite('sinteredVolumeMm3', sinteredVolumeMm3, Number.MIN_VALUE);
  requireFinite('sinteredDensityGPerCm3', sinteredDensityGPerCm3, Number.MIN_VALUE, 100);
  requireFinite('binderFraction', binderFraction, 0, 0.2);
  requireFinite('furtherLossFraction', furtherLossFraction, 0, 0.05);
  requireFinite('sinteredLengthMm', sinteredLengthMm, Number.MIN_VALUE);
  const { dieFactor, volumeRatio } = shrinkageNumbers(shrinkage);
  const pressWeightG = ((sinteredVolumeMm3 / 1000) * sinteredDensityGPerCm3) / ((1 - binderFraction) * (1 - furtherLossFraction));
  const greenVolumeMm3 = sinteredVolumeMm3 / volumeRatio;
  const greenDensityGPerCm3 = (1000 * pressWeightG) / greenVolumeMm3;
  return { pressWeightG, greenVolumeMm3, greenDensityGPerCm3, greenLengthMm: sinteredLengthMm * dieFactor, dieFactor };
}

/**
 * Relative change of length from a relative change of pressed mass, at constant pressed height and even shrinkage: a third of it.
 * @param massChange fraction, −0.2 … 0.2, such as 0.005 for half a percent heavy
 * @throws OutsideDomain outside that range
 */
export function lengthChangeFromMassChange(massChange: number): number {
  requireFinite('massChange', massChange, -0.2, 0.2);
  return massChange / 3;
}
