import type { Database } from 'better-sqlite3';
import type { PinRecord, PinVault } from '../pin-vault.ts';
import { prepared } from './prepared.ts';

/** PIN hashes in a table of the journal's own file. */
export function sqlitePinVault(db: Database): PinVault {
  return {
    async put(badge, hash) {
      const sql = `INSERT INTO pin (badge, hash, failed_attempts) VALUES (?, ?, 0)
        ON CONFLICT (badge) DO UPDATE SET hash = excluded.hash, failed_attempts = 0, last_failed_at = NULL`;
      prepared<[string, string]>(db, sql).run(badge, hash);
    },
    async get(badge) {
      const sql = 'SELECT badge, hash, failed_attempts AS failedAttempts, last_failed_at AS lastFailedAt FROM pin WHERE badge = ?';
      return prepared<[string], PinRecord>(db, sql).get(badge) ?? null;
    },
    async countFailure(badge, at) {
      const sql = 'UPDATE pin SET failed_attempts = failed_attempts + 1, last_failed_at = ? WHERE badge = ? RETURNING failed_attempts AS failed';
      return prepared<[string, string], { failed: number }>(db, sql).get(at, badge)?.failed ?? 0;
    },
    async clearFailures(badge) {
      prepared<[string]>(db, 'UPDATE pin SET failed_attempts = 0, last_failed_at = NULL WHERE badge = ?').run(badge);
    },
    async remove(badge) {
      prepared<[string]>(db, 'DELETE FROM pin WHERE badge = ?').run(badge);
    },
  };
}
