import { LitElement, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import './gh-state-mark.ts';
import { keyStyles, partStyles } from './part-styles.ts';
import { slipStyles } from './slip-styles.ts';
import type { StateName } from './state-name.ts';
import { toneOf } from './state-name.ts';
import { tell } from './tell.ts';

const standingMark: Readonly<Record<'kept' | 'refused' | 'corrected', StateName>> = { kept: 'kept', refused: 'refused', corrected: 'corrected' };

/**
 * One slip on the traveller: when, who, where, what happened; its detail folds away.
 * @slot - detail
 * @slot actions - keys, for example Correct
 * @fires slip-folded - with `{ open }`
 */
@customElement('gh-slip')
export class GhSlip extends LitElement {
  static override styles = [partStyles, keyStyles, slipStyles];
  @property() at = '';
  @property() datetime = '';
  @property() who = '';
  @property() bench = '';
  @property() number = '';
  @property() sentence = '';
  @property({ reflect: true }) state: 'normal' | 'kept' | 'refused' | 'corrected' = 'normal';
  @property({ attribute: 'state-word' }) stateWord = '';
  @property({ reflect: true }) mark: StateName | '' = '';
  @property({ attribute: 'mark-word' }) markWord = '';
  @property({ type: Boolean, reflect: true }) foldable = false;
  @property({ type: Boolean, reflect: true }) open = false;
  @property({ attribute: false }) words: { readonly unfold: string; readonly fold: string } = { unfold: '', fold: '' };

  override connectedCallback(): void {
    super.connectedCallback();
    this.setAttribute('role', 'listitem');
  }

  override render() {
    const { mark, state, foldable, open, words } = this;
    return html`<article class="slip">
      <div class="edge" aria-hidden="true"></div>
      <div class="margin">
        <time class="figure" datetime=${this.datetime === '' ? nothing : this.datetime}>${this.at}</time>
        <span class="number figure">${this.number}</span>
      </div>
      <div class="body">
        ${state === 'normal'
          ? nothing
          : html`<p class="standing"><gh-state-mark state=${standingMark[state]} word=${this.stateWord} size="small"></gh-state-mark></p>`}
        ${mark === '' ? nothing : html`<p class="strong ${toneOf[mark]}"><gh-state-mark state=${mark} word=${this.markWord}></gh-state-mark></p>`}
        <p class="sentence">${this.sentence}</p>
        <p class="printed by"><span>${this.who}</span><span>${this.bench}</span></p>
      </div>
      <div class="side">
        <slot name="actions"></slot>
        ${foldable
          ? html`<button type="button" class="key fold" aria-expanded=${open ? 'true' : 'false'} aria-controls="detail" @click=${this.#fold}>
              <svg viewBox="0 0 24 24" aria-hidden="true"><path d=${open ? 'M3 16 12 8l9 8' : 'M3 8l9 8 9-8'} /></svg
              ><span class="unseen">${open ? words.fold : words.unfold}</span>
            </button>`
          : nothing}
      </div>
      <div class="detail" id="detail" ?hidden=${foldable && !open}><slot></slot></div>
    </article>`;
  }

  #fold(): void {
    this.open = !this.open;
    tell(this, 'slip-folded', { open: this.open });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-slip': GhSlip;
  }
}
