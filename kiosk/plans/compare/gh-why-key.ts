import { LitElement, html, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { planWhyWords } from '../../../shared/words/plan-why.en.ts';
import type { LineLetter } from '../../parts/line-letters.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { tell } from '../../parts/tell.ts';
import type { WhyAsked, WhyKind } from './why-asked.ts';
import { whyKeyStyles } from './why-key-styles.ts';

/**
 * A figure that opens its reason: the whole of it is the key.
 * @fires why-wanted - with what is asked
 */
@customElement('gh-why-key')
export class GhWhyKey extends LitElement {
  static override shadowRootOptions: ShadowRootInit = { ...LitElement.shadowRootOptions, delegatesFocus: true };
  static override styles = [partStyles, whyKeyStyles];
  @property({ attribute: false }) asked: WhyAsked | null = null;

  override render() {
    const { asked } = this;
    if (asked === null) return html``;
    return html`<button type="button" aria-label=${planWhyWords.ask(asked.name, asked.letter, asked.shown)} @click=${() => tell(this, 'why-wanted', asked)}><span class="figure">${asked.shown}</span><span class="ask" aria-hidden="true">?</span></button>`;
  }
}

/** A figure with the key to its reason. */
export function whyKey(kind: WhyKind, letter: LineLetter, name: string, shown: string): TemplateResult {
  return html`<gh-why-key .asked=${{ kind, letter, name, shown } satisfies WhyAsked}></gh-why-key>`;
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-why-key': GhWhyKey;
  }
}
