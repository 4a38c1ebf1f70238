import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { Turns } from './turns.ts';

export type WorkView<T> = { readonly state: 'none' } | { readonly state: 'working'; readonly done: number; readonly all: number } | { readonly state: 'done'; readonly value: T } | { readonly state: 'failed' };
/** Works something out in turns, saying how far it is. */
export type WorkedOut<T> = (turns: Turns, tell: (done: number, all: number) => void) => Promise<T>;

/**
 * Something worked out in the page for an element, anew whenever its key changes. The last result stays in sight until the next is there.
 */
export class Work<T> implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  #key: string | null = null;
  #abort = new AbortController();
  #last: T | null = null;
  view: WorkView<T> = { state: 'none' };

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  /** The newest result, perhaps of the numbers before these. */
  get last(): T | null {
    return this.#last;
  }

  hostConnected(): void {}
  hostDisconnected(): void {
    this.#abort.abort();
    this.#key = null;
    this.view = { state: 'none' };
  }

  /** Begins the work unless the same is under way or done. @param key says what it depends on; null: nothing is wanted */
  want(key: string | null, work: WorkedOut<T>): void {
    if (key === this.#key) return;
    this.#key = key;
    this.#abort.abort();
    this.#abort = new AbortController();
    if (key === null) {
      this.#last = null;
      this.view = { state: 'none' };
      return;
    }
    this.view = { state: 'working', done: 0, all: 1 };
    void this.#run(key, work, new Turns(this.#abort.signal));
  }

  async #run(key: string, work: WorkedOut<T>, turns: Turns): Promise<void> {
    // Begins after the element has drawn what was typed.
    await Promise.resolve();
    try {
      const value = await work(turns, (done, all) => this.#show(key, { state: 'working', done, all }));
      if (key === this.#key) this.#last = value;
      this.#show(key, { state: 'done', value });
    } catch (error) {
      // Overtaken work ends by its signal. Anything else is a fault of ours: said on the page, and loud in the console.
      if (key !== this.#key) return;
      this.#show(key, { state: 'failed' });
      throw error;
    }
  }

  #show(key: string, view: WorkView<T>): void {
    if (key !== this.#key) return;
    this.view = view;
    this.#host.requestUpdate();
  }
}
