import type { LitElement, ReactiveController } from 'lit';

/** The room an element's drawing has on the page, in px, measured as it changes; the element is then drawn again. Until it is measured it is what it was given. */
export class Room implements ReactiveController {
  width: number;
  height: number;
  readonly #host: LitElement;
  readonly #drawing: string;
  #observed: Element | null = null;
  #observer: ResizeObserver | null = null;

  /** @param drawing selector of the drawing in the host's render root */
  constructor(host: LitElement, width: number, height: number, drawing = 'svg') {
    this.#host = host;
    this.width = width;
    this.height = height;
    this.#drawing = drawing;
    host.addController(this);
  }

  hostConnected(): void {
    if (this.#host.hasUpdated) this.#observe();
  }

  hostUpdated(): void {
    this.#observe();
  }

  hostDisconnected(): void {
    this.#observer?.disconnect();
    this.#observer = this.#observed = null;
  }

  #observe(): void {
    const drawing = this.#host.renderRoot.querySelector(this.#drawing);
    if (drawing === null || drawing === this.#observed) return;
    this.#observer?.disconnect();
    this.#observer = new ResizeObserver(([entry]) => {
      if (entry === undefined) return;
      const { width, height } = entry.contentRect;
      if (width <= 0 || height <= 0 || (width === this.width && height === this.height)) return;
      [this.width, this.height] = [width, height];
      this.#host.requestUpdate();
    });
    this.#observer.observe(drawing);
    this.#observed = drawing;
  }
}
