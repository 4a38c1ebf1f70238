import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { partStyles } from './part-styles.ts';
import { tell } from './tell.ts';

/** One choice. */
export interface DropOption { readonly value: string; readonly text: string }

/**
 * One of many choices, folded up: for desks, where a table's twenty-six columns would fill the page. At the bench use gh-select-list.
 * @fires option-chosen - with `{ value }`
 */
@customElement('gh-drop-list')
export class GhDropList extends LitElement {
  static override shadowRootOptions: ShadowRootInit = { ...LitElement.shadowRootOptions, delegatesFocus: true };
  static override styles = [
    partStyles,
    css`
      label { display: block; }
      select {
        inline-size: 100%; min-block-size: calc(var(--target) + 2px); margin-block-start: 3px; padding-inline: calc(0.7 * var(--pad)); padding-block: 0.2em; font: inherit; font-family: var(--face-figures); color: inherit;
        background: var(--slip); border: var(--rule) solid var(--line-strong); border-block-end: calc(1px + var(--rule-strong)) solid var(--line-strong); border-radius: var(--corner); cursor: pointer; text-overflow: ellipsis;
      }
      select:focus-visible { outline: 3px solid var(--focus); outline-offset: 0; }
      option { background: var(--slip); color: var(--ink); }
      .error { color: var(--bad); font-weight: 650; }
      .error:empty { display: none; }
    `,
  ];
  @property() label = '';
  @property() value = '';
  @property() error = '';
  @property({ attribute: false }) options: readonly DropOption[] = [];

  override render() {
    return html`<label for="choice" class="printed">${this.label}</label>
      <select id="choice" aria-invalid=${this.error === '' ? nothing : 'true'} aria-describedby=${this.error === '' ? nothing : 'error'} .value=${live(this.value)} @change=${this.#choose}>
        ${this.options.map(({ value, text }) => html`<option value=${value} ?selected=${value === this.value}>${text}</option>`)}
      </select>
      <p id="error" class="error" aria-live="polite">${this.error}</p>`;
  }

  #choose(event: Event): void {
    if (!(event.target instanceof HTMLSelectElement)) return;
    this.value = event.target.value;
    tell(this, 'option-chosen', { value: this.value });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-drop-list': GhDropList;
  }
}
