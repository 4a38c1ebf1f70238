import type { ProductCard } from './slips.ts';

/** The sintered piece that pressing is set for. Limits and the size across are left out where the product states none. */
export interface SinteredSizes {
  readonly sinteredVolumeMm3: number;
  readonly thicknessMm: number;
  readonly thicknessLimits?: { readonly lowerMm: number; readonly upperMm: number };
  /** Across the die: the inscribed circle. */
  readonly acrossMm?: number;
}

/** The sizes a product's card states. They are those of the sintered piece, before grinding: what is ground off is for the card to add. */
export function sinteredSizes({ sinteredVolumeMm3, thicknessMm, thicknessLimits, inscribedCircleMm }: ProductCard): SinteredSizes {
  return { sinteredVolumeMm3, thicknessMm, ...(thicknessLimits === undefined ? {} : { thicknessLimits }), ...(inscribedCircleMm === undefined ? {} : { acrossMm: inscribedCircleMm }) };
}
