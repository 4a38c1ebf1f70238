import { OutsideDomain, requireFinite } from '../../ground/outside-domain.ts';
import type { ResolvedPart } from './composition.ts';

/** Carbon of WC by mass, wt%: 12.011/(183.84 + 12.011); rounded to 6.132 in the trade. */
const WC_CARBON_PERCENT = (100 * 12.011) / (183.84 + 12.011);

/**
 * Carbon of a straight WC-Co grade in which every tungsten atom has its carbon: C = 6.132 · (1 − w).
 * @param cobaltFraction mass fraction of cobalt, 0 … 1
 * @returns wt% of the whole
 * @throws OutsideDomain outside that range
 * @see derived from the atomic masses; 5.52 for 10 % binder is printed on sections of W-Fe-C and W-Ni-C (seen)
 */
export function stoichiometricCarbonPercent(cobaltFraction: number): number {
  requireFinite('cobaltFraction', cobaltFraction, 0, 1);
  return WC_CARBON_PERCENT * (1 - cobaltFraction);
}

/** The same for any composition: every carbide with all its carbon, wt% of the whole. Derived. */
export function boundCarbonPercent(parts: readonly ResolvedPart[]): number {
  return 100 * parts.reduce((sum, { massFraction, carbonFraction }) => sum + massFraction * carbonFraction, 0);
}

/** Carbon between which only carbide and binder are there, wt%. */
export interface CarbonWindow { readonly lowerPercent: number; readonly upperPercent: number; readonly widthPercent: number }

/** Width of the window, wt% of carbon for each wt% of cobalt. From memory, approximate. */
export const WINDOW_WIDTH_PER_COBALT = 0.015;

/**
 * The two-phase window: below it η phase, above it free carbon. Its upper end is taken at the stoichiometric carbon, its width as 0.015 wt% for
 * each wt% of cobalt: about 0.09 at 6 %, 0.12 at 8 %, 0.15 at 10 % cobalt.
 * @param carbonPercent stoichiometric carbon of the grade, wt%, 0 … 25
 * @param cobaltFraction mass fraction of cobalt, 0 … 0.5
 * @throws OutsideDomain outside those ranges
 * @see ISO 4499-4 names the three states (seen); width from memory, approximate; its place derived. A figure to look from, never a limit: what a
 * furnace, chromium, vanadium and cubic carbides make of it belongs to the grade
 */
export function carbonWindow(carbonPercent: number, cobaltFraction: number): CarbonWindow {
  requireFinite('carbonPercent', carbonPercent, 0, 25);
  requireFinite('cobaltFraction', cobaltFraction, 0, 0.5);
  const widthPercent = WINDOW_WIDTH_PER_COBALT * 100 * cobaltFraction;
  return { lowerPercent: carbonPercent - widthPercent, upperPercent: carbonPercent, widthPercent };
}

/** A batch whose carbon is to be moved: its mass and the carbon it has and shall have, wt%. */
export interface CarbonCorrection { readonly batchKg: number; readonly nowPercent: number; readonly targetPercent: number }

/**
 * Pure carbon to add, kg: m = M (c₂ − c₁)/(100 − c₂).
 * @throws OutsideDomain unless batch above 0, 0 ≤ now ≤ target < 100
 * @see mass balance, derived. What the powder's oxygen takes in the furnace comes on top: `carbonEatenByOxygenKg`
 */
export function carbonToAddKg(correction: CarbonCorrection): number {
  const { batchKg, nowPercent, targetPercent } = soundCorrection(correction);
  if (targetPercent < nowPercent) throw new OutsideDomain('targetPercent', `at least ${nowPercent}`, targetPercent);
  return (batchKg * (targetPercent - nowPercent)) / (100 - targetPercent);
}

/**
 * Tungsten to add, kg, where there is too much carbon: m = M (c₁ − c₂)/c₂.
 * @throws OutsideDomain unless batch above 0, 0 < target ≤ now < 100
 * @see mass balance, derived: the carbon stays and the mass grows
 */
export function tungstenToAddKg(correction: CarbonCorrection): number {
  const { batchKg, nowPercent, targetPercent } = soundCorrection(correction);
  if (targetPercent > nowPercent || targetPercent <= 0) throw new OutsideDomain('targetPercent', `above 0, at most ${nowPercent}`, targetPercent);
  return (batchKg * (nowPercent - targetPercent)) / targetPercent;
}

/**
 * Carbon that the powder's oxygen takes with it as carbon monoxide, kg: 12.011/15.999 of the oxygen. With water vapour and carbon dioxide it is less.
 * @param batchKg above 0; oxygenPercent 0 … 5 wt%
 * @throws OutsideDomain outside those ranges
 * @see derived from CO
 */
export function carbonEatenByOxygenKg(batchKg: number, oxygenPercent: number): number {
  requireFinite('batchKg', batchKg, Number.MIN_VALUE);
  requireFinite('oxygenPercent', oxygenPercent, 0, 5);
  return ((batchKg * oxygenPercent) / 100) * (12.011 / 15.999);
}

function soundCorrection(correction: CarbonCorrection): CarbonCorrection {
  requireFinite('batchKg', correction.batchKg, Number.MIN_VALUE);
  requireFinite('nowPercent', correction.nowPercent, 0, 99);
  requireFinite('targetPercent', correction.targetPercent, 0, 99);
  return correction;
}
