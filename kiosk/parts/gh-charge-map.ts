import { LitElement, css, html, nothing, svg, unsafeCSS } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { CELL, cellShape, levelOutline, type MapLevelDrawing } from './charge-map-drawing.ts';
import { partStyles } from './part-styles.ts';
import { tell } from './tell.ts';

export type { MapCell, MapLevelDrawing } from './charge-map-drawing.ts';
export { ringCells } from './charge-map-drawing.ts';

const MOST_COLUMNS = 40;
const widths = unsafeCSS(Array.from({ length: MOST_COLUMNS }, (_, at) => `.w${at + 1} { inline-size: calc(${at + 1} * var(--cell-size, calc(15.5 * var(--true-mm, 1mm)))); }`).join('\n'));

/**
 * The inside of a furnace or coating plant, level by level from the top, with what lies on each cell. With `open` the cells are keys: a finger,
 * Enter or Space puts a lot on or takes it off; Tab goes from level to level, arrow keys from cell to cell.
 * @fires cell-tapped - with `{ level, position }`, both from 1
 * @cssprop --cell-size - width of a cell, default 15.5 true millimetres
 */
@customElement('gh-charge-map')
export class GhChargeMap extends LitElement {
  static override styles = [partStyles, widths, css`
    :host { display: block; }
    /* Only keys need a finger's room. */
    :host(:not([open])) { --cell-size: calc(10 * var(--true-mm, 1mm)); }
    .levels { display: flex; flex-wrap: wrap; gap: var(--pad) calc(1.6 * var(--pad)); align-items: start; }
    figure { margin: 0; }
    figcaption { font-family: var(--face-figures); font-weight: 700; padding-block-end: 0.2em; }
    svg.level { display: block; block-size: auto; max-inline-size: 100%; overflow: visible; }
    .tray { fill: var(--slip); stroke: var(--line-strong); stroke-width: 2; }
    .hub { fill: none; stroke: var(--line-strong); stroke-width: 1.4; stroke-dasharray: 4 4; }
    .place { fill: var(--slip-under); stroke: var(--line-strong); stroke-width: 1.6; }
    .held { fill: var(--slip); stroke: var(--ink); stroke-width: 2.6; }
    .chosen { fill: var(--link-ground); stroke: var(--link-ground); }
    .near { fill: none; stroke: var(--held); stroke-width: 2.6; stroke-dasharray: 5 3; }
    .failed { stroke: var(--bad); stroke-width: 4; fill: none; stroke-linecap: round; }
    .test { fill: var(--ink); } .test.on { fill: var(--on-link); }
    text { font-family: var(--face-figures); font-size: 15px; fill: var(--ink-soft); pointer-events: none; }
    .mark { font-size: 23px; font-weight: 700; fill: var(--ink); } .mark.on { fill: var(--on-link); }
    .key { cursor: pointer; }
    .key:focus-visible { outline: none; }
    .key:focus-visible .place { stroke: var(--focus); stroke-width: 5; }
    .legend { display: flex; flex-wrap: wrap; gap: 0.2em 1.6em; color: var(--ink-soft); padding-block-start: 0.5em; }
    .legend span { display: inline-flex; gap: 0.5em; align-items: center; }
    .legend svg { inline-size: 22px; block-size: 22px; }
    .lots { list-style: none; padding: 0; display: grid; gap: 0.2em; padding-block-start: 0.5em; }
    .lots b { font-family: var(--face-figures); display: inline-block; min-inline-size: 1.4em; }
    @media print { figure { break-inside: avoid; } }
  `];
  @property({ attribute: false }) levels: readonly MapLevelDrawing[] = [];
  @property({ type: Boolean, reflect: true }) open = false;
  /** The cell of each level that Tab comes to: the one that had the focus last. */
  @state() private cursor: Readonly<Record<number, number>> = {};
  /** The lots by letter, each with what is to be said of it. */
  @property({ attribute: false }) lots: readonly { readonly mark: string; readonly text: string }[] = [];
  @property({ attribute: false }) words: { readonly caption: string; readonly test: string; readonly failed: string; readonly near: string } = { caption: '', test: '', failed: '', near: '' };

  override render() {
    const { words } = this;
    const any = (what: 'test' | 'failed' | 'near'): boolean => this.levels.some(({ cells }) => cells.some((cell) => cell[what]));
    return html`<div role="group" aria-label=${words.caption}>
      <div class="levels">${this.levels.map((level, at) => html`<figure><figcaption>${level.name}</figcaption>${this.#level(level, at + 1)}</figure>`)}</div>
      ${this.lots.length === 0 ? nothing : html`<ul class="lots figure">${this.lots.map(({ mark, text }) => html`<li><b>${mark}</b> ${text}</li>`)}</ul>`}
      <div class="legend printed">
        ${any('test') ? html`<span><svg viewBox="0 0 22 22" aria-hidden="true"><path class="test" d="M4 5h14l-7 13z" /></svg>${words.test}</span>` : nothing}
        ${any('failed') ? html`<span><svg viewBox="0 0 22 22" aria-hidden="true"><path class="failed" d="M4 4L18 18M18 4L4 18" /></svg>${words.failed}</span>` : nothing}
        ${any('near') ? html`<span><svg viewBox="0 0 22 22" aria-hidden="true"><rect class="near" x="3" y="3" width="16" height="16" /></svg>${words.near}</span>` : nothing}
      </div></div>`;
  }

  #level(level: MapLevelDrawing, number: number) {
    const { columns, rows, cells } = level;
    const shape = svg`${levelOutline(level)}${cells.map((cell) => (this.open
      ? svg`<g class="key" role="button" tabindex=${(this.cursor[number] ?? 1) === cell.position ? 0 : -1} aria-label=${cell.label} aria-pressed=${cell.mark === '' ? 'false' : 'true'} data-level=${number} data-position=${cell.position} @click=${() => this.#tap(number, cell.position)} @focus=${() => (this.cursor = { ...this.cursor, [number]: cell.position })} @keydown=${(event: KeyboardEvent) => this.#key(event, level, number, cell.position)}>${cellShape(cell, level)}</g>`
      : svg`<g>${cellShape(cell, level)}</g>`))}`;
    return this.open
      ? html`<svg class="level w${columns}" viewBox="0 0 ${columns * CELL} ${rows * CELL}">${shape}</svg>`
      : html`<svg class="level w${columns}" viewBox="0 0 ${columns * CELL} ${rows * CELL}" role="img" aria-label="${level.name}: ${cells.filter(({ mark, test }) => mark !== '' || test).map(({ label }) => label).join('; ')}">${shape}</svg>`;
  }

  #tap(level: number, position: number): void {
    tell(this, 'cell-tapped', { level, position });
  }

  #key(event: KeyboardEvent, { ring, columns }: MapLevelDrawing, level: number, position: number): void {
    const row = ring ? 1 : columns;
    const step = { ArrowRight: 1, ArrowDown: row, ArrowLeft: -1, ArrowUp: -row }[event.key];
    if (event.key === 'Enter' || event.key === ' ') this.#tap(level, position);
    else if (step === undefined) return;
    else this.renderRoot.querySelector<SVGElement>(`[data-level="${level}"][data-position="${position + step}"]`)?.focus();
    event.preventDefault();
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-charge-map': GhChargeMap;
  }
}
