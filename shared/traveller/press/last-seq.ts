import type { AnyState } from '../known.ts';
import type { PressState } from './slips.ts';

/** The last number of the balance's own count that was taken from a press; null where none ever was. @param lot state of the lot it presses, or null */
export function lastSeqOf({ card, afterSeq }: PressState, lot: AnyState | null): number | null {
  const taken = lot?.kind === 'lot' ? lot.feeds?.find(({ press }) => press === card.id)?.toSeq ?? null : null;
  return afterSeq === null || taken === null ? afterSeq ?? taken : Math.max(afterSeq, taken);
}
