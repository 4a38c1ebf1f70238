import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** The same step many times, one after the other, shown as it goes and stoppable between two steps. */
export class Round implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  #now: { readonly done: number; readonly of: number } | null = null;
  #stopped = false;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostDisconnected(): void {
    this.#stopped = true;
  }

  /** How far it has come; null while none is under way. */
  get now(): { readonly done: number; readonly of: number } | null {
    return this.#now;
  }

  /** Ends it after the step under way. */
  stop(): void {
    this.#stopped = true;
  }

  /**
   * Goes through the steps until one says no or somebody stops it.
   * @param step gets the number of the step from 0 and answers whether to go on
   * @returns how many steps were done
   */
  async run(of: number, step: (at: number) => Promise<boolean>): Promise<number> {
    if (this.#now !== null) return 0;
    this.#stopped = false;
    let done = 0;
    while (done < of && !this.#stopped) {
      this.#show({ done, of });
      if (!(await step(done))) break;
      done += 1;
    }
    this.#show(null);
    return done;
  }

  #show(now: { readonly done: number; readonly of: number } | null): void {
    this.#now = now;
    this.#host.requestUpdate();
  }
}
