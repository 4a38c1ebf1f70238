import { requireFinite } from '../../ground/outside-domain.ts';

/**
 * Coercivity to be expected from cobalt and grain size: Hc = (1.44 + 0.04 Co) + (12.47 − 0.37 Co)/d. For orientation only, never a limit.
 * @param cobaltPercent wt%, 3 … 25 (the span of straight grades)
 * @param interceptUm mean linear intercept of WC, 0.2 … 10 µm
 * @returns kA/m
 * @throws OutsideDomain outside those ranges
 * @see after Roebuck (NPL); coefficients from memory and not confirmed. Published fits differ, since grain size is measured differently. Gauge: ISO 3326
 */
export function expectedCoercivityKAPerM(cobaltPercent: number, interceptUm: number): number {
  requireFinite('cobaltPercent', cobaltPercent, 3, 25);
  requireFinite('interceptUm', interceptUm, 0.2, 10);
  return 1.44 + 0.04 * cobaltPercent + (12.47 - 0.37 * cobaltPercent) / interceptUm;
}
