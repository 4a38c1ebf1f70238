import type { Charge } from './charge.ts';
import { nextHold } from '../gate/give-verdict.ts';
import type { Verdict } from '../gate/verdict.ts';
import { isPassed, verdictOf } from '../gate/work.ts';
import type { Pen } from '../pen.ts';
import { streamName } from '../stream.ts';

/** The verdict of all the charge's gates together; null while one that has not failed is still to be worked. */
export function verdictOfAll(charge: Pick<Charge, 'gates'>): Verdict | null {
  const given = charge.gates.flatMap((gate) => verdictOf(gate)?.verdict ?? []);
  const rejected = charge.gates.some(({ status }) => status === 'rejected');
  if (!rejected && !charge.gates.every(isPassed)) return null;
  return {
    accepted: !rejected, attempt: Math.max(...given.map(({ attempt }) => attempt)), original: given.every(({ original }) => original),
    results: given.flatMap(({ results }) => results), workers: [...new Set(given.flatMap(({ workers }) => workers))].sort(),
  };
}

/** Writes a charge's verdict to the traveller of every member that is still in it, and holds them when it is a rejection. Other subjects: nothing. */
export function standForMembers(pen: Pen, stream: string, revised: boolean): void {
  const charge = pen.subject(stream);
  if (charge.kind !== 'furnace' && charge.kind !== 'coating') return;
  const verdict = verdictOfAll(charge);
  if (verdict === null) return;
  for (const member of charge.members) {
    const lotStream = streamName('lot', member.lot);
    const lot = pen.lot(member.lot);
    const link = lot.charges.find((each) => each.charge === stream && each.current);
    if (link === undefined || lot.ended !== null) continue;
    pen.write(lotStream, { type: 'gateVerdictInherited', gate: link.gate, from: stream, verdict, revised });
    const gate = pen.lot(member.lot).gates.find(({ id }) => id === link.gate);
    const held = lot.holds.some(({ cause, lifted }) => lifted === null && cause.by === 'charge' && cause.charge === stream);
    if (gate?.status === 'rejected' && !held) pen.write(lotStream, { type: 'held', hold: nextHold(pen.lot(member.lot)), cause: { by: 'charge', gate: link.gate, charge: stream }, reason: `${gate.name} (${charge.id})` });
  }
}
