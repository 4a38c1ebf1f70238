import { LitElement, css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { studiesDeskWords } from '../../../shared/words/studies-desk.en.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { tell } from '../../parts/tell.ts';

/**
 * A figure of a study that opens its reason: the whole of it is the key.
 * @fires study-why - with `{ what, name, shown }`
 */
@customElement('gh-study-why')
export class GhStudyWhy extends LitElement {
  static override shadowRootOptions: ShadowRootInit = { ...LitElement.shadowRootOptions, delegatesFocus: true };
  static override styles = [partStyles, css`
    :host { display: inline-block; font: inherit; }
    button { display: inline-flex; align-items: center; gap: 0.45em; min-block-size: max(28px, var(--target)); font: inherit; font-family: var(--face-figures); font-weight: 650; color: inherit; background: none; border: 0; padding: 0; cursor: pointer; }
    .figure { border-block-end: 2px dotted var(--line-strong); }
    .ask { font-family: var(--face); font-size: 0.75em; font-weight: 700; color: var(--link); border: 1.5px solid currentColor; border-radius: var(--corner); min-inline-size: 1.5em; text-align: center; line-height: 1.35; }
    @media print { .figure { border: 0; } .ask { display: none; } }
  `];
  @property() what = '';
  @property() name = '';
  @property() shown = '';

  override render() {
    const { what, name, shown } = this;
    return html`<button type="button" aria-label=${studiesDeskWords.result.why(name, shown)} @click=${() => tell(this, 'study-why', { what, name, shown })}><span class="figure">${shown}</span><span class="ask" aria-hidden="true">?</span></button>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-study-why': GhStudyWhy;
  }
}
