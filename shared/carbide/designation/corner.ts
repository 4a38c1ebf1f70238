import type { WiperAngleLetter, WiperClearanceLetter } from './letters.ts';

/** What position 7 says of the corner. */
export type InsertCorner =
  /** Digits: the radius in tenths of a millimetre, 00 a sharp corner; 005 is 0.05 mm in newer editions. */
  | { readonly kind: 'radius'; readonly code: string }
  /** A round insert: 00 with a diameter that was an inch, M0 with a metric one. */
  | { readonly kind: 'roundInch' }
  | { readonly kind: 'roundMetric' }
  /** A wiper flat: two letters instead of a radius. */
  | { readonly kind: 'wiper'; readonly angle: WiperAngleLetter; readonly clearance: WiperClearanceLetter };

/** A corner radius: as the code says it, and as m is worked out from it. */
export type CornerRadius = { readonly nominalMm: number; readonly usedMm: number; readonly inch: string | null };

/** Radii that are a converted number of 64ths of an inch, by their code, in 128ths. */
const IN_128THS: Readonly<Record<string, { readonly parts: number; readonly inch: string }>> = {
  '02': { parts: 1, inch: '1/128' }, '04': { parts: 2, inch: '1/64' }, '08': { parts: 4, inch: '1/32' }, '12': { parts: 6, inch: '3/64' }, '16': { parts: 8, inch: '1/16' },
  '20': { parts: 10, inch: '5/64' }, '24': { parts: 12, inch: '3/32' }, '28': { parts: 14, inch: '7/64' }, '32': { parts: 16, inch: '1/8' },
};

/** Codes of the usual series, to be offered where a corner could not be read. @see ISO 1832 position 7 (memory) */
export const USUAL_RADIUS_CODES = ['00', '005', '01', '02', '04', '05', '08', '10', '12', '15', '16', '20', '24', '28', '32'] as const;

/**
 * Radius of a code: tenths of a millimetre (005: 0.05 mm). m is worked out from the converted inch, where the radius is one: 08 is 1/32 in = 0.79375.
 * @param code two digits, or 005
 * @see ISO 1832 position 7; printed m of GOST 19057-80 and 19046-80 agree with the converted inch, not with 0.4 and 0.8 (seen)
 */
export function cornerRadius(code: string): CornerRadius {
  const nominalMm = code.length === 3 ? Number(code) / 100 : Number(code) / 10;
  const converted = IN_128THS[code];
  return converted === undefined ? { nominalMm, usedMm: nominalMm, inch: null } : { nominalMm, usedMm: (converted.parts * 1_984_375) / 10_000_000, inch: converted.inch };
}
