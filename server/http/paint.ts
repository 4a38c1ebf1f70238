import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import { paintTask, type PaintTask } from './paint-task.ts';

interface Waiting { readonly resolve: (bytes: Uint8Array) => void; readonly reject: (why: Error) => void }
interface Painted { readonly number: number; readonly bytes?: Uint8Array; readonly fault?: { readonly name: string; readonly message: string } }

/** What could not be painted, with the painter's own reason, such as a character the typeface lacks. */
export class NotPaintable extends Error {
  constructor(why: string) { super(why); this.name = 'NotPaintable'; }
}

/**
 * Makes PDFs beside the main thread: a certificate takes some 50 ms, the first one a quarter of a second, and meanwhile readings come in.
 * Without the built worker file beside it (in tests that run the sources) it paints where it is.
 */
export class Painter {
  readonly #file = new URL('./paint-worker.js', import.meta.url);
  readonly #waiting = new Map<number, Waiting>();
  #worker: Worker | null = null;
  #count = 0;

  async paint(task: PaintTask): Promise<Uint8Array> {
    if (!existsSync(fileURLToPath(this.#file))) return paintTask(task).catch((fault: unknown) => { throw asNotPaintable(fault); });
    const number = (this.#count += 1);
    return new Promise((resolve, reject) => {
      this.#waiting.set(number, { resolve, reject });
      this.#atWork().postMessage({ number, task });
    });
  }

  async close(): Promise<void> {
    await this.#worker?.terminate();
  }

  #atWork(): Worker {
    if (this.#worker !== null) return this.#worker;
    const worker = new Worker(this.#file);
    worker.unref();
    worker.on('message', ({ number, bytes, fault }: Painted) => {
      const waiting = this.#waiting.get(number);
      this.#waiting.delete(number);
      if (bytes !== undefined) waiting?.resolve(bytes);
      else waiting?.reject(asNotPaintable(fault));
    });
    worker.on('error', (fault) => this.#lost(fault));
    worker.on('exit', () => this.#lost(new Error('the painter stopped')));
    this.#worker = worker;
    return worker;
  }

  /** Whoever waits is told; the next one gets a new worker. */
  #lost(fault: Error): void {
    this.#worker = null;
    for (const { reject } of this.#waiting.values()) reject(fault);
    this.#waiting.clear();
  }
}

/** A fault of what was to be painted, told apart from a fault of the painter. */
function asNotPaintable(fault: unknown): Error {
  const { name, message } = fault instanceof Error ? fault : isNamed(fault) ? fault : { name: '', message: String(fault) };
  return name === 'OutsideDomain' ? new NotPaintable(message) : new Error(message);
}
function isNamed(fault: unknown): fault is { readonly name: string; readonly message: string } {
  return typeof fault === 'object' && fault !== null && 'name' in fault && 'message' in fault;
}
