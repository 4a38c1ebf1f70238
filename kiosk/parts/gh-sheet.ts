import { LitElement, css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { keyStyles, partStyles } from './part-styles.ts';
import { tell } from './tell.ts';

/**
 * A sheet laid over the page for one decision. Focus goes in and comes back; Escape closes it.
 * @slot - what is to be decided
 * @slot actions - its keys
 * @fires sheet-closed - with `{ by: 'escape' | 'key' }`
 */
@customElement('gh-sheet')
export class GhSheet extends LitElement {
  static override styles = [
    partStyles,
    keyStyles,
    css`
      :host { display: contents; }
      dialog {
        inline-size: min(46rem, calc(100vw - 2 * var(--gap)));
        max-block-size: calc(100dvh - 2 * var(--gap));
        padding: 0;
        color: var(--ink);
        background: var(--slip);
        border: var(--rule-strong) solid var(--line-strong);
        border-block-start: calc(4 * var(--rule-strong)) solid var(--ink);
        border-radius: var(--corner);
        overflow: auto;
      }
      dialog.grave { border-color: var(--bad); border-style: double; border-width: calc(4 * var(--rule-strong)); }
      dialog::backdrop { background: color-mix(in srgb, var(--tray-deep) 72%, transparent); }
      .head { display: flex; align-items: start; justify-content: space-between; gap: var(--gap); padding: var(--pad) calc(1.4 * var(--pad)); border-block-end: 4px double var(--line); }
      h2 { font-size: var(--text-large); line-height: 1.2; font-weight: 700; text-wrap: balance; align-self: center; }
      .content { padding: calc(1.2 * var(--pad)) calc(1.4 * var(--pad)); }
      .actions { display: flex; flex-wrap: wrap; gap: var(--gap); padding: 0 calc(1.4 * var(--pad)) calc(1.4 * var(--pad)); }
    `,
  ];
  @property({ type: Boolean, reflect: true }) open = false;
  @property() heading = '';
  @property({ attribute: 'close-word' }) closeWord = '';
  @property({ type: Boolean, reflect: true }) grave = false;

  protected override updated(changed: PropertyValues<this>): void {
    const dialog = this.renderRoot.querySelector('dialog');
    if (dialog === null || !changed.has('open') || dialog.open === this.open) return;
    if (this.open) dialog.showModal();
    else dialog.close();
  }

  override render() {
    return html`<dialog class=${this.grave ? 'grave' : ''} aria-labelledby="heading" @cancel=${this.#escaped}>
      <div class="head">
        <h2 id="heading">${this.heading}</h2>
        ${this.closeWord === '' ? nothing : html`<button type="button" class="key" @click=${() => this.#close('key')}>${this.closeWord}</button>`}
      </div>
      <div class="content"><slot></slot></div>
      <div class="actions"><slot name="actions"></slot></div>
    </dialog>`;
  }

  #escaped(event: Event): void {
    if (event.target !== event.currentTarget) return;
    event.preventDefault();
    this.#close('escape');
  }

  #close(by: 'escape' | 'key'): void {
    this.open = false;
    tell(this, 'sheet-closed', { by });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-sheet': GhSheet;
  }
}
