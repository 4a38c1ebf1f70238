import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { partStyles } from './part-styles.ts';

/** One index tab: where it leads, its name, and how many things wait there. */
export interface Tab {
  readonly href: string;
  readonly text: string;
  readonly count?: string;
}

/** The index tabs of a binder: one a desk, plain links. */
@customElement('gh-tabs')
export class GhTabs extends LitElement {
  static override styles = [
    partStyles,
    css`
      nav { display: flex; flex-wrap: wrap; gap: 4px 0; padding-inline-start: calc(0.5 * var(--pad)); border-block-end: var(--rule-strong) solid var(--ink); }
      a {
        display: flex;
        align-items: center;
        gap: 0.5em;
        min-block-size: var(--target);
        min-inline-size: var(--target);
        padding-inline: calc(1.3 * var(--pad)) var(--pad);
        margin-inline-end: 4px;
        color: var(--ink);
        background: var(--slip-under);
        text-decoration: none;
        border: var(--rule) solid var(--line-strong);
        border-block-end: 0;
        border-start-start-radius: 14px 100%;
        border-start-end-radius: var(--corner);
      }
      a[aria-current] { background: var(--ink); color: var(--slip); border-color: var(--ink); font-weight: 700; }
      a:focus-visible { outline-offset: -5px; }
      a[aria-current]:focus-visible { outline-color: var(--slip); }
      .count { font-family: var(--face-figures); font-size: var(--text-small); border: var(--rule) solid currentColor; padding: 0 0.4em; min-inline-size: 1.8em; text-align: center; }
      @media (forced-colors: active) { a[aria-current] { border: 3px solid Highlight; } }
      @media print { nav { display: none; } }
    `,
  ];
  @property({ attribute: false }) tabs: readonly Tab[] = [];
  @property() current = '';
  @property() label = '';

  override render() {
    return html`<nav aria-label=${this.label}>
      ${this.tabs.map(
        ({ href, text, count }) =>
          html`<a href=${href} aria-current=${href === this.current ? 'page' : nothing}
            ><span>${text}</span> ${count === undefined ? nothing : html`<span class="count">${count}</span>`}</a
          >`,
      )}
    </nav>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-tabs': GhTabs;
  }
}
