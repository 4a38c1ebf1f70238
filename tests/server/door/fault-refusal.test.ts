import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import { faultRefusal } from '../../../server/door/fault-refusal.ts';
import { JournalFault } from '../../../server/journal/journal-fault.ts';

it('tells a store that takes nothing from a program that stumbled', () => {
  expect(faultRefusal(new JournalFault('fault', 'the disk is full'))).toEqual({ code: 'storageFault' });
  expect(faultRefusal(new Database.SqliteError('disk I/O error', 'SQLITE_IOERR'))).toEqual({ code: 'storageFault' });
  expect(faultRefusal(new TypeError('x is undefined'))).toEqual({ code: 'programFault' });
  expect(faultRefusal('thrown text')).toEqual({ code: 'programFault' });
});
