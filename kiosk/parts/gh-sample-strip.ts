import { LitElement, css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { partStyles } from './part-styles.ts';
import { Room } from './room.ts';
import { stripDrawing, type StripPiece } from './strip-drawing.ts';
import type { StripLimits } from './strip-scale.ts';

export type { StripPiece } from './strip-drawing.ts';
export type { StripLimits, StripLine } from './strip-scale.ts';

/** Caption and column heads of the strip's table. */
export interface StripWords {
  readonly caption: string;
  readonly piece: string;
  readonly value: string;
  readonly standing: string;
}

/**
 * A sample as a strip of its readings against the limits, with the same in a table for readers. Where a reading stands is told to it.
 * @cssprop --strip-height - height of the drawing, default 230px at the bench
 */
@customElement('gh-sample-strip')
export class GhSampleStrip extends LitElement {
  static override styles = [
    partStyles,
    css`
      figure { margin: 0; position: relative; }
      figcaption { display: flex; padding-block-end: 0.25em; }
      svg { display: block; inline-size: 100%; block-size: var(--strip-height, 230px); overflow: visible; }
      .sheet { fill: var(--slip); }
      .frame { fill: none; stroke: var(--line-strong); stroke-width: 1; }
      .rung { stroke: var(--line); stroke-width: 1; }
      .beyond { fill: url(#hatch); }
      .hatch { stroke: var(--line); stroke-width: 2.5; }
      .guarded { fill: url(#dots); }
      .dot { fill: var(--line-strong); }
      .wall { stroke: var(--ink); stroke-width: 2.5; }
      .guard { stroke: var(--ink); stroke-width: 1.2; stroke-dasharray: 7 4; }
      .target { stroke: var(--ink-soft); stroke-width: 1.2; stroke-dasharray: 16 4 3 4; }
      text { font-family: var(--face-figures); font-size: var(--strip-text, 15px); fill: var(--ink); }
      .number { fill: var(--ink-soft); }
      .in { fill: var(--ink); }
      .edge { fill: var(--slip); stroke: var(--held); stroke-width: 2; }
      .half { fill: var(--held); }
      .out { fill: var(--slip); stroke: var(--bad); stroke-width: 2.8; stroke-linejoin: miter; }
      .outside { fill: var(--bad); font-weight: 700; stroke: var(--slip); stroke-width: 4px; paint-order: stroke; }
      .next { fill: var(--slip-under); stroke: var(--link); stroke-width: 2.5; }
      .pointer { fill: var(--link); }
      .missing { fill: none; stroke: var(--ink-soft); stroke-width: 2; }
      .box { stroke-dasharray: 4 3; }
      table { border-collapse: collapse; margin-block-start: 0.6em; }
      th, td { text-align: start; padding: 0.15em 1em 0.15em 0; border-block-end: var(--rule) solid var(--line); }
      td.figure { text-align: end; }
    `,
  ];
  @property({ attribute: false }) pieces: readonly StripPiece[] = [];
  @property({ attribute: false }) limits: StripLimits = { lower: null, upper: null, guardLower: null, guardUpper: null, target: null };
  @property({ attribute: false }) words: StripWords = { caption: '', piece: '', value: '', standing: '' };
  @property({ type: Boolean, attribute: 'show-table' }) showTable = false;
  readonly #room = new Room(this, 720, 230);

  override render() {
    const { pieces, limits, words } = this;
    const room = this.#room;
    const longest = Math.max(0, ...Object.values(limits).map((line) => line?.text.length ?? 0));
    return html`<figure>
      <figcaption class="printed" aria-hidden="true">${words.caption}</figcaption>
      <svg aria-hidden="true" focusable="false">${stripDrawing(pieces, limits, { ...room, margin: longest === 0 ? 1 : longest * 9.2 + 14 })}</svg>
      <div class=${this.showTable ? '' : 'unseen'}><table>
        <caption class="unseen">${words.caption}</caption>
        <thead><tr><th scope="col">${words.piece}</th><th scope="col">${words.value}</th><th scope="col">${words.standing}</th></tr></thead>
        <tbody>
          ${pieces.map(({ label, text, standingWord }) => html`<tr><th scope="row" class="figure">${label}</th><td class="figure">${text}</td><td>${standingWord}</td></tr>`)}
        </tbody>
      </table></div>
    </figure>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-sample-strip': GhSampleStrip;
  }
}
