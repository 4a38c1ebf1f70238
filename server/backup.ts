import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { backUpWhileRunning } from './journal/sqlite/back-up-while-running.ts';
import { journalFile } from './start-server.ts';
import { endWith } from './stop-on-signal.ts';

const source = journalFile(process.env['GATEHAND_DATA'] ?? 'data');
const target = process.argv[2];

if (target === undefined || !existsSync(source) || existsSync(target)) {
  console.error(target === undefined ? 'Say where to: npm run backup -- FILE.' : existsSync(target) ? `${target} is there already and was left as it is. Name a new file.` : `There is no journal at ${source}. GATEHAND_DATA names its folder.`);
  process.exit(2);
}
try {
  await backUpWhileRunning(source, target);
  console.log(`Copied ${source} to ${resolve(target)}. It holds PIN hashes and the key that signs certificates: keep it as safe as the plant itself.`);
} catch (fault) {
  endWith(fault);
}
