import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import './gh-state-mark.ts';
import { keyStyles, partStyles } from './part-styles.ts';
import { tell } from './tell.ts';

/**
 * One line: the state of the link and what is kept here meanwhile.
 * @fires outbox-opened - when its key is pressed
 */
@customElement('gh-outbox-bar')
export class GhOutboxBar extends LitElement {
  static override styles = [
    partStyles,
    keyStyles,
    css`
      .bar { display: flex; flex-wrap: wrap; align-items: center; gap: 0.2em 1.4em; padding: 0.2em var(--pad); background: var(--slip-under); border-block: var(--rule) solid var(--line-strong); min-block-size: 2em; }
      :host([link='offline']) .bar { border-block: var(--rule-strong) dashed var(--ink); background: var(--slip); }
      .line { display: flex; flex-wrap: wrap; align-items: center; gap: 0.2em 1.4em; flex: 1; }
    `,
  ];
  @property({ reflect: true }) link: 'online' | 'sending' | 'offline' = 'online';
  @property({ attribute: 'link-word' }) linkWord = '';
  @property({ attribute: 'kept-word' }) keptWord = '';
  @property({ attribute: 'refused-word' }) refusedWord = '';
  @property({ attribute: 'open-word' }) openWord = '';

  override render() {
    const { link, keptWord, refusedWord, openWord } = this;
    return html`<div class="bar">
      <div class="line" role="status">
        <gh-state-mark size="small" state=${link === 'offline' ? 'offline' : 'online'} word=${this.linkWord}></gh-state-mark>
        ${keptWord === '' ? nothing : html`<gh-state-mark size="small" state="kept" word=${keptWord}></gh-state-mark>`}
        ${refusedWord === '' ? nothing : html`<gh-state-mark size="small" state="refused" word=${refusedWord}></gh-state-mark>`}
      </div>
      ${openWord === '' ? nothing : html`<button type="button" class="key" @click=${() => tell(this, 'outbox-opened')}>${openWord}</button>`}
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-outbox-bar': GhOutboxBar;
  }
}
