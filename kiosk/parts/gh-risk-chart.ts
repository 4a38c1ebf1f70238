import { LitElement, css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import './gh-line-key.ts';
import { lineMark, lineStyles } from './line-marks.ts';
import { keyStyles, partStyles } from './part-styles.ts';
import { Room } from './room.ts';
import { chartRoom, riskChartDrawing, type RiskAxes, type RiskLine } from './risk-chart-drawing.ts';
import { tell } from './tell.ts';

export type { RiskAxes, RiskLine, RiskMark } from './risk-chart-drawing.ts';

/** What the chart says besides its lines. */
export interface RiskChartWords {
  /** Names the chart for readers: what is moved along it. */
  readonly cursor: string;
  /** Names of the keys that move the cursor by one point. */
  readonly back: string;
  readonly on: string;
  /** "at 1.5 %". */
  readonly at: (x: string) => string;
  readonly none: string;
  readonly producer: string;
  readonly consumer: string;
}

/**
 * Up to four lines over one axis, each with its dash, mark and letter. A cursor reads every line out: by touch, or with the arrow keys,
 * Page Up and Down, Home and End. It draws what it is given and works nothing out.
 * @fires cursor-moved - with `{ at }`, the point now read
 * @cssprop --chart-height - height of the drawing, default 380px
 */
@customElement('gh-risk-chart')
export class GhRiskChart extends LitElement {
  static override styles = [
    partStyles,
    keyStyles,
    lineStyles,
    css`
      :host { container-type: inline-size; background: var(--slip); border: var(--rule) solid var(--line-strong); }
      .board { touch-action: pan-y; cursor: crosshair; }
      .board:focus-visible { outline-offset: -3px; }
      svg.drawing { display: block; inline-size: 100%; block-size: var(--chart-height, 380px); }
      .paper { fill: var(--slip); }
      .frame { fill: none; stroke: var(--ink); stroke-width: 1.4; }
      .rung { stroke: var(--line); stroke-width: 1; }
      .cursor { stroke: var(--focus); stroke-width: 2; stroke-dasharray: 3 3; }
      .reading { fill: var(--slip); stroke: currentColor; stroke-width: 2.4; }
      .plate { fill: var(--slip); stroke: currentColor; stroke-width: 1.6; }
      text { font-family: var(--face-figures); font-size: 14px; fill: var(--ink); }
      .axis { font-family: var(--face); fill: var(--ink-soft); }
      .letter { font-family: var(--face); font-weight: 700; fill: currentColor; font-size: 15px; }
      .foot { display: grid; grid-template-columns: auto minmax(0, 1fr); gap: var(--gap) calc(2 * var(--pad)); align-items: center; padding: var(--pad); border-block-start: 3px double var(--line-strong); }
      .steps { display: grid; grid-template-columns: auto minmax(7.5em, auto) auto; align-items: center; gap: var(--gap); }
      .steps .key { min-inline-size: max(40px, var(--target)); min-block-size: max(40px, var(--target)); font-size: var(--text-large); line-height: 1; padding: 0; }
      .now { text-align: center; font-family: var(--face-figures); font-weight: 700; font-size: var(--text-large); }
      ul { list-style: none; display: grid; grid-template-columns: repeat(auto-fit, minmax(min(18rem, 100%), 1fr)); gap: 0.1em calc(2 * var(--pad)); }
      li { display: grid; grid-template-columns: auto minmax(0, 1fr) auto; align-items: center; gap: 0.6em; border-block-end: var(--rule) solid var(--line); padding-block: 0.15em; }
      .name { overflow-wrap: anywhere; }
      .value { font-family: var(--face-figures); font-weight: 700; white-space: nowrap; }
      .points { display: flex; flex-wrap: wrap; gap: 0.2em 1.4em; grid-column: 1 / -1; color: var(--ink-soft); font-size: var(--text-small); margin: 0; }
      .points span { display: inline-flex; align-items: center; gap: 0.4em; }
      .points svg { inline-size: 18px; block-size: 18px; color: var(--ink); }
      @container (width < 860px) { .foot { grid-template-columns: minmax(0, 1fr); } .steps { justify-content: start; } }
      @media print { .steps { display: block; } svg.drawing { block-size: 80mm; } :host { break-inside: avoid; } }
    `,
  ];
  @property({ attribute: false }) lines: readonly RiskLine[] = [];
  @property({ attribute: false }) axes: RiskAxes = { points: [], top: 1, x: '', y: '', showX: String, showY: String };
  @property({ attribute: false }) words: RiskChartWords = { cursor: '', back: '', on: '', at: (x) => x, none: '', producer: '', consumer: '' };
  /** Which point is read out. */
  @property({ type: Number }) cursor = 0;
  readonly #room = new Room(this, 960, 380, 'svg.drawing');

  override render() {
    const { lines, axes, words, cursor } = this;
    const now = words.at(axes.showX(axes.points[cursor] ?? 0));
    const shown = ({ values }: RiskLine): string => {
      const value = values[cursor] ?? null;
      return value === null ? words.none : axes.showY(value);
    };
    return html`<div class="board" role="slider" tabindex="0" aria-label=${words.cursor} aria-valuemin="0" aria-valuemax=${Math.max(axes.points.length - 1, 0)} aria-valuenow=${cursor}
        aria-valuetext="${now}: ${lines.map((line) => `${line.letter} ${shown(line)}`).join(', ')}" @keydown=${this.#key} @pointerdown=${this.#point} @pointermove=${this.#slide}>
        <svg class="drawing" aria-hidden="true" focusable="false">${riskChartDrawing(lines, axes, this.#room, cursor)}</svg>
      </div>
      <div class="foot">
        <div class="steps"><button type="button" class="key" aria-label=${words.back} @click=${() => this.#move(cursor - 1)}>‹</button><span class="now">${now}</span><button type="button" class="key" aria-label=${words.on} @click=${() => this.#move(cursor + 1)}>›</button></div>
        <ul>${lines.map((line) => html`<li><gh-line-key letter=${line.letter}></gh-line-key><span class="name">${line.name}</span><span class="value">${shown(line)}</span></li>`)}</ul>
        ${lines.every(({ marks }) => marks.length === 0) ? '' : html`<p class="points"><span>${this.#sample('')}${words.producer}</span><span>${this.#sample('hollow')}${words.consumer}</span></p>`}
      </div>`;
  }

  #sample(kind: 'hollow' | '') {
    return html`<svg viewBox="0 0 18 18" aria-hidden="true"><path class="mark ${kind}" d=${lineMark('A', 9, 9, 6.5)} /></svg>`;
  }

  readonly #key = (event: KeyboardEvent): void => {
    const last = this.axes.points.length - 1;
    const leap = Math.max(1, Math.round(last / 10));
    const to = new Map([['ArrowLeft', this.cursor - 1], ['ArrowDown', this.cursor - 1], ['ArrowRight', this.cursor + 1], ['ArrowUp', this.cursor + 1], ['PageDown', this.cursor - leap], ['PageUp', this.cursor + leap], ['Home', 0], ['End', last]]).get(event.key);
    if (to === undefined) return;
    event.preventDefault();
    this.#move(to);
  };

  readonly #point = (event: PointerEvent): void => {
    if (!(event.currentTarget instanceof HTMLElement)) return;
    const { left, width } = chartRoom(this.#room);
    const share = (event.clientX - event.currentTarget.getBoundingClientRect().left - left) / width;
    this.#move(Math.round(share * (this.axes.points.length - 1)));
  };

  // A pressed finger or mouse takes the cursor along; nothing depends on it, a touch alone reads as well.
  readonly #slide = (event: PointerEvent): void => {
    if (event.buttons !== 0) this.#point(event);
  };

  #move(to: number): void {
    const at = Math.min(Math.max(to, 0), this.axes.points.length - 1);
    if (at === this.cursor || at < 0) return;
    this.cursor = at;
    tell(this, 'cursor-moved', { at });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-risk-chart': GhRiskChart;
  }
}
