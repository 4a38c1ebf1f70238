import type { Evidence } from './evidence.ts';

/** Thickness of position 6. */
export type InsertThickness = { readonly nominalMm: number; readonly exactMm: number; readonly evidence: Evidence };

const of = (nominalMm: number, exactMm: number, evidence: Evidence): InsertThickness => ({ nominalMm, exactMm, evidence });

/**
 * Thickness by its two signs. The digits are whole millimetres; of two thicknesses with the same whole number the larger one swaps its 0 for
 * a T (03 is 3.18, T3 is 3.97). Measured from the cutting corner to the seating face, not to the highest point of the chip breaker.
 * @see ISO 1832 position 6 (seen; 00, T0 and 12 from memory, T2 with a trace of 2.58 in memory)
 */
export const THICKNESSES = {
  '00': of(0.79, 0.79375, 'memory'), T0: of(0.99, 0.99, 'memoryUncertain'), '01': of(1.59, 1.5875, 'seen'), T1: of(1.98, 1.984375, 'seen'),
  '02': of(2.38, 2.38125, 'seen'), T2: of(2.78, 2.778125, 'memoryUncertain'), '03': of(3.18, 3.175, 'seen'), T3: of(3.97, 3.96875, 'seen'),
  '04': of(4.76, 4.7625, 'seen'), '05': of(5.56, 5.55625, 'seen'), '06': of(6.35, 6.35, 'seen'), '07': of(7.94, 7.9375, 'seen'),
  '09': of(9.52, 9.525, 'seen'), '12': of(12.7, 12.7, 'memory'),
} as const satisfies Record<string, InsertThickness>;
export type ThicknessCode = keyof typeof THICKNESSES;
