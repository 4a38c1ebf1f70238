import type { Database } from 'better-sqlite3';
import type { Head, Verification } from '../journal.ts';
import { noSlipBefore, slipHash } from '../slip-hash.ts';
import { prepared } from './prepared.ts';
import { rowsAfter, type SlipRow } from './slip-rows.ts';

type Broken = NonNullable<Verification['firstBroken']>;

const pageOfSlips = 1_000;

/** Why a slip does not follow the last one seen of its stream, or null when it does. */
function whyBroken(slip: SlipRow, before: Head): { version: number; why: string } | null {
  if (slip.version > before.version + 1) return { version: before.version + 1, why: `slip ${before.version + 1} of ${slip.stream} is gone; the next one found is ${slip.version}` };
  if (slip.version <= before.version) return { version: slip.version, why: `slip ${slip.version} of ${slip.stream} stands after slip ${before.version}` };
  if (slip.prevHash !== before.hash) return { version: slip.version, why: `slip ${slip.version} of ${slip.stream} does not follow the slip before it: one of the two was replaced` };
  if (slip.hash !== slipHash(slip)) return { version: slip.version, why: `slip ${slip.version} of ${slip.stream} is not what was written: its hash does not fit` };
  if (slip.type !== typeOf(slip.bodyText)) return { version: slip.version, why: `slip ${slip.version} of ${slip.stream} names another type than its body` };
  return null;
}

function typeOf(bodyText: string): unknown {
  const body: { type?: unknown } = JSON.parse(bodyText);
  return body.type;
}

/** A stream whose last slip is not the one its head names, or null. */
function firstCutShort(db: Database, seen: ReadonlyMap<string, Head>, position: number): Broken | null {
  let heads = 0;
  for (const { stream, version, hash } of prepared<[], Head>(db, 'SELECT stream, version, hash FROM head ORDER BY stream').iterate()) {
    heads += 1;
    const last = seen.get(stream);
    if (last?.version === version && last.hash === hash) continue;
    const found = last?.version ?? 0;
    return { stream, version: Math.min(found, version) + 1, position, why: `${stream} ends at slip ${found}, but its head names slip ${version} with ${found === version ? 'another' : 'a'} hash` };
  }
  if (heads === seen.size) return null;
  const headless = [...seen.values()].find(({ stream }) => prepared<[string]>(db, 'SELECT 1 FROM head WHERE stream = ?').get(stream) === undefined);
  return headless === undefined ? null : { ...headless, position, why: `${headless.stream} has slips but no head` };
}

/**
 * Walks the journal in order of arrival, a page a turn of the event loop. Slips appended meanwhile are walked too; the heads are
 * compared in the same turn as the last page, so both speak of one moment.
 */
export async function verifyChain(db: Database): Promise<Verification> {
  const seen = new Map<string, Head>();
  let slips = 0;
  let position = 0;
  let gap: Broken | null = null;
  for (;;) {
    const rows = rowsAfter(db, position, pageOfSlips);
    for (const slip of rows) {
      if (slip.position !== position + 1) gap ??= { stream: '', version: 0, position: position + 1, why: `the slip at position ${position + 1} is gone, and nothing left names its stream` };
      const broken = whyBroken(slip, seen.get(slip.stream) ?? { stream: slip.stream, version: 0, hash: noSlipBefore });
      if (broken !== null) return { slips, streams: seen.size, firstBroken: { stream: slip.stream, position: slip.position, ...broken } };
      seen.set(slip.stream, { stream: slip.stream, version: slip.version, hash: slip.hash });
      position = slip.position;
      slips += 1;
    }
    if (rows.length < pageOfSlips) return { slips, streams: seen.size, firstBroken: firstCutShort(db, seen, position) ?? gap };
    await new Promise((resolve) => setImmediate(resolve));
  }
}
