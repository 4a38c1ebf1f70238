/**
 * What test pieces tell pressing about a powder. Linear shrinkages on the green size by direction: `linearShrinkagePercent` in the plane, across the die, and in every
 * direction where nothing else is known; `widthShrinkagePercent` the second direction in the plane; `heightShrinkagePercent` along pressing.
 */
export const POWDER_FACTORS = ['linearShrinkagePercent', 'widthShrinkagePercent', 'heightShrinkagePercent', 'sinteredDensityGPerCm3', 'binderPercent', 'furtherLossPercent'] as const;
export type PowderFactor = (typeof POWDER_FACTORS)[number];
/** Without these no press target can be worked out. */
export const NEEDED_FACTORS = ['linearShrinkagePercent', 'sinteredDensityGPerCm3', 'binderPercent'] as const satisfies readonly PowderFactor[];
