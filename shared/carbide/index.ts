export * from './coating/index.ts';
export { craterLayersUm, craterThicknessUm } from './crater.ts';
export type { CraterRing, CraterThickness } from './crater.ts';
export { archimedesDensity, theoreticalDensityGPerCm3, volumeFraction, waterDensityGPerCm3 } from './density.ts';
export type { Constituent, WaterWeighing } from './density.ts';
export * from './grade/index.ts';
export { COBALT_SATURATION_UT_M3_PER_KG, oerstedFromKAPerM, relativeSaturation } from './magnetics.ts';
export { lengthChangeFromMassChange, linearShrinkage, pressTargets, shrinkageNumbers } from './shrinkage.ts';
export type { PressRequest, PressTargets, ShrinkageNumbers } from './shrinkage.ts';
