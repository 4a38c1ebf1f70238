import { spawnSync } from 'node:child_process';
import { build } from 'esbuild';

const WORKS = {
  'look-up': '312 plan look-ups by lot size and AQL, one after another',
  'oc-lot': 'curves of a double plan at 200 qualities, one lot of 10,000',
  'oc-process': 'curves of a double plan at 200 qualities, a process',
  'design-lot': 'six smallest plans through two points, a lot of 10,000',
  'design-process': 'six smallest plans through two points, a process',
  scheme: 'a whole scheme with switching at 50 qualities',
};
const OTHERS = [
  { name: 'R', command: 'Rscript', probe: ['--version'], script: ['tests/speed/scripts/sampling.R'], install: 'r-base-core' },
  { name: 'scipy', command: 'python3', probe: ['-c', 'import scipy'], script: ['tests/speed/scripts/sampling.py'], install: 'python3-scipy' },
];
const AIM = 0.1;
/** How far apart the sums of the two sides may be, relative, before they have not done the same work. */
const SAME = 1e-9;

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
/** Seconds of this process's own time, garbage collection with it, for one time; seven rounds of 0.1 s or more, as the scripts do. */
function secondsOf(work) {
  const spent = (runs) => {
    const begun = process.cpuUsage();
    for (let run = 0; run < runs; run += 1) work();
    const { user, system } = process.cpuUsage(begun);
    return (user + system) / 1e6;
  };
  const warm = performance.now();
  while (performance.now() - warm < 300) work();
  let runs = 1;
  while (spent(runs) < 0.1) runs *= 2;
  return median(Array.from({ length: 7 }, () => spent(runs) / runs));
}

/** What a script printed: by work, seconds for one time and the sum of its answers; or why there is none. */
function measured({ name, command, probe, script, install }) {
  if (spawnSync(command, probe).status !== 0) return { missing: `${name} is not on this machine (Debian: ${install})` };
  const { status, stdout, stderr } = spawnSync(command, script, { encoding: 'utf8', env: { ...process.env, OPENBLAS_NUM_THREADS: '1', OMP_NUM_THREADS: '1', LC_ALL: 'C' } });
  if (status !== 0) throw new Error(`${script} ended with ${status}: ${stderr}`);
  return { works: Object.fromEntries(stdout.trim().split('\n').map((line) => line.trim().split(/\s+/)).map(([work, seconds, sum]) => [work, { seconds: Number(seconds), sum: Number(sum) }])) };
}

const written = (seconds) => (seconds < 1e-3 ? `${(seconds * 1e6).toFixed(0)} µs` : `${(seconds * 1e3).toFixed(2)} ms`);

/** The sampling engine beside R and scipy, each timing itself in its own process, so that no start is counted. */
export async function measureSampling() {
  await build({ entryPoints: ['tests/speed/sampling-work.ts'], bundle: true, platform: 'node', format: 'esm', target: 'node20', outdir: 'dist/bench', outExtension: { '.js': '.mjs' }, logLevel: 'error' });
  const { works, schemePlans } = await import('../../dist/bench/sampling-work.mjs');
  if (schemePlans.join() !== '80/2/3,80/1/2,32/1/3') throw new Error(`the scripts reckon another scheme than the tables give: ${schemePlans}`);
  const ours = Object.fromEntries(Object.entries(works).map(([work, run]) => [work, { seconds: secondsOf(run), sum: run() }]));
  return OTHERS.flatMap((other) => {
    const { works: theirs, missing } = measured(other);
    if (theirs === undefined) return [[`sampling beside ${other.name}`, `not measured: ${missing}`, null, null, null, null]];
    return Object.entries(WORKS).map(([work, what]) => {
      const [mine, yours] = [ours[work], theirs[work]];
      const alike = Math.abs(mine.sum / yours.sum - 1) <= SAME;
      const ratio = mine.seconds / yours.seconds;
      return [`${what}, beside ${other.name}`, written(mine.seconds), written(yours.seconds), alike ? ratio.toPrecision(2) : 'the answers differ', `≤ ${AIM}`, alike && ratio <= AIM];
    });
  });
}
