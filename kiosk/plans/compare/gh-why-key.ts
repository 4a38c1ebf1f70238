import { LitElement, css, html, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { planWhyWords } from '../../../shared/words/plan-why.en.ts';
import type { LineLetter } from '../../parts/line-letters.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { tell } from '../../parts/tell.ts';
import type { WhyAsked, WhyKind } from './why-asked.ts';

/**
 * A figure that opens its reason: the whole of it is the key.
 * @fires why-wanted - with what is asked
 */
@customElement('gh-why-key')
export class GhWhyKey extends LitElement {
  static override shadowRootOptions: ShadowRootInit = { ...LitElement.shadowRootOptions, delegatesFocus: true };
  static override styles = [partStyles, css`
    :host { display: inline-block; font: inherit; max-inline-size: 100%; }
    button { display: inline-flex; align-items: center; gap: 0.45em; min-block-size: max(32px, var(--target)); font: inherit; font-family: var(--face-figures); font-weight: 650; color: inherit; background: none; border: 0; padding: 0; cursor: pointer; text-align: start; touch-action: manipulation; }
    .figure { border-block-end: 2px dotted var(--line-strong); overflow-wrap: break-word; min-inline-size: 0; }
    .ask { font-family: var(--face); font-size: 0.75em; font-weight: 700; color: var(--link); border: 1.5px solid currentColor; border-radius: var(--corner); min-inline-size: 1.5em; text-align: center; line-height: 1.35; flex: none; }
    button:active { background: var(--slip-under); }
    @media print { button { min-block-size: 0; } .figure { border: 0; } .ask { display: none; } }
  `];
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
