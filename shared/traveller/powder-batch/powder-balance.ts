import type { Batch } from './batch.ts';

const grams = (kg: number): number => Math.round(kg * 1000);

/**
 * Powder of the batch that is not yet booked for lots or blends, in kilograms to the gram: barrels × kg − lots − blends. Summed in whole grams, so that nothing is lost
 * to binary fractions.
 */
export function remainingKg(batch: Pick<Batch, 'barrels' | 'kgPerBarrel' | 'lotsKg' | 'blendedInto'>): number {
  const blended = batch.blendedInto.reduce((sum, { kg }) => sum + grams(kg), 0);
  return (grams(batch.barrels * batch.kgPerBarrel) - grams(batch.lotsKg) - blended) / 1000;
}

/** Powder that so many pieces of this press weight take, kg, up to the next gram. Spill and trial pieces are not in it. */
export function powderForPieces(pieces: number, weightG: number): number {
  return Math.ceil(pieces * weightG - 1e-6) / 1000;
}

/** True for a mass above 0 that is stated to the gram or coarser. */
export function isMassToTheGram(kg: number): boolean {
  return Number.isFinite(kg) && kg > 0 && Number(kg.toFixed(3)) === kg;
}
