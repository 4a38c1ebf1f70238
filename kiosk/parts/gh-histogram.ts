import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { histogramDrawing, type HistogramClass, type HistogramWords } from './histogram-drawing.ts';
import { figureStyles } from './figure-styles.ts';
import { partStyles } from './part-styles.ts';
import { Room } from './room.ts';

export type { HistogramClass, HistogramWords } from './histogram-drawing.ts';

/**
 * Values in classes, with tolerance limits and mean. Its table beside it says the same to readers. It draws what it is given.
 * @cssprop --chart-height - height of the drawing, default 260px
 */
@customElement('gh-histogram')
export class GhHistogram extends LitElement {
  static override styles = [
    partStyles, figureStyles,
    css`
      .bar { fill: var(--slip-under); stroke: var(--link); stroke-width: 1.8; }
      .limit { stroke: var(--bad); stroke-width: 2.2; stroke-dasharray: 9 4; }
      .mean { stroke: var(--ink); stroke-width: 1.6; stroke-dasharray: 2 4; }
      @media print { svg { block-size: 60mm; } :host { break-inside: avoid; } }
    `,
  ];
  @property({ attribute: false }) classes: readonly HistogramClass[] = [];
  @property({ attribute: false }) marks: { readonly lower: number | null; readonly upper: number | null; readonly mean: number } = { lower: null, upper: null, mean: 0 };
  @property() caption = '';
  @property({ attribute: false }) words: HistogramWords = { x: '', y: '', lower: '', upper: '', mean: '', show: String };
  readonly #room = new Room(this, 640, 260);

  override render() {
    if (this.classes.length === 0) return nothing;
    return html`<figure><figcaption>${this.caption}</figcaption><svg aria-hidden="true" focusable="false">${histogramDrawing(this.classes, this.marks, this.words, this.#room)}</svg></figure>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-histogram': GhHistogram;
  }
}
