import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { askedInputs } from '../../shared/traveller/index.ts';
import type { Characteristic, Reading, Refusal, Subject } from '../../shared/traveller/index.ts';
import type { RefusalText } from '../link/index.ts';
import type { TravellerStore } from '../link/traveller-store.ts';
import '../parts/gh-button.ts';
import '../parts/gh-field.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-select-list.ts';
import '../parts/gh-sheet.ts';
import { partStyles } from '../parts/part-styles.ts';
import { tell } from '../parts/tell.ts';
import { correctedEntry } from './corrected-entry.ts';
import { inputName, layerNames } from './work/input-names.ts';
import { catalogue, format, travellerWords } from './speak.ts';
import './work/gh-likely-question.ts';

/** What is corrected. */
export interface CorrectAt { readonly subject: Subject; readonly gate: string; readonly characteristic: Characteristic; readonly reading: Reading }

/**
 * Corrects one reading: the right value and why. The first entry stays on its slip.
 * @fires text-done - when it was given or left
 */
@customElement('gh-correct-sheet')
export class GhCorrectSheet extends LitElement {
  static override styles = [partStyles, css`.rows { display: grid; gap: var(--gap); } .reasons { display: grid; grid-template-columns: repeat(auto-fit, minmax(8.5rem, 1fr)); gap: var(--gap); }`];
  @property({ attribute: false }) store: TravellerStore | null = null;
  @property({ attribute: false }) at: CorrectAt | null = null;
  /** One text, or one for each figure that is read at the piece. */
  @state() private typed: readonly string[] = [];
  @state() private reason = '';
  /** The gauge it was measured again with; empty where only the entry is mended. */
  @state() private again = '';
  @state() private missing = false;
  @state() private busy = false;
  @state() private refusal: RefusalText | null = null;
  @state() private asking: Extract<Refusal, { code: 'unlikelyValue' }> | null = null;

  override render() {
    const { at, refusal } = this;
    if (at === null) return nothing;
    const words = travellerWords();
    const { characteristic, reading } = at;
    const value = typeof reading.value === 'number' && characteristic.kind === 'measured' ? `${format().number(reading.value, characteristic.decimals)} ${characteristic.unit}` : String(reading.value);
    return html`<gh-sheet open .heading=${words.correct.title(characteristic.name, reading.ordinal)} .closeWord=${words.cancel} @sheet-closed=${() => tell(this, 'text-done')}>
      <div class="rows">
        ${refusal === null ? nothing : html`<gh-notice kind="refusal" .happened=${refusal.happened} .kept=${refusal.kept} .next=${refusal.next}></gh-notice>`}
        <p>${words.correct.is(value)}</p>
        ${this.#valueFields(characteristic)}
        ${reading.gauge === null ? nothing : html`<gh-field .label=${words.correct.again} .hint=${words.correct.againHint(reading.gauge.id)} max-length="16" .value=${this.again} @field-input=${(event: CustomEvent<{ value: string }>) => (this.again = event.detail.value)}></gh-field>`}
        <gh-field .label=${words.correct.reason} .value=${this.reason} .error=${this.missing && this.reason.trim() === '' ? words.missing : ''} @field-input=${(event: CustomEvent<{ value: string }>) => (this.reason = event.detail.value)}></gh-field>
        <div class="reasons">${words.correct.reasons.map((reason) => html`<gh-button wide pressed=${reason === this.reason ? 'true' : 'false'} @click=${() => (this.reason = reason)}>${reason}</gh-button>`)}</div>
      </div>
      <gh-button slot="actions" kind="primary" ?busy=${this.busy} busy-word=${words.count.busy} @click=${() => void this.#correct(at, false)}>${words.correct.do}</gh-button>
    </gh-sheet>
    ${this.asking === null || characteristic.kind !== 'measured' ? nothing : html`<gh-likely-question .refusal=${this.asking} .characteristic=${characteristic} @value-confirmed=${() => this.#answer(at, null)}
      @value-likely=${(event: CustomEvent<{ value: number }>) => this.#answer(at, event.detail.value)} @value-dropped=${() => (this.asking = null)}></gh-likely-question>`}`;
  }

  #valueFields(characteristic: Characteristic) {
    const words = travellerWords();
    const error = this.missing ? words.missing : '';
    const [first = ''] = this.typed;
    const field = (label: string, unit: string, at = 0) => html`<gh-field entry="decimal" .label=${label} .unit=${unit} .value=${this.typed[at] ?? ''} .error=${(this.typed[at] ?? '') === '' ? error : ''} @field-input=${(event: CustomEvent<{ value: string }>) => this.#type(at, event.detail.value)}></gh-field>`;
    switch (characteristic.kind) {
      case 'measured': {
        const asked = askedInputs(characteristic.entry);
        return asked.length === 0 ? field(words.correct.to, characteristic.unit) : asked.map((each, at) => field(inputName(each, this.#layerNames(characteristic)), each.unit, at));
      }
      case 'graded': return html`<gh-select-list columns="3" .label=${words.correct.to} .value=${first} .error=${error} .options=${characteristic.scale.map((rating) => ({ value: rating, text: rating }))} @option-chosen=${(event: CustomEvent<{ value: string }>) => this.#type(0, event.detail.value)}></gh-select-list>`;
      case 'confirmed': return html`<gh-select-list columns="2" .label=${words.correct.to} .value=${first} .error=${error} .options=${[{ value: 'yes', text: words.confirm.yes }, { value: 'no', text: words.confirm.no }]} @option-chosen=${(event: CustomEvent<{ value: string }>) => this.#type(0, event.detail.value)}></gh-select-list>`;
      case 'counted': return nothing;
    }
  }

  #type(at: number, text: string): void {
    this.typed = Array.from({ length: Math.max(at + 1, this.typed.length) }, (_, index) => (index === at ? text : this.typed[index] ?? ''));
  }
  #layerNames(lead: Characteristic): readonly string[] {
    const gate = this.at?.subject.gates.find(({ id }) => id === this.at?.gate);
    return gate === undefined ? [] : layerNames(gate, lead);
  }

  #answer(at: CorrectAt, likely: number | null): void {
    this.asking = null;
    if (likely !== null) this.typed = [format().number(likely)];
    void this.#correct(at, likely === null);
  }

  async #correct({ subject, gate, characteristic, reading }: CorrectAt, sure: boolean): Promise<void> {
    const entry = correctedEntry(characteristic, this.typed, (text) => catalogue().parseNumber(text));
    this.missing = entry === null || this.reason.trim() === '';
    if (entry === null || this.missing || this.store === null) return;
    const again = this.again.trim().toUpperCase();
    if (reading.gauge !== null) await this.store.bring(`gauge:${again === '' ? reading.gauge.id : again}`).catch(() => undefined);
    this.busy = true;
    const outcome = await this.store.give({ type: 'correctReading', subject: subject.stream, gate, characteristic: characteristic.id, ordinal: reading.ordinal, ...entry, ...(again === '' ? {} : { gauge: again }), reason: this.reason.trim(), ...(sure ? { sure } : {}) });
    this.busy = false;
    if (outcome.state !== 'refused') return tell(this, 'text-done');
    void this.store.dismiss(outcome.clientId);
    if (outcome.refusal.code === 'unlikelyValue') this.asking = outcome.refusal;
    else this.refusal = outcome.words;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-correct-sheet': GhCorrectSheet;
  }
}
