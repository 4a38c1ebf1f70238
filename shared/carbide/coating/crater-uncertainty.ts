import { requireFinite } from '../../ground/outside-domain.ts';
import type { CraterRing } from '../crater.ts';
import { craterThicknessUm } from '../crater.ts';

/**
 * Uncertainty of a crater thickness from that of the two diameters alone, root of the sum of squares: u = √(D² + d²) u_D/(4R) (short form).
 * @param diameterUm uncertainty of one diameter, µm, 0 … 100; the result is of the same kind (standard or expanded)
 * @returns micrometres
 * @throws OutsideDomain as `craterThicknessUm`
 * @see derived (law of propagation, JCGM 100). ±2 µm at D 0.9, d 0.6 on a ball of 30 mm gives ±0.036 µm. The roughness of coating and substrate comes on top
 */
export function craterUncertaintyUm(ring: CraterRing, diameterUm: number): number {
  craterThicknessUm(ring);
  requireFinite('diameterUm', diameterUm, 0, 100);
  return (Math.hypot(ring.outerMm, ring.innerMm) * diameterUm) / (2 * ring.ballDiameterMm);
}
