/**
 * A fresh id for one entry: milliseconds since 1970 in twelve hexadecimal digits, a dash, and 80 random bits. Ids that begin with the
 * time keep the journal's index small (docs/journal.md). Works on a page without TLS too, where the browser makes no UUIDs.
 */
export function newClientId(nowMs: number = Date.now()): string {
  const random = crypto.getRandomValues(new Uint8Array(10));
  return `${nowMs.toString(16).padStart(12, '0')}-${Array.from(random, (byte) => byte.toString(16).padStart(2, '0')).join('')}`;
}
