import { insertDimensions, insertLimits, readDesignation } from '../../carbide/index.ts';
import type { ProductCard } from './slips.ts';

/** The sintered piece that pressing is set for. Limits and the size across are left out where nothing states them. */
export interface SinteredSizes {
  readonly sinteredVolumeMm3: number;
  readonly thicknessMm: number;
  readonly thicknessLimits?: { readonly lowerMm: number; readonly upperMm: number };
  /** Across the die: the inscribed circle. */
  readonly acrossMm?: number;
  /** Where limits and size across come from: the product's card, or the sizes and tolerance class of its designation (ISO 1832). */
  readonly limitsFrom?: 'card' | 'designation';
  readonly acrossFrom?: 'card' | 'designation';
}

/** A card whose thickness is this near the designation's means the same piece: nothing is ground off it. */
const SAME_MM = 0.005;

/**
 * The sizes of the sintered piece. The card goes first; what it leaves out is read from the designation, whose sizes are those of the finished insert. So they count only
 * where the card's sintered thickness is the designation's own: with stock to be ground off, the plant states the sintered sizes itself.
 */
export function sinteredSizes({ sinteredVolumeMm3, thicknessMm, thicknessLimits, inscribedCircleMm, designation, byDrawing }: ProductCard): SinteredSizes {
  const read = byDrawing === true ? null : readDesignation(designation);
  const named = read?.ok === true && Math.abs(insertDimensions(read.designation).thickness.nominalMm - thicknessMm) < SAME_MM ? read.designation : null;
  const { s, d } = named === null ? { s: null, d: null } : insertLimits(named);
  const limits = thicknessLimits ?? (s === null || s.lowerMm === null || s.upperMm === null || s.lowerMm > thicknessMm || s.upperMm < thicknessMm ? undefined : { lowerMm: s.lowerMm, upperMm: s.upperMm });
  const acrossMm = inscribedCircleMm ?? d?.targetMm ?? undefined;
  return {
    sinteredVolumeMm3, thicknessMm,
    ...(limits === undefined ? {} : { thicknessLimits: limits, limitsFrom: thicknessLimits === undefined ? 'designation' : 'card' }),
    ...(acrossMm === undefined ? {} : { acrossMm, acrossFrom: inscribedCircleMm === undefined ? 'designation' : 'card' }),
  };
}
