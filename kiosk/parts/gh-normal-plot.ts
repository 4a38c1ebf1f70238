import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { normalPlotDrawing, type NormalPlotWords, type PlotLine, type PlottedReading } from './normal-plot-drawing.ts';
import { figureStyles } from './figure-styles.ts';
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
    partStyles, figureStyles,
    css`
      .limit { stroke: var(--bad); stroke-width: 2; stroke-dasharray: 9 4; }
      .expected { stroke: var(--ink-soft); stroke-width: 2; }
      .reading { fill: var(--slip); stroke: var(--link); stroke-width: 2.6; }
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
