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

/**
 * Relative change of length from a relative change of pressed mass, at constant pressed height and even shrinkage: a third of it.
 * @param massChange fraction, −0.2 … 0.2, such as 0.005 for half a percent heavy
 * @throws OutsideDomain outside that range
 */
export function lengthChangeFromMassChange(massChange: number): number {
  requireFinite('massChange', massChange, -0.2, 0.2);
  return massChange / 3;
}
