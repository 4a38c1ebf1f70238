import type { AnyState } from '../known.ts';
import type { PressState } from './slips.ts';

/** The last number of the count its balance is in that was taken from a press; null where none ever was. @param lot state of the lot it presses, or null */
export function lastSeqOf({ card, afterSeq, count }: PressState, lot: AnyState | null): number | null {
  const taken = lot?.kind === 'lot' ? lot.feeds?.find((feed) => feed.press === card.id && (feed.count ?? 1) === count)?.toSeq ?? null : null;
  return afterSeq === null || taken === null ? afterSeq ?? taken : Math.max(afterSeq, taken);
}
