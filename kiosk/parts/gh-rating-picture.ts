import { LitElement, css, html, svg, type SVGTemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { adhesionDrawing } from './adhesion-drawing.ts';
import { partStyles } from './part-styles.ts';
import { porosityDrawing } from './porosity-drawing.ts';

/** Which drawn reference: a class of adhesion, or a level of porosity with its share of the volume, percent. */
export type RatingPicture =
  | { readonly of: 'adhesion'; readonly step: 0 | 1 | 2 | 3 }
  | { readonly of: 'A' | 'B' | 'C'; readonly step: number; readonly volumePercent: number | null };

/** One drawn reference that a test piece is compared with. It is a picture beside words that say the same. */
@customElement('gh-rating-picture')
export class GhRatingPicture extends LitElement {
  static override styles = [partStyles, css`
    svg { display: block; inline-size: 100%; aspect-ratio: 1; border: var(--rule) solid var(--line-strong); }
    .coat { fill: var(--slip-under); }
    .section { fill: var(--slip); }
    .pore { fill: var(--ink); }
    .indent { fill: var(--calm); stroke: var(--ink); stroke-width: 1.5; }
    .inner { fill: none; stroke: var(--slip); stroke-width: 0.8; opacity: 0.7; }
    .crack { fill: none; stroke: var(--ink); stroke-width: 1.6; stroke-linejoin: round; stroke-linecap: round; }
    .bare { fill: url(#bare); stroke: var(--ink); stroke-width: 1.6; }
    .bare-ground { fill: var(--slip); }
    .bare-line { stroke: var(--ink); stroke-width: 2.2; }
    .rule line { stroke: var(--ink); stroke-width: 2; }
  `];
  @property({ attribute: false }) picture: RatingPicture | null = null;

  override render() {
    return html`<svg viewBox="-100 -100 200 200" aria-hidden="true" focusable="false">${this.#drawing()}</svg>`;
  }

  #drawing(): SVGTemplateResult {
    const { picture } = this;
    if (picture === null) return svg``;
    return picture.of === 'adhesion' ? adhesionDrawing(picture.step) : porosityDrawing(picture.of, picture.step, picture.volumePercent);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-rating-picture': GhRatingPicture;
  }
}
