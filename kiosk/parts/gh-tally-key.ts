import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { keyStyles, partStyles } from './part-styles.ts';
import { tell } from './tell.ts';

/** The words of a tally key: its nonconformity, its class, and the names of the small keys. */
export interface TallyWords {
  readonly name: string;
  readonly rank: string;
  readonly less: string;
  readonly more: string;
}

/**
 * One nonconformity to tap when it is seen. It shows its class by border and word and the count it is given; it counts nothing itself.
 * @fires tally-tapped - once a press, with `{ kind, by }`; `by` is 1, a step, or -1
 */
@customElement('gh-tally-key')
export class GhTallyKey extends LitElement {
  static override styles = [
    partStyles,
    keyStyles,
    css`
      .row {
        display: flex;
        gap: var(--gap);
      }
      .what {
        flex: 1;
        display: grid;
        grid-template-columns: 1fr auto;
        align-items: center;
        gap: 0 0.6em;
        min-block-size: var(--target-primary);
        /* With the small key beside it, it still fits in half of a half screen. */
        min-inline-size: calc(1.5 * var(--target-primary));
        padding-inline: var(--pad);
        text-align: start;
      }
      .name {
        grid-column: span 2;
        font-size: var(--text-large);
        font-weight: 650;
        line-height: 1.1;
        overflow-wrap: anywhere;
      }
      .rank {
        grid-row: 2;
        grid-column: 1;
      }
      .count {
        grid-row: 2;
        grid-column: 2;
        font-size: var(--text-key);
        font-weight: 650;
        line-height: 1;
        min-inline-size: 2ch;
        text-align: end;
        align-self: end;
      }
      .count.none {
        color: var(--ink-soft);
        font-weight: 400;
      }
      :host([rank='minor']) .what { border-style: dashed; border-width: var(--rule-strong); }
      :host([rank='major']) .what { border-style: solid; border-width: calc(2 * var(--rule-strong)); border-color: var(--ink); }
      :host([rank='critical']) .what { border-style: double; border-width: calc(4 * var(--rule-strong)); border-color: var(--bad); }
      :host([rank='critical']) .rank { color: var(--bad); font-weight: 700; }
      :host([rank='major']) .rank { font-weight: 650; color: var(--ink); }
      .small {
        flex: none;
        font-size: var(--text-large);
        font-weight: 600;
        background: var(--slip-under);
      }
    `,
  ];
  @property() kind = '';
  @property({ reflect: true }) rank: 'critical' | 'major' | 'minor' = 'minor';
  @property({ type: Number }) count = 0;
  @property({ attribute: false }) steps: readonly number[] = [];
  @property({ type: Boolean, reflect: true }) busy = false;
  @property({ attribute: false }) words: TallyWords = { name: '', rank: '', less: '', more: '' };

  override render() {
    const { words, count, busy } = this;
    const resting = busy ? 'true' : nothing;
    return html`<div class="row">
      <button type="button" class="key what" aria-disabled=${resting} @click=${() => this.#tap(1)}>
        <span class="name">${words.name}</span> <span class="rank printed">${words.rank}</span>
        <span class="count figure ${count === 0 ? 'none' : ''}">${count}</span>
      </button>
      ${this.steps.map(
        (step) =>
          html`<button type="button" class="key small figure" aria-label="+${step} ${words.more}" aria-disabled=${resting} @click=${() => this.#tap(step)}>
            +${step}
          </button>`,
      )}
      ${count === 0
        ? nothing
        : html`<button type="button" class="key small figure" aria-label="−1 ${words.less}" aria-disabled=${resting} @click=${() => this.#tap(-1)}>−1</button>`}
    </div>`;
  }

  #tap(by: number): void {
    if (!this.busy) tell(this, 'tally-tapped', { kind: this.kind, by });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-tally-key': GhTallyKey;
  }
}
