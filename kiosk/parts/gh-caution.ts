import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import './gh-state-mark.ts';
import { partStyles } from './part-styles.ts';

/** One calm line of caution, always with the local rule it gives way to. */
@customElement('gh-caution')
export class GhCaution extends LitElement {
  static override styles = [
    partStyles,
    css`
      p { display: flex; flex-wrap: wrap; gap: 0.1em 0.8em; align-items: baseline; padding: 0.35em var(--pad); background: var(--slip); border-block: var(--rule-strong) solid var(--held); }
      gh-state-mark { align-self: center; }
      .rule { color: var(--ink-soft); }
    `,
  ];
  @property() word = '';
  @property() text = '';
  @property() rule = '';

  override render() {
    return html`<p role="note"
      ><gh-state-mark state="caution" word=${this.word}></gh-state-mark> <span>${this.text}</span> ${this.rule === ''
        ? nothing
        : html`<span class="rule">${this.rule}</span>`}</p
    >`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-caution': GhCaution;
  }
}
