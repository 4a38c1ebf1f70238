import { checkFurnaceLog, reduceFurnaceLog } from '../../carbide/furnace-log/index.ts';
import { nextHold } from '../gate/give-verdict.ts';
import { NotAtHand } from '../known.ts';
import type { Pen } from '../pen.ts';
import { refuse } from '../pen.ts';
import { streamName } from '../stream.ts';
import type { AttachFurnaceLog } from './commands.ts';

/**
 * Holds a furnace log against the limits of the charge's programme and puts what came of it on the traveller. The file's rows come in with the
 * stamp; the slip keeps its digest and a reduced curve. A log that comes after the verdict and shows something outside holds the charge.
 * @throws NotAtHand where the stamp does not bring the file: only the server has it
 */
export function attachFurnaceLog(pen: Pen, { charge: id, attachment, fileName }: AttachFurnaceLog): void {
  const charge = pen.charge(streamName('furnace', id));
  if (charge.ended !== null) refuse({ code: 'subjectHasEnded', subject: charge.id, how: charge.ended.how });
  const { attached } = pen.stamp;
  if (attached === undefined) throw new NotAtHand(`attachment:${attachment}`);
  if (attached === null || attached.digest !== attachment) return refuse({ code: 'notFound', what: 'attachment', id: attachment });
  const { log, bytes } = attached;
  if ('fault' in log) return refuse({ code: 'logUnreadable', fault: log.fault });
  const { card: programme, version } = pen.find(streamName('programme', charge.programme), 'programme', 'programme');
  const last = charge.logs.at(-1);
  if (last?.attachment === attachment && last.programmeVersion === version) refuse({ code: 'nothingChanged', what: fileName });
  const check = checkFurnaceLog(log, programme);
  const lengthMin = log.atMin.reduce((most, at) => Math.max(most, at), 0);
  pen.write(charge.stream, { type: 'furnaceLogAttached', attachment, bytes, fileName, rows: log.atMin.length, startedAt: log.startedAt, lengthMin, programme, programmeVersion: version, check, curve: reduceFurnaceLog(log) });
  const isJudged = charge.gates.some(({ verdicts }) => verdicts.length > 0);
  if (isJudged && !check.within) pen.write(charge.stream, { type: 'held', hold: nextHold(charge), cause: { by: 'person' }, reason: `${programme.id}: ${fileName}` });
}
