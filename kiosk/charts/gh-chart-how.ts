import { LitElement, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { partStyles } from '../parts/part-styles.ts';
import { tell } from '../parts/tell.ts';
import { whyKeyStyles } from '../plans/compare/why-key-styles.ts';

/**
 * A figure that opens its reason: the whole of it is the key.
 * @fires how-wanted - when it is pressed
 */
@customElement('gh-chart-how')
export class GhChartHow extends LitElement {
  static override shadowRootOptions: ShadowRootInit = { ...LitElement.shadowRootOptions, delegatesFocus: true };
  static override styles = [partStyles, whyKeyStyles];
  /** What the key is called for readers. */
  @property() label = '';
  @property() shown = '';

  override render() {
    return html`<button type="button" aria-label=${this.label} @click=${() => tell(this, 'how-wanted', {})}><span class="figure">${this.shown}</span><span class="ask" aria-hidden="true">?</span></button>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-chart-how': GhChartHow;
  }
}
