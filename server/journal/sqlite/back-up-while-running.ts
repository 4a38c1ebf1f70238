import { rename, rm } from 'node:fs/promises';
import Database from 'better-sqlite3';

/**
 * Copies a journal, also one that a server is writing to: what is committed when the copy ends is in it, whole. The copy appears under
 * its name only when it is complete.
 */
export async function backUpWhileRunning(file: string, toFile: string): Promise<void> {
  const database = new Database(file, { readonly: true });
  const unfinished = `${toFile}.unfinished`;
  try {
    await database.backup(unfinished);
    await rename(unfinished, toFile);
  } catch (fault) {
    await rm(unfinished, { force: true });
    throw fault;
  } finally {
    database.close();
  }
}
