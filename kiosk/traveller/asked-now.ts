import { isLookDue, isPassed, isReleased, isWhole, nextGate, nextLook, remainingPieces, standingHolds } from '../../shared/traveller/index.ts';
import type { CharacteristicWork, GateRecord, Hold, Subject } from '../../shared/traveller/index.ts';

/** The one thing a traveller asks for now. */
export type AskedNow =
  | { readonly what: 'ended'; readonly how: 'scrapped' | 'returned' | 'reprocessed' }
  | { readonly what: 'decide'; readonly hold: Hold }
  | { readonly what: 'sort'; readonly gate: GateRecord }
  | { readonly what: 'work'; readonly gate: GateRecord; readonly work: CharacteristicWork }
  | { readonly what: 'open'; readonly gate: GateRecord }
  /** The next gate is worked on the charge or batch, not here. */
  | { readonly what: 'elsewhere'; readonly gate: GateRecord; readonly charge: string | null }
  | { readonly what: 'releasePowder' }
  | { readonly what: 'release' }
  | { readonly what: 'pack' }
  | { readonly what: 'nothing' };

/** @param chosen id of the characteristic a person would rather work on; followed while that is possible */
export function askedNow(subject: Subject, chosen: string | null): AskedNow {
  if (subject.ended !== null) return { what: 'ended', how: subject.ended.how };
  const [hold] = standingHolds(subject);
  if (hold !== undefined) return { what: 'decide', hold };
  const gate = nextGate(subject);
  if (gate === null) return afterLastGate(subject);
  switch (gate.status) {
    case 'sorting': return { what: 'sort', gate };
    case 'open': {
      const work = workNow(gate, chosen);
      return work === null ? { what: 'nothing' } : { what: 'work', gate, work };
    }
    case 'waiting': case 'rejected': case 'accepted': case 'conceded': {
      if (gate.workedOn === subject.kind) return { what: 'open', gate };
      const charge = subject.kind === 'lot' ? subject.charges.find((link) => link.gate === gate.id && link.current)?.charge ?? null : null;
      return { what: 'elsewhere', gate, charge };
    }
  }
}

function afterLastGate(subject: Subject): AskedNow {
  if (subject.kind === 'batch') return { what: subject.released === null ? 'releasePowder' : 'nothing' };
  if (subject.kind !== 'lot') return { what: 'nothing' };
  if (!isReleased(subject)) return { what: 'release' };
  return { what: remainingPieces(subject.balance) > 0 ? 'pack' : 'nothing' };
}

/** What of an open gate comes next: a look that is due, then the first characteristic not whole. */
export function workNow(gate: GateRecord, chosen: string | null): CharacteristicWork | null {
  const left = gate.work.filter((work) => !isWhole(work, gate.lotSize) && isWorkable(gate, work) && !isReadElsewhere(work));
  const dueLook = left.find(({ demand }) => demand.basis.by === 'interval');
  return left.find(({ demand }) => demand.characteristic.id === chosen) ?? dueLook ?? left[0] ?? null;
}

/** True for a layer of a crater: it is read where its crater is. */
export function isReadElsewhere({ demand: { characteristic } }: CharacteristicWork): boolean {
  return characteristic.kind === 'measured' && characteristic.entry.how === 'craterLayer';
}

/** False for a look that is not due yet: the next pieces are weighed first. */
function isWorkable(gate: GateRecord, work: CharacteristicWork): boolean {
  if (work.demand.basis.by !== 'interval') return true;
  const due = nextLook(work, gate.lotSize);
  return due === null || isLookDue(due);
}

/** The first place of the sample that has no reading yet; null when all have one. */
export function nextOrdinal(work: CharacteristicWork): number | null {
  const taken = new Set(work.readings.map(({ ordinal }) => ordinal));
  for (let ordinal = 1; ordinal <= work.demand.n; ordinal += 1) if (!taken.has(ordinal)) return ordinal;
  return null;
}

/** The gate whose verdict is the newest on the traveller, with its index; null before the first. */
export function lastJudged(subject: Subject): GateRecord | null {
  const judged = subject.gates.filter(({ verdicts }) => verdicts.length > 0);
  return judged.reduce<GateRecord | null>((newest, gate) => (newest === null || (gate.verdicts.at(-1)?.at ?? '') >= (newest.verdicts.at(-1)?.at ?? '') ? gate : newest), null);
}

/** How many of the route's gates let the subject pass. */
export function passedGates(subject: Subject): number {
  return subject.gates.filter(isPassed).length;
}
