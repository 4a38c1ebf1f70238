import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { isOurCaution } from '../../../shared/traveller/index.ts';
import { planCautionsWords as words } from '../../../shared/words/plan-cautions.en.ts';
import { refusalNotice } from '../../desk/asked-notice.ts';
import { Giving } from '../../desk/giving.ts';
import { deskWords } from '../../desk/words.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-field.ts';
import '../../parts/gh-select-list.ts';
import '../../parts/gh-sheet.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { tell } from '../../parts/tell.ts';

/** What is being written: an empty key for a caution of the plant's own. */
export interface CautionInHand { readonly caution: string; readonly text: string; readonly shown: boolean }
const FIT = /^[A-Z0-9][A-Z0-9-]{1,15}$/;

/**
 * Words one caution anew, or switches it off, with the reason.
 * @fires caution-done - with `{ caution }` once written, null where it was left
 */
@customElement('gh-caution-sheet')
export class GhCautionSheet extends LitElement {
  static override styles = [partStyles, css`.fields { display: grid; gap: var(--gap); }`];
  @property({ attribute: false }) inHand: CautionInHand = { caution: '', text: '', shown: true };
  @state() private key: string | null = null;
  @state() private text: string | null = null;
  @state() private shown: boolean | null = null;
  @state() private why = '';
  @state() private asked = false;
  readonly #giving = new Giving(this);

  override render() {
    const { caution } = this.inHand;
    const own = caution === '';
    return html`<gh-sheet open heading=${own ? words.addTitle : words.edit(caution)} close-word=${deskWords.cancel} @sheet-closed=${() => tell(this, 'caution-done', { caution: null })}>
      ${refusalNotice(this.#giving)}
      <div class="fields">
        ${own ? html`<gh-field label=${words.key} hint=${words.keyHint} max-length="16" .value=${this.#key} error=${this.asked && !FIT.test(this.#key) ? words.wrongKey : ''} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.key = detail.value.trim().toUpperCase())}></gh-field>` : nothing}
        <gh-field label=${words.text} hint=${words.textHint} max-length="200" .value=${this.#text} error=${this.asked && this.#text.trim() === '' ? words.missing : ''} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.text = detail.value)}></gh-field>
        <gh-select-list label=${words.shown} columns="2" .value=${this.#shown ? 'shown' : 'off'} .options=${[{ value: 'shown', text: words.choices.shown }, { value: 'off', text: words.choices.off }]} @option-chosen=${({ detail }: CustomEvent<{ value: string }>) => (this.shown = detail.value === 'shown')}></gh-select-list>
        <gh-field label=${words.why} max-length="200" .value=${this.why} error=${this.asked && this.why.trim() === '' ? words.whyMissing : ''} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.why = detail.value)}></gh-field>
      </div>
      <gh-button slot="actions" kind="primary" ?busy=${this.#giving.busy !== null} busy-word=${deskWords.busy} @click=${() => void this.#keep(this.#text.trim())}>${words.keep}</gh-button>
      ${isOurCaution(caution) ? html`<gh-button slot="actions" @click=${() => void this.#keep(null)}>${words.back}</gh-button>` : nothing}
    </gh-sheet>`;
  }

  get #key(): string { return this.key ?? this.inHand.caution; }
  get #text(): string { return this.text ?? this.inHand.text; }
  get #shown(): boolean { return this.shown ?? this.inHand.shown; }

  async #keep(text: string | null): Promise<void> {
    this.asked = true;
    const caution = this.#key;
    if ((!isOurCaution(caution) && !FIT.test(caution)) || text === '' || this.why.trim() === '') return;
    const written = await this.#giving.give('keep', { type: 'writeCaution', caution, text, shown: this.#shown, reason: this.why.trim() });
    if (written !== null) tell(this, 'caution-done', { caution });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-caution-sheet': GhCautionSheet;
  }
}
