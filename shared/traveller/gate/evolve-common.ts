import type { Slip } from '../slip.ts';
import type { Concession, CorrectionNote, SubjectCommon } from '../lot/lot.ts';
import { evolveGates, withGate } from './evolve-gates.ts';
import { evolveHolds } from './evolve-holds.ts';
import type { Disposition } from './hold.ts';
import type { CommonSlip, GateSlip } from './slips.ts';
import type { GateRecord } from './work.ts';

const GATE_TYPES = ['gateOpened', 'readingTaken', 'weightsTaken', 'driftAnnounced', 'driftEnded', 'lookFellDue', 'lookMissed', 'findingRecorded', 'findingWithdrawn', 'lookTaken', 'sampleCompleted', 'readingCorrected', 'verdictGiven', 'verdictRevised'] as const satisfies readonly GateSlip['type'][];
const COMMON_TYPES = ['held', 'disposed', 'noteAdded', 'chartSignalled'] as const satisfies readonly CommonSlip['type'][];
/** True for a slip of the work at a gate, which lots, batches and charges share. */
export function isGateSlip(slip: Slip): slip is Slip<GateSlip> {
  return GATE_TYPES.some((type) => type === slip.body.type);
}
/** True for holds, what was decided about them, and notes, which lots, batches and charges share. */
export function isCommonSlip(slip: Slip): slip is Slip<CommonSlip> {
  return COMMON_TYPES.some((type) => type === slip.body.type);
}

/** What every subject keeps with each slip: how far its thread has come. */
export function moved<S extends SubjectCommon>(subject: S, slip: Slip): S {
  return { ...subject, version: slip.version, lastAt: slip.at };
}

/** Folds gate work into any subject, corrections noted for the certificate. */
export function evolveGateWork<S extends SubjectCommon>(subject: S, slip: Slip<GateSlip>): S {
  return { ...moved(subject, slip), gates: evolveGates(subject.gates, slip), corrections: [...subject.corrections, ...correctionOf(slip)] };
}

function correctionOf({ body, at, by }: Slip<GateSlip>): CorrectionNote[] {
  if (body.type === 'readingCorrected') return [{ gate: body.gate, characteristic: body.characteristic, ordinal: body.ordinal, from: String(body.from), to: String(body.to), reason: body.reason, at, by }];
  if (body.type === 'findingWithdrawn') return [{ gate: body.gate, characteristic: body.characteristic, ordinal: null, from: `#${body.finding}`, to: '', reason: body.reason, at, by }];
  return [];
}

/** Folds holds, dispositions and notes into any subject that keeps concessions. What a disposition does to the gate is the same everywhere. */
export function evolveCommon<S extends SubjectCommon & { readonly concessions: readonly Concession[] }>(subject: S, slip: Slip<CommonSlip>): S {
  const next = { ...moved(subject, slip), holds: evolveHolds(subject.holds, slip) };
  const { body } = slip;
  if (body.type !== 'disposed') return next;
  const { disposition } = body;
  const gates = body.gate === null ? next.gates : withGate(next.gates, body.gate, (gate) => afterDisposition(gate, disposition));
  const statement = concededBy(disposition);
  if (statement === null) return { ...next, gates };
  return { ...next, gates, concessions: [...next.concessions, { gate: body.gate, statement, signature: body.signature, from: null }] };
}

/** What is accepted as it is, in words: of the subject, or of the members that stay in a charge; null where nothing is. */
function concededBy(disposition: Disposition): string | null {
  if (disposition.kind === 'concession') return disposition.statement;
  const rest = disposition.kind === 'reSinter' || disposition.kind === 'recoat' ? disposition.some?.rest : undefined;
  return rest?.by === 'concession' ? rest.statement : null;
}

function afterDisposition(gate: GateRecord, disposition: Disposition): GateRecord {
  if (concededBy(disposition) !== null) return { ...gate, status: 'conceded' };
  switch (disposition.kind) {
    case 'sort': return { ...gate, status: 'sorting' };
    case 'rework': case 'retest': case 'reSinter': case 'recoat': case 'regrade': return { ...gate, status: 'waiting', original: false };
    case 'concession': case 'scrap': case 'return': case 'clear': return gate;
  }
}
