import { remainingPieces } from '../piece-balance/piece-balance.ts';
import type { Disposition, Hold, SomeMembers } from '../gate/hold.ts';
import { nextHold } from '../gate/give-verdict.ts';
import { isOfVerdict } from '../gate/hold.ts';
import { standingBoxes } from '../lot/lot.ts';
import type { Pen } from '../pen.ts';
import type { Batch } from '../powder-batch/batch.ts';
import { lotsOfBlends, takePartsConcessions } from '../powder-batch/parts-concessions.ts';
import { blendsOf } from '../powder-batch/lineage.ts';
import type { Signature } from '../stamp.ts';
import { restingOn } from './resting-on.ts';
import { standForMembers } from './stand-for-members.ts';

/**
 * Carries what was decided about a charge's or batch's verdict to every lot that it still holds. A cleared hold leaves the lots with the
 * present verdict. While another gate of it stands rejected the lots stay held, except where the whole charge is done again.
 */
export function disposeMembers(pen: Pen, stream: string, { cause }: Hold, disposition: Disposition, signature: Signature): void {
  const source = pen.subject(stream);
  if (source.kind === 'lot' || !isOfVerdict(cause)) return;
  const some = disposition.kind === 'reSinter' || disposition.kind === 'recoat' ? disposition.some : undefined;
  const again = (disposition.kind === 'reSinter' || disposition.kind === 'recoat') && some === undefined;
  const others = source.gates.some(({ status }) => status === 'rejected');
  if (!again && some === undefined && others) return;
  for (const { lot, gate } of restingOn(pen, source)) {
    const hold = lot.holds.find((each) => each.lifted === null && each.cause.by === 'charge' && each.cause.charge === stream && each.cause.gate === gate);
    if (hold === undefined) continue;
    const leaves = some === undefined || some.lots.includes(lot.charges.findLast(({ charge }) => charge === stream)?.member ?? lot.id);
    // Those that stay go by what was decided about the rest; while another gate of the charge stands rejected they stay held.
    if (!leaves && others) continue;
    const own: Disposition = leaves ? disposition : restOf(some);
    switch (own.kind) {
      case 'concession': case 'retest': case 'rework': case 'reSinter': case 'recoat':
        pen.write(lot.stream, { type: 'gateReopened', gate, from: stream, disposition: own.kind, statement: own.kind === 'concession' ? own.statement : null, hold: hold.id, signature });
        break;
      case 'clear':
        pen.write(lot.stream, { type: 'disposed', hold: hold.id, gate, disposition: own, reason: source.id, signature });
        break;
      case 'sort': case 'regrade': case 'scrap': case 'return':
        break;
    }
  }
  if (disposition.kind === 'concession' || (some?.rest.by === 'concession' && !others)) standForMembers(pen, stream, true);
  if (source.kind === 'batch' && disposition.kind === 'concession') for (const lot of lotsOfBlends(pen, source)) takePartsConcessions(pen, lot);
}

/** What is decided about the members that stay in the charge. */
function restOf({ rest }: SomeMembers): Disposition {
  return rest.by === 'retest' ? { kind: 'retest' } : { kind: 'concession', statement: rest.statement };
}

/** Powder that is scrapped or returned puts every blend it went into, and every lot made of it or them and still here, on hold: an engineer decides about each. */
export function holdMadeOf(pen: Pen, batch: Batch, reason: string): void {
  holdLots(pen, batch, reason);
  for (const blend of blendsOf(pen, batch)) {
    if (blend.ended === null) pen.write(blend.stream, { type: 'held', hold: nextHold(blend), cause: { by: 'person' }, reason });
    holdLots(pen, blend, reason);
  }
}

function holdLots(pen: Pen, batch: Batch, reason: string): void {
  for (const id of batch.lots) {
    const lot = pen.lot(id);
    const isHere = remainingPieces(lot.balance) > 0 || standingBoxes(lot).length > 0;
    if (lot.ended === null && isHere) pen.write(lot.stream, { type: 'held', hold: nextHold(lot), cause: { by: 'person' }, reason });
  }
}
