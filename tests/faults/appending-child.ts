import { writeSync } from 'node:fs';
import { openSqliteJournal } from '../../server/journal/sqlite/open-sqlite-journal.ts';
import { entryOf } from '../server/journal/entries.ts';
import { slipCount } from './slip-count.ts';

/**
 * Appends without end until it is killed: `node appending-child.mjs <file>`. Says `ack <client id>` after each acknowledgement and
 * `fault <kind>` when the journal cannot go on. Each bench has a stream of its own; every third entry also writes its shadow stream.
 */
const [, , file = ''] = process.argv;
const journal = await openSqliteJournal({ file, projections: [slipCount] });

async function work(bench: number): Promise<void> {
  const [own, shadow] = [`bench ${bench}`, `shadow ${bench}`];
  let [version, shadowVersion] = [await journal.versionOf(own), await journal.versionOf(shadow)];
  // The last entry of the life before is sent again, as a kiosk would that was not answered.
  for (let next = Math.max(version - 1, 0); ; next += 1) {
    const slips = next % 3 === 0 ? 2 : 1;
    const change = (stream: string, expectedVersion: number) => ({ stream, expectedVersion, bodies: [{ type: 'readingTaken', slips }] });
    const changes = slips === 2 ? [change(own, version), change(shadow, shadowVersion)] : [change(own, version)];
    const { clientId, repeated } = await journal.append(entryOf(`${own}/${next}`, changes));
    writeSync(1, `ack ${clientId}\n`);
    if (repeated) continue;
    version += 1;
    if (slips === 2) shadowVersion += 1;
  }
}

await Promise.all(Array.from({ length: 16 }, (_, bench) => work(bench))).catch((fault: unknown) => {
  writeSync(1, `fault ${typeof fault === 'object' && fault !== null && 'kind' in fault ? String(fault.kind) : String(fault)}\n`);
});
