import { nearestOf, streamParts } from '../../shared/traveller/index.ts';
import type { Charge, Lot } from '../../shared/traveller/index.ts';
import { certificateEntryWords as said } from '../../shared/words/certificate-entries.en.ts';
import { nearSentence } from '../../shared/words/charge-slips.en.ts';
import { words } from '../../shared/words/index.ts';
import { clip } from './certificate-rows.ts';

const { labels, format } = words('en');

/** What belongs on a lot's certificate beside its charges' rows: that it was sintered or coated again, that it lay near a position that failed, and a log that was set aside. */
export function chargeNotes(lot: Lot, charges: readonly Charge[]): string[] {
  const again = lot.charges.flatMap(({ charge, again: came }) => (came === null ? [] : [said.again(labels.reprocessed[came.how], streamParts(charge)?.id ?? charge, came.earlierAttempts)]));
  const near = lot.gates.flatMap(({ verdicts }) => verdicts.flatMap(({ verdict, from }) => {
    const lay = from === null ? null : nearestOf(lot, from, verdict);
    const id = streamParts(from ?? '')?.id ?? '';
    return lay === null ? [] : [said.failedIn(id, format.list((verdict.failedPositions ?? []).map(({ position }) => position)), nearSentence(lay, { format, labels }))];
  }));
  const despite = charges.flatMap(({ id, gates }) => gates.flatMap(({ verdicts }) => (verdicts.at(-1)?.verdict.results ?? []).flatMap(({ name, detail }) => (detail.by === 'once' && detail.despite !== undefined ? [said.despite(id, name, detail.despite)] : []))));
  return [...new Set([...again, ...near, ...despite])].map((note) => clip(note, 600));
}
