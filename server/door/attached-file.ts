import { readFurnaceLog } from '../../shared/carbide/furnace-log/index.ts';
import type { Command, Stamp } from '../../shared/traveller/index.ts';
import type { AttachmentStore } from '../journal/attachment-store.ts';

/** What the stamp brings of the file a command names: read once, however often it is decided. Nothing for a command that names none. */
export async function attachedFile(store: AttachmentStore, command: Command): Promise<Pick<Stamp, 'attached'>> {
  if (command.type !== 'attachFurnaceLog') return {};
  const kept = await store.get(command.attachment);
  return { attached: kept === null ? null : { digest: kept.digest, bytes: kept.bytes.length, log: readFurnaceLog(kept.bytes.toString('utf8')) } };
}
