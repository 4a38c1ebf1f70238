// npm run bench: the tool beside the raw building blocks, in one run, on this machine. Figures are ratios; absolute numbers are for orientation only.
import { fork } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import { measureDocuments } from './documents.mjs';
import { measureFirstLoad, measureLongTraveller } from './browser.mjs';
import { measureFeed, PIECES } from './feed.mjs';
import { measureSampling } from './sampling.mjs';
import { measureStart } from './start.mjs';

const only = process.argv[2];
const { version, scripts } = JSON.parse(readFileSync('package.json', 'utf8'));
/** Node's flags of `npm start`, for every process that is measured. */
const FLAGS = [...scripts.start.matchAll(/ (--\S+)/g)].map(([, flag]) => flag);
const out = 'dist/bench';
mkdirSync(out, { recursive: true });
await build({ entryPoints: ['tests/speed/plant-server.ts', 'tests/speed/feed-server.ts', 'tests/speed/document-makers.ts'], bundle: true, platform: 'node', format: 'esm', target: 'node20', packages: 'external', outdir: out, outExtension: { '.js': '.mjs' }, logLevel: 'error' });

const rows = [];
const report = (what, ours, raw, ratio, aim, met) => {
  rows.push({ what, ours, raw, ratio, aim, met });
  console.log(`${met === null ? '      ' : met ? 'met   ' : 'MISSED'}  ${what}: ${ours}${raw ? `, raw ${raw}` : ''}${ratio ? `, ratio ${ratio}` : ''}${aim ? `  (aim ${aim})` : ''}`);
};

/** Starts a module as a process of its own and waits for its first message. */
function start(module, args) {
  const child = fork(module, args, { stdio: ['ignore', 'inherit', 'inherit', 'ipc'], execArgv: FLAGS });
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
const cpuOf = (child) => new Promise((resolve) => {
  child.once('message', ({ cpu }) => resolve(cpu));
  child.send('cpu');
});
const microseconds = (before, after) => after.user + after.system - before.user - before.system;

/** Lets the load run against a server, and adds what the counted part cost each process, in microseconds of its own time a reading. */
async function driven(server, order) {
  const child = fork('tests/speed/drive.mjs', [], { stdio: ['ignore', 'inherit', 'inherit', 'ipc'], execArgv: FLAGS });
  const marks = [];
  const result = new Promise((resolve) => {
    child.on('message', (message) => (message.mark === true ? marks.push({ load: message.cpu, server: cpuOf(server) }) : resolve(message)));
  });
  child.send(order);
  const answer = await result;
  child.kill('SIGTERM');
  if (answer.error) throw new Error(answer.error);
  const [before, after] = marks;
  return { ...answer, cpuUs: microseconds(await before.server, await after.server) / answer.acknowledged, loadCpuUs: microseconds(before.load, after.load) / answer.acknowledged };
}

const KIOSKS = 200;
/** Kiosks that watch each lot, beside the one that works on it. */
const WATCHERS = 5;
const READINGS = 3000;
const works = Array.from({ length: READINGS / 100 }, (_, at) => ({ gate: 'speed', characteristic: `c${at}`, n: 100, value: 4.75 }));
const subjects = Array.from({ length: KIOSKS }, (_, at) => `lot:B${String(at).padStart(4, '0')}`);

/** Starts a server on a fresh folder. */
async function open(which) {
  const folder = mkdtempSync(join(tmpdir(), 'gatehand-bench-'));
  const server = which === 'raw' ? await start('tests/speed/raw-server.mjs', [folder]) : await start(`${out}/plant-server.mjs`, [folder, String(KIOSKS), String(READINGS)]);
  const close = async () => {
    await stop(server.child);
    rmSync(folder, { recursive: true, force: true });
  };
  return { server, close };
}

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
/**
 * Many short rounds, raw and ours in turn and each first as often as the other, so that a slow spell of the machine touches both and decides
 * nothing; the median of each figure counts. Both servers stand open all the time; the one whose turn it is not has nothing to do.
 */
async function sideBySide({ rounds, warmUp, ...load }) {
  const places = { raw: await open('raw'), ours: await open('ours') };
  const runs = { raw: [], ours: [] };
  let from = 0;
  try {
    for (let round = 0; round < rounds; round += 1) {
      for (const which of round % 2 === 0 ? ['raw', 'ours'] : ['ours', 'raw']) {
        const { child, url, tokens } = places[which].server;
        runs[which].push(await driven(child, { url, tokens, kiosks: KIOSKS, watchers: WATCHERS, subjects, works, from, warmUp, ...load }));
      }
      from += READINGS / rounds;
    }
  } finally {
    await Promise.all([places.raw.close(), places.ours.close()]);
  }
  const figures = (figure) => {
    const [ours, raw] = [median(runs.ours.map((result) => result[figure])), median(runs.raw.map((result) => result[figure]))];
    return { ours, raw, ratio: ours / raw };
  };
  return { figures, refused: runs.ours.reduce((sum, { refused }) => sum + refused, 0) };
}
const reportFigure = (what, { ours, raw, ratio }, unit, digits, aim, isMet) => report(what, `${ours.toFixed(digits)}${unit}`, `${raw.toFixed(digits)}${unit}`, ratio.toFixed(2), aim, isMet === null ? null : isMet(ratio));

/** Latency and the servers' own processor time under one kind of load. */
async function measureLoad(name, load) {
  const { figures, refused } = await sideBySide(load);
  if (load.perSecond === null) reportFigure(`${name}: acknowledged readings a second`, figures('perSecond'), '', 0, '≥ 0.6', (ratio) => ratio >= 0.6);
  reportFigure(`${name}: socket to another kiosk, p50`, figures('p50'), ' ms', 2, null, null);
  reportFigure(`${name}: socket to another kiosk, p99`, figures('p99'), ' ms', 2, '≤ 1.7', (ratio) => ratio <= 1.7);
  reportFigure(`${name}: server's processor time a reading`, figures('cpuUs'), ' µs', 0, null, null);
  reportFigure(`${name}: the load's own processor time a reading`, figures('loadCpuUs'), ' µs', 0, null, null);
  if (refused > 0) report(`${name}: readings refused`, String(refused), null, null, 'none', false);
}

if (!only || only === 'load' || only === 'paced') await measureLoad('200 kiosks at one reading a second each', { rounds: 10, warmUp: 1, seconds: 3, perSecond: 1, inFlight: null });
if (!only || only === 'load' || only === 'saturation') await measureLoad('at saturation', { rounds: 5, warmUp: 2, seconds: 4, perSecond: null, inFlight: 2 });
if (!only || only === 'feed') {
  const folder = mkdtempSync(join(tmpdir(), 'gatehand-bench-'));
  const server = await start(`${out}/feed-server.mjs`, [folder, '50', String(PIECES)]);
  try {
    for (const row of await measureFeed(server)) report(...row);
  } finally {
    await stop(server.child);
    rmSync(folder, { recursive: true, force: true });
  }
}
if (!only || only === 'sampling') for (const row of await measureSampling()) report(...row);
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

mkdirSync('tests/results', { recursive: true });
writeFileSync('tests/results/bench.json', JSON.stringify({ version, node: process.version, rows }, null, 2));
const missed = rows.filter(({ met }) => met === false).length;
console.log(`\n${rows.filter(({ met }) => met === true).length} aims met, ${missed} missed. Written to tests/results/bench.json.`);
process.exitCode = missed === 0 ? 0 : 1;
