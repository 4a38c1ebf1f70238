import { LitElement, css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { carrierDrawing, carrierSize, type Carrier, type CarrierShape } from './carrier-drawing.ts';
import { partStyles } from './part-styles.ts';

export type { Carrier, CarrierShape } from './carrier-drawing.ts';

/** Caption of the map and names for what its drawing shows. */
export interface TrayMapWords {
  readonly caption: string;
  readonly place: string;
  readonly row: string;
  readonly column: string;
  readonly take: string;
}

/** Which places the sample is taken from, drawn and in words; prints as it stands. */
@customElement('gh-tray-map')
export class GhTrayMap extends LitElement {
  static override styles = [
    partStyles,
    css`
      figure { margin: 0; }
      .caption { display: flex; flex-wrap: wrap; gap: 0.2em 1.4em; align-items: center; padding-block-end: 0.4em; }
      .caption strong { font-size: var(--text); color: var(--ink); }
      .legend { display: inline-flex; gap: 0.4em; align-items: center; }
      .legend svg { inline-size: 1.2em; block-size: 1.2em; }
      .carriers { display: flex; flex-wrap: wrap; gap: var(--pad) calc(2 * var(--pad)); }
      .carrier { max-inline-size: 100%; }
      .carrier svg { display: block; max-inline-size: 100%; block-size: auto; }
      .name { font-family: var(--face-figures); font-weight: 700; }
      .tray { fill: var(--slip); stroke: var(--line-strong); stroke-width: 2; }
      .place { fill: none; stroke: var(--line-strong); stroke-width: 1; }
      .take { fill: var(--link-ground); stroke: var(--link-ground); stroke-width: 1.5; }
      .order { fill: var(--on-link); font-weight: 700; }
      text { font-family: var(--face-figures); font-size: 14.5px; }
      .index { fill: var(--ink-soft); }
      ol { list-style: none; display: flex; flex-wrap: wrap; gap: 0.1em 1.6em; padding-block-start: 0.5em; }
      @media print {
        .carrier { break-inside: avoid; }
        .take { fill: #000; }
        .order { fill: #fff; }
      }
    `,
  ];
  @property({ reflect: true }) shape: CarrierShape = 'tray';
  @property({ attribute: false }) carriers: readonly Carrier[] = [];
  @property({ attribute: false }) words: TrayMapWords = { caption: '', place: '', row: '', column: '', take: '' };
  @property({ attribute: false }) list: readonly string[] = [];

  override render() {
    const { words, shape } = this;
    return html`<figure>
      <figcaption class="caption printed">
        <strong>${words.caption}</strong>
        <span class="legend"><svg viewBox="0 0 20 20" aria-hidden="true"><path class="take" d="M4 2h12l2 2v12l-2 2H4l-2-2V4z" /></svg>${words.take}</span>
        <span>${words.row} ↓</span><span>${words.column} →</span>
      </figcaption>
      <div class="carriers" aria-hidden="true">
        ${this.carriers.map((carrier) => {
          const { width, height } = carrierSize(carrier, shape);
          return html`<div class="carrier">
            <span class="name">${words.place} ${carrier.name}</span>
            <svg viewBox="0 0 ${width} ${height}" width=${width} height=${height}>${carrierDrawing(carrier, shape)}</svg>
          </div>`;
        })}
      </div>
      <ol class="figure">
        ${this.list.map((line) => html`<li>${line}</li>`)}
      </ol>
    </figure>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-tray-map': GhTrayMap;
  }
}
