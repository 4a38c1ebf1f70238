import { LitElement, css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { lotStripDrawing, stripRows, type StripLot, type StripSeverity } from './lot-strip-drawing.ts';
import { partStyles } from './part-styles.ts';
import { Room } from './room.ts';

export type { StripLot, StripSeverity } from './lot-strip-drawing.ts';

/** Caption, and what the bars and the mark mean. */
export interface LotStripWords { readonly caption: string; readonly notAccepted: string; readonly severities: Readonly<Record<StripSeverity, string>> }

/**
 * A run of lots as bars whose height says how hard each was inspected. The same in words is for the page to say: the drawing is for the eye.
 */
@customElement('gh-lot-strip')
export class GhLotStrip extends LitElement {
  static override styles = [
    partStyles,
    css`
      figure { margin: 0; display: grid; gap: 0.5em; }
      svg.drawing { display: block; inline-size: 100%; overflow: visible; }
      .normal { fill: var(--calm); }
      .reduced { fill: var(--slip); stroke: var(--calm); stroke-width: 1.5; }
      .tightened { fill: var(--held-ground); stroke: var(--ink); stroke-width: 1; }
      .discontinued { fill: url(#stopped); stroke: var(--ink-soft); stroke-width: 1; stroke-dasharray: 3 2; }
      .hatch { stroke: var(--ink-soft); stroke-width: 2; }
      .not { fill: var(--slip); stroke: var(--bad); stroke-width: 1.8; }
      .tick, .floor { stroke: var(--ink); stroke-width: 1.2; }
      text { font-family: var(--face-figures); font-size: 12px; fill: var(--ink-soft); }
      ul { list-style: none; display: flex; flex-wrap: wrap; gap: 0.3em 1.4em; }
      li { display: inline-flex; align-items: end; gap: 0.45em; font-size: var(--text-small); }
      li svg { inline-size: 18px; block-size: 46px; margin-block-start: -10px; }
    `,
  ];
  @property({ attribute: false }) lots: readonly StripLot[] = [];
  @property({ attribute: false }) words: LotStripWords = { caption: '', notAccepted: '', severities: { reduced: '', normal: '', tightened: '', discontinued: '' } };
  readonly #room = new Room(this, 900, 120, 'svg.drawing');

  override render() {
    const { severities, notAccepted, caption } = this.words;
    const rows = stripRows(this.lots.length, this.#room.width);
    const sample = (severity: StripSeverity, accepted = true) => html`<svg viewBox="0 0 18 46" aria-hidden="true">${lotStripDrawing([{ severity, accepted }], { perRow: 1, cell: 18 })}</svg>`;
    return html`<figure>
      <figcaption class="printed">${caption}</figcaption>
      <svg class="drawing" aria-hidden="true" focusable="false" height=${rows.height}>${lotStripDrawing(this.lots, rows)}</svg>
      <ul aria-hidden="true">${(['reduced', 'normal', 'tightened', 'discontinued'] as const).map((each) => html`<li>${sample(each)}${severities[each]}</li>`)}<li>${sample('normal', false)}${notAccepted}</li></ul>
    </figure>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-lot-strip': GhLotStrip;
  }
}
