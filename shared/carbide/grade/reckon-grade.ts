import { theoreticalDensityGPerCm3 } from '../density.ts';
import type { CarbonWindow } from './carbon.ts';
import { boundCarbonPercent, carbonWindow } from './carbon.ts';
import type { GradePart, ResolvedPart } from './composition.ts';
import { resolveComposition } from './composition.ts';
import type { Saturation } from './saturation.ts';
import { fullSaturation } from './saturation.ts';

/** What a composition alone tells of a grade. */
export interface ReckonedGrade {
  readonly parts: readonly ResolvedPart[];
  readonly densityGPerCm3: number;
  /** Share of the volume that cobalt and nickel fill, 0 … 1. */
  readonly binderVolumeFraction: number;
  /** Mass fraction of cobalt, 0 … 1. */
  readonly cobaltFraction: number;
  readonly carbonPercent: number;
  /** Null without cobalt, or above half of it, where the rule of thumb says nothing. */
  readonly carbonWindow: CarbonWindow | null;
  /** 100 % relative saturation, µT·m³/kg; null without cobalt. */
  readonly fullSaturation: Saturation | null;
}

/**
 * Density, binder volume, carbon and full saturation of a composition. What carbides dissolve in each other is left out of account.
 * @throws OutsideDomain for a list in which `compositionFault` finds something
 * @see rule of mixtures (common practice) and the functions it calls
 */
export function reckonGrade(composition: readonly GradePart[]): ReckonedGrade {
  const parts = resolveComposition(composition);
  const volumeOf = (some: readonly ResolvedPart[]): number => some.reduce((sum, { massFraction, densityGPerCm3 }) => sum + massFraction / densityGPerCm3, 0);
  const binder = parts.filter(({ role }) => role === 'binder');
  const cobaltFraction = parts.find(({ component }) => component.trim() === 'Co')?.massFraction ?? 0;
  const carbonPercent = boundCarbonPercent(parts);
  return {
    parts, densityGPerCm3: theoreticalDensityGPerCm3(parts), binderVolumeFraction: volumeOf(binder) / volumeOf(parts), cobaltFraction, carbonPercent,
    carbonWindow: cobaltFraction > 0 && cobaltFraction <= 0.5 && carbonPercent <= 25 ? carbonWindow(carbonPercent, cobaltFraction) : null,
    fullSaturation: cobaltFraction >= 0.0001 ? fullSaturation(cobaltFraction, 'µT·m³/kg') : null,
  };
}
