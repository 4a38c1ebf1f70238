import type { Charge } from './charge.ts';
import type { Nearness } from '../equipment/near.ts';
import type { Lot } from '../lot/lot.ts';
import type { RestingGate } from './resting-on.ts';
import { restingOn } from './resting-on.ts';
import { nextHold, standsHeldAt } from '../gate/give-verdict.ts';
import type { Verdict } from '../gate/verdict.ts';
import { isPassed, verdictOf } from '../gate/work.ts';
import type { Pen } from '../pen.ts';
import { takePartsConcessions } from '../powder-batch/parts-concessions.ts';

/** The verdict of all the gates of a charge or batch together; null while one that has not failed is still to be worked. */
export function verdictOfAll(charge: Pick<Charge, 'gates'>): Verdict | null {
  const given = charge.gates.flatMap((gate) => verdictOf(gate)?.verdict ?? []);
  const rejected = charge.gates.some(({ status }) => status === 'rejected');
  if (!rejected && !charge.gates.every(isPassed)) return null;
  const failed = given.flatMap(({ failedPositions = [] }) => failedPositions);
  return {
    accepted: !rejected, attempt: Math.max(...given.map(({ attempt }) => attempt)), original: given.every(({ original }) => original),
    results: given.flatMap(({ results }) => results), workers: [...new Set(given.flatMap(({ workers }) => workers))].sort(), ...(failed.length === 0 ? {} : { failedPositions: failed }),
  };
}

/** Writes the verdict of a charge or batch to the traveller of every lot that rests on it, and holds the lot when it is a rejection. A lot's own verdict: nothing. */
export function standForMembers(pen: Pen, stream: string, revised: boolean): void {
  const subject = pen.subject(stream);
  const verdict = subject.kind === 'lot' ? null : verdictOfAll(subject);
  if (verdict === null) return;
  // What fails beyond a concession holds the subject again, and those that rest on it.
  const isHeld = subject.gates.some(({ id, status }) => status === 'conceded' && standsHeldAt(subject, id));
  for (const resting of restingOn(pen, subject)) inherit(pen, subject.id, stream, resting, verdict, revised, isHeld);
  // A verdict on the blend does not undo what was conceded on a part of it.
  if (subject.kind === 'batch' && subject.blendedFrom.length > 0) for (const { lot } of restingOn(pen, subject)) takePartsConcessions(pen, lot);
}

/** Carries a lot's revised verdict on to the parts that took the earlier one along when they were split off. */
export function standForParts(pen: Pen, stream: string, gateId: string): void {
  const lot = pen.subject(stream);
  const verdict = lot.gates.find(({ id }) => id === gateId)?.verdicts.at(-1)?.verdict;
  if (lot.kind !== 'lot' || verdict === undefined) return;
  for (const resting of restingOn(pen, lot)) if (resting.gate === gateId) inherit(pen, lot.id, stream, resting, verdict, true, standsHeldAt(lot, gateId));
}

function inherit(pen: Pen, from: string, fromStream: string, { lot, gate: gateId }: RestingGate, given: Verdict, revised: boolean, isHeld: boolean): void {
  const verdict = asOwn(lot, gateId, fromStream, given, revised);
  pen.write(lot.stream, { type: 'gateVerdictInherited', gate: gateId, from: fromStream, verdict, revised });
  const now = pen.lot(lot.id);
  const gate = now.gates.find(({ id }) => id === gateId);
  const stops = gate?.status === 'rejected' || (gate?.status === 'conceded' && isHeld);
  if (gate === undefined || !stops || standsHeldAt(now, gateId)) return;
  const near = nearestOf(lot, fromStream, verdict);
  // A part holds the verdict as its own: it may be sorted or reworked apart from the lot it came from. What failed in a charge may not.
  const cause = gate.workedOn === 'lot' ? { by: 'verdict' as const, gate: gateId } : { by: 'charge' as const, gate: gateId, charge: fromStream, ...(near === null ? {} : { near }) };
  pen.write(lot.stream, { type: 'held', hold: nextHold(now), cause, reason: `${gate.name} (${from})` });
}

/** The verdict as the lot's own: in a charge it joined again it is a re-inspection, and its attempts count on. */
function asOwn(lot: Lot, gateId: string, fromStream: string, verdict: Verdict, revised: boolean): Verdict {
  const link = lot.charges.find(({ charge, gate, current }) => current && charge === fromStream && gate === gateId);
  if (link === undefined) return verdict;
  const before = revised ? lot.gates.find(({ id }) => id === gateId)?.verdicts.findLast(({ from }) => from === fromStream) : undefined;
  return { ...verdict, attempt: verdict.attempt + (link.again?.earlierAttempts ?? 0), original: before?.verdict.original ?? (verdict.original && link.again === null) };
}

/** The failed positions a lot lay near; null where no position failed. */
export function nearestOf(lot: Pick<Lot, 'charges'>, charge: string, { failedPositions = [] }: Verdict): readonly { readonly position: string; readonly how: Nearness }[] | null {
  if (failedPositions.length === 0) return null;
  const member = lot.charges.findLast((link) => link.charge === charge)?.member;
  return failedPositions.flatMap(({ position, near }) => near.flatMap(({ lot: each, how }) => (each === member ? [{ position, how }] : [])));
}
