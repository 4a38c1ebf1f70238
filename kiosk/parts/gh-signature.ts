import { LitElement, css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import './gh-pin-pad.ts';
import type { PinWords } from './gh-pin-pad.ts';
import { partStyles } from './part-styles.ts';
import { tell } from './tell.ts';

/**
 * Signing: what is signed, what the signature means, who signs, and the PIN once more.
 * @slot - what is shown and signed
 * @fires signed - with `{ pin }`
 */
@customElement('gh-signature')
export class GhSignature extends LitElement {
  static override styles = [
    partStyles,
    css`
      .sheet { display: grid; gap: calc(1.4 * var(--pad)); grid-template-columns: minmax(0, 1fr) auto; background: var(--slip); padding: calc(1.4 * var(--pad)); border: var(--rule) solid var(--line-strong); }
      @media (max-width: 900px) { .sheet { grid-template-columns: minmax(0, 1fr); justify-items: start; } }
      .meaning { font-size: var(--text-large); font-weight: 700; line-height: 1.2; }
      .line { border-block-end: var(--rule-strong) solid var(--ink); padding-block: 0.9em 0.1em; font-family: var(--face-figures); font-size: var(--text-large); }
      .statement { padding-block-start: 0.4em; text-wrap: pretty; }
      .shown { padding-block-end: var(--pad); margin-block-end: var(--pad); border-block-end: 4px double var(--line); }
    `,
  ];
  @property() meaning = '';
  @property() who = '';
  @property() statement = '';
  @property({ attribute: false }) words: PinWords = { label: '', enter: '', clear: '', backspace: '', digits: '' };
  @property({ type: Boolean, reflect: true }) busy = false;
  @property() error = '';

  override render() {
    return html`<div class="sheet">
      <div>
        <div class="shown"><slot></slot></div>
        <p class="meaning">${this.meaning}</p>
        <p class="line">${this.who}</p>
        <p class="statement">${this.statement}</p>
      </div>
      <gh-pin-pad .words=${this.words} .busy=${this.busy} .error=${this.error} @pin-entered=${this.#sign}></gh-pin-pad>
    </div>`;
  }

  #sign(event: CustomEvent<{ pin: string }>): void {
    event.stopPropagation();
    tell(this, 'signed', { pin: event.detail.pin });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-signature': GhSignature;
  }
}
