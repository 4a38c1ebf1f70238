import { LitElement, css, html, nothing, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { partStyles } from './part-styles.ts';
import { stateDrawings } from './state-drawings.ts';
import { toneOf, type StateName } from './state-name.ts';

/** A state as its drawn mark and its word. Without a word it is decoration and readers skip it. */
@customElement('gh-state-mark')
export class GhStateMark extends LitElement {
  static override styles = [
    partStyles,
    css`
      :host {
        display: inline-block;
        font-size: inherit;
      }
      .mark {
        display: inline-flex;
        align-items: baseline;
        gap: 0.4em;
        font-weight: 650;
        white-space: nowrap;
      }
      svg {
        inline-size: var(--mark, 1.4em);
        block-size: var(--mark, 1.4em);
        flex: none;
        align-self: center;
      }
      :host([size='small']) svg {
        inline-size: 1.05em;
        block-size: 1.05em;
      }
      :host([size='large']) svg {
        inline-size: 2.4em;
        block-size: 2.4em;
      }
      .good { color: var(--good); }
      .bad { color: var(--bad); }
      .held { color: var(--held); }
      .link { color: var(--link); }
      .calm { color: var(--calm); }
      :host([boxed]) .mark {
        padding: 0.2em 0.6em 0.2em 0.5em;
        border-radius: var(--corner, 2px);
        border: var(--rule-strong, 2px) solid transparent;
      }
      :host([boxed]) .good { color: var(--on-good); background: var(--good-ground); }
      :host([boxed]) .bad { color: var(--on-bad); background: var(--bad-ground); }
      :host([boxed]) .held { color: var(--on-held); background: var(--held-ground); }
      :host([boxed]) .link { color: var(--on-link); background: var(--link-ground); }
      :host([boxed]) .calm { color: var(--on-calm); background: var(--calm-ground); }
      @media print {
        :host([boxed]) .mark { color: #000; background: none; border-color: #000; }
      }
    `,
  ];
  @property({ reflect: true }) state: StateName = 'waiting';
  @property() word = '';
  @property({ reflect: true }) size: 'small' | 'normal' | 'large' = 'normal';
  @property({ type: Boolean, reflect: true }) boxed = false;

  override render() {
    return html`<span class="mark ${toneOf[this.state]}"
      ><svg viewBox="0 0 24 24" aria-hidden="true" focusable="false">${svg`${stateDrawings[this.state]}`}</svg>${this.word === ''
        ? nothing
        : html`<span>${this.word}</span>`}</span
    >`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-state-mark': GhStateMark;
  }
}
