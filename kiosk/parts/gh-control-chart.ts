import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { controlChartDrawing, controlRoom, type ChartedLot, type ControlChartWords } from './control-chart-drawing.ts';
import { keyStyles, partStyles } from './part-styles.ts';
import { Room } from './room.ts';

export type { ChartedLot, ControlChartWords } from './control-chart-drawing.ts';
/** What the chart says besides its drawing. */
export interface ControlChartSays extends ControlChartWords {
  /** Names the chart for readers: what is moved along it. */
  readonly cursor: string; readonly back: string; readonly on: string;
  /** A lot read out: its name, value and limits, and its signal. */
  readonly read: (lot: ChartedLot) => string;
}

/**
 * One line of a control chart: lots in the order made, limits drawn and named, zones, signals by shape and word. A cursor reads a lot out: by
 * touch, or with the arrow keys, Page Up and Down, Home and End. It draws what it is given and judges nothing.
 * @cssprop --chart-height - height of the drawing, default 280px
 */
@customElement('gh-control-chart')
export class GhControlChart extends LitElement {
  static override styles = [
    partStyles,
    keyStyles,
    css`
      :host { display: block; background: var(--slip); border: var(--rule) solid var(--line-strong); container-type: inline-size; }
      .board { touch-action: pan-y; cursor: crosshair; }
      .board:focus-visible { outline-offset: -3px; }
      svg { display: block; inline-size: 100%; block-size: var(--chart-height, 280px); }
      .paper { fill: var(--slip); }
      .frame { fill: none; stroke: var(--ink); stroke-width: 1.4; }
      .rung { stroke: var(--line-strong); stroke-width: 1; }
      .zone { fill: none; stroke: var(--line-strong); stroke-width: 1; stroke-dasharray: 1.5 5; }
      .centre { fill: none; stroke: var(--ink-soft); stroke-width: 1.6; }
      .limit { fill: none; stroke: var(--held); stroke-width: 2; stroke-dasharray: 9 4; }
      .start { stroke: var(--ink-soft); stroke-width: 1.6; stroke-dasharray: 4 3; }
      .base { fill: none; stroke: var(--ink-soft); stroke-width: 1.6; }
      .trail { fill: none; stroke: var(--link); stroke-width: 1.8; stroke-linejoin: round; }
      .lot { fill: var(--link); stroke: var(--slip); stroke-width: 1.2; }
      .signal { fill: var(--bad); stroke: var(--slip); stroke-width: 1.5; }
      .cursor { stroke: var(--focus); stroke-width: 2; stroke-dasharray: 3 3; }
      text { font-family: var(--face-figures); font-size: 13.5px; fill: var(--ink); }
      .axis { font-family: var(--face); fill: var(--ink-soft); paint-order: stroke; stroke: var(--slip); stroke-width: 4px; }
      .called { font-weight: 700; fill: var(--bad); paint-order: stroke; stroke: var(--slip); stroke-width: 3px; }
      .foot { display: grid; grid-template-columns: auto minmax(0, 1fr) auto; align-items: center; gap: var(--gap); padding: calc(0.5 * var(--pad)) var(--pad); border-block-start: 3px double var(--line-strong); }
      .foot .key { min-inline-size: max(40px, var(--target)); min-block-size: max(40px, var(--target)); font-size: var(--text-large); line-height: 1; padding: 0; }
      .now { font-family: var(--face-figures); font-weight: 650; overflow-wrap: anywhere; text-align: center; }
      @media print { .foot { display: none; } svg { block-size: 70mm; } :host { break-inside: avoid; } .cursor { stroke: none; } }
    `,
  ];
  @property({ attribute: false }) lots: readonly ChartedLot[] = [];
  @property({ attribute: false }) says: ControlChartSays = { x: '', y: '', upper: '', lower: '', centre: '', base: '', start: '', signal: '', cursor: '', back: '', on: '', show: String, read: ({ name }) => name };
  /** The lot chosen; null reads the newest. */
  @state() private at: number | null = null;
  readonly #room = new Room(this, 960, 280);

  override render() {
    const { lots, says } = this;
    const at = this.#now();
    const lot = lots[at];
    if (lot === undefined) return nothing;
    const read = says.read(lot);
    return html`<div class="board" role="slider" tabindex="0" aria-label=${says.cursor} aria-valuemin="1" aria-valuemax=${lots.length} aria-valuenow=${at + 1} aria-valuetext=${read} @keydown=${this.#key} @pointerdown=${this.#point}>
        <svg aria-hidden="true" focusable="false">${controlChartDrawing(lots, says, this.#room, at)}</svg>
      </div>
      <div class="foot"><button type="button" class="key" aria-label=${says.back} @click=${() => this.#move(at - 1)}>‹</button><span class="now">${read}</span><button type="button" class="key" aria-label=${says.on} @click=${() => this.#move(at + 1)}>›</button></div>`;
  }

  #now(): number {
    return Math.min(this.at ?? Infinity, this.lots.length - 1);
  }

  readonly #key = (event: KeyboardEvent): void => {
    const [now, last] = [this.#now(), this.lots.length - 1];
    const to = new Map([['ArrowLeft', now - 1], ['ArrowDown', now - 1], ['ArrowRight', now + 1], ['ArrowUp', now + 1], ['PageDown', now - 10], ['PageUp', now + 10], ['Home', 0], ['End', last]]).get(event.key);
    if (to === undefined) return;
    event.preventDefault();
    this.#move(to);
  };

  readonly #point = (event: PointerEvent): void => {
    if (!(event.currentTarget instanceof HTMLElement)) return;
    const { left, width } = controlRoom(this.#room);
    this.#move(Math.floor(((event.clientX - event.currentTarget.getBoundingClientRect().left - left) / width) * this.lots.length));
  };

  #move(to: number): void {
    this.at = Math.min(Math.max(to, 0), this.lots.length - 1);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-control-chart': GhControlChart;
  }
}
