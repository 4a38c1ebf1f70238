// npm run bench: the tool beside the raw building blocks, in one run, on this machine. Figures are ratios; absolute numbers are for orientation only.
import { fork } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import { measureDocuments } from './documents.mjs';
import { measureFirstLoad, measureLongTraveller } from './browser.mjs';
import { measureStart } from './start.mjs';

const only = process.argv[2];
const out = 'dist/bench';
mkdirSync(out, { recursive: true });
await build({ entryPoints: ['tests/speed/plant-server.ts', 'tests/speed/document-makers.ts'], bundle: true, platform: 'node', format: 'esm', target: 'node20', packages: 'external', outdir: out, outExtension: { '.js': '.mjs' }, logLevel: 'error' });

const rows = [];
const report = (what, ours, raw, ratio, aim, met) => {
  rows.push({ what, ours, raw, ratio, aim, met });
  console.log(`${met === null ? '      ' : met ? 'met   ' : 'MISSED'}  ${what}: ${ours}${raw ? `, raw ${raw}` : ''}${ratio ? `, ratio ${ratio}` : ''}${aim ? `  (aim ${aim})` : ''}`);
};

/** Starts a module as a process of its own and waits for its first message. */
function start(module, args) {
  const child = fork(module, args, { stdio: ['ignore', 'inherit', 'inherit', 'ipc'] });
  return new Promise((resolve, reject) => {
    child.once('message', (message) => resolve({ child, ...message }));
    child.once('exit', (code) => reject(new Error(`${module} ended with ${code}`)));
  });
}
async function stop(child) {
  const ended = new Promise((resolve) => child.once('exit', resolve));
  child.kill('SIGTERM');
  await ended;
}
async function driven(order) {
  const child = fork('tests/speed/drive.mjs', [], { stdio: ['ignore', 'inherit', 'inherit', 'ipc'] });
  const result = new Promise((resolve) => child.once('message', resolve));
  child.send(order);
  const answer = await result;
  child.kill('SIGTERM');
  if (answer.error) throw new Error(answer.error);
  return answer;
}

const KIOSKS = 200;
const READINGS = 1200;
const works = Array.from({ length: READINGS / 100 }, (_, at) => ({ gate: 'speed', characteristic: `c${at}`, n: 100, value: 4.75 }));
const subjects = Array.from({ length: KIOSKS }, (_, at) => `lot:B${String(at).padStart(4, '0')}`);

/** One server, one kind of load. A fresh folder each time, so that nothing grows from run to run. */
async function underLoad(which, load) {
  const folder = mkdtempSync(join(tmpdir(), 'gatehand-bench-'));
  const server = which === 'raw' ? await start('tests/speed/raw-server.mjs', [folder]) : await start(`${out}/plant-server.mjs`, [folder, String(KIOSKS), String(READINGS)]);
  try {
    return await driven({ url: server.url, tokens: server.tokens, kiosks: KIOSKS, subjects, works, ...load });
  } finally {
    await stop(server.child);
    rmSync(folder, { recursive: true, force: true });
  }
}

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
/** Three runs of each, raw and ours in turn, so that a slow spell of the machine touches both; the median of each figure counts. */
async function sideBySide(load) {
  const runs = { raw: [], ours: [] };
  for (let run = 0; run < 3; run += 1) for (const which of ['raw', 'ours']) runs[which].push(await underLoad(which, load));
  const middle = (which, figure) => median(runs[which].map((result) => result[figure]));
  return { middle, refused: runs.ours.reduce((sum, { refused }) => sum + refused, 0) };
}

if (!only || only === 'load') {
  const paced = await sideBySide({ seconds: 8, perSecond: 1, inFlight: null });
  const p99 = paced.middle('ours', 'p99') / paced.middle('raw', 'p99');
  report('200 kiosks, one reading a second each: socket to another kiosk, p50', `${paced.middle('ours', 'p50').toFixed(2)} ms`, `${paced.middle('raw', 'p50').toFixed(2)} ms`, (paced.middle('ours', 'p50') / paced.middle('raw', 'p50')).toFixed(2), null, null);
  report('the same, p99', `${paced.middle('ours', 'p99').toFixed(2)} ms`, `${paced.middle('raw', 'p99').toFixed(2)} ms`, p99.toFixed(2), '≤ 1.7', p99 <= 1.7);
  const full = await sideBySide({ seconds: 6, perSecond: null, inFlight: 2 });
  const share = full.middle('ours', 'perSecond') / full.middle('raw', 'perSecond');
  const fullP99 = full.middle('ours', 'p99') / full.middle('raw', 'p99');
  report('at saturation: acknowledged readings a second', full.middle('ours', 'perSecond').toFixed(0), full.middle('raw', 'perSecond').toFixed(0), share.toFixed(2), '≥ 0.6', share >= 0.6);
  report('at saturation: socket to another kiosk, p99', `${full.middle('ours', 'p99').toFixed(1)} ms`, `${full.middle('raw', 'p99').toFixed(1)} ms`, fullP99.toFixed(2), '≤ 1.7', fullP99 <= 1.7);
  if (paced.refused + full.refused > 0) report('readings refused under load', String(paced.refused + full.refused), null, null, '0', false);
}
if (!only || only === 'documents') for (const row of await measureDocuments()) report(...row);
if (!only || only === 'start') for (const row of await measureStart()) report(...row);
if (!only || only === 'browser') {
  for (const row of await measureFirstLoad()) report(...row);
  const folder = mkdtempSync(join(tmpdir(), 'gatehand-bench-'));
  const server = await start(`${out}/plant-server.mjs`, [folder, '1', '2100', '2000']);
  try {
    for (const row of await measureLongTraveller(server)) report(...row);
  } finally {
    await stop(server.child);
    rmSync(folder, { recursive: true, force: true });
  }
}

const { version } = JSON.parse(readFileSync('package.json', 'utf8'));
mkdirSync('tests/results', { recursive: true });
writeFileSync('tests/results/bench.json', JSON.stringify({ version, node: process.version, rows }, null, 2));
const missed = rows.filter(({ met }) => met === false).length;
console.log(`\n${rows.filter(({ met }) => met === true).length} aims met, ${missed} missed. Written to tests/results/bench.json.`);
process.exitCode = missed === 0 ? 0 : 1;
