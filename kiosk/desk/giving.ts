import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Command } from '../../shared/traveller/index.ts';
import { link, type AnyRefusal, type GiveOptions, type Outcome, type RefusalText } from '../link/index.ts';

/** A refusal with its words, as it is shown. */
export interface ShownRefusal {
  /** Which key's press was refused. */
  readonly key: string;
  readonly refusal: AnyRefusal;
  readonly words: RefusalText;
}

/** Gives an element's commands one at a time and keeps the last refusal in sight until the next press. */
export class Giving implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  #busy: string | null = null;
  #refused: ShownRefusal | null = null;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostDisconnected(): void {
    this.#refused = null;
  }

  /** The key whose command is under way. */
  get busy(): string | null {
    return this.#busy;
  }
  get refused(): ShownRefusal | null {
    return this.#refused;
  }

  /** Takes the refusal off the screen. */
  forget(): void {
    this.#refused = null;
    this.#host.requestUpdate();
  }

  /**
   * Gives a command unless another is under way.
   * @param key names the press, so that its key can show that it is busy
   * @returns what was written, or null where nothing was
   */
  async give(key: string, command: Command, options: GiveOptions = {}): Promise<Extract<Outcome, { state: 'acknowledged' | 'kept' }> | null> {
    if (this.#busy !== null) return null;
    this.#busy = key;
    this.#refused = null;
    this.#host.requestUpdate();
    const outcome = await link.give(command, options);
    this.#busy = null;
    this.#refused = outcome.state === 'refused' ? { key, refusal: outcome.refusal, words: outcome.words } : null;
    this.#host.requestUpdate();
    return outcome.state === 'refused' ? null : outcome;
  }
}
