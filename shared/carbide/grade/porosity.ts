/** What a polished, unetched section is compared for: A pores up to 10 µm, B pores 10 to 25 µm, C free carbon. */
export const POROSITY_TYPES = ['A', 'B', 'C'] as const;
export type PorosityType = (typeof POROSITY_TYPES)[number];

const FIGURES = ['00', '02', '04', '06', '08'] as const;
const VOLUME_PERCENT = { '00': 0, '02': 0.02, '04': 0.06, '06': 0.2, '08': 0.6 } as const;
const B_PER_CM2 = { '00': 0, '02': 140, '04': 430, '06': 1300, '08': 4000 } as const;

/** One level of a type, best first. Numbers stand for what the picture shows; C is judged by the picture alone. */
export interface PorosityLevel { readonly level: string; /** Pores by volume, percent; null where the picture alone counts. */ readonly volumePercent: number | null; /** Pores a square centimetre, for B. */ readonly poresPerCm2: number | null }

/**
 * The ordinal grades of one type, best first: A00 … A08, B00 … B08, C00 … C08. `00`: none seen.
 * @see ISO 4499-4:2016 (formerly ISO 4505), ASTM B276: signs and figures from memory. Pores over 25 µm are counted and sized one by one; whether the
 * 2016 text numbers levels of η phase is not known here
 */
export function porosityLevels(type: PorosityType): readonly PorosityLevel[] {
  return FIGURES.map((figure) => ({
    level: `${type}${figure}`, volumePercent: type === 'C' ? null : VOLUME_PERCENT[figure], poresPerCm2: type === 'B' ? B_PER_CM2[figure] : null,
  }));
}

/** The level's place on its scale, 0 the best; null for what is no level of that type. */
export function porosityRank(type: PorosityType, level: string): number | null {
  const rank = porosityLevels(type).findIndex((each) => each.level === level);
  return rank < 0 ? null : rank;
}
