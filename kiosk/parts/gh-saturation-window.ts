import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { figureStyles } from './figure-styles.ts';
import { partStyles } from './part-styles.ts';
import { Room } from './room.ts';
import { saturationDrawing, type SaturationAxes, type SaturationBand } from './saturation-drawing.ts';

export type { SaturationAxes, SaturationBand } from './saturation-drawing.ts';

/**
 * The window of magnetic saturation of a grade: which way a reading lies. A table beside it says the same for readers.
 * @cssprop --chart-height - height of the drawing, default 205px
 */
@customElement('gh-saturation-window')
export class GhSaturationWindow extends LitElement {
  static override styles = [partStyles, figureStyles, css`
    svg { block-size: var(--chart-height, 205px); }
    .paper, .band.normal { fill: var(--slip); }
    .band.low, .band.high { fill: url(#bars); }
    .band.warnLow, .band.warnHigh { fill: url(#spots); }
    .bar { stroke: var(--line); stroke-width: 2.5; }
    .spot { fill: var(--line-strong); }
    .wall { stroke: var(--ink); stroke-width: 1.6; stroke-dasharray: 5 4; }
    .wall.limit { stroke: var(--bad); stroke-width: 2.4; stroke-dasharray: none; }
    .tick { stroke: var(--ink); }
    text { font-family: var(--face-figures); font-size: 13px; fill: var(--ink); }
    .second { fill: var(--ink-soft); }
    .name { font-family: var(--face); font-weight: 700; stroke: var(--slip); stroke-width: 5px; paint-order: stroke; }
    .name.low, .name.high { fill: var(--bad); }
    .name.normal { fill: var(--good); }
  `];
  @property({ attribute: false }) bands: readonly SaturationBand[] = [];
  @property({ attribute: false }) axes: SaturationAxes | null = null;
  @property() caption = '';
  readonly #room = new Room(this, 760, 205);

  override render() {
    const { axes } = this;
    if (axes === null) return nothing;
    return html`<figure><figcaption>${this.caption}</figcaption>
      <svg aria-hidden="true" focusable="false"><defs>
        <pattern id="bars" width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><line class="bar" x1="0" y1="0" x2="0" y2="9"/></pattern>
        <pattern id="spots" width="9" height="9" patternUnits="userSpaceOnUse"><circle class="spot" cx="2" cy="2" r="1"/></pattern>
      </defs>${saturationDrawing(this.bands, axes, this.#room)}</svg></figure>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-saturation-window': GhSaturationWindow;
  }
}
