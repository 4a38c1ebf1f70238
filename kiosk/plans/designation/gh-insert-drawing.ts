import { LitElement, css, html, nothing, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { formatDesignation, insertDrawing, INSERT_DRAWING, insertOutline } from '../../../shared/carbide/index.ts';
import type { InsertDesignation } from '../../../shared/carbide/index.ts';
import { designationDeskWords } from '../../../shared/words/designation-desk.en.ts';
import { dimensionTexts } from '../../../shared/words/designation.en.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { pageFormat } from '../rule-text.ts';

const words = designationDeskWords.drawing;

/** The drawing of an insert with its dimension lines. */
@customElement('gh-insert-drawing')
export class GhInsertDrawing extends LitElement {
  static override styles = [partStyles, css`
    :host { background: var(--slip); border: var(--rule) solid var(--line-strong); }
    svg { display: block; inline-size: 100%; block-size: auto; }
    .outline { fill: none; stroke: var(--ink); stroke-width: 0.8; stroke-linejoin: round; }
    .thin { fill: none; stroke: var(--ink-soft); stroke-width: 0.25; }
    .hidden { fill: none; stroke: var(--ink-soft); stroke-width: 0.25; stroke-dasharray: 2 1; }
    .solid { fill: var(--ink-soft); stroke: none; }
    text { font-family: var(--face-figures); font-size: 4.6px; fill: var(--ink); }
    p { padding: var(--pad); border-block-start: var(--rule) solid var(--line); font-size: var(--text-small); color: var(--ink-soft); }
    @media print { :host { break-inside: avoid; } svg { max-block-size: 90mm; } }
  `];
  @property({ attribute: false }) designation: InsertDesignation | null = null;
  @property({ type: Number }) circle: number | null = null;

  override render() {
    const { designation } = this;
    if (designation === null) return nothing;
    const outline = insertOutline(designation, this.circle ?? undefined);
    if (outline === null) return html`<p>${words.none}</p>`;
    const marks = insertDrawing(outline);
    const shown = dimensionTexts(designation, pageFormat(), this.circle ?? undefined);
    const said = marks.flatMap((mark) => (mark.kind === 'text' ? [shown[mark.dimension]] : []));
    return html`<svg viewBox="0 0 ${INSERT_DRAWING.width} ${INSERT_DRAWING.height}" role="img" aria-label=${words.described(formatDesignation(designation), said.join(', '))}>
      ${marks.map((mark) => (mark.kind === 'path'
        ? svg`<path class=${mark.line} d=${mark.data}></path>`
        : svg`<text text-anchor=${mark.anchor} transform="translate(${mark.at.x} ${mark.at.y}) rotate(${mark.turnDeg})">${shown[mark.dimension]}</text>`))}
    </svg><p>${words.note}</p>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-insert-drawing': GhInsertDrawing;
  }
}
