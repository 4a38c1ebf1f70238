import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import './gh-button.ts';
import { partStyles } from './part-styles.ts';
import { tell } from './tell.ts';

/**
 * The traveller: slips stacked in time, the newest at the bottom.
 * @slot - gh-slip elements
 * @fires earlier-wanted - when the key for earlier slips is pressed
 */
@customElement('gh-slip-stack')
export class GhSlipStack extends LitElement {
  static override styles = [
    partStyles,
    css`
      .tray {
        background: var(--tray);
        padding: 0;
        border-inline: var(--rule) solid var(--line-strong);
        border-block-end: calc(2 * var(--rule-strong)) solid var(--line-strong);
      }
      /* The pad of earlier slips beneath, seen at its edge. */
      .earlier {
        padding: var(--pad) var(--pad) var(--pad) 34px;
        background: repeating-linear-gradient(var(--slip-under) 0 5px, var(--line) 5px 6px);
        border-block-end: var(--rule) solid var(--line-strong);
      }
    `,
  ];
  @property() label = '';
  @property() earlier = '';

  override render() {
    return html`${this.earlier === ''
        ? nothing
        : html`<div class="tray earlier"><gh-button @click=${() => tell(this, 'earlier-wanted')}>${this.earlier}</gh-button></div>`}
      <div class="tray" role="list" aria-label=${this.label}><slot></slot></div>`;
  }

  /** Brings the newest slip into view, at once: a slip must not be chased. */
  showNewest(): void {
    this.lastElementChild?.scrollIntoView({ block: 'end', behavior: 'instant' });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-slip-stack': GhSlipStack;
  }
}
