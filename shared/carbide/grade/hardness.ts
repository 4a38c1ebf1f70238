import { OutsideDomain, requireFinite } from '../../ground/outside-domain.ts';

/** Test force of HV30: 30 kgf. */
export const HV30_FORCE_N = 294.2;

/**
 * Vickers hardness: HV = 0.1891 F/d², d the mean of the two diagonals.
 * @param forceN above 0, newton; diagonals above 0, mm, unequal by no more than 5 % of their mean
 * @throws OutsideDomain otherwise
 * @see ISO 6507-1:2018 (scope with hardmetals seen; formula published), ISO 3878 for hardmetal
 * @example vickersHardness({ forceN: 294.2, firstMm: 0.1865, secondMm: 0.1865 }) // 1599.5
 */
export function vickersHardness({ forceN, firstMm, secondMm }: { readonly forceN: number; readonly firstMm: number; readonly secondMm: number }): number {
  requireFinite('forceN', forceN, Number.MIN_VALUE);
  requireFinite('firstMm', firstMm, Number.MIN_VALUE);
  requireFinite('secondMm', secondMm, Number.MIN_VALUE);
  const meanMm = (firstMm + secondMm) / 2;
  if (Math.abs(firstMm - secondMm) > 0.05 * meanMm) throw new OutsideDomain('secondMm', `within 5 % of the first, ${firstMm}`, secondMm);
  return (0.1891 * forceN) / (meanMm * meanMm);
}

/**
 * Bending strength of a cylinder on two rollers: R = 8 F l/(π d³).
 * @param forceN at rupture; spanMm between the rollers; diameterMm: all above 0
 * @returns N/mm²
 * @throws OutsideDomain otherwise
 * @see ISO 3327 (formula from memory). Compare means of five or more pieces, never single ones
 */
export function bendingStrengthOfCylinder({ forceN, spanMm, diameterMm }: { readonly forceN: number; readonly spanMm: number; readonly diameterMm: number }): number {
  requireFinite('forceN', forceN, Number.MIN_VALUE);
  requireFinite('spanMm', spanMm, Number.MIN_VALUE);
  requireFinite('diameterMm', diameterMm, Number.MIN_VALUE);
  return (8 * forceN * spanMm) / (Math.PI * diameterMm ** 3);
}
