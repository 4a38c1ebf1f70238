import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import './gh-state-mark.ts';
import { keyStyles, partStyles } from './part-styles.ts';
import type { StateName } from './state-name.ts';

/**
 * A key with a label. While busy it keeps its focus and takes no second press.
 * @slot - the label
 * @fires click - the browser's own, never while busy or disabled
 */
@customElement('gh-button')
export class GhButton extends LitElement {
  static readonly formAssociated = true;
  static override shadowRootOptions: ShadowRootInit = { ...LitElement.shadowRootOptions, delegatesFocus: true };
  static override styles = [
    partStyles,
    keyStyles,
    css`
      :host {
        display: inline-block;
        max-inline-size: 100%;
      }
      :host([wide]) {
        display: block;
      }
      .key {
        display: flex;
        align-items: center;
        justify-content: center;
        gap: 0.5em;
        inline-size: 100%;
        min-block-size: var(--target);
        padding-inline: calc(1.4 * var(--pad, 8px));
        text-align: center;
        text-wrap: balance;
      }
      .key.primary {
        min-inline-size: var(--target-primary);
        font-size: var(--text-large);
      }
      .label {
        display: grid;
      }
      small {
        font-size: var(--text-small);
        font-weight: 400;
      }
      .key.grave {
        color: var(--bad);
        border-color: var(--bad);
        border-style: double;
        border-width: calc(3 * var(--rule-strong));
        font-weight: 650;
      }
      .key[aria-pressed='true'] {
        background: var(--calm-ground);
        color: var(--on-calm);
        border-color: var(--calm-ground);
      }
      .waitmark {
        inline-size: 1.1em;
        block-size: 0.5em;
        flex: none;
        background: repeating-linear-gradient(90deg, currentColor 0 0.18em, transparent 0.18em 0.46em);
        animation: run 900ms steps(3) infinite;
      }
      @keyframes run {
        to { background-position-x: 1.38em; }
      }
      @media (prefers-reduced-motion: reduce) {
        .waitmark { animation: none; }
      }
    `,
  ];
  @property({ reflect: true }) kind: 'primary' | 'quiet' | 'grave' = 'quiet';
  @property({ type: Boolean, reflect: true }) busy = false;
  @property({ attribute: 'busy-word' }) busyWord = '';
  @property({ type: Boolean, reflect: true }) disabled = false;
  @property() type: 'button' | 'submit' = 'button';
  @property() mark: StateName | '' = '';
  @property() hint = '';
  @property() pressed: 'true' | 'false' | '' = '';
  @property({ type: Boolean, reflect: true }) wide = false;
  readonly #internals = this.attachInternals();

  constructor() {
    super();
    this.addEventListener('click', this.#rest, { capture: true });
  }

  override render() {
    const { busy, busyWord, disabled, hint, mark, pressed } = this;
    return html`<button
      type="button"
      class="key ${this.kind}"
      aria-disabled=${busy || disabled ? 'true' : nothing}
      aria-busy=${busy ? 'true' : nothing}
      aria-pressed=${pressed === '' ? nothing : pressed}
      @click=${this.#press}
    >
      ${busy ? html`<span class="waitmark"></span>` : mark === '' ? nothing : html`<gh-state-mark state=${mark}></gh-state-mark>`}
      <span class="label"
        >${busy && busyWord !== '' ? html`<span>${busyWord}</span>` : html`<span><slot></slot></span>`}${hint === ''
          ? nothing
          : html`<small>${hint}</small>`}</span
      >
    </button>`;
  }

  // Stops a press before anyone outside hears it: the press may have been a second one by a gloved finger.
  readonly #rest = (event: Event): void => {
    if (!this.busy && !this.disabled) return;
    event.stopImmediatePropagation();
    event.preventDefault();
  };

  #press(): void {
    if (this.type === 'submit') this.#internals.form?.requestSubmit();
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-button': GhButton;
  }
}
