import { isPassed, lastGateWorkers, remainingPieces, standingHolds } from '../../shared/traveller/index.ts';
import { labels } from '../desk/words.ts';
import { releaseDeskWords as words } from '../../shared/words/release-desk.en.ts';
import type { LotStanding } from '../desk/traveller-page.ts';

/** Everything that stops the release of a lot, each in a sentence; empty where nothing does. The server decides; this only says it beforehand. */
export function whatStops({ lot, batch, charges }: LotStanding): readonly string[] {
  const upstream = [...(batch === null ? [] : [batch]), ...charges.filter(({ stream }) => lot.charges.some(({ charge, current }) => current && charge === stream))];
  return [
    ...(lot.ended === null ? [] : [words.stop.ended(labels.ends[lot.ended.how])]),
    ...standingHolds(lot).map(({ cause, reason }) => words.stop.hold(labels.holdCauses[cause.by], reason)),
    ...upstream.flatMap((subject) => standingHolds(subject).map(({ reason }) => words.stop.upstream(subject.id, reason))),
    ...lot.gates.filter((gate) => !isPassed(gate)).map(({ name, status }) => words.stop.gate(name, words.gateStatus[status])),
    ...(remainingPieces(lot.balance) + lot.balance.boxed < 1 ? [words.stop.noPieces] : []),
  ];
}

/** True when this person worked the last gate and so does not release alone. */
export function needsCoSigner({ lot }: LotStanding, badge: string): boolean {
  return lastGateWorkers(lot).includes(badge);
}
