import { controlDimension } from './control-dimension.ts';
import type { ControlDimension } from './control-dimension.ts';
import { cornerRadius } from './corner.ts';
import type { CornerRadius } from './corner.ts';
import type { InsertDesignation } from './designation.ts';
import { CLEARANCES } from './letters.ts';
import { SHAPES } from './shapes.ts';
import { circlesOfSize, edgeLengthMm } from './sizes.ts';
import type { InscribedCircle } from './sizes.ts';
import { THICKNESSES } from './thickness.ts';
import type { InsertThickness } from './thickness.ts';

/** What a designation fixes, mm and degrees. Null: the code does not say it, or the insert has no such thing. */
export type InsertDimensions = {
  /** Inscribed circle d, or the diameter of a round insert. */
  readonly inscribedCircle: InscribedCircle | null;
  /** Why d is null: the digits fit several circles, or L, A, B and K say nothing of one. */
  readonly circleUnknown: 'severalFit' | 'notInCode' | null;
  /** All circles that fit the digits: one where d is known. */
  readonly fittingCircles: readonly InscribedCircle[];
  /** Cutting edge l, unrounded; null for round inserts, where d is unknown, and for L, A, B and K. */
  readonly edgeLengthMm: number | null;
  /** L, A, B and K: the longer side in whole millimetres, decimals dropped. */
  readonly longSideWholeMm: number | null;
  readonly thickness: InsertThickness;
  /** Null for round and for wiper inserts. A sharp corner has radius 0. */
  readonly cornerRadius: CornerRadius | null;
  readonly clearanceDeg: number | null;
  readonly includedAngleDeg: number | null;
  readonly controlDimension: ControlDimension | null;
  /** Why there is no m. The m of a wiper corner does not follow the formula and stands on its drawing. */
  readonly noControlDimension: 'round' | 'wiper' | 'notInCode' | 'circleUnknown' | null;
};

/**
 * Dimensions of a designation. Where its digits fit several standard circles (rhombus C with 04: 3.97 and 4.76), d stays unknown until one is
 * chosen; 06, 12 and 25 of a round insert are settled by its corner code.
 * @param chosenCircleMm nominal circle among the fitting ones, if the digits leave it open; one that does not fit is left out of account
 * @see ISO 1832; every part names its own source
 * @example // CNMG120408: d 12.7, l 12.896, s 4.76, r 0.8 (0.79375), m 3.0877
 */
export function insertDimensions(designation: InsertDesignation, chosenCircleMm?: number): InsertDimensions {
  const { shape, clearance, corner, thickness } = designation;
  const { includedAngleDeg, sides, form } = SHAPES[shape];
  const fittingCircles = circlesThatFit(designation);
  const inscribedCircle = (fittingCircles.length === 1 ? fittingCircles[0] : fittingCircles.find(({ nominalMm }) => nominalMm === chosenCircleMm)) ?? null;
  const radius = corner.kind === 'radius' ? cornerRadius(corner.code) : null;
  const hasSides = sides !== null || form === 'round';
  return {
    inscribedCircle, circleUnknown: inscribedCircle !== null ? null : hasSides ? 'severalFit' : 'notInCode', fittingCircles,
    edgeLengthMm: inscribedCircle === null ? null : edgeLengthMm(shape, inscribedCircle.exactMm),
    longSideWholeMm: hasSides ? null : Number(designation.size),
    thickness: THICKNESSES[thickness], cornerRadius: radius, clearanceDeg: CLEARANCES[clearance], includedAngleDeg,
    controlDimension: sides === null || inscribedCircle === null || radius === null ? null : controlDimension(shape, inscribedCircle.exactMm, radius.usedMm),
    noControlDimension: form === 'round' ? 'round' : sides === null ? 'notInCode' : radius === null ? 'wiper' : inscribedCircle === null ? 'circleUnknown' : null,
  };
}

/** Circles with the size's digits, those left out that the corner rules out: the other series of a round insert, or a radius larger than d/2. */
function circlesThatFit({ shape, size, corner }: InsertDesignation): readonly InscribedCircle[] {
  const circles = circlesOfSize(shape, size);
  switch (corner.kind) {
    case 'roundInch': return circles.filter(({ inch }) => inch !== null);
    case 'roundMetric': return circles.filter(({ inch }) => inch === null);
    case 'radius': return circles.filter(({ exactMm }) => cornerRadius(corner.code).usedMm <= exactMm / 2);
    case 'wiper': return circles;
  }
}
