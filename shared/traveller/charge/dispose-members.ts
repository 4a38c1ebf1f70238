import type { Disposition } from '../gate/hold.ts';
import type { Pen } from '../pen.ts';
import type { Signature } from '../stamp.ts';
import { streamName } from '../stream.ts';
import { standForMembers } from './stand-for-members.ts';

/** Carries what was decided about a charge to every member that it still holds. A cleared hold leaves the members with the charge's present verdict. */
export function disposeMembers(pen: Pen, stream: string, disposition: Disposition, signature: Signature): void {
  const charge = pen.charge(stream);
  for (const { lot: id } of charge.members) {
    const lot = pen.lot(id);
    const hold = lot.holds.find(({ cause, lifted }) => lifted === null && cause.by === 'charge' && cause.charge === stream);
    if (hold === undefined || hold.cause.by !== 'charge' || lot.ended !== null) continue;
    const lotStream = streamName('lot', id);
    switch (disposition.kind) {
      case 'concession': case 'retest': case 'rework': case 'reSinter': case 'recoat':
        pen.write(lotStream, { type: 'gateReopened', gate: hold.cause.gate, from: stream, disposition: disposition.kind, statement: disposition.kind === 'concession' ? disposition.statement : null, hold: hold.id, signature });
        break;
      case 'clear':
        pen.write(lotStream, { type: 'disposed', hold: hold.id, gate: hold.cause.gate, disposition, reason: charge.id, signature });
        break;
      case 'sort': case 'regrade': case 'scrap': case 'return':
        break;
    }
  }
  if (disposition.kind === 'concession') standForMembers(pen, stream, true);
}
