import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Watched } from './watched.ts';

/**
 * Keeps an element drawn after a watched value, while the element is on the page.
 * @example readonly #session = new Follow(this, () => link.session); … this.#session.value
 */
export class Follow<T> implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #of: () => Watched<T>;
  #end: (() => void) | null = null;

  /** @param of gives the value to follow; asked again each time the element comes onto the page */
  constructor(host: ReactiveControllerHost, of: () => Watched<T>) {
    this.#host = host;
    this.#of = of;
    host.addController(this);
  }

  get value(): T {
    return this.#of().value;
  }

  hostConnected(): void {
    this.#end = this.#of().follow(() => this.#host.requestUpdate());
  }

  hostDisconnected(): void {
    this.#end?.();
    this.#end = null;
  }
}
