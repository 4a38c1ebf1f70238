import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

function freePort() {
  return new Promise((resolve) => {
    const probe = createServer().listen(0, '127.0.0.1', () => {
      const { port } = probe.address();
      probe.close(() => resolve(port));
    });
  });
}

/** Milliseconds from starting the process to its first good answer. */
async function firstAnswer(args, env, path) {
  const port = await freePort();
  const begun = performance.now();
  const child = spawn(process.execPath, args, { env: { ...process.env, ...env, GATEHAND_PORT: String(port), PORT: String(port) }, stdio: 'ignore' });
  try {
    for (;;) {
      try {
        const { ok } = await fetch(`http://127.0.0.1:${port}${path}`);
        if (ok) return performance.now() - begun;
      } catch { /* it does not listen yet */ }
      if (performance.now() - begun > 20_000) throw new Error(`${args.join(' ')} did not answer within 20 s`);
      await new Promise((resolve) => setTimeout(resolve, 5));
    }
  } finally {
    const ended = new Promise((resolve) => child.once('exit', resolve));
    child.kill('SIGTERM');
    await ended;
  }
}

const bare = "import express from 'express'; const app = express(); app.get('/', (_, response) => response.json({ ok: true })); app.listen(Number(process.env.PORT), '127.0.0.1');";
const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

/** Start to first answer of the real, empty server, beside a bare express server. */
export async function measureStart() {
  const ours = [];
  const raw = [];
  for (let run = 0; run < 5; run += 1) {
    const folder = mkdtempSync(join(tmpdir(), 'gatehand-start-'));
    ours.push(await firstAnswer(['dist/server/main.js'], { GATEHAND_DATA: folder, GATEHAND_HOST: '127.0.0.1' }, '/api/health'));
    rmSync(folder, { recursive: true, force: true });
    raw.push(await firstAnswer(['--input-type=module', '--eval', bare], {}, '/'));
  }
  return [['start to first answer', `${median(ours).toFixed(0)} ms`, `${median(raw).toFixed(0)} ms`, (median(ours) / median(raw)).toFixed(2), null, null]];
}
