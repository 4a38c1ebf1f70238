import type { Database } from 'better-sqlite3';
import type { Head, Verification } from '../journal.ts';
import { noSlipBefore, slipHash } from '../slip-hash.ts';
import { verifyAttachments } from './attachment-store.ts';
import { prepared } from './prepared.ts';
import { rowsAfter, type SlipRow } from './slip-rows.ts';

type Broken = NonNullable<Verification['firstBroken']>;

const pageOfSlips = 1_000;

/** Why a slip does not follow the last one seen of its stream, or null when it does. */
function whyBroken(slip: SlipRow, before: Head): { version: number; why: string } | null {
  const { stream, version } = slip;
  const next = before.version + 1;
  if (version > next) return { version: next, why: `slip ${next} of ${stream} is gone; the next one found is ${version}` };
  if (version < next) return { version, why: `slip ${version} of ${stream} stands after slip ${before.version}` };
  if (slip.prevHash !== before.hash) return { version, why: `slip ${version} of ${stream} does not follow the slip before it: one of the two was replaced` };
  if (slip.hash !== slipHash(slip)) return { version, why: `slip ${version} of ${stream} is not what was written: its hash does not fit` };
  if (slip.type !== bodyOf(slip.bodyText).type) return { version, why: `slip ${version} of ${stream} names another type than its body` };
  return null;
}

function bodyOf(bodyText: string): { readonly type?: unknown; readonly attachment?: unknown } {
  return JSON.parse(bodyText);
}

/** Told only when no stream shows the loss: its slips and its head went together. */
function goneFrom(position: number): Broken {
  return { stream: '', version: 0, position, why: `the slip at position ${position} is gone, and nothing left names its stream` };
}

interface Seen extends Head {
  readonly position: number;
}

/** The first stream, by name, that does not end where its head says, or null. */
function firstCutShort(db: Database, seen: ReadonlyMap<string, Seen>): Broken | null {
  const withoutHead = new Map(seen);
  for (const { stream, version, hash } of prepared<[], Head>(db, 'SELECT stream, version, hash FROM head ORDER BY stream').iterate()) {
    withoutHead.delete(stream);
    const last = seen.get(stream) ?? { stream, version: 0, hash: noSlipBefore, position: 0 };
    if (last.version === version && last.hash === hash) continue;
    const { position } = last;
    if (last.version === version) {
      return { stream, version, position, why: `slip ${version} of ${stream} has another hash than its head: one of the two was replaced` };
    }
    const why = `${stream} ends at slip ${last.version}, but its head names slip ${version}`;
    return { stream, version: Math.min(last.version, version) + 1, position, why };
  }
  const [headless] = withoutHead.values();
  if (headless === undefined) return null;
  const { stream, version, position } = headless;
  return { stream, version, position, why: `${stream} has slips but no head` };
}

const unwalked = { attachments: 0, brokenAttachment: null } as const;

/**
 * Walks the journal in order of arrival, a page a turn of the event loop. Slips appended meanwhile are walked too; the heads are
 * compared in the same turn as the last page, so both speak of one moment. Then come the files that slips name.
 */
export async function verifyChain(db: Database): Promise<Verification> {
  const seen = new Map<string, Seen>();
  let slips = 0;
  let position = 0;
  let gap: Broken | null = null;
  const named = new Set<string>();
  for (;;) {
    const rows = rowsAfter(db, position, pageOfSlips);
    for (const slip of rows) {
      if (slip.position !== position + 1) gap ??= goneFrom(position + 1);
      const broken = whyBroken(slip, seen.get(slip.stream) ?? { stream: slip.stream, version: 0, hash: noSlipBefore });
      if (broken !== null) return { slips, streams: seen.size, firstBroken: { stream: slip.stream, position: slip.position, ...broken }, ...unwalked };
      const { attachment } = bodyOf(slip.bodyText);
      if (typeof attachment === 'string') named.add(attachment);
      position = slip.position;
      seen.set(slip.stream, { stream: slip.stream, version: slip.version, hash: slip.hash, position });
      slips += 1;
    }
    if (rows.length < pageOfSlips) {
      const firstBroken = firstCutShort(db, seen) ?? gap;
      return { slips, streams: seen.size, firstBroken, ...(firstBroken === null ? await verifyAttachments(db, named) : unwalked) };
    }
    await new Promise((resolve) => setImmediate(resolve));
  }
}
