const turnMs = 12;

/** Works something out in turns, saying how far it is. */
export type WorkedOut<T> = (turns: Turns, tell: (done: number, all: number) => void) => Promise<T>;

/**
 * Long work in short turns: `breathe` lets messages in once this turn has lasted 12 ms. Work that is no longer wanted ends at its next breath.
 */
export class Turns {
  readonly #signal: AbortSignal;
  #begun = performance.now();

  constructor(signal: AbortSignal) {
    this.#signal = signal;
  }

  /** @throws the signal's reason when the work is no longer wanted */
  async breathe(): Promise<void> {
    this.#signal.throwIfAborted();
    if (performance.now() - this.#begun < turnMs) return;
    await new Promise((on) => setTimeout(on));
    this.#begun = performance.now();
    this.#signal.throwIfAborted();
  }
}
