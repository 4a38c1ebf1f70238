export { boundCarbonPercent, carbonEatenByOxygenKg, carbonToAddKg, carbonWindow, stoichiometricCarbonPercent, tungstenToAddKg, WINDOW_WIDTH_PER_COBALT } from './carbon.ts';
export type { CarbonCorrection, CarbonWindow } from './carbon.ts';
export { expectedCoercivityKAPerM } from './coercivity.ts';
export { componentOf, COMPONENTS } from './components.ts';
export type { Component, Evidence } from './components.ts';
export { compositionFault, resolveComposition, SUM_TOLERANCE_PERCENT } from './composition.ts';
export type { CompositionFault, GradePart, ResolvedPart } from './composition.ts';
export { GRAIN_CLASSES, grainClass, meanLinearInterceptUm } from './grain-size.ts';
export type { GrainClass } from './grain-size.ts';
export { bendingStrengthOfCylinder, HV30_FORCE_N, vickersHardness } from './hardness.ts';
export { POROSITY_TYPES, porosityLevels, porosityRank } from './porosity.ts';
export type { PorosityLevel, PorosityType } from './porosity.ts';
export { apparentDensityGPerCm3, correctedFlowTimeS } from './powder-tests.ts';
export { reckonGrade } from './reckon-grade.ts';
export type { ReckonedGrade } from './reckon-grade.ts';
export {
  convertSaturation, fullSaturation, isSaturationWindow, relativeSaturationPercent, SATURATION_UNITS, saturationStanding, USUAL_SATURATION_WINDOW,
} from './saturation.ts';
export type { Saturation, SaturationStanding, SaturationUnit, SaturationWindow } from './saturation.ts';
