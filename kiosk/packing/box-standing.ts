import type { Box } from '../../shared/traveller/index.ts';
import type { StateName } from '../parts/state-name.ts';

/** How far one box has come. */
export type BoxStanding = 'packed' | 'printed' | 'read' | 'shipped' | 'voided';

/** The furthest a box has come; a reprint brings it back to printed, since its new label has not been read. */
export function boxStanding(box: Box): BoxStanding {
  if (box.voided !== null) return 'voided';
  if (box.shipped !== null) return 'shipped';
  if (box.readBack) return 'read';
  return box.copies > 0 ? 'printed' : 'packed';
}

export const markOfBox: Readonly<Record<BoxStanding, StateName>> = { packed: 'open', printed: 'next-sample', read: 'accepted', shipped: 'released', voided: 'scrapped' };

/** The box to work on: the one chosen, else the first whose label is still open or unread. */
export function boxInHand(boxes: readonly Box[], chosen: string | null): Box | null {
  return boxes.find(({ serial }) => serial === chosen) ?? boxes.find((box) => ['packed', 'printed'].includes(boxStanding(box))) ?? null;
}
