import type { Pen } from '../pen.ts';
import { refuse, requireReason } from '../pen.ts';
import type { Subject } from '../known.ts';
import { standingHolds } from '../lot/lot.ts';
import { requireBoxesVoided } from '../lot/release.ts';
import { regradedLot } from '../lot/regrade.ts';
import { disposeMembers, holdMadeOf } from '../charge/dispose-members.ts';
import { streamName } from '../stream.ts';
import type { CommonCommand, DisposeHold } from './commands.ts';
import { nextHold } from './give-verdict.ts';
import type { Disposition, DispositionKind, Hold, SomeMembers } from './hold.ts';
import { verdictOf } from './work.ts';
import { isOfVerdict } from './hold.ts';

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
  if (subject.ended !== null) return ['clear'];
  if (!isOfVerdict(cause)) return subject.kind === 'lot' || subject.kind === 'batch' ? ['clear', 'scrap', 'return'] : ['clear'];
  const gate = subject.gates.find(({ id }) => id === cause.gate);
  // Conceded, and held again: something fails that the concession was not given for.
  const fails = gate?.status === 'rejected' || (gate?.status === 'conceded' && verdictOf(gate)?.verdict.accepted === false);
  if (gate === undefined || !fails) return ['clear'];
  switch (subject.kind) {
    case 'batch': return ['retest', 'rework', 'concession', 'scrap', 'return'];
    case 'furnace': return ['retest', 'reSinter', 'concession'];
    case 'coating': return ['retest', 'recoat', 'concession'];
    case 'lot':
      if (gate.workedOn !== 'lot') return [...AGAIN[gate.workedOn], 'concession', 'scrap', 'return'];
      return ['sort', 'rework', 'retest', 'concession', 'regrade', 'scrap', 'return'];
  }
}

/** What is done again with a lot that failed on another subject; powder cannot be taken out of it. */
const AGAIN = { furnace: ['reSinter'], coating: ['recoat'], batch: [] } as const satisfies Record<string, readonly DispositionKind[]>;
/** These leave every piece where it is; all others need the pieces loose, so boxes are voided first. */
const LEAVES_BOXES: readonly DispositionKind[] = ['clear', 'concession'];

function dispose(pen: Pen, subject: Subject, command: DisposeHold): void {
  requireReason(command.type, command.reason);
  const hold = standingHolds(subject).find(({ id }) => id === command.hold) ?? refuse({ code: 'notFound', what: 'hold', id: command.hold });
  const possible = possibleDispositions(subject, hold);
  const { disposition } = command;
  if (!possible.includes(disposition.kind)) refuse({ code: 'dispositionNotForThis', disposition: disposition.kind, possible });
  if (disposition.kind === 'concession' && disposition.statement.trim() === '') refuse({ code: 'reasonMissing', command: 'concession' });
  if (disposition.kind === 'reSinter' || disposition.kind === 'recoat') requireSomeFit(subject, disposition.some);
  if (disposition.kind === 'rework' && disposition.instruction.trim() === '') refuse({ code: 'reasonMissing', command: 'rework' });
  if (subject.kind === 'lot' && !LEAVES_BOXES.includes(disposition.kind)) requireBoxesVoided(subject);
  const signature = pen.signature(command.type, grantsConcession(disposition) ? 'concessionGrantedBy' : 'disposedBy');
  const gate = isOfVerdict(hold.cause) ? hold.cause.gate : null;
  const regraded = disposition.kind === 'regrade' && subject.kind === 'lot' ? regradedLot(pen, subject, disposition.toProduct) : undefined;
  pen.write(subject.stream, { type: 'disposed', hold: hold.id, gate, disposition, reason: command.reason, signature, ...(regraded === undefined ? {} : { regraded }) });
  disposeMembers(pen, subject.stream, hold, disposition, signature);
  if (subject.kind === 'batch' && (disposition.kind === 'scrap' || disposition.kind === 'return')) holdMadeOf(pen, subject, command.reason);
}

/** True where something is accepted as it is: the whole subject, or the rest of a charge. */
function grantsConcession(disposition: Disposition): boolean {
  return disposition.kind === 'concession' || ((disposition.kind === 'reSinter' || disposition.kind === 'recoat') && disposition.some?.rest.by === 'concession');
}

/** Some members of a charge may be done again while the others stay: some, not all, and none that is not in it. */
function requireSomeFit(subject: Subject, some: SomeMembers | undefined): void {
  if (some === undefined) return;
  const unfit = (why: 'notInCharge' | 'none' | 'all', lot = ''): never => refuse({ code: 'someMembersUnfit', charge: subject.id, why, lot });
  if (subject.kind === 'lot' || subject.kind === 'batch') return unfit('notInCharge', some.lots[0] ?? subject.id);
  const members = subject.members.filter(({ left }) => left !== true).map(({ lot }) => lot);
  if (some.lots.length === 0) unfit('none');
  const alien = some.lots.find((lot) => !members.includes(lot));
  if (alien !== undefined) unfit('notInCharge', alien);
  if (members.every((lot) => some.lots.includes(lot))) unfit('all');
  if (some.rest.by === 'concession' && some.rest.statement.trim() === '') refuse({ code: 'reasonMissing', command: 'concession' });
}

/** Stream of a subject named by a command that speaks of a lot by its number. */
export function lotStream(lot: string): string {
  return streamName('lot', lot);
}
