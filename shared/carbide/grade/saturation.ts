import { OutsideDomain, requireFinite } from '../../ground/outside-domain.ts';
import { COBALT_SATURATION_UT_M3_PER_KG, relativeSaturation } from '../magnetics.ts';

/** The units in which benches state a saturation. `% Co` is "magnetic cobalt": the mass of pure cobalt that would read the same. */
export const SATURATION_UNITS = ['µT·m³/kg', 'G·cm³/g', 'A·m²/kg', '% Co'] as const;
export type SaturationUnit = (typeof SATURATION_UNITS)[number];

/** A value is kept with its unit, since the trade mixes them: 201.6, 2016 and 160.4 all mean pure cobalt. */
export interface Saturation { readonly value: number; readonly unit: SaturationUnit }

/** What pure cobalt reads in each unit. @see derived: σ 160.4 A·m²/kg (in common use 160 to 161); 4πσ = 2016 G·cm³/g; 1 G·cm³/g = 0.1 µT·m³/kg */
const OF_COBALT: Readonly<Record<SaturationUnit, number>> = {
  'µT·m³/kg': COBALT_SATURATION_UT_M3_PER_KG, 'G·cm³/g': 10 * COBALT_SATURATION_UT_M3_PER_KG, 'A·m²/kg': COBALT_SATURATION_UT_M3_PER_KG / (0.4 * Math.PI), '% Co': 100,
};

/**
 * The same saturation in another unit.
 * @throws OutsideDomain unless 0 ≤ value ≤ that of pure cobalt in its unit
 * @example convertSaturation({ value: 17.1, unit: 'µT·m³/kg' }, 'A·m²/kg').value // 13.61
 */
export function convertSaturation({ value, unit }: Saturation, to: SaturationUnit): Saturation {
  requireFinite('value', value, 0, OF_COBALT[unit]);
  return { value: unit === to ? value : (value / OF_COBALT[unit]) * OF_COBALT[to], unit: to };
}

/** Greatest saturation a piece with so much cobalt can read, in `unit`: its cobalt as if pure. @param cobaltFraction mass fraction, above 0, up to 1 @throws OutsideDomain otherwise */
export function fullSaturation(cobaltFraction: number, unit: SaturationUnit): Saturation {
  requireFinite('cobaltFraction', cobaltFraction, 0.0001, 1);
  return { value: cobaltFraction * OF_COBALT[unit], unit };
}

/** A saturation in whichever unit, as percent of what the grade's cobalt would give pure. @throws OutsideDomain as `convertSaturation` and `relativeSaturation` */
export function relativeSaturationPercent(saturation: Saturation, cobaltFraction: number): number {
  return 100 * relativeSaturation({ saturation: convertSaturation(saturation, 'µT·m³/kg').value, cobaltFraction });
}

/** Relative saturation between which a grade is sound, with bands of warning inside; percent, rising. */
export interface SaturationWindow { readonly lowPercent: number; readonly warnLowPercent: number; readonly warnHighPercent: number; readonly highPercent: number }

/**
 * Where a plant may begin: rejected below 75 and above 95, warned of below 80 and above 92.
 * @see common practice; a page of the trade gives the same steps for a grade with 10 % cobalt (seen). Chromium, vanadium and cubic carbides lower
 * the reading without any lack of carbon, so the window belongs to the grade
 */
export const USUAL_SATURATION_WINDOW: SaturationWindow = { lowPercent: 75, warnLowPercent: 80, warnHighPercent: 92, highPercent: 95 };

/** What a reading says: `low` towards η phase (short of carbon), `high` towards free carbon; the warnings lie inside the limits. */
export type SaturationStanding = 'low' | 'warnLow' | 'normal' | 'warnHigh' | 'high';

/** True where the four steps rise and lie within 0 … 110 %. */
export function isSaturationWindow({ lowPercent, warnLowPercent, warnHighPercent, highPercent }: SaturationWindow): boolean {
  return 0 < lowPercent && lowPercent <= warnLowPercent && warnLowPercent < warnHighPercent && warnHighPercent <= highPercent && highPercent <= 110;
}

/** Where a reading stands in the window; a reading on a limit is still inside it. @throws OutsideDomain for a window that does not rise or a percentage that is not finite */
export function saturationStanding(percent: number, window: SaturationWindow): SaturationStanding {
  requireFinite('percent', percent);
  if (!isSaturationWindow(window)) throw new OutsideDomain('window', 'four rising percentages', JSON.stringify(window));
  if (percent < window.lowPercent) return 'low';
  if (percent < window.warnLowPercent) return 'warnLow';
  if (percent <= window.warnHighPercent) return 'normal';
  return percent <= window.highPercent ? 'warnHigh' : 'high';
}
