import { LitElement, css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { partStyles } from './part-styles.ts';
import { tell } from './tell.ts';

/**
 * A labelled line of a form, with its hint and what is wrong with it.
 * @fires field-input - each keystroke, with `{ value }`
 * @fires field-changed - when the value is settled, with `{ value }`
 */
@customElement('gh-field')
export class GhField extends LitElement {
  static readonly formAssociated = true;
  static override shadowRootOptions: ShadowRootInit = { ...LitElement.shadowRootOptions, delegatesFocus: true };
  static override styles = [
    partStyles,
    css`
      label { display: block; }
      .line {
        display: flex;
        align-items: baseline;
        gap: 0.5em;
        min-block-size: var(--target);
        margin-block-start: 3px;
        background: var(--slip);
        border: var(--rule) solid var(--line-strong);
        border-block-end: calc(1px + var(--rule-strong)) solid var(--line-strong);
        border-radius: var(--corner);
        padding-inline: var(--pad);
      }
      .line:focus-within { outline: 3px solid var(--focus); outline-offset: 0; }
      input, textarea {
        flex: 1;
        min-inline-size: 0;
        align-self: stretch;
        font: inherit;
        font-family: var(--face-figures);
        color: inherit;
        background: none;
        border: 0;
        outline: none;
        padding-block: 0.3em;
        min-block-size: var(--target);
      }
      input:focus-visible, textarea:focus-visible { outline: none; }
      textarea { resize: vertical; min-block-size: calc(2 * var(--target)); line-height: 1.5; }
      .unit { color: var(--ink-soft); align-self: center; }
      :host([disabled]) .line { background: none; border-style: dotted; }
      :host([readonly]) .line { background: none; border-inline-color: transparent; border-block-start-color: transparent; border-block-end-width: var(--rule); }
      .wrong .line { border-color: var(--bad); border-width: var(--rule-strong); border-inline-start-width: 0.5em; }
      .error { color: var(--bad); font-weight: 650; }
      .error:empty { display: none; }
    `,
  ];
  @property() label = '';
  @property() value = '';
  @property({ reflect: true }) name = '';
  @property() hint = '';
  @property() error = '';
  @property() type = 'text';
  @property() entry: 'text' | 'numeric' | 'decimal' | 'none' = 'text';
  @property() remember = 'off';
  @property() unit = '';
  @property({ type: Boolean, reflect: true }) required = false;
  @property({ type: Boolean, reflect: true }) disabled = false;
  @property({ type: Boolean, reflect: true }) readonly = false;
  @property({ type: Boolean }) multiline = false;
  @property({ type: Number, attribute: 'max-length' }) maxLength = 2000;
  @property({ attribute: false }) suggestions: readonly string[] = [];
  readonly #internals = this.attachInternals();

  protected override updated(changed: PropertyValues<this>): void {
    if (changed.has('value')) this.#internals.setFormValue(this.value);
  }

  override render() {
    const { hint, error, unit } = this;
    const describedBy = `${hint === '' ? '' : 'hint'} ${error === '' ? '' : 'error'}`.trim();
    return html`<div class=${error === '' ? '' : 'wrong'}>
      <label for="entry" class="printed">${this.label}</label>
      <div class="line">${this.#entry(describedBy)}${unit === '' ? nothing : html`<span class="unit">${unit}</span>`}</div>
      ${hint === '' ? nothing : html`<p id="hint" class="printed">${hint}</p>`}
      <p id="error" class="error" aria-live="polite">${error}</p>
    </div>`;
  }

  #entry(describedBy: string) {
    const described = describedBy === '' ? nothing : describedBy;
    const wrong = this.error === '' ? nothing : 'true';
    if (this.multiline)
      return html`<textarea id="entry" rows=${Math.min(12, Math.max(2, this.value.split('\n').length))} .value=${live(this.value)} maxlength=${this.maxLength} ?required=${this.required} ?disabled=${this.disabled}
        ?readonly=${this.readonly} aria-describedby=${described} aria-invalid=${wrong} @input=${this.#typed} @change=${this.#settled}></textarea>`;
    return html`<input id="entry" .value=${live(this.value)} type=${this.type} inputmode=${this.entry} autocomplete=${this.remember}
        maxlength=${this.maxLength} ?required=${this.required} ?disabled=${this.disabled} ?readonly=${this.readonly}
        list=${this.suggestions.length === 0 ? nothing : 'suggestions'} aria-describedby=${described} aria-invalid=${wrong}
        @input=${this.#typed} @change=${this.#settled} @keydown=${this.#sendOnEnter} />
      ${this.suggestions.length === 0 ? nothing : html`<datalist id="suggestions">${this.suggestions.map((text) => html`<option value=${text}></option>`)}</datalist>`}`;
  }

  #typed(event: Event): void {
    this.#take(event);
    tell(this, 'field-input', { value: this.value });
  }

  #settled(event: Event): void {
    this.#take(event);
    tell(this, 'field-changed', { value: this.value });
  }

  #take(event: Event): void {
    const entry = event.target;
    if (entry instanceof HTMLInputElement || entry instanceof HTMLTextAreaElement) this.value = entry.value;
  }

  #sendOnEnter(event: KeyboardEvent): void {
    if (event.key !== 'Enter' || event.isComposing || this.#internals.form === null) return;
    event.preventDefault();
    this.#internals.setFormValue(this.value);
    this.#internals.form.requestSubmit();
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-field': GhField;
  }
}
