import { isPassed, verdictOf } from '../gate/work.ts';
import type { Pen } from '../pen.ts';
import { refuse, requireReason } from '../pen.ts';
import { remainingPieces } from '../piece-balance/piece-balance.ts';
import type { Signature } from '../stamp.ts';
import { requireFree, requireUpstreamFree } from '../upstream.ts';
import type { Lot } from './lot.ts';
import { standingBoxes, standingHolds } from './lot.ts';

/** Badges of all who worked the last gate of the route. */
export function lastGateWorkers(lot: Lot): readonly string[] {
  const last = lot.gates.at(-1);
  return (last === undefined ? null : verdictOf(last))?.verdict.workers ?? [];
}

/** Releases a lot whose every gate is passed and which nothing holds. Whoever worked the last gate does not release alone. */
export function releaseLot(pen: Pen, id: string): void {
  const lot = pen.lot(id);
  requireFree(lot);
  if (lot.release !== null && lot.release.withdrawn === null) refuse({ code: 'alreadyReleased', certificate: lot.release.certificate });
  requireGatesPassed(lot);
  requireUpstreamFree(pen, lot);
  const quantity = remainingPieces(lot.balance) + lot.balance.boxed;
  if (quantity < 1) refuse({ code: 'notEnoughPieces', wanted: 1, remaining: quantity });
  const signatures = [pen.signature('releaseLot', 'releasedBy'), ...coSignature(pen, lot)];
  const worked = lastGateWorkers(lot);
  if (signatures.every(({ badge }) => worked.includes(badge))) refuse({ code: 'workerReleasesAlone', gate: lot.gates.at(-1)?.name ?? '', badge: pen.stamp.by.badge });
  pen.write(lot.stream, { type: 'lotReleased', certificate: `C-${lot.id}-${lot.releases + 1}`, quantity, signatures });
}

function coSignature(pen: Pen, lot: Lot): Signature[] {
  const { coSigner, by, at } = pen.stamp;
  if (coSigner === null) return [];
  const { badge, name } = coSigner;
  if (badge === by.badge) refuse({ code: 'coSignerCannot', badge, why: 'samePerson' });
  if (!coSigner.roles.includes('releaser')) refuse({ code: 'coSignerCannot', badge, why: 'notReleaser' });
  if (lastGateWorkers(lot).includes(badge) && lastGateWorkers(lot).includes(by.badge)) refuse({ code: 'coSignerCannot', badge, why: 'workedLastGate' });
  return [{ badge, name, role: 'releaser', at, meaning: 'releasedTogetherWith' }];
}

/** Takes a release back: its certificate counts no longer, and no box of the lot leaves. */
export function withdrawRelease(pen: Pen, id: string, reason: string): void {
  const lot = pen.lot(id);
  requireReason('withdrawRelease', reason);
  const { release } = lot;
  if (release === null || release.withdrawn !== null) return refuse({ code: 'notReleased', lot: id, why: release === null ? 'never' : 'withdrawn' });
  pen.write(lot.stream, { type: 'releaseWithdrawn', certificate: release.certificate, reason, signature: pen.signature('withdrawRelease', 'releaseWithdrawnBy') });
}

/** The lot, if it may be packed, labelled and shipped; otherwise the refusal that says why not. */
export function requireReleased(pen: Pen, id: string): Lot {
  const lot = pen.lot(id);
  if (lot.ended !== null) refuse({ code: 'subjectHasEnded', subject: lot.id, how: lot.ended.how });
  if (lot.release === null) refuse({ code: 'notReleased', lot: id, why: 'never' });
  if (lot.release.withdrawn !== null) refuse({ code: 'notReleased', lot: id, why: 'withdrawn' });
  if (standingHolds(lot).length > 0) refuse({ code: 'notReleased', lot: id, why: 'held' });
  requireGatesPassed(lot);
  requireUpstreamFree(pen, lot);
  return lot;
}

function requireGatesPassed(lot: Lot): void {
  const missing = lot.gates.filter((gate) => !isPassed(gate)).map(({ name }) => name);
  if (missing.length > 0) refuse({ code: 'notAllGatesPassed', missing });
}

/** Refuses while boxes of the lot stand packed here: what is sorted, reworked or scrapped must lie loose. */
export function requireBoxesVoided(lot: Lot): void {
  const boxes = standingBoxes(lot).length;
  if (boxes > 0) refuse({ code: 'boxesToVoid', lot: lot.id, boxes });
}
