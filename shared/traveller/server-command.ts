import { neverReached } from '../ground/never-reached.ts';
import { callLooks } from './gate/call-looks.ts';
import { gateOf, requireUnderWay } from './gate/decide-gate.ts';
import { giveVerdict } from './gate/give-verdict.ts';
import { weigh } from './gate/weigh.ts';
import { SERVER, pressGiver } from './machine.ts';
import type { Pen } from './pen.ts';
import { refuse } from './pen.ts';
import { pressOf } from './press/decide.ts';
import { lastSeqOf } from './press/last-seq.ts';
import type { Stamp } from './stamp.ts';
import { streamName } from './stream.ts';

/** A block of weights that a press's balance has sent: `fromSeq` in its own count, after `missing` that it gave up for lost. */
export interface TakeFeed { readonly type: 'takeFeed'; readonly press: string; readonly fromSeq: number; readonly missing: number; readonly values: readonly number[] }
/** The clock has moved on: looks of this gate may have fallen due or be missed. */
export interface CallLooks { readonly type: 'callLooks'; readonly subject: string; readonly gate: string }
/** What the server itself gives, and no person can. */
export type ServerCommand = TakeFeed | CallLooks;

/** Who gives it, as it stands on the slips. */
export function machineOf(command: ServerCommand): Stamp['by'] {
  const badge = command.type === 'takeFeed' ? pressGiver(command.press) : SERVER;
  return { badge, name: badge, roles: [] };
}

/** Decides what the server gives. */
export function decideForServer(pen: Pen, command: ServerCommand): void {
  switch (command.type) {
    case 'takeFeed': return takeFeed(pen, command);
    case 'callLooks': {
      const gate = gateOf(pen.subject(command.subject), command.gate);
      if (gate.status !== 'open') return;
      callLooks(pen, command.subject, command.gate, pen.subject(command.subject).kind === 'lot' && isFed(pen, command.subject));
      return giveVerdict(pen, command.subject, command.gate);
    }
    default: return neverReached(command);
  }
}

function isFed(pen: Pen, stream: string): boolean {
  const subject = pen.subject(stream);
  return subject.kind === 'lot' && (subject.feeds?.length ?? 0) > 0;
}

/** Takes a block from a press for the lot it presses. A balance that cannot count, a gap nobody owned up to, and a lot that is weighed out are refused: the sender keeps the weights. */
function takeFeed(pen: Pen, { press: id, fromSeq, missing, values }: TakeFeed): void {
  const press = pressOf(pen, id);
  const running = press.running ?? refuse({ code: 'pressStands', press: press.card.name });
  const lot = pen.lot(running.lot);
  if (lot.ended !== null) refuse({ code: 'subjectHasEnded', subject: lot.id, how: lot.ended.how });
  const gate = gateOf(lot, running.gate);
  requireUnderWay(lot, gate);
  const last = lastSeqOf(press, lot);
  if (last !== null && fromSeq !== last + missing + 1) refuse({ code: 'feedGap', press: press.card.name, expected: last + 1, got: fromSeq });
  const work = gate.work.find(({ demand }) => demand.characteristic.id === running.characteristic) ?? refuse({ code: 'notFound', what: 'characteristic', id: running.characteristic });
  const fromPiece = (work.weights?.running.n ?? 0) + 1;
  if (fromPiece > gate.lotSize) refuse({ code: 'weightsOutOfOrder', expectedFrom: fromPiece, gotFrom: fromPiece, lotSize: gate.lotSize });
  const gauge = pen.find(streamName('gauge', press.card.balance), 'gauge', 'gauge');
  weigh(pen, lot, gate, work, { fromPiece, values, gauge, feed: { press: id, fromSeq, missing, ...(press.count === 1 ? {} : { count: press.count }) } });
  giveVerdict(pen, lot.stream, gate.id);
}
