import type { GateRecord, Lot, Subject } from '../../shared/traveller/index.ts';
import { isPassed, nextGate, remainingPieces, standingHolds } from '../../shared/traveller/index.ts';
import type { BenchRow } from '../../shared/wire/views.ts';

export type Standing = BenchRow['standing'];

/** The benches of work that no plan's gate names. */
export const DESK_BENCHES = { release: 'Release desk', packing: 'Packing', quality: 'Quality desk', office: 'Office' } as const;

/** Where a subject stands in the lists, and which bench it waits at. */
export interface Place {
  readonly standing: Standing;
  readonly gate: GateRecord | null;
  readonly bench: string;
  /** The kind of charge a lot waits to be put into; null where it waits for none, or stands in one already. */
  readonly waitsFor: 'furnace' | 'coating' | null;
  /** On the release desk: every gate passed, or only the last still to be worked, and not yet released. */
  readonly nearRelease: boolean;
}

/** Places a subject. A rejected gate without a standing hold is as stopped as one with it. */
export function placeOf(subject: Subject): Place {
  const gate = nextGate(subject);
  const isHeld = standingHolds(subject).length > 0;
  const standing = subject.ended !== null ? 'done' : isHeld ? 'held' : gate === null ? afterTheRoute(subject) : atGate(subject, gate);
  const waitsFor = standing === 'inCharge' && subject.kind === 'lot' && gate !== null && (gate.workedOn === 'furnace' || gate.workedOn === 'coating')
    && !subject.charges.some((link) => link.gate === gate.id && link.current) ? gate.workedOn : null;
  return { standing, gate, bench: benchOf(subject, standing, gate), waitsFor, nearRelease: subject.kind === 'lot' && isNearRelease(subject, standing) };
}

function atGate(subject: Subject, gate: GateRecord): Standing {
  switch (gate.status) {
    case 'waiting': return gate.workedOn === subject.kind ? 'due' : 'inCharge';
    case 'open': return 'open';
    case 'sorting': return 'sorting';
    case 'rejected': return 'held';
    case 'accepted': case 'conceded': return 'done';
  }
}

function afterTheRoute(subject: Subject): Standing {
  switch (subject.kind) {
    case 'batch': return subject.released === null ? 'toRelease' : 'done';
    case 'furnace': case 'coating': return 'done';
    case 'lot':
      if (subject.release === null || subject.release.withdrawn !== null) return 'toRelease';
      return remainingPieces(subject.balance) > 0 || subject.boxes.some(({ voided, shipped }) => voided === null && shipped === null) ? 'toPack' : 'done';
  }
}

function benchOf(subject: Subject, standing: Standing, gate: GateRecord | null): string {
  if (gate !== null) return gate.bench;
  if (subject.kind !== 'lot') return subject.gates.at(-1)?.bench ?? '';
  return standing === 'toPack' ? DESK_BENCHES.packing : standing === 'done' ? '' : DESK_BENCHES.release;
}

function isNearRelease(lot: Lot, standing: Standing): boolean {
  if (standing === 'done' || standing === 'toPack') return false;
  const left = lot.gates.filter((gate) => !isPassed(gate));
  return left.length === 0 || (left.length === 1 && left[0] === lot.gates.at(-1));
}

/** Pieces still loose in a lot, barrels of a batch, pieces of a charge's members. */
export function piecesOf(subject: Subject): number {
  switch (subject.kind) {
    case 'lot': return remainingPieces(subject.balance);
    case 'batch': return subject.barrels;
    case 'furnace': case 'coating': return subject.members.reduce((sum, { pieces, left }) => (left === true ? sum : sum + pieces), 0);
  }
}
