import { rmSync } from 'node:fs';
import { makeHistory } from '../demo-data/history.ts';
import { KEEPER, PEOPLE } from '../demo-data/people.ts';
import { PRETEND_PRESS, pretendWeightG } from '../demo-data/pretend-press.ts';
import { hashPin } from './people/pin-hash.ts';
import { startDemoPress } from './demo-press.ts';
import { startServer } from './start-server.ts';
import type { RunningServer } from './start-server.ts';
import { endWith, stopOnSignal } from './stop-on-signal.ts';

const folder = process.env['GATEHAND_DATA'] ?? 'data-demo';
const port = Number(process.env['GATEHAND_PORT'] ?? 8420);

/** Writes the invented history into the empty journal, as the door would have, and gives everybody a PIN. */
async function fill({ journal }: RunningServer): Promise<number> {
  const history = makeHistory({ seed: 'lindenrath', endIso: new Date().toISOString() });
  for (const { badge, pin } of [KEEPER, ...PEOPLE]) await journal.pins.put(badge, await hashPin(pin));
  for (const { file } of history) if (file !== undefined) await journal.attachments.put(Buffer.from(file, 'utf8'));
  // Entries of one stream follow each other, so they go in order; the journal commits what is under way together.
  for (let at = 0; at < history.length; at += 400) await Promise.all(history.slice(at, at + 400).map((entry) => journal.append(entry)));
  return history.reduce((slips, { changes }) => slips + changes.reduce((sum, { bodies }) => sum + bodies.length, 0), 0);
}

/** Opens the folder; a real plant found in it is left alone, whatever was asked for. */
async function open(): Promise<RunningServer> {
  const opened = await startServer({ folder, port, host: '127.0.0.1', quiet: true, demoPeople: [...PEOPLE, KEEPER] });
  const { state } = await opened.door.states.get('plant:plant');
  if (state?.kind !== 'plant' || state.card.demo) return opened;
  await opened.close();
  console.error(`${folder} holds a real plant, "${state.card.name}". Nothing was changed. Give the demo a folder of its own with GATEHAND_DATA.`);
  process.exit(2);
}

let server = await open().catch(endWith);
let press: { stop(): void } | null = null;
stopOnSignal(() => {
  press?.stop();
  return server.close();
});
if (process.argv.includes('--new')) {
  await server.close();
  rmSync(folder, { recursive: true, force: true });
  server = await open();
}
if ((await server.journal.versionOf('plant:plant')) === 0) {
  console.log('Making six weeks of an invented plant …');
  console.log(`${await fill(server)} slips written to ${folder}.`);
}
press = startDemoPress(server, { id: PRETEND_PRESS, weightG: pretendWeightG });
console.log(`
Gatehand, demo plant (everything in it is invented):  ${server.url}

  Badge   PIN    Who
${[...PEOPLE, KEEPER].map(({ badge, pin, name, roles }) => `  ${badge.padEnd(7)} ${pin}   ${name}, ${roles.join(' and ')}`).join('\n')}

Try first:
  1. Sign on as I-301 at "Final visual 1" and touch the lot that waits there: it is on tightened, and the sheet says why.
  2. Sign on as Q-401 at "Quality desk": a lot is on hold at final visual. Decide what becomes of it.
  3. Sign on as R-501 and release the lot that has passed every gate; then as P-601 pack it, print a label, read it back.
  4. Sign on as I-301 at "Press 2" and open the presses: Press 3 is weighing, and after some minutes it drifts and says at which piece it will be too far.
  5. Sign on as Q-401: type a designation such as VNMG160408 at the plans desk; look at a furnace charge's map, a control chart, a gauge study.

Stop with Ctrl+C. What you did stays in ${folder}; "npm run demo -- --new" begins anew.`);
