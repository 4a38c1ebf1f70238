import { SHAPES } from './shapes.ts';
import type { ShapeLetter } from './shapes.ts';

/** An inscribed circle (or the diameter of a round insert) of the standard series. */
export type InscribedCircle = {
  /** As the tables print it, mm. Limits are counted from this. */
  readonly nominalMm: number;
  /** The converted inch, mm; l and m are worked out from this. The same as the nominal one for a metric diameter. */
  readonly exactMm: number;
  /** The inch it comes from, such as 1/2; null for a metric diameter. */
  readonly inch: string | null;
};

// One sixty-fourth of an inch is 0.396875 mm exactly; counted in whole numbers, so that 3/16 in is 4.7625 and not a hair less.
const inch = (nominalMm: number, text: string, sixtyFourths: number): InscribedCircle => ({ nominalMm, exactMm: (sixtyFourths * 396_875) / 1_000_000, inch: text });
const metric = (nominalMm: number): InscribedCircle => ({ nominalMm, exactMm: nominalMm, inch: null });

/** @see ISO 1832 and ISO 3364 series of inscribed circles (nominal values seen; 3.97 unchecked) */
export const INCH_CIRCLES: readonly InscribedCircle[] = [
  inch(3.97, '5/32', 10), inch(4.76, '3/16', 12), inch(5.56, '7/32', 14), inch(6.35, '1/4', 16), inch(7.94, '5/16', 20), inch(9.525, '3/8', 24),
  inch(12.7, '1/2', 32), inch(15.875, '5/8', 40), inch(19.05, '3/4', 48), inch(25.4, '1', 64), inch(31.75, '1 1/4', 80),
];
/** Metric diameters, of round inserts only. */
export const METRIC_CIRCLES: readonly InscribedCircle[] = [6, 8, 10, 12, 16, 20, 25, 32].map(metric);

/**
 * Edge length l from the inscribed circle: l = factor · d, unrounded; null for round inserts and for L, A, B and K, whose sides differ.
 * @param exactMm d, converted inch, above 0
 */
export function edgeLengthMm(shape: ShapeLetter, exactMm: number): number | null {
  const { edgeFactor } = SHAPES[shape];
  return edgeFactor === null ? null : edgeFactor * exactMm;
}

/**
 * The two digits of position 5 for a circle: whole millimetres of the edge, decimals dropped, a 0 put before a single digit. The edge is
 * first rounded to one decimal: ideal geometry gives a triangle of d 6.35 an edge of 10.9985, the standard's table 11.0, so 11. Squares
 * and round inserts take d as it is (3.97 gives 03). Null for L, A, B and K.
 * @see ISO 1832; the rule of dropping is written out in GOST ISO 5609-2015 table 7 (seen); the order of rounding is derived from printed sizes
 */
export function sizeCode(shape: ShapeLetter, { exactMm }: InscribedCircle): string | null {
  const edge = shape === 'R' || shape === 'S' ? exactMm : edgeLengthMm(shape, exactMm);
  if (edge === null) return null;
  const whole = shape === 'R' || shape === 'S' ? Math.floor(edge) : Math.floor(Math.round(edge * 10) / 10);
  return String(whole).padStart(2, '0');
}

/** Circles whose size has these digits. Several where the digits leave it open (round 12: 12 and 12.7), none where no standard circle has them. */
export function circlesOfSize(shape: ShapeLetter, code: string): readonly InscribedCircle[] {
  return circlesOf(shape).filter((circle) => sizeCode(shape, circle) === code);
}

/** The size digits that some standard circle of the shape has, in rising order; none for L, A, B and K, where any length may stand. */
export function sizeCodesOf(shape: ShapeLetter): readonly string[] {
  const codes = circlesOf(shape).flatMap((circle) => sizeCode(shape, circle) ?? []);
  return [...new Set(codes)].sort();
}

function circlesOf(shape: ShapeLetter): readonly InscribedCircle[] {
  if (SHAPES[shape].form === 'round') return [...INCH_CIRCLES, ...METRIC_CIRCLES];
  return SHAPES[shape].sides === null ? [] : INCH_CIRCLES;
}
