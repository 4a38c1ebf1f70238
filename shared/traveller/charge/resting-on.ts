import type { Subject } from '../known.ts';
import type { Lot } from '../lot/lot.ts';
import { verdictOf } from '../gate/work.ts';
import type { Pen } from '../pen.ts';

/** A gate of a lot that takes its verdict from another traveller. */
export interface RestingGate { readonly lot: Lot; readonly gate: string }

/**
 * The gates that rest on this subject's verdict, of lots that have not left the route: those of the lots made from a batch, those of the lots
 * that stand in a charge, parts split from them included, and those that a part took along when it was split from a lot.
 */
export function restingOn(pen: Pen, subject: Subject): readonly RestingGate[] {
  const lots = lotsBehind(pen, subject).filter(({ ended }) => ended === null);
  switch (subject.kind) {
    case 'batch': return lots.flatMap((lot) => lot.gates.filter(({ workedOn }) => workedOn === 'batch').map(({ id }) => ({ lot, gate: id })));
    case 'furnace': case 'coating':
      return lots.flatMap((lot) => lot.charges.filter(({ charge, current }) => current && charge === subject.stream).map(({ gate }) => ({ lot, gate })));
    case 'lot':
      return lots.flatMap((lot) => lot.gates.filter((gate) => gate.status !== 'waiting' && verdictOf(gate)?.from === subject.stream).map(({ id }) => ({ lot, gate: id })));
  }
}

function lotsBehind(pen: Pen, subject: Subject): readonly Lot[] {
  switch (subject.kind) {
    case 'batch': return subject.lots.map((id) => pen.lot(id));
    case 'furnace': case 'coating': return withParts(pen, subject.members.map(({ lot }) => lot));
    case 'lot': return withParts(pen, subject.splitInto);
  }
}

/** These lots and every part split from them, each once. */
function withParts(pen: Pen, ids: readonly string[]): readonly Lot[] {
  const found = new Map<string, Lot>();
  const toSee = [...ids];
  for (let id = toSee.shift(); id !== undefined; id = toSee.shift()) {
    if (found.has(id)) continue;
    const lot = pen.lot(id);
    found.set(id, lot);
    toSee.push(...lot.splitInto);
  }
  return [...found.values()];
}
