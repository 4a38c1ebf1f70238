import { startServer } from './start-server.ts';
import { endWith, stopOnSignal } from './stop-on-signal.ts';

const folder = process.env['GATEHAND_DATA'] ?? 'data';
const port = Number(process.env['GATEHAND_PORT'] ?? 8420);
const host = process.env['GATEHAND_HOST'] ?? '0.0.0.0';
const idleMinutes = Number(process.env['GATEHAND_IDLE_MINUTES'] ?? 60);
const trustProxy = process.env['GATEHAND_TRUST_PROXY'] === '1';

if (!Number.isInteger(port) || port < 0 || port > 65_535 || !(idleMinutes > 0)) {
  console.error('GATEHAND_PORT must be a port, 0 to 65535, and GATEHAND_IDLE_MINUTES a number of minutes above 0.');
  process.exit(2);
}
try {
  const server = await startServer({ folder, port, host, trustProxy, sessions: { idleMs: idleMinutes * 60_000 } });
  stopOnSignal(() => server.close());
  console.log(`Gatehand is open at ${server.url} (data in ${folder}). Stop with Ctrl+C.`);
} catch (fault) {
  endWith(fault);
}
