import type { Database } from 'better-sqlite3';
import { OutsideDomain } from '../../../shared/ground/outside-domain.ts';
import type { KeyStore } from '../key-store.ts';
import { prepared } from './prepared.ts';

type Value = string | Uint8Array;

/** Named values in a table of the journal's own file. */
export function sqliteKeyStore(db: Database): KeyStore {
  const get = (name: string): Value | null =>
    prepared<[string], { value: Value }>(db, 'SELECT value FROM keep WHERE name = ?').get(name)?.value ?? null;
  return {
    async put(name, value) {
      prepared<[string, Value]>(db, 'INSERT INTO keep (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = excluded.value').run(name, value);
    },
    async putIfAbsent(name, value) {
      return prepared<[string, Value]>(db, 'INSERT INTO keep (name, value) VALUES (?, ?) ON CONFLICT (name) DO NOTHING').run(name, value).changes === 1;
    },
    async getText(name) {
      const value = get(name);
      if (value !== null && typeof value !== 'string') throw new OutsideDomain('name', 'that of a text', name);
      return value;
    },
    async getBytes(name) {
      const value = get(name);
      if (typeof value === 'string') throw new OutsideDomain('name', 'that of bytes', name);
      return value;
    },
  };
}
