import { z } from 'zod';
import { readFurnaceLog } from '../../shared/carbide/furnace-log/index.ts';
import { RIGHTS } from '../../shared/traveller/index.ts';
import { readWith } from '../../shared/wire/read-command.ts';
import type { Session } from '../../shared/wire/views.ts';
import { MOST_ATTACHMENT_BYTES } from '../journal/attachment-store.ts';
import { found, refused, type Answer } from './answer.ts';
import type { Plant } from './plant.ts';

/** Room for the file as a JSON text: every line's end is written as two characters, and so is every quotation mark. */
export const mostHandInBytes = 2 * MOST_ATTACHMENT_BYTES;
const handInSchema = z.strictObject({ text: z.string().min(1).max(MOST_ATTACHMENT_BYTES) });

/**
 * Takes a furnace log in and answers with its digest, by which the command `attachFurnaceLog` names it. What is no log is refused and not kept: a
 * file that is kept stays for good.
 */
export async function handIn(plant: Plant, body: unknown, session: Session | null): Promise<Answer> {
  if (session === null) return refused({ code: 'notSignedIn' });
  const needed = RIGHTS.attachFurnaceLog;
  if (!session.roles.some((role) => needed.some((each) => each === role))) return refused({ code: 'notYourRole', command: 'attachFurnaceLog', needed });
  const read = readWith(handInSchema, body);
  if (!read.ok) return refused({ code: 'malformed', problems: read.problems });
  const bytes = Buffer.from(read.value.text, 'utf8');
  if (bytes.length > MOST_ATTACHMENT_BYTES) return refused({ code: 'tooLarge', mostBytes: MOST_ATTACHMENT_BYTES });
  const log = readFurnaceLog(read.value.text);
  if ('fault' in log) return refused({ code: 'logUnreadable', fault: log.fault });
  return found({ digest: await plant.journal.attachments.put(bytes), bytes: bytes.length });
}
