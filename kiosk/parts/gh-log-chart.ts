import { LitElement, css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { logChartDrawing, type ChartField, type ChartTick } from './log-chart-drawing.ts';
import { partStyles } from './part-styles.ts';
import { Room } from './room.ts';

export type { ChartField, ChartTick } from './log-chart-drawing.ts';

/**
 * A recorder's curve over time: temperature above and pressure below, the programme's windows as hatched bands, findings as numbered flags. It
 * draws what it is given; what the flags mean stands in the table that the page puts beside it.
 * @cssprop --chart-height - height of the drawing, default 360px
 */
@customElement('gh-log-chart')
export class GhLogChart extends LitElement {
  static override styles = [partStyles, css`
    :host { display: block; background: var(--slip); border: var(--rule) solid var(--line-strong); }
    figure { margin: 0; }
    figcaption { padding: 0.4em var(--pad); border-block-start: var(--rule) solid var(--line); color: var(--ink-soft); display: flex; flex-wrap: wrap; gap: 0.2em 1.6em; }
    figcaption span { display: inline-flex; align-items: center; gap: 0.5em; }
    figcaption svg { inline-size: 34px; block-size: 16px; }
    svg.drawing { display: block; inline-size: 100%; block-size: var(--chart-height, 360px); }
    .paper { fill: var(--slip); }
    .frame { fill: none; stroke: var(--ink); stroke-width: 1.4; }
    .rung { stroke: var(--line); stroke-width: 1; }
    .window { fill: url(#hatch); stroke: var(--link); stroke-width: 1.4; }
    .hatching { stroke: var(--link); stroke-width: 1.2; }
    .ramp { stroke: var(--link); stroke-width: 1.6; stroke-dasharray: 7 5; }
    .stroke { fill: none; stroke: var(--ink); stroke-width: 2; stroke-linejoin: round; }
    .flag line { stroke: var(--bad); stroke-width: 1.6; }
    .flag .foot { fill: var(--bad); }
    .flag .plate { fill: var(--slip); stroke: var(--bad); stroke-width: 2; }
    text { font-family: var(--face-figures); font-size: 14px; fill: var(--ink); }
    .axis { font-family: var(--face); fill: var(--ink-soft); }
    .number { font-weight: 700; fill: var(--ink); }
    .word { font-family: var(--face); fill: var(--bad); font-weight: 650; paint-order: stroke; stroke: var(--slip); stroke-width: 4px; }
    @media print { svg.drawing { block-size: 75mm; } :host { break-inside: avoid; } }
  `];
  @property({ attribute: false }) fields: readonly ChartField[] = [];
  @property({ attribute: false }) time: { readonly title: string; readonly ticks: readonly ChartTick[] } = { title: '', ticks: [] };
  /** Said to readers in place of the drawing. */
  @property() summary = '';
  @property({ attribute: false }) legend: { readonly window: string; readonly ramp: string; readonly flag: string } = { window: '', ramp: '', flag: '' };
  readonly #room = new Room(this, 960, 360, 'svg.drawing');

  override render() {
    const { legend } = this;
    return html`<figure><svg class="drawing" role="img" aria-label=${this.summary}>
        <defs><pattern id="hatch" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><line class="hatching" x1="0" x2="0" y1="0" y2="7" /></pattern></defs>
        ${logChartDrawing(this.fields, this.time, this.#room)}</svg>
      <figcaption>
        <span><svg viewBox="0 0 34 16" aria-hidden="true"><rect class="window" x="1" y="3" width="32" height="10" /></svg>${legend.window}</span>
        <span><svg viewBox="0 0 34 16" aria-hidden="true"><line class="ramp" x1="1" y1="14" x2="33" y2="2" /></svg>${legend.ramp}</span>
        <span><svg viewBox="0 0 34 16" aria-hidden="true"><g class="flag"><path class="plate" d="M8 1h18v8l-9 6l-9 -6z" /></g></svg>${legend.flag}</span>
      </figcaption></figure>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-log-chart': GhLogChart;
  }
}
