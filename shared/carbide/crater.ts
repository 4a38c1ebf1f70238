import { OutsideDomain, requireFinite } from '../ground/outside-domain.ts';

/** One ring of a ground crater: the ball and the two diameters of the ring. */
export type CraterRing = { readonly ballDiameterMm: number; readonly outerMm: number; readonly innerMm: number };

/** Thickness of what the ring cuts through. The short form is the one printed in the standard; the exact one is to be used. */
export type CraterThickness = { readonly exactUm: number; readonly approximateUm: number };

/**
 * Coating thickness from a ball-ground crater: exact t = √(R² − d²/4) − √(R² − D²/4), short t = (D² − d²)/(8R), R half the ball's diameter.
 * @param ring ball above 0 mm; outer diameter D up to the ball's; inner d 0 … D (0: the substrate was not reached)
 * @returns micrometres; the two differ by 0.15 % for D 2 mm on a ball of 30 mm
 * @throws OutsideDomain otherwise
 * @see ISO 26423:2009 (seen). Not for a coating or substrate rougher than a fifth of the thickness
 * @example craterThicknessUm({ ballDiameterMm: 30, outerMm: 0.9, innerMm: 0.6 }) // exact 3.7512, short 3.7500
 */
export function craterThicknessUm({ ballDiameterMm, outerMm, innerMm }: CraterRing): CraterThickness {
  requireFinite('ballDiameterMm', ballDiameterMm, Number.MIN_VALUE);
  requireFinite('outerMm', outerMm, Number.MIN_VALUE, ballDiameterMm);
  requireFinite('innerMm', innerMm, 0, outerMm);
  const radius = ballDiameterMm / 2;
  const squares = (outerMm - innerMm) * (outerMm + innerMm);
  // The difference of two near-equal roots, multiplied out, so that thin coatings keep their digits.
  const roots = Math.sqrt(radius * radius - (innerMm * innerMm) / 4) + Math.sqrt(radius * radius - (outerMm * outerMm) / 4);
  return { exactUm: (1000 * squares) / 4 / roots, approximateUm: (1000 * squares) / (8 * radius) };
}

/**
 * Thickness of each layer of a coating, from the surface inward: the same formula ring by ring.
 * @param diametersMm the ring diameters from the surface to the substrate, two or more, each smaller than the one before
 * @throws OutsideDomain otherwise
 * @see ISO 26423:2009 (seen)
 */
export function craterLayersUm({ ballDiameterMm, diametersMm }: { readonly ballDiameterMm: number; readonly diametersMm: readonly number[] }): CraterThickness[] {
  if (diametersMm.length < 2) throw new OutsideDomain('diametersMm', 'two or more', diametersMm.length);
  return diametersMm.slice(1).map((innerMm, at) => {
    const outerMm = diametersMm[at] ?? Number.NaN;
    if (innerMm >= outerMm) throw new OutsideDomain(`diametersMm[${at + 1}]`, `smaller than ${outerMm}`, innerMm);
    return craterThicknessUm({ ballDiameterMm, outerMm, innerMm });
  });
}
