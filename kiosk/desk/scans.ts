import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Lets an element hear what is scanned anywhere while it is on the page. Whoever takes a scan calls `preventDefault`; one taken before is not for others. */
export class Scans implements ReactiveController {
  readonly #hear: (event: Event) => void;

  constructor(host: ReactiveControllerHost, hear: (event: Event) => void) {
    this.#hear = hear;
    host.addController(this);
  }

  hostConnected(): void {
    document.addEventListener('kiosk-scanned', this.#hear);
  }
  hostDisconnected(): void {
    document.removeEventListener('kiosk-scanned', this.#hear);
  }
}
