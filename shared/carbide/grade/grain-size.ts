import { requireFinite, requireWhole } from '../../ground/outside-domain.ts';

/** Names of grain sizes, finest first, each up to but not including its upper end. @see ISO 4499-2 annex, after the trade's working group; from memory */
export const GRAIN_CLASSES = [
  { name: 'nano', belowUm: 0.2 }, { name: 'ultrafine', belowUm: 0.5 }, { name: 'submicron', belowUm: 0.8 }, { name: 'fine', belowUm: 1.3 },
  { name: 'medium', belowUm: 2.5 }, { name: 'coarse', belowUm: 6 }, { name: 'extra coarse', belowUm: Infinity },
] as const;
export type GrainClass = (typeof GRAIN_CLASSES)[number]['name'];

/** The class of a mean linear intercept. 6.0 itself is still coarse. @param interceptUm above 0, µm @throws OutsideDomain otherwise */
export function grainClass(interceptUm: number): GrainClass {
  requireFinite('interceptUm', interceptUm, Number.MIN_VALUE);
  if (interceptUm === 6) return 'coarse';
  return GRAIN_CLASSES.find(({ belowUm }) => interceptUm < belowUm)?.name ?? 'extra coarse';
}

/**
 * Mean linear intercept from lines laid over a picture: length inside WC divided by the number of grains crossed.
 * @param lengthUm total length of line inside the carbide, above 0, at the true scale; grains crossed, 1 or more (200 and more are wanted)
 * @throws OutsideDomain otherwise
 * @see ISO 4499-2 (method from memory)
 */
export function meanLinearInterceptUm(lengthUm: number, grains: number): number {
  requireFinite('lengthUm', lengthUm, Number.MIN_VALUE);
  requireWhole('grains', grains, 1, 1_000_000);
  return lengthUm / grains;
}
