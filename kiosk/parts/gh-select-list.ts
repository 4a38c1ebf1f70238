import { LitElement, css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import './gh-state-mark.ts';
import { partStyles } from './part-styles.ts';
import type { StateName } from './state-name.ts';
import { tell } from './tell.ts';

/** One choice in a list. */
export interface SelectOption {
  readonly value: string;
  readonly text: string;
  readonly hint?: string;
  readonly mark?: StateName;
  readonly disabled?: boolean;
}

/**
 * A list to choose from by touch: every option in sight, one or several.
 * @fires option-chosen - with `{ value }`
 * @fires options-chosen - when several may be chosen, with `{ values }`
 */
@customElement('gh-select-list')
export class GhSelectList extends LitElement {
  static readonly formAssociated = true;
  static override shadowRootOptions: ShadowRootInit = { ...LitElement.shadowRootOptions, delegatesFocus: true };
  static override styles = [
    partStyles,
    css`
      fieldset { border: 0; margin: 0; padding: 0; min-inline-size: 0; }
      legend { padding: 0; }
      .options { display: grid; gap: var(--gap); grid-template-columns: minmax(0, 1fr); }
      :host([columns='2']) .options { grid-template-columns: repeat(2, minmax(0, 1fr)); }
      :host([columns='3']) .options { grid-template-columns: repeat(3, minmax(0, 1fr)); }
      :host([columns='4']) .options { grid-template-columns: repeat(4, minmax(0, 1fr)); }
      label {
        display: grid;
        grid-template-columns: auto 1fr auto;
        align-items: center;
        gap: 0 0.7em;
        min-block-size: var(--target);
        padding: 0.2em var(--pad);
        background: var(--slip);
        border: var(--rule-strong) solid var(--line-strong);
        border-radius: var(--corner);
        cursor: pointer;
        touch-action: manipulation;
      }
      label:has(:checked) { background: var(--calm-ground); color: var(--on-calm); border-color: var(--calm-ground); font-weight: 650; --calm: var(--on-calm); --good: var(--on-calm); --bad: var(--on-calm); --held: var(--on-calm); --link: var(--on-calm); }
      label:has(:focus-visible) { outline: 3px solid var(--focus); outline-offset: 2px; }
      label:has(:disabled) { border-style: dotted; color: var(--ink-soft); cursor: default; }
      input { appearance: none; color: inherit; flex: none; outline: none; margin: 0; inline-size: 1.1em; block-size: 1.1em; border: var(--rule-strong) solid currentColor; border-radius: 50%; display: grid; place-items: center; }
      input[type='checkbox'] { border-radius: 0; }
      input:checked::before { content: ''; inline-size: 0.55em; block-size: 0.55em; background: currentColor; border-radius: inherit; }
      .text { display: grid; min-inline-size: 0; overflow-wrap: anywhere; }
      small { font-size: var(--text-small); font-weight: 400; }
      .error { color: var(--bad); font-weight: 650; }
      .error:empty { display: none; }
      @media (forced-colors: active) {
        label:has(:checked) { border-width: 4px; }
      }
    `,
  ];
  @property() label = '';
  @property({ reflect: true }) name = '';
  @property() value = '';
  @property({ attribute: false }) values: readonly string[] = [];
  @property({ attribute: false }) options: readonly SelectOption[] = [];
  @property({ type: Boolean }) multiple = false;
  @property() error = '';
  @property({ type: Number, reflect: true }) columns = 1;
  readonly #internals = this.attachInternals();

  protected override updated(changed: PropertyValues<this>): void {
    if (changed.has('value') && !this.multiple) this.#internals.setFormValue(this.value);
  }

  override render() {
    const { multiple, values } = this;
    return html`<fieldset aria-describedby=${this.error === '' ? nothing : 'error'}>
      <legend class="printed">${this.label}</legend>
      <div class="options">
        ${this.options.map(
          ({ value, text, hint, mark, disabled }) =>
            html`<label
              ><input
                type=${multiple ? 'checkbox' : 'radio'}
                name="choice"
                .checked=${live(multiple ? values.includes(value) : this.value === value)}
                ?disabled=${disabled === true}
                @change=${() => this.#choose(value)}
              /><span class="text">${text} ${hint === undefined ? nothing : html`<small>${hint}</small>`}</span
              >${mark === undefined ? nothing : html`<gh-state-mark state=${mark}></gh-state-mark>`}</label
            >`,
        )}
      </div>
      <p id="error" class="error" aria-live="polite">${this.error}</p>
    </fieldset>`;
  }

  #choose(value: string): void {
    if (this.multiple) {
      this.values = this.values.includes(value) ? this.values.filter((chosen) => chosen !== value) : [...this.values, value];
      tell(this, 'options-chosen', { values: this.values });
      return;
    }
    this.value = value;
    tell(this, 'option-chosen', { value });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-select-list': GhSelectList;
  }
}
