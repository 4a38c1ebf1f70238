import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { driftDrawing, type DriftChartWords, type DriftPicture } from './drift-chart-drawing.ts';
import { partStyles } from './part-styles.ts';
import { Room } from './room.ts';

export type { DriftChartWords, DriftPicture, DriftPoint } from './drift-chart-drawing.ts';

/** Rows of the table beside the drawing; the newest. */
const tableRows = 8;

/**
 * A stream of weights by blocks: their means, the running average, target and limits, and where it leads. A table of the newest blocks stands beside it.
 * @cssprop --chart-height - height of the drawing, default 230px
 */
@customElement('gh-drift-chart')
export class GhDriftChart extends LitElement {
  static override styles = [
    partStyles,
    css`
      figure { margin: 0; background: var(--slip); border: var(--rule) solid var(--line-strong); min-inline-size: 0; }
      figcaption { padding: 0.3em var(--pad); border-block-end: 3px double var(--line-strong); font-weight: 650; }
      svg { display: block; inline-size: 100%; block-size: var(--chart-height, 230px); }
      .paper { fill: var(--slip); }
      .band { fill: var(--slip-under); }
      .frame, .across, .means, .ewma, .ahead, .tick { fill: none; }
      .frame { stroke: var(--ink); stroke-width: 1.4; }
      .across.limit { stroke: var(--bad); stroke-width: 2; stroke-dasharray: 9 4; }
      .across.target { stroke: var(--good); stroke-width: 1.6; }
      .across.control { stroke: var(--line-strong); stroke-width: 1.4; stroke-dasharray: 2 3; }
      .means { stroke: var(--ink-soft); stroke-width: 1.4; }
      .ewma { stroke: var(--link); stroke-width: 3; stroke-linejoin: round; }
      .ahead { stroke: var(--held); stroke-width: 2.6; stroke-dasharray: 7 5; }
      .tick { stroke: var(--line-strong); }
      text { font-family: var(--face-figures); font-size: 13.5px; fill: var(--ink); }
      .axis, .name { font-family: var(--face); fill: var(--ink-soft); }
      .name.limit { fill: var(--bad); }
      .ahead-name { font-weight: 700; fill: var(--ink); stroke: var(--slip); stroke-width: 4px; paint-order: stroke; }
      table { border-collapse: collapse; inline-size: 100%; font-family: var(--face-figures); }
      th, td { text-align: end; padding: 0.1em var(--pad); border-block-start: var(--rule) solid var(--line); font-weight: 400; }
      thead th { font-family: var(--face); color: var(--ink-soft); font-size: var(--text-small); }
    `,
  ];
  @property({ attribute: false }) picture: DriftPicture | null = null;
  @property() caption = '';
  @property({ attribute: false }) words: DriftChartWords & { readonly mean: string; readonly ewma: string } = { piece: '', value: '', limit: '', target: '', control: '', predicted: '', mean: '', ewma: '', write: String, count: String };
  readonly #room = new Room(this, 640, 230);

  override render() {
    const { picture, words } = this;
    const room = this.#room;
    if (picture === null || picture.points.length === 0) return nothing;
    return html`<figure><figcaption>${this.caption}</figcaption>
      <svg viewBox="0 0 ${room.width} ${room.height}" aria-hidden="true">${driftDrawing(picture, words, room.width, room.height)}</svg>
      <table><thead><tr><th scope="col">${words.piece}</th><th scope="col">${words.mean}</th><th scope="col">${words.ewma}</th></tr></thead>
        <tbody>${picture.points.slice(-tableRows).reverse().map(({ piece, mean, ewma }) => html`<tr><th scope="row">${words.count(piece)}</th><td>${words.write(mean)}</td><td>${words.write(ewma)}</td></tr>`)}</tbody></table>
    </figure>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-drift-chart': GhDriftChart;
  }
}
