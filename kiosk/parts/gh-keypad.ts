import { LitElement, html, nothing, svg, type PropertyValues } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { createRef, ref } from 'lit/directives/ref.js';
import { decimalSignOf, figureTurned, figureWith, isFigureCharacter, plainFigure, type FigureRules } from './keypad-figure.ts';
import { keypadStyles } from './keypad-styles.ts';
import { keyStyles, partStyles } from './part-styles.ts';
import { tell } from './tell.ts';
import { TypedRun } from './typed-run.ts';

/** The words of a keypad; `demand` names the figure, the others name keys. */
export interface KeypadWords {
  readonly demand: string;
  readonly enter: string;
  readonly clear: string;
  readonly backspace: string;
  readonly sign: string;
  readonly decimal: string;
}

const digitRows = ['789', '456', '123'];

/**
 * A figure and the keys to type it. A hardware keyboard or a gauge that types does the same.
 * @fires value-entered - on Enter, with `{ text, plain }`: as shown, and in plain notation
 * @cssprop --key-size - least width and height of a key, default the primary target
 */
@customElement('gh-keypad')
export class GhKeypad extends LitElement {
  static override styles = [partStyles, keyStyles, keypadStyles];
  @property() locale = 'en';
  @property() unit = '';
  @property() value = '';
  @property({ type: Boolean }) whole = false;
  @property({ type: Boolean }) signed = false;
  @property({ type: Number, attribute: 'max-length' }) maxLength = 12;
  @property({ type: Boolean, reflect: true }) busy = false;
  @property() question = '';
  @property({ type: Boolean, attribute: 'hears-all' }) hearsAll = false;
  @property({ attribute: false }) words: KeypadWords = { demand: '', enter: '', clear: '', backspace: '', sign: '', decimal: '' };
  readonly #figure = createRef<HTMLInputElement>();
  readonly #run = new TypedRun();
  #entered = false;
  #listening: AbortController | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    this.#listening = new AbortController();
    document.addEventListener('keydown', this.#hearAll, { signal: this.#listening.signal });
    // A code that was scanned ends its run: its Enter is not heard here.
    document.addEventListener('kiosk-scanned', () => this.#run.end(), { signal: this.#listening.signal });
  }

  override disconnectedCallback(): void {
    this.#listening?.abort();
    super.disconnectedCallback();
  }

  override focus(options?: FocusOptions): void {
    this.#figure.value?.focus(options);
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('value') && this.value === '') this.#entered = false;
  }

  override render() {
    const { words, signed, whole, busy } = this;
    const key = (label: unknown, name: string, kind: string, press: () => void) =>
      html`<button type="button" class="key ${kind}" aria-label=${name} aria-disabled=${busy ? 'true' : nothing} @click=${press}>${label}</button>`;
    const drawn = (path: string, word: string) =>
      html`<svg viewBox="0 0 24 24" aria-hidden="true">${svg`<path d=${path} fill="none" stroke="currentColor" stroke-width="2.2"/>`}</svg
        ><span class="word">${word}</span>`;
    const decimalSign = decimalSignOf(this.locale);
    return html`<div class="pad" role="group" aria-label=${words.demand} @keydown=${this.#hear}>
      <label class="display">
        <span class="printed">${words.demand}</span>
        <span class="window"
          ><input
            ${ref(this.#figure)}
            class="figure"
            inputmode="none"
            autocomplete="off"
            spellcheck="false"
            .value=${this.value}
            aria-describedby=${this.question === '' ? nothing : 'question'}
            @input=${this.#takeWhole}
          /><span class="unit">${this.unit}</span></span
        >
      </label>
      <p id="question" role="alert" class="question" ?hidden=${this.question === ''}>${this.question}</p>
      <div class="keys">
        ${digitRows.map((row, at) => [
          ...row.split('').map((digit) => key(digit, digit, 'digit', () => this.#press(digit))),
          at === 0 ? key(drawn('M9 5h13v14H9l-7-7zM12 9l6 6m0-6-6 6', words.backspace), words.backspace, 'side', () => this.#shorten()) : nothing,
          at === 1 ? key(drawn('M3 17h18M5 13 17 3l3.5 4L13 13', words.clear), words.clear, signed ? 'side' : 'side tall', () => this.#show('')) : nothing,
          at === 2 && signed ? key(drawn('M4 7.5h8M8 3.5v8M12 17.5h8', words.sign), words.sign, 'side', () => this.#show(figureTurned(this.value))) : nothing,
        ])}
        ${key('0', '0', whole ? 'digit broad' : 'digit', () => this.#press('0'))}
        ${whole ? nothing : key(html`<span aria-hidden="true">${decimalSign}</span>`, words.decimal, 'digit', () => this.#press(decimalSign))}
        ${key(words.enter, words.enter, 'primary broad', () => this.#enter())}
      </div>
    </div>`;
  }

