import { remainingPieces } from '../piece-balance/piece-balance.ts';
import type { Subject } from '../known.ts';
import { standingHolds } from '../lot/lot.ts';
import { isMachine } from '../machine.ts';
import type { Pen } from '../pen.ts';
import { countForSwitching, recountForSwitching } from '../switching-state/count-lot.ts';
import { countForSkipping, recountForSkipping } from '../skip-lot/passed-over.ts';
import { carryFactors } from '../powder-batch/carry-factors.ts';
import { failedPositions } from '../charge/failed-positions.ts';
import { standForMembers, standForParts } from '../charge/stand-for-members.ts';
import { addChartPoints, reviseChartPoints } from '../chart/add-points.ts';
import { gateOf } from './decide-gate.ts';
import { isOfVerdict } from './hold.ts';
import { judgeGate } from './judge.ts';
import type { Verdict } from './verdict.ts';
import type { GateRecord } from './work.ts';

/** Gives the gate's verdict when the last entry asked for is in; otherwise does nothing. All that follows from it goes into the same commit. */
export function giveVerdict(pen: Pen, stream: string, gateId: string): void {
  const subject = pen.subject(stream);
  const gate = gateOf(subject, gateId);
  const verdict = gate.status === 'open' ? judgeGate(gate) : null;
  if (verdict === null) return;
  const whole = withPositions(subject, gate, { ...verdict, workers: withPresent(verdict.workers, pen) });
  pen.write(stream, { type: 'verdictGiven', gate: gateId, verdict: whole });
  bookPieces(pen, subject, gateId, whole);
  if (!whole.accepted) holdForVerdict(pen, stream, gateId, gate.name);
  countForSwitching(pen, stream, gateId);
  if (subject.kind === 'lot') countForSkipping(pen, subject.product.id, subject.id, gate, whole);
  standForMembers(pen, stream, false);
  addChartPoints(pen, stream, gate, whole);
  carryOn(pen, stream);
}

/** New numbers of released powder go on to the press targets of what is made of it. */
function carryOn(pen: Pen, stream: string): void {
  const subject = pen.subject(stream);
  if (subject.kind === 'batch') carryFactors(pen, subject);
}

/** Judges anew after a correction. A verdict that turns to rejected holds the subject; one that turns to accepted leaves the hold for an engineer to clear. */
export function reviseVerdict(pen: Pen, stream: string, gateId: string, why: string): void {
  const gate = gateOf(pen.subject(stream), gateId);
  const before = gate.verdicts.at(-1);
  if (gate.status === 'open' || before === undefined || before.verdict.attempt !== gate.attempt) return;
  const judged = judgeGate(gate);
  if (judged === null) return;
  // The same inspection as before: a decision on the hold may have made the next one a re-inspection, but not this one.
  const verdict = withPositions(pen.subject(stream), gate, { ...judged, original: before.verdict.original, workers: withPresent([...before.verdict.workers, ...judged.workers], pen) });
  pen.write(stream, { type: 'verdictRevised', gate: gateId, verdict, why });
  const isNew = gate.status === 'accepted' || (gate.status === 'conceded' && failsAnew(before.verdict, verdict));
  if (!verdict.accepted && isNew && !standsHeldAt(pen.subject(stream), gateId)) holdForVerdict(pen, stream, gateId, gate.name);
  if (verdict.original) recountForSwitching(pen, stream, gateId);
  const subject = pen.subject(stream);
  if (subject.kind === 'lot') recountForSkipping(pen, subject.id, gate, verdict);
  standForMembers(pen, stream, true);
  standForParts(pen, stream, gateId);
  reviseChartPoints(pen, stream, gate, verdict, why);
  carryOn(pen, stream);
}

/** True where something fails that did not when this was conceded: a concession is given for what was known then. */
function failsAnew(before: Verdict, now: Verdict): boolean {
  return now.results.some(({ characteristic, accepted }) => !accepted && before.results.some((each) => each.characteristic === characteristic && each.accepted));
}

/** The verdict of a charge names the positions that failed and what lay near them. */
function withPositions(subject: Subject, gate: GateRecord, verdict: Verdict): Verdict {
  if (subject.kind === 'lot' || subject.kind === 'batch' || verdict.accepted) return verdict;
  const failed = failedPositions(subject, gate, verdict.results);
  return failed.length === 0 ? verdict : { ...verdict, failedPositions: failed };
}

function withPresent(workers: readonly string[], pen: Pen): string[] {
  const { badge } = pen.stamp.by;
  return [...new Set([...workers, ...(isMachine(badge) ? [] : [badge])])].sort();
}

function holdForVerdict(pen: Pen, stream: string, gateId: string, gateName: string): void {
  pen.write(stream, { type: 'held', hold: nextHold(pen.subject(stream)), cause: { by: 'verdict', gate: gateId }, reason: gateName });
}

/** Number of the next hold of this subject, unique on its thread. */
export function nextHold(subject: Subject): string {
  return `${subject.id}-H${subject.holds.length + 1}`;
}

/** True while a hold of this gate's verdict stands. */
export function standsHeldAt(subject: Subject, gateId: string): boolean {
  return standingHolds(subject).some(({ cause }) => isOfVerdict(cause) && cause.gate === gateId);
}

/** Pieces used up by destructive tests, and pieces ejected by weight, leave the lot with the verdict. */
function bookPieces(pen: Pen, subject: Subject, gateId: string, verdict: Verdict): void {
  if (subject.kind !== 'lot') return;
  const gate = gateOf(pen.subject(subject.stream), gateId);
  // Of several samples those never taken are not used up.
  const destructive = Math.max(0, ...gate.work.filter(({ demand }) => demand.characteristic.destructive).map(({ demand, looked }) => (demand.basis.by === 'attributes' ? looked ?? 0 : demand.n)));
  const ejected = verdict.results.reduce((sum, { detail }) => sum + (detail.by === 'everyPiece' ? detail.outside : 0), 0);
  const left = remainingPieces(subject.balance);
  const scrapped = Math.min(ejected, left);
  const destroyed = Math.min(destructive, left - scrapped);
  if (scrapped > 0) pen.write(subject.stream, { type: 'piecesScrapped', pieces: scrapped, gate: gateId, reason: 'ejected' });
  if (destroyed > 0) pen.write(subject.stream, { type: 'piecesDestroyed', pieces: destroyed, gate: gateId, reason: 'tested' });
}
