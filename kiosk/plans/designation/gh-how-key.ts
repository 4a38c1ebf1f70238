import { LitElement, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { designationDeskWords } from '../../../shared/words/designation-desk.en.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { tell } from '../../parts/tell.ts';
import { whyKeyStyles } from '../compare/why-key-styles.ts';

/**
 * A figure of a designation that opens how it came to be.
 * @fires how-wanted - with `{ asked, name, shown }`
 */
@customElement('gh-how-key')
export class GhHowKey extends LitElement {
  static override shadowRootOptions: ShadowRootInit = { ...LitElement.shadowRootOptions, delegatesFocus: true };
  static override styles = [partStyles, whyKeyStyles];
  /** What is asked: a size's target or its limits. */
  @property() asked = '';
  @property() name = '';
  @property() shown = '';

  override render() {
    const { asked, name, shown } = this;
    return html`<button type="button" aria-label=${designationDeskWords.how.ask(name, shown)} @click=${() => tell(this, 'how-wanted', { asked, name, shown })}><span class="figure">${shown}</span><span class="ask" aria-hidden="true">?</span></button>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-how-key': GhHowKey;
  }
}