  get #rules(): FigureRules {
    return { decimalSign: decimalSignOf(this.locale), whole: this.whole, signed: this.signed, maxLength: this.maxLength };
  }

  #show(text: string): void {
    if (this.busy) return;
    this.#entered = false;
    this.value = text;
  }

  // After Enter the figure stays to be looked at; the next digit starts a new one.
  #press(character: string): void {
    this.#show(figureWith(this.#entered ? '' : this.value, character, this.#rules));
  }

  #shorten(): void {
    this.#show(this.value.slice(0, -1));
  }

  #enter(): void {
    const plain = plainFigure(this.value);
    if (this.busy || plain === null) return;
    this.#entered = true;
    tell(this, 'value-entered', { text: this.value, plain });
  }

  // Text set as a whole (pasted, or typed by a device that skips keys) is taken if every character can stand, else none of it.
  #takeWhole(event: Event): void {
    const figure = event.target;
    if (!(figure instanceof HTMLInputElement)) return;
    let text = '';
    for (const character of figure.value.trim()) {
      const longer = figureWith(text, character, this.#rules);
      if (longer === text) {
        figure.value = this.value;
        return;
      }
      text = longer;
    }
    this.#show(text);
  }

  readonly #hearAll = (event: KeyboardEvent): void => {
    if (!this.hearsAll || event.defaultPrevented || event.composedPath().includes(this)) return;
    const from = event.composedPath()[0];
    if (from instanceof HTMLInputElement || from instanceof HTMLTextAreaElement || from instanceof HTMLSelectElement) return;
    // Enter on a focused key or link presses that key, unless a figure has just been typed by a device.
    if (event.key === 'Enter' && from instanceof Element && from.closest('button, a, summary') !== null && !this.#run.isFresh(event.timeStamp)) return;
    this.#hear(event);
  };

  readonly #hear = (event: KeyboardEvent): void => {
    const { key } = event;
    if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey) return;
    const onKey = event.composedPath()[0] instanceof HTMLButtonElement;
    // A person's blank or Enter presses the key that has the focus; a device's belongs to what it types.
    if (onKey && (key === ' ' || key === 'Enter') && !this.#run.isFresh(event.timeStamp)) return;
    const typed = key.length === 1;
    if (!typed && key !== 'Enter' && key !== 'Backspace' && key !== 'Delete') return;
    const wasFresh = this.#run.isFresh(event.timeStamp);
    const foreign = this.#run.hear(event.timeStamp, this.value);
    event.preventDefault();
    if (foreign) return;
    if (key === 'Enter') {
      // The next line of a device may follow within the pause that joins keys: its figure is another.
      this.#run.end();
      return this.#enter();
    }
    if (key === 'Backspace') return this.#shorten();
    if (key === 'Delete') return this.#show('');
    const hasFigure = !this.#entered && this.value !== '';
    if (this.#run.hasBehind || (hasFigure && !isFigureCharacter(key))) {
      // Some gauges type their unit behind the figure; anything else there, a second figure too, makes the whole run somebody else's.
      const behind = this.#run.behind(key).trimStart();
      if (!this.unit.startsWith(behind.trimEnd())) this.#show(this.#run.disown());
      return;
    }
    // Blanks and a plus sign before the figure say nothing.
    if (!hasFigure && (key === ' ' || key === '+')) return;
    if (!isFigureCharacter(key)) return this.#show(this.#run.disown());
    const before = this.#entered ? '' : this.value;
    // A gauge's minus is shown even where the keypad has none, and its leading noughts: what cannot be is for the rules to question.
    const longer = figureWith(before, key, { ...this.#rules, signed: true, maxLength: 24 });
    if (longer !== before) return this.#show(longer);
    if (wasFresh) this.#show(this.#run.disown());
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-keypad': GhKeypad;
  }
}
