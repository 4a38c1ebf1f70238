import { JournalFault } from './journal/journal-fault.ts';
import { startServer } from './start-server.ts';

const folder = process.env['GATEHAND_DATA'] ?? 'data';
const port = Number(process.env['GATEHAND_PORT'] ?? 8420);
const host = process.env['GATEHAND_HOST'] ?? '0.0.0.0';
const idleMinutes = Number(process.env['GATEHAND_IDLE_MINUTES'] ?? 60);
const trustProxy = process.env['GATEHAND_TRUST_PROXY'] === '1';

function stopOn(close: () => Promise<void>): void {
  let isStopping = false;
  for (const signal of ['SIGTERM', 'SIGINT'] as const) {
    process.on(signal, () => {
      if (isStopping) return;
      isStopping = true;
      console.log('Stopping: what was entered is finished first.');
      void close().then(() => process.exit(0));
    });
  }
}

if (!Number.isInteger(port) || port < 0 || port > 65_535 || !(idleMinutes > 0)) {
  console.error('GATEHAND_PORT must be a port, 0 to 65535, and GATEHAND_IDLE_MINUTES a number of minutes above 0.');
  process.exit(2);
}
try {
  const server = await startServer({ folder, port, host, trustProxy, sessions: { idleMs: idleMinutes * 60_000 } });
  stopOn(() => server.close());
  console.log(`Gatehand is open at ${server.url} (data in ${folder}). Stop with Ctrl+C.`);
} catch (fault) {
  // A fault that its own sentence explains needs no stack beside it.
  console.error(fault instanceof JournalFault || isListenFault(fault) ? fault.message : fault);
  process.exit(1);
}

function isListenFault(fault: unknown): fault is Error {
  return fault instanceof Error && 'syscall' in fault && fault.syscall === 'listen';
}
