import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { partStyles } from './part-styles.ts';

/**
 * What is asked now, readable from the other side of the bench.
 * @slot - the keys that answer it
 */
@customElement('gh-demand')
export class GhDemand extends LitElement {
  static override styles = [
    partStyles,
    css`
      .sheet {
        background: var(--slip);
        border-block-start: calc(3 * var(--rule-strong)) solid var(--ink);
        padding: var(--pad) calc(1.4 * var(--pad)) calc(1.2 * var(--pad));
      }
      .demand {
        font-size: var(--text-demand);
        font-weight: 700;
        line-height: 1.06;
        letter-spacing: -0.015em;
        text-wrap: balance;
        overflow-wrap: anywhere;
      }
      .context {
        padding-block-end: 0.2em;
      }
      .hint {
        font-size: var(--text-large);
        color: var(--ink-soft);
        padding-block-start: 0.2em;
        text-wrap: pretty;
      }
      .keys {
        display: flex;
        flex-wrap: wrap;
        gap: var(--gap);
        margin-block-start: calc(1.2 * var(--pad));
      }
      .keys[hidden] { display: none; }
    `,
  ];
  @property() demand = '';
  @property() context = '';
  @property() hint = '';
  @property({ type: Number, attribute: 'heading-level' }) headingLevel = 2;

  /** Keys stand in the slot. */
  @state() private answered = false;

  override render() {
    const { context, hint } = this;
    return html`<div class="sheet">
      ${context === '' ? nothing : html`<p class="context printed">${context}</p>`}
      <div class="demand" role="heading" aria-level=${this.headingLevel}>${this.demand}</div>
      ${hint === '' ? nothing : html`<p class="hint">${hint}</p>`}
      <div class="keys" ?hidden=${!this.answered}><slot @slotchange=${this.#look}></slot></div>
    </div>`;
  }

  readonly #look = (event: Event): void => {
    this.answered = event.target instanceof HTMLSlotElement && event.target.assignedElements().length > 0;
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-demand': GhDemand;
  }
}
