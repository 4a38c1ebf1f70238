import { gateOf } from '../gate/decide-gate.ts';
import { nextGate } from '../lot/lot.ts';
import type { Pen } from '../pen.ts';
import { refuse, requireFitId, requireReason } from '../pen.ts';
import { streamName } from '../stream.ts';
import { requireFree } from '../upstream.ts';
import { lastSeqOf } from './last-seq.ts';
import type { PressCommand, PressState } from './slips.ts';

/** Registers and changes presses, and says which lot each presses now. */
export function decidePress(pen: Pen, command: PressCommand): void {
  pen.requireRole(command.type);
  switch (command.type) {
    case 'registerPress': {
      requireFitId('press', command.press.id);
      const stream = streamName('press', command.press.id);
      if (pen.state(stream) !== null) refuse({ code: 'alreadyThere', what: 'press', id: command.press.id });
      pen.find(streamName('gauge', command.press.balance), 'gauge', 'gauge');
      return pen.write(stream, { type: 'pressRegistered', press: command.press });
    }
    case 'changePress': return changePress(pen, command);
    case 'setPress': return setPress(pen, pressOf(pen, command.press), command.lot);
  }
}

/** Another balance has a count of its own: were its first numbers held against those of the balance before, they would pass for repeats and be lost. */
function changePress(pen: Pen, { press, reason, countsAnew = false, type }: Extract<PressCommand, { type: 'changePress' }>): void {
  requireReason(type, reason);
  pen.find(streamName('gauge', press.balance), 'gauge', 'gauge');
  const { stream, card, count } = pressOf(pen, press.id);
  const anew = countsAnew || card.balance !== press.balance;
  if (!anew && card.name === press.name && card.bench === press.bench) refuse({ code: 'nothingChanged', what: card.name });
  pen.write(stream, { type: 'pressChanged', press, reason, ...(anew ? { count: count + 1 } : {}) });
}

/** A press by its id. */
export function pressOf(pen: Pen, id: string): PressState {
  return pen.find(streamName('press', id), 'press', 'press');
}

/** Ties the feed to a lot whose open gate weighs every piece; the number reached under the lot before is written down, so that no weight counts twice. */
function setPress(pen: Pen, press: PressState, id: string | null): void {
  if (id === (press.running?.lot ?? null)) refuse({ code: 'nothingChanged', what: press.card.name });
  const afterSeq = lastSeqOf(press, press.running === null ? null : pen.state(streamName('lot', press.running.lot)));
  if (id === null) return pen.write(press.stream, { type: 'pressSet', lot: null, gate: null, characteristic: null, afterSeq });
  const lot = pen.lot(id);
  requireFree(lot);
  const next = nextGate(lot) ?? refuse({ code: 'gateNotOpen', gate: id, status: 'accepted' });
  const gate = gateOf(lot, next.id);
  if (gate.status !== 'open') refuse({ code: 'gateNotOpen', gate: gate.name, status: gate.status });
  const work = gate.work.find(({ demand }) => demand.basis.by === 'everyPiece') ?? refuse({ code: 'nothingToWeigh', gate: gate.name });
  pen.write(press.stream, { type: 'pressSet', lot: id, gate: gate.id, characteristic: work.demand.characteristic.id, afterSeq });
}
