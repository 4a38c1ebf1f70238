import { LitElement, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Outcome, RefusalText } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-field.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-sheet.ts';
import { partStyles } from '../parts/part-styles.ts';
import { tell } from '../parts/tell.ts';
import { travellerWords } from './speak.ts';

/**
 * Asks for one text (why a lot is held, a note, why a finding is withdrawn) and gives the command made of it.
 * @fires text-done - when it was given or left
 */
@customElement('gh-text-sheet')
export class GhTextSheet extends LitElement {
  static override styles = [partStyles];
  @property() heading = '';
  @property() label = '';
  @property() doWord = '';
  @property({ type: Boolean }) grave = false;
  @property({ attribute: false }) give: (text: string) => Promise<Outcome> = () => Promise.reject(new Error('no command was set'));
  @state() private text = '';
  @state() private missing = false;
  @state() private busy = false;
  @state() private refusal: RefusalText | null = null;

  override render() {
    const words = travellerWords();
    const { refusal } = this;
    return html`<gh-sheet open ?grave=${this.grave} .heading=${this.heading} .closeWord=${words.cancel} @sheet-closed=${() => tell(this, 'text-done')}>
      ${refusal === null ? nothing : html`<gh-notice kind="refusal" .happened=${refusal.happened} .kept=${refusal.kept} .next=${refusal.next}></gh-notice>`}
      <gh-field multiline .label=${this.label} .value=${this.text} .error=${this.missing ? words.missing : ''} @field-input=${(event: CustomEvent<{ value: string }>) => (this.text = event.detail.value)}></gh-field>
      <gh-button slot="actions" kind="primary" ?busy=${this.busy} busy-word=${words.count.busy} @click=${() => void this.#do()}>${this.doWord}</gh-button>
    </gh-sheet>`;
  }

  async #do(): Promise<void> {
    this.missing = this.text.trim() === '';
    if (this.missing) return;
    this.busy = true;
    const outcome = await this.give(this.text.trim());
    this.busy = false;
    if (outcome.state === 'refused') this.refusal = outcome.words;
    else tell(this, 'text-done');
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-text-sheet': GhTextSheet;
  }
}
