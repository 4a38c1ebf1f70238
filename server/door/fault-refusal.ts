import type { DoorRefusal } from '../../shared/wire/reply.ts';
import { JournalFault } from '../journal/journal-fault.ts';

/** What a person is told of a fault: that the store takes no entries, or that the program itself stumbled. The log has the rest. */
export function faultRefusal(fault: unknown): DoorRefusal {
  const isStore = fault instanceof JournalFault || (fault instanceof Error && 'code' in fault && typeof fault.code === 'string' && fault.code.startsWith('SQLITE_'));
  return { code: isStore ? 'storageFault' : 'programFault' };
}
