import { labelOf } from '../../shared/words/words-for.ts';
import { plansDeskWords } from '../../shared/words/plans-desk.en.ts';
import type { SwitchingRow } from '../../shared/wire/views.ts';
import { showList, showMoment } from '../desk/show.ts';
import { labels } from '../desk/words.ts';

const words = plansDeskWords.switching;

/** Why a switching state moved last, and on which lots. */
export function movedText({ movedAt, movedWhy, movedLots }: SwitchingRow): string {
  return movedAt === null || movedWhy === null ? words.never : words.moved(labelOf(labels.moveReasons, movedWhy), showList(movedLots), showMoment(movedAt));
}
