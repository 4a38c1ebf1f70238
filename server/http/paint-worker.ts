import { parentPort } from 'node:worker_threads';
import { paintTask, type PaintTask } from './paint-task.ts';

/** The thread that makes PDFs; see paint.ts. */
parentPort?.on('message', ({ number, task }: { readonly number: number; readonly task: PaintTask }) => {
  paintTask(task).then(
    (bytes) => parentPort?.postMessage({ number, bytes }),
    (fault: unknown) => parentPort?.postMessage({ number, fault: fault instanceof Error ? { name: fault.name, message: fault.message } : { name: '', message: String(fault) } }),
  );
});
