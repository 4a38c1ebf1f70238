import { compositionFault, isSaturationWindow, porosityRank, POROSITY_TYPES, reckonGrade } from '../../carbide/index.ts';
import type { CompositionFault, PorosityType, SaturationUnit, SaturationWindow } from '../../carbide/index.ts';
import type { GradeCard, LayerCard } from './slips.ts';

/** Limits of a grade. Each is the plant's own; what is left out is not judged. */
export interface GradeLimits {
  readonly densityGPerCm3?: Limits;
  readonly coercivityKAPerM?: Limits;
  /** Relative saturation, percent, and the unit in which the bench reads it. */
  readonly saturation?: SaturationWindow & { readonly unit: SaturationUnit };
  readonly hardnessHv30?: Limits;
  /** Worst level accepted of each type. */
  readonly porosity?: Partial<Readonly<Record<PorosityType, string>>>;
  /** Worst that is accepted of what does not belong in the binder. */
  readonly flags?: Partial<Readonly<Record<BinderFlag, FlagRating>>>;
}
/** One or two limits; null where there is none. */
export interface Limits { readonly lower: number | null; readonly upper: number | null }

/** What does not belong in the binder, seen on the polished section. */
export const BINDER_FLAGS = ['etaPhase', 'freeCarbon', 'binderLakes'] as const;
export type BinderFlag = (typeof BINDER_FLAGS)[number];
/** How much of it is seen, best first. */
export const FLAG_RATINGS = ['none', 'traces', 'much'] as const;
export type FlagRating = (typeof FLAG_RATINGS)[number];

/** What is wrong with a card of the catalogue. */
export type CardFault =
  | CompositionFault
  | { readonly why: 'limits'; readonly of: string }
  | { readonly why: 'porosity'; readonly of: string }
  | { readonly why: 'saturationWindow' | 'saturationWithoutCobalt' }
  | { readonly why: 'layerTwice'; readonly of: string };

/** The first thing wrong with a grade, or null. */
export function gradeFault({ composition, limits = {} }: GradeCard): CardFault | null {
  const fault = compositionFault(composition);
  if (fault !== null) return fault;
  const { densityGPerCm3, coercivityKAPerM, hardnessHv30, saturation, porosity = {} } = limits;
  for (const [of, each] of Object.entries({ density: densityGPerCm3, coercivity: coercivityKAPerM, hardness: hardnessHv30 })) if (each !== undefined && !areLimits(each)) return { why: 'limits', of };
  if (saturation !== undefined && !isSaturationWindow(saturation)) return { why: 'saturationWindow' };
  if (saturation !== undefined && reckonGrade(composition).fullSaturation === null) return { why: 'saturationWithoutCobalt' };
  for (const type of POROSITY_TYPES) {
    const worst = porosity[type];
    if (worst !== undefined && porosityRank(type, worst) === null) return { why: 'porosity', of: worst };
  }
  return null;
}

/** The first thing wrong with a coating, or null: its layers, where they are named, each have a name of their own and limits. */
export function layerFault({ layers = [] }: LayerCard): CardFault | null {
  for (const [at, { name, lowerUm, upperUm }] of layers.entries()) {
    if (layers.some((other, before) => before < at && other.name === name)) return { why: 'layerTwice', of: name };
    if (!areLimits({ lower: lowerUm, upper: upperUm })) return { why: 'limits', of: name };
  }
  return null;
}

/** At least one limit, above 0, and the lower below the upper. */
function areLimits({ lower, upper }: Limits): boolean {
  if ((lower !== null && !(lower > 0)) || (upper !== null && !(upper > 0))) return false;
  return lower === null ? upper !== null : upper === null || lower < upper;
}
