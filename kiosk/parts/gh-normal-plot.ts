import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { normalPlotDrawing, type NormalPlotWords, type PlotLine, type PlottedReading } from './normal-plot-drawing.ts';
import { partStyles } from './part-styles.ts';
import { Room } from './room.ts';

export type { NormalPlotWords, PlotLine, PlottedReading } from './normal-plot-drawing.ts';

/**
 * Readings on normal probability paper, with the line that normal readings lie along. It draws what it is given and tests nothing.
 * @cssprop --chart-height - height of the drawing, default 260px
 */
@customElement('gh-normal-plot')
export class GhNormalPlot extends LitElement {
  static override styles = [
    partStyles,
    css`
      figure { margin: 0; background: var(--slip); border: var(--rule) solid var(--line-strong); }
      figcaption { padding: 0.4em var(--pad); border-block-end: 3px double var(--line-strong); font-weight: 650; }
      svg { display: block; inline-size: 100%; block-size: var(--chart-height, 260px); }
      .paper { fill: var(--slip); }
      .frame { fill: none; stroke: var(--ink); stroke-width: 1.4; }
      .rung { stroke: var(--line); }
      .limit { stroke: var(--bad); stroke-width: 2; stroke-dasharray: 9 4; }
      .expected { stroke: var(--ink-soft); stroke-width: 2; }
      .reading { fill: var(--slip); stroke: var(--link); stroke-width: 2.6; }
      text { font-family: var(--face-figures); font-size: 13.5px; fill: var(--ink); }
      .axis { font-family: var(--face); fill: var(--ink-soft); }
    `,
  ];
  @property({ attribute: false }) points: readonly PlottedReading[] = [];
  @property({ attribute: false }) line: PlotLine | null = null;
  @property({ attribute: false }) limits: readonly number[] = [];
  /** What the drawing shows, in one sentence above it; it stands for the drawing where that is not seen. */
  @property() caption = '';
  @property({ attribute: false }) words: NormalPlotWords = { value: '', expected: '', show: String };
  readonly #room = new Room(this, 640, 260);

  override render() {
    const { line, points } = this;
    const room = this.#room;
    if (line === null || points.length === 0) return nothing;
    return html`<figure><figcaption>${this.caption}</figcaption>
      <svg viewBox="0 0 ${room.width} ${room.height}" aria-hidden="true">${normalPlotDrawing(points, line, this.limits, this.words, room.width, room.height)}</svg></figure>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-normal-plot': GhNormalPlot;
  }
}
