// Bundles the server's entry points into dist/server; packages stay where npm put them.
import { existsSync, rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const here = (file) => fileURLToPath(new URL(file, import.meta.url));
const outdir = here('../dist/server');
rmSync(outdir, { recursive: true, force: true });
await build({
  entryPoints: { main: 'main.ts', rebuild: 'rebuild.ts', demo: 'demo.ts', backup: 'backup.ts', walk: 'walk.ts', 'start-server': 'start-server.ts', 'paint-worker': 'http/paint-worker.ts' },
  absWorkingDir: here('.'),
  outdir,
  bundle: true,
  platform: 'node',
  target: 'node20',
  format: 'esm',
  packages: 'external',
  sourcemap: true,
  logLevel: 'warning',
});
if (!existsSync(`${outdir}/main.js`)) process.exit(1);
