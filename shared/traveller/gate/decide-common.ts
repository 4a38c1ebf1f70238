import type { Pen } from '../pen.ts';
import { refuse, requireReason } from '../pen.ts';
import type { Subject } from '../known.ts';
import { standingHolds } from '../lot/lot.ts';
import { regradedLot } from '../lot/regrade.ts';
import { disposeMembers } from '../charge/dispose-members.ts';
import { streamName } from '../stream.ts';
import type { CommonCommand, DisposeHold } from './commands.ts';
import { nextHold } from './give-verdict.ts';
import type { DispositionKind, Hold } from './hold.ts';

/** Decides holds, dispositions and notes on any subject. */
export function decideCommon(pen: Pen, command: CommonCommand): void {
  const subject = pen.subject(command.subject);
  pen.requireRole(command.type);
  switch (command.type) {
    case 'addNote':
      if (command.text.trim() === '') refuse({ code: 'reasonMissing', command: command.type });
      return pen.write(subject.stream, { type: 'noteAdded', text: command.text });
    case 'hold':
      requireReason(command.type, command.reason);
      if (subject.ended !== null) refuse({ code: 'subjectHasEnded', subject: subject.id, how: subject.ended.how });
      return pen.write(subject.stream, { type: 'held', hold: nextHold(subject), cause: { by: 'person' }, reason: command.reason });
    case 'dispose': return dispose(pen, subject, command);
  }
}

/** What may be decided about this hold. A rejected verdict is never cleared: it is worked off, conceded, or the subject ends. */
export function possibleDispositions(subject: Subject, hold: Hold): readonly DispositionKind[] {
  const { cause } = hold;
  if (cause.by === 'person') return subject.kind === 'lot' || subject.kind === 'batch' ? ['clear', 'scrap', 'return'] : ['clear'];
  const gate = subject.gates.find(({ id }) => id === cause.gate);
  if (gate?.status !== 'rejected') return ['clear'];
  switch (subject.kind) {
    case 'batch': return ['retest', 'rework', 'concession', 'scrap', 'return'];
    case 'furnace': return ['retest', 'reSinter', 'concession'];
    case 'coating': return ['retest', 'recoat', 'concession'];
    case 'lot':
      if (cause.by === 'charge') return [gate.workedOn === 'furnace' ? 'reSinter' : 'recoat', 'concession', 'scrap', 'return'];
      return ['sort', 'rework', 'retest', 'concession', 'regrade', 'scrap', 'return'];
  }
}

function dispose(pen: Pen, subject: Subject, command: DisposeHold): void {
  requireReason(command.type, command.reason);
  const hold = standingHolds(subject).find(({ id }) => id === command.hold) ?? refuse({ code: 'notFound', what: 'hold', id: command.hold });
  const possible = possibleDispositions(subject, hold);
  const { disposition } = command;
  if (!possible.includes(disposition.kind)) refuse({ code: 'dispositionNotForThis', disposition: disposition.kind, possible });
  if (disposition.kind === 'concession' && disposition.statement.trim() === '') refuse({ code: 'reasonMissing', command: 'concession' });
  const signature = pen.signature(command.type, disposition.kind === 'concession' ? 'concessionGrantedBy' : 'disposedBy');
  const gate = hold.cause.by === 'person' ? null : hold.cause.gate;
  const regraded = disposition.kind === 'regrade' && subject.kind === 'lot' ? regradedLot(pen, subject, disposition.toProduct) : undefined;
  pen.write(subject.stream, { type: 'disposed', hold: hold.id, gate, disposition, reason: command.reason, signature, ...(regraded === undefined ? {} : { regraded }) });
  if (subject.kind === 'furnace' || subject.kind === 'coating') disposeMembers(pen, subject.stream, disposition, signature);
}

/** Stream of a subject named by a command that speaks of a lot by its number. */
export function lotStream(lot: string): string {
  return streamName('lot', lot);
}
