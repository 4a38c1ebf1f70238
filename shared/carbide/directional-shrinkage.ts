import { OutsideDomain, requireFinite } from '../ground/outside-domain.ts';
import { linearShrinkage } from './shrinkage.ts';

/**
 * Linear shrinkages on the green size by direction, fractions 0 … 0.5: S = (green − sintered)/green.
 * A pressed piece shrinks unevenly: less or more along the pressing direction than across it, as its green density is uneven (common practice, no source).
 * Usual: 17 to 20 % (common practice, no source).
 */
export type Shrinkages = {
  /** In the plane, across the die; of a test bar its length. */
  readonly across: number;
  /** The second direction in the plane, of a test bar its width; as `across` when left out. */
  readonly width?: number | undefined;
  /** Along the pressing direction: the height. */
  readonly along: number;
};

/** Sizes of one test piece, millimetres: height along pressing, length and width across it. */
export type BarSizes = { readonly lengthMm: number; readonly widthMm?: number | undefined; readonly heightMm: number };

/** The same shrinkage in every direction. */
export function evenShrinkage(shrinkage: number): Shrinkages {
  return { across: shrinkage, along: shrinkage };
}

/**
 * Shrinkage by direction from one test piece before and after the furnace.
 * @throws OutsideDomain for a size not above 0, a piece that grew, or a width given only once
 */
export function shrinkagesOfBar(green: BarSizes, sintered: BarSizes): Shrinkages {
  if ((green.widthMm === undefined) !== (sintered.widthMm === undefined)) throw new OutsideDomain('widthMm', 'given green and sintered, or not at all', 'given once');
  const width = green.widthMm === undefined || sintered.widthMm === undefined ? {} : { width: linearShrinkage(green.widthMm, sintered.widthMm) };
  return { across: linearShrinkage(green.lengthMm, sintered.lengthMm), ...width, along: linearShrinkage(green.heightMm, sintered.heightMm) };
}

/** What follows from shrinkages by direction. */
export type DirectionalNumbers = {
  /** S in the plane: of two directions the one that keeps the area, 1 − √((1 − S₁)(1 − S₂)). */
  readonly inPlane: number;
  /** K of the die, 1/(1 − S in the plane): times a sintered size across, the die's size. */
  readonly dieFactor: number;
  /** 1/(1 − S along): times the sintered height, the green height. */
  readonly heightFactor: number;
  /** V sintered / V green = (1 − S₁)(1 − S₂)(1 − S₃). */
  readonly volumeRatio: number;
  readonly volumeShrinkage: number;
};

/**
 * Die and height factor and the volume ratio (1 − S₁)(1 − S₂)(1 − S₃).
 * @throws OutsideDomain for a shrinkage outside 0 … 0.5
 * @see derived: each direction shrinks by its own factor; with even shrinkage it is K = 1/(1 − S) and (1 − S)³
 * @example directionalNumbers({ across: 0.18, along: 0.19 }).volumeRatio // 0.82² · 0.81 = 0.544644
 */
export function directionalNumbers({ across, width, along }: Shrinkages): DirectionalNumbers {
  requireFinite('across', across, 0, 0.5);
  requireFinite('width', width ?? across, 0, 0.5);
  requireFinite('along', along, 0, 0.5);
  const inPlane = width === undefined ? across : 1 - Math.sqrt((1 - across) * (1 - width));
  const volumeRatio = (1 - across) * (1 - (width ?? across)) * (1 - along);
  return { inPlane, dieFactor: 1 / (1 - inPlane), heightFactor: 1 / (1 - along), volumeRatio, volumeShrinkage: 1 - volumeRatio };
}
