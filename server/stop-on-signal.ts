import { JournalFault } from './journal/journal-fault.ts';

/** On Ctrl+C or a stop from outside: finishes what was entered, then ends the process. */
export function stopOnSignal(close: () => Promise<void>): void {
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

/** Says why the server could not start, and ends. A fault that its own sentence explains needs no stack beside it. */
export function endWith(fault: unknown): never {
  const isListenFault = fault instanceof Error && 'syscall' in fault && fault.syscall === 'listen';
  console.error(fault instanceof JournalFault || isListenFault ? (fault as Error).message : fault);
  process.exit(1);
}
