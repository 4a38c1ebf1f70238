import { createHash } from 'node:crypto';
import { promisify } from 'node:util';
import { gunzip, gzip } from 'node:zlib';
import type { Database } from 'better-sqlite3';
import { OutsideDomain } from '../../../shared/ground/outside-domain.ts';
import { MOST_ATTACHMENT_BYTES, type AttachmentStore } from '../attachment-store.ts';
import { JournalFault } from '../journal-fault.ts';
import { prepared } from './prepared.ts';

const [pack, unpack] = [promisify(gzip), promisify(gunzip)];

/** SHA-256 of bytes, hexadecimal. */
export function digestOf(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}

interface Row { readonly digest: string; readonly bytes: number; readonly packed: Buffer }
const selected = 'SELECT digest, bytes, packed FROM attachment WHERE digest = ?';

/** Files in a table of the journal's own file, packed by gzip; two triggers keep them from being changed or taken away. */
export function sqliteAttachmentStore(db: Database, now: () => string = () => new Date().toISOString()): AttachmentStore {
  return {
    async put(bytes) {
      if (bytes.length === 0 || bytes.length > MOST_ATTACHMENT_BYTES) throw new OutsideDomain('bytes', `1 … ${MOST_ATTACHMENT_BYTES} of them`, bytes.length);
      const digest = digestOf(bytes);
      const packed = await pack(bytes);
      prepared<[string, number, string, Buffer]>(db, 'INSERT INTO attachment (digest, bytes, at, packed) VALUES (?, ?, ?, ?) ON CONFLICT (digest) DO NOTHING').run(digest, bytes.length, now(), packed);
      return digest;
    },
    async get(digest) {
      const row = prepared<[string], Row>(db, selected).get(digest);
      if (row === undefined) return null;
      const read = await attachmentOf(row);
      if (typeof read === 'string') throw new JournalFault('fault', read);
      return { digest, bytes: read };
    },
  };
}

/** The bytes of a row, or why they are not what was handed in. */
async function attachmentOf({ digest, bytes, packed }: Row): Promise<Buffer | string> {
  try {
    const read = await unpack(packed, { maxOutputLength: MOST_ATTACHMENT_BYTES });
    return read.length === bytes && digestOf(read) === digest ? read : `the file ${digest} is not what was handed in: its digest does not fit`;
  } catch {
    return `the file ${digest} cannot be unpacked`;
  }
}

/** What a walk over the files found: how many are whole, and the first that is broken, or named by a slip and gone. */
export async function verifyAttachments(db: Database, named: ReadonlySet<string>): Promise<{ readonly attachments: number; readonly brokenAttachment: { readonly digest: string; readonly why: string } | null }> {
  const missing = new Set(named);
  let [attachments, last] = [0, ''];
  for (;;) {
    // One file a turn: the largest takes longer than a page of slips.
    const row = prepared<[string], Row>(db, 'SELECT digest, bytes, packed FROM attachment WHERE digest > ? ORDER BY digest LIMIT 1').get(last);
    if (row === undefined) break;
    const read = await attachmentOf(row);
    if (typeof read === 'string') return { attachments, brokenAttachment: { digest: row.digest, why: read } };
    missing.delete(row.digest);
    attachments += 1;
    last = row.digest;
  }
  const [gone] = missing;
  return { attachments, brokenAttachment: gone === undefined ? null : { digest: gone, why: `a slip names the file ${gone}, and it is gone` } };
}
