// npm test: type check, build, every test; installs what it lacks; the last line counts them all.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { resolve } from 'node:path';
import { provideTools } from './run/provide-tools.mjs';

const results = 'tests/results';
rmSync(results, { recursive: true, force: true });
mkdirSync(results, { recursive: true });

const counts = { passed: 0, failed: 0, skipped: 0 };

/** Runs a program with its output shown; true when it ended well. */
function run(title, command, args, env = {}) {
  console.log(`\n── ${title}`);
  const { status, error } = spawnSync(command, args, { stdio: 'inherit', env: { ...process.env, ...env } });
  if (error) console.error(error.message);
  return status === 0;
}

/** A step that is no test counts as one failed test when it fails, so that the last line cannot hide it. */
function step(title, command, args) {
  if (run(title, command, args)) return;
  counts.failed += 1;
  finish();
}

function readCounts(file, read) {
  try {
    return read(JSON.parse(readFileSync(file, 'utf8')));
  } catch (error) {
    console.error(`No results in ${file}: ${error.message}`);
    return { passed: 0, failed: 1, skipped: 0 };
  }
}

function add({ passed, failed, skipped }, endedWell) {
  counts.passed += passed;
  counts.failed += endedWell ? failed : Math.max(1, failed);
  counts.skipped += skipped;
}

function finish() {
  const { passed, failed, skipped } = counts;
  console.log(`\n${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`);
  process.exit(failed === 0 && passed > 0 ? 0 : 1);
}

const chromium = provideTools();
if (chromium === null) {
  counts.failed += 1;
  finish();
}
step('Type check', 'npx', ['tsc', '--noEmit']);
step('Build', 'npm', ['run', '--silent', 'build']);

const unit = run('Rules, references, server', 'npx', ['vitest', 'run', '--config', 'tests/vitest.config.ts', '--reporter=default', '--reporter=json', `--outputFile.json=${results}/vitest.json`]);
add(readCounts(`${results}/vitest.json`, (it) => ({ passed: it.numPassedTests, failed: it.numFailedTests, skipped: it.numPendingTests + (it.numTodoTests ?? 0) })), unit);

const journeys = run('Journeys in the browser', 'npx', ['playwright', 'test', '--config', 'tests/playwright.config.ts'], { GATEHAND_CHROMIUM: chromium, PLAYWRIGHT_JSON_OUTPUT_FILE: resolve(results, 'journeys.json') });
add(readCounts(`${results}/journeys.json`, ({ stats }) => ({ passed: stats.expected, failed: stats.unexpected + stats.flaky, skipped: stats.skipped })), journeys);

finish();
