import { createHash } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { MOST_ATTACHMENT_BYTES } from '../../../server/journal/attachment-store.ts';
import { openSqliteJournal } from '../../../server/journal/sqlite/open-sqlite-journal.ts';
import type { SqliteJournal } from '../../../server/journal/sqlite/sqlite-journal.ts';

const text = Buffer.from('time,temperature\n0,20\n1,21\n'.repeat(500));
const digest = createHash('sha256').update(text).digest('hex');
let folder: string;
let journal: SqliteJournal;
const file = (): string => join(folder, 'gatehand.db');
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'gatehand-files-'));
  journal = await openSqliteJournal({ file: file() });
});
afterEach(async () => {
  await journal.close();
  rmSync(folder, { recursive: true, force: true });
});
const named = () => journal.append({ clientId: 'c-1', at: '2026-03-01T06:00:00.000Z', by: 'L-1', bench: 'Lab', changes: [{ stream: 'furnace:F1', expectedVersion: 0, bodies: [{ type: 'furnaceLogAttached', attachment: digest }] }] });
/** As somebody with a database shell would, past the triggers. */
function meddle(sql: string): void {
  const db = new Database(file());
  db.exec(`DROP TRIGGER attachment_is_not_changed; DROP TRIGGER attachment_is_not_removed; ${sql}`);
  db.close();
}

it('a file is kept under its digest, the same one once, and comes back byte for byte', async () => {
  expect([await journal.attachments.put(text), await journal.attachments.put(text)]).toEqual([digest, digest]);
  expect((await journal.attachments.get(digest))?.bytes.equals(text)).toBe(true);
  expect(await journal.attachments.get('0'.repeat(64))).toBeNull();
  expect(journal.reader.prepare('SELECT count(*) AS n FROM attachment').get()).toEqual({ n: 1 });
});

it('an empty file and one beyond the bound are the caller’s bug', async () => {
  await expect(journal.attachments.put(Buffer.alloc(0))).rejects.toThrow('must be 1 …');
  await expect(journal.attachments.put(Buffer.alloc(MOST_ATTACHMENT_BYTES + 1))).rejects.toThrow('must be 1 …');
});

it('a file is neither changed nor taken away', async () => {
  await journal.attachments.put(text);
  const db = new Database(file());
  expect(() => db.exec("UPDATE attachment SET bytes = 1")).toThrow('never changed');
  expect(() => db.exec('DELETE FROM attachment')).toThrow('never taken away');
  db.close();
});

it('the walk through the journal names a file that is gone, and one that is not what was handed in', async () => {
  await journal.attachments.put(text);
  await named();
  expect(await journal.verify()).toMatchObject({ firstBroken: null, attachments: 1, brokenAttachment: null });
  meddle(`UPDATE attachment SET digest = '${'f'.repeat(64)}'`);
  expect((await journal.verify()).brokenAttachment).toMatchObject({ digest: 'f'.repeat(64), why: expect.stringContaining('not what was handed in') });
  await expect(journal.attachments.get('f'.repeat(64))).rejects.toThrow('not what was handed in');
});

it('the walk names a file that a slip names and that is gone', async () => {
  await journal.attachments.put(text);
  await named();
  meddle('DELETE FROM attachment');
  expect((await journal.verify()).brokenAttachment).toEqual({ digest, why: `a slip names the file ${digest}, and it is gone` });
});

it('a copy of the journal has the files', async () => {
  await journal.attachments.put(text);
  await named();
  const copy = join(folder, 'copy.db');
  await journal.backup(copy);
  const other = await openSqliteJournal({ file: copy });
  expect([await other.verify(), (await other.attachments.get(digest))?.bytes.equals(text)]).toMatchObject([{ attachments: 1, brokenAttachment: null }, true]);
  await other.close();
});

it('a journal laid out before there were files gets room for them when it is opened', async () => {
  await journal.close();
  const db = new Database(file());
  db.exec('DROP TABLE attachment');
  db.close();
  journal = await openSqliteJournal({ file: file() });
  expect(await journal.attachments.put(text)).toBe(digest);
});
