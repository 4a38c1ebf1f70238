import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { link, LinkFault, type RefusalText, type Topic } from '../link/index.ts';

/** What a page of a desk has of an answer: nothing yet, the answer (perhaps of before a break), or why there is none. */
export type AskedView<T> =
  | { readonly state: 'none' }
  | { readonly state: 'loading' }
  | { readonly state: 'here'; readonly value: T; /** Why it could not be read again; it may be old. */ readonly old: RefusalText | null }
  | { readonly state: 'faulty'; readonly words: RefusalText };

/** What is read, and what makes it be read again. */
export interface AskedParts<T> {
  /** Reads it; null where there is nothing to read now. A new key means a new answer. */
  readonly key: () => string | null;
  readonly read: (key: string) => Promise<T>;
  readonly topics?: readonly Topic[];
  readonly streams?: (value: T) => readonly string[];
}

/**
 * Keeps what the server answers at hand while an element is on the page, and reads it again when the server says it has changed.
 * What was read before stays in sight while the network is gone.
 */
export class Asked<T> implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #parts: AskedParts<T>;
  #view: AskedView<T> = { state: 'none' };
  #key: string | null = null;
  #round = 0;
  #latest: Promise<void> = Promise.resolve();
  #on = false;
  #endTopics: (() => void) | null = null;
  #watched = '';
  #endWatch: (() => void) | null = null;

  constructor(host: ReactiveControllerHost, parts: AskedParts<T>) {
    this.#host = host;
    this.#parts = parts;
    host.addController(this);
  }

  get view(): AskedView<T> {
    return this.#view;
  }
  /** The answer, where there is one. */
  get value(): T | null {
    return this.#view.state === 'here' ? this.#view.value : null;
  }

  hostConnected(): void {
    this.#on = true;
    const { topics } = this.#parts;
    if (topics !== undefined) this.#endTopics = link.onChanged(topics, () => void this.again());
  }
  hostDisconnected(): void {
    this.#on = false;
    this.#endTopics?.();
    this.#endWatch?.();
    this.#endTopics = this.#endWatch = null;
    this.#watched = '';
    this.#key = null;
    this.#view = { state: 'none' };
  }
  hostUpdate(): void {
    const key = this.#parts.key();
    if (key === this.#key) return;
    this.#key = key;
    this.#view = key === null ? { state: 'none' } : { state: 'loading' };
    if (key !== null) void this.again();
  }

  /** Reads it again; what is in sight stays until the answer comes. */
  async again(): Promise<void> {
    this.#latest = this.#readAgain();
    // Whoever waits for this reading and is overtaken waits for the one that overtook it.
    for (let waited: Promise<void> | null = null; waited !== this.#latest; ) {
      waited = this.#latest;
      await waited;
    }
  }

  async #readAgain(): Promise<void> {
    const key = this.#key;
    if (key === null) return;
    const round = (this.#round += 1);
    const view = await this.#read(key);
    // A later reading, or another subject, has overtaken this one.
    if (round !== this.#round || key !== this.#key || !this.#on) return;
    this.#view = view;
    if (view.state === 'here') this.#watch(view.value);
    this.#host.requestUpdate();
  }

  async #read(key: string): Promise<AskedView<T>> {
    try {
      return { state: 'here', value: await this.#parts.read(key), old: null };
    } catch (error) {
      if (!(error instanceof LinkFault)) throw error;
      return this.#view.state === 'here' ? { ...this.#view, old: error.words } : { state: 'faulty', words: error.words };
    }
  }

  #watch(value: T): void {
    const streams = this.#parts.streams?.(value) ?? [];
    const names = streams.join(' ');
    if (names === this.#watched) return;
    this.#endWatch?.();
    this.#watched = names;
    this.#endWatch = streams.length === 0 ? null : link.watch(streams, () => void this.again());
  }
}
