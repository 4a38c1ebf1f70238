import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { keyStyles, partStyles } from './part-styles.ts';
import { tell } from './tell.ts';

/** The words of a PIN pad; `digits` follows the number typed so far ("digits entered"). */
export interface PinWords {
  readonly label: string;
  readonly enter: string;
  readonly clear: string;
  readonly backspace: string;
  readonly digits: string;
}

/**
 * Takes a PIN. It stands in no attribute and no input, is shown only as how many digits were typed, and is forgotten once told.
 * @fires pin-entered - on Enter, with `{ pin }`
 */
@customElement('gh-pin-pad')
export class GhPinPad extends LitElement {
  static override shadowRootOptions: ShadowRootInit = { ...LitElement.shadowRootOptions, delegatesFocus: true };
  static override styles = [
    partStyles,
    keyStyles,
    css`
      :host {
        --key: var(--key-size, var(--target-primary, 48px));
        inline-size: fit-content;
      }
      .pad {
        display: grid;
        gap: var(--gap);
        grid-template-columns: minmax(0, 1fr);
        inline-size: calc(4 * var(--key) + 3 * var(--gap));
      }
      .typed {
        display: flex;
        gap: 0.5em;
        align-items: center;
        min-block-size: 2.2em;
        padding-inline: var(--pad);
        background: var(--slip);
        border-block-end: 3px double var(--line-strong);
        font-size: var(--text-large);
      }
      .place {
        inline-size: 0.7em;
        block-size: 0.7em;
        border-block-end: 2px solid var(--line-strong);
      }
      .place.full {
        background: var(--ink);
        border: 0;
        transform: rotate(45deg) scale(0.85);
      }
      .keys {
        display: grid;
        grid-template-columns: repeat(4, var(--key));
        grid-auto-rows: var(--key);
        gap: var(--gap);
      }
      .key {
        min-inline-size: 0;
        min-block-size: 0;
        padding: 0.1em;
      }
      .digit {
        font-family: var(--face-figures);
        font-size: var(--text-key);
        font-weight: 600;
      }
      .side {
        background: var(--slip-under);
        font-size: var(--text-small);
        overflow-wrap: anywhere;
      }
      .tall {
        grid-row: span 2;
      }
      .broad {
        grid-column: span 3;
        font-size: var(--text-large);
      }
      .error {
        color: var(--bad);
        font-weight: 650;
      }
    `,
  ];
  @property({ attribute: false }) words: PinWords = { label: '', enter: '', clear: '', backspace: '', digits: '' };
  @property({ type: Number, attribute: 'min-digits' }) minDigits = 4;
  @property({ type: Number, attribute: 'max-digits' }) maxDigits = 8;
  @property({ type: Boolean, reflect: true }) busy = false;
  @property() error = '';
  @state() private typed = 0;
  #pin = '';

  override render() {
    const { words, busy, typed } = this;
    const key = (label: string, kind: string, press: () => void) =>
      html`<button type="button" class="key ${kind}" aria-disabled=${busy ? 'true' : nothing} @click=${press}>${label}</button>`;
    const digits = (row: string) => row.split('').map((digit) => key(digit, 'digit', () => this.#press(digit)));
    return html`<div class="pad" role="group" aria-label=${words.label} @keydown=${this.#hear}>
      <div>
        <span class="printed" aria-hidden="true">${words.label}</span>
        <div class="typed" aria-hidden="true">
          ${Array.from({ length: Math.max(this.minDigits, typed) }, (_, at) => html`<span class="place ${at < typed ? 'full' : ''}"></span>`)}
        </div>
        <span class="unseen" aria-live="polite">${typed === 0 ? nothing : `${typed} ${words.digits}`}</span>
        <p class="error" role="alert">${this.error}</p>
      </div>
      <div class="keys">
        ${digits('123')} ${key(words.backspace, 'side', () => this.#keep(this.#pin.slice(0, -1)))} ${digits('456')}
        ${key(words.clear, 'side tall', () => this.#keep(''))} ${digits('789')} ${digits('0')} ${key(words.enter, 'primary broad', () => this.#enter())}
      </div>
    </div>`;
  }

  #keep(pin: string): void {
    if (this.busy) return;
    this.#pin = pin;
    this.typed = pin.length;
  }

  #press(digit: string): void {
    if (this.#pin.length < this.maxDigits) this.#keep(this.#pin + digit);
  }

  #enter(): void {
    if (this.busy || this.#pin.length < this.minDigits) return;
    const pin = this.#pin;
    this.#keep('');
    tell(this, 'pin-entered', { pin });
  }

  // Enter on a digit key that has the focus still means Enter: a PIN typed on hardware keys ends so.
  #hear(event: KeyboardEvent): void {
    const { key } = event;
    if (/^[0-9]$/.test(key)) this.#press(key);
    else if (key === 'Backspace') this.#keep(this.#pin.slice(0, -1));
    else if (key === 'Escape' && this.#pin !== '') this.#keep('');
    else if (key === 'Enter' && this.#pin.length >= this.minDigits) this.#enter();
    else return;
    event.preventDefault();
    event.stopPropagation();
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-pin-pad': GhPinPad;
  }
}
