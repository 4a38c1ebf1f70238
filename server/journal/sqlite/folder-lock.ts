import Database from 'better-sqlite3';
import { JournalFault } from '../journal-fault.ts';

/**
 * Holds `file` against other servers until released. The lock is the operating system's, on a file of its own, held by an open
 * transaction: it ends with the process however that ends, so nothing stale is ever left to clear away, and it works between
 * containers that share the folder, where a process number would mean nothing.
 * @returns the function that lets go
 * @throws JournalFault `folderInUse` when another server holds it
 */
export function lockFolder(file: string): () => void {
  const lock = new Database(`${file}.lock`, { timeout: 0 });
  try {
    lock.pragma('journal_mode = MEMORY');
    lock.exec('BEGIN EXCLUSIVE');
  } catch (cause) {
    lock.close();
    if (!(cause instanceof Database.SqliteError) || !cause.code.startsWith('SQLITE_BUSY')) throw cause;
    throw new JournalFault('folderInUse', `Another Gatehand server has ${file} open. Stop that one first, or start this one with another data folder.`, cause);
  }
  return () => lock.close();
}
