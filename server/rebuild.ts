import { existsSync } from 'node:fs';
import { openSqliteJournal } from './journal/sqlite/open-sqlite-journal.ts';
import { readModels } from './readmodels/read-models-projection.ts';
import { journalFile } from './start-server.ts';
import { endWith } from './stop-on-signal.ts';

/** Throws every list away and fills it again from the journal. The server must not be running; the journal itself is only read. */
const folder = process.env['GATEHAND_DATA'] ?? 'data';
const file = journalFile(folder);
if (!existsSync(file)) {
  console.error(`There is no journal in ${folder}. Name its folder in GATEHAND_DATA.`);
  process.exit(1);
}
const journal = await openSqliteJournal({ file, projections: [readModels] }).catch(endWith);
try {
  console.log(`Checking the journal in ${folder} …`);
  const { slips: whole, streams, firstBroken } = await journal.verify();
  if (firstBroken !== null) {
    console.error(`The journal is broken at ${firstBroken.stream}, slip ${firstBroken.version}: ${firstBroken.why}. The lists were left as they are.`);
    process.exitCode = 1;
  } else {
    console.log(`${whole} slips on ${streams} streams, all whole. Filling the lists …`);
    const started = performance.now();
    const { slips } = await journal.rebuild();
    console.log(`${slips} slips taken in after ${((performance.now() - started) / 1000).toFixed(1)} s. The lists are complete.`);
    if (slips !== whole) process.exitCode = 1;
  }
} finally {
  await journal.close();
}
