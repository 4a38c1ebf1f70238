import type { BinderFlag, FlagRating, GradeLimits } from '../traveller/index.ts';
import type { Format } from './format.ts';
import { labels } from './labels.en.ts';

export const binderFlagWords: Readonly<Record<BinderFlag, string>> = { etaPhase: 'η phase', freeCarbon: 'Free carbon', binderLakes: 'Binder lakes' };
export const flagRatingWords: Readonly<Record<FlagRating, string>> = { none: 'none', traces: 'traces', much: 'much' };

/** One or two limits as a range, in the way of the language. */
export function between(lower: number | null, upper: number | null, format: Format): string {
  return labels.between(lower === null ? null : format.number(lower), upper === null ? null : format.number(upper));
}

/** The limits of a grade, one line each kind; empty where the plant has set none. */
export function gradeLimitLines(limits: GradeLimits | undefined, format: Format): readonly string[] {
  if (limits === undefined) return [];
  const { densityGPerCm3: density, coercivityKAPerM: coercivity, hardnessHv30: hardness, saturation, porosity = {}, flags = {} } = limits;
  const levels = Object.values(porosity).filter((level) => level !== undefined);
  const flagged = (['etaPhase', 'freeCarbon', 'binderLakes'] as const).flatMap((flag) => (flags[flag] === undefined ? [] : [`${binderFlagWords[flag]} ${flagRatingWords[flags[flag]]}`]));
  return [
    ...(density === undefined ? [] : [`Density ${between(density.lower, density.upper, format)} g/cm³`]),
    ...(coercivity === undefined ? [] : [`Coercivity ${between(coercivity.lower, coercivity.upper, format)} kA/m`]),
    ...(saturation === undefined ? [] : [`Relative saturation ${between(saturation.lowPercent, saturation.highPercent, format)} %, warned of outside ${between(saturation.warnLowPercent, saturation.warnHighPercent, format)} %, read in ${saturation.unit}`]),
    ...(hardness === undefined ? [] : [`Hardness ${between(hardness.lower, hardness.upper, format)} HV30`]),
    ...(levels.length === 0 ? [] : [`Porosity to ${levels.join(' ')}`]), ...(flagged.length === 0 ? [] : [`At most: ${flagged.join(', ')}`]),
  ];
}
