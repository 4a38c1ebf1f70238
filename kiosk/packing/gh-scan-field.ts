import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { createRef, ref } from 'lit/directives/ref.js';
import { live } from 'lit/directives/live.js';
import { Scans } from '../desk/scans.ts';
import '../parts/gh-button.ts';
import { partStyles } from '../parts/part-styles.ts';
import { tell } from '../parts/tell.ts';

/** Ctrl keys by which a typing scanner sends control characters: D is EOT, ] GS, ^ (on the 6 of many layouts) RS (ASCII, ISO/IEC 646). */
const CONTROL_KEYS: Readonly<Record<string, string>> = { d: '\x04', D: '\x04', ']': '\x1d', '^': '\x1e', '6': '\x1e' };

/**
 * A line that a scanner types into, control characters and all; they show as their pictures. With `hears` it also takes what is scanned
 * anywhere on the page.
 * @fires code-scanned - with `{ text }`, control characters as they were sent
 */
@customElement('gh-scan-field')
export class GhScanField extends LitElement {
  static override shadowRootOptions: ShadowRootInit = { ...LitElement.shadowRootOptions, delegatesFocus: true };
  static override styles = [partStyles, css`
    form { display: flex; flex-wrap: wrap; gap: var(--gap); align-items: end; margin: 0; }
    label { flex: 1 1 14rem; display: block; min-inline-size: 0; }
    input { inline-size: 100%; min-block-size: var(--target); font: inherit; font-family: var(--face-figures); color: inherit; background: var(--slip); border: var(--rule) solid var(--line-strong); border-block-end-width: calc(1px + var(--rule-strong)); border-radius: var(--corner); padding-inline: var(--pad); }
  `];
  @property() label = '';
  @property() hint = '';
  @property({ attribute: 'take-word' }) takeWord = '';
  @property({ type: Boolean }) busy = false;
  @property({ type: Boolean }) hears = false;
  @state() private text = '';
  readonly #input = createRef<HTMLInputElement>();

  protected readonly scans = new Scans(this, (event) => this.#hear(event));

  override focus(options?: FocusOptions): void {
    this.#input.value?.focus(options);
  }

  override render() {
    return html`<form @submit=${this.#submit}>
      <label><span class="printed">${this.label}</span>
        <input ${ref(this.#input)} .value=${live(pictured(this.text))} inputmode="text" autocomplete="off" autocapitalize="off" spellcheck="false" maxlength="500"
          aria-describedby=${this.hint === '' ? nothing : 'hint'} @input=${this.#typed} @keydown=${this.#control} /></label>
      <gh-button type="submit" .busy=${this.busy}>${this.takeWord}</gh-button>
      ${this.hint === '' ? nothing : html`<p id="hint" class="printed">${this.hint}</p>`}
    </form>`;
  }

  readonly #hear = (event: Event): void => {
    if (!this.hears || !(event instanceof CustomEvent)) return;
    event.preventDefault();
    this.#tell(String((event.detail as { text: string }).text));
  };

  #typed(): void {
    this.text = unpictured(this.#input.value?.value ?? '');
  }

  // Left to the browser, Ctrl+D would set a bookmark in the middle of a scan.
  #control(event: KeyboardEvent): void {
    const character = event.ctrlKey && !event.altKey && !event.metaKey ? CONTROL_KEYS[event.key] : undefined;
    if (character === undefined) return;
    event.preventDefault();
    this.text += character;
  }

  #submit(event: Event): void {
    event.preventDefault();
    const { text } = this;
    if (this.busy || text.trim() === '') return;
    this.text = '';
    this.#tell(text);
    this.focus();
  }

  #tell(text: string): void {
    tell(this, 'code-scanned', { text });
  }
}

/** Control characters as their pictures (Unicode block Control Pictures), so that a person sees that they came through. */
export function pictured(text: string): string {
  return text.replace(/[\u0004\u001c-\u001f]/g, (character) => String.fromCharCode(0x2400 + character.charCodeAt(0)));
}
/** The text as it was sent. */
export function unpictured(text: string): string {
  return text.replace(/[\u2404\u241c-\u241f]/g, (picture) => String.fromCharCode(picture.charCodeAt(0) - 0x2400));
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-scan-field': GhScanField;
  }
}
