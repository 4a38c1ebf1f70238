import { requireFinite } from '../ground/outside-domain.ts';

/** Magnetic saturation of pure cobalt, 4πσ, in µT·m³/kg: σ 160.4 A·m²/kg times 0.4π. Not 2016, which is the same in G·cm³/g. */
export const COBALT_SATURATION_UT_M3_PER_KG = 201.6;

/**
 * Magnetic saturation as a share of what the cobalt would give pure: Ms / (201.6 · w). Low: carbon-poor, towards η phase; high: carbon-rich,
 * towards free carbon. Its window belongs to the grade.
 * @param saturation Ms, µT·m³/kg, 0 … 201.6; cobaltFraction mass fraction, above 0, up to 1
 * @returns a fraction; 0.85 is 85 %
 * @throws OutsideDomain otherwise
 * @see derived from the saturation of cobalt (ASTM B886 for the method)
 */
export function relativeSaturation({ saturation, cobaltFraction }: { readonly saturation: number; readonly cobaltFraction: number }): number {
  requireFinite('saturation', saturation, 0, COBALT_SATURATION_UT_M3_PER_KG);
  requireFinite('cobaltFraction', cobaltFraction, 0.0001, 1);
  return saturation / (COBALT_SATURATION_UT_M3_PER_KG * cobaltFraction);
}

/** Oersted from kA/m: 1 kA/m = 4π Oe. @throws OutsideDomain unless the field is finite */
export function oerstedFromKAPerM(coercivityKAPerM: number): number {
  requireFinite('coercivityKAPerM', coercivityKAPerM);
  return 4 * Math.PI * coercivityKAPerM;
}
