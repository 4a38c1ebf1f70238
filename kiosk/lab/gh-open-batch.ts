import { LitElement, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { GradeCard, RawShare } from '../../shared/traveller/index.ts';
import { parseCount } from '../../shared/words/index.ts';
import { link, type RefusalText } from '../link/index.ts';
import '../desk/gh-step-cautions.ts';
import '../parts/gh-button.ts';
import '../parts/gh-field.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-select-list.ts';
import '../parts/gh-sheet.ts';
import { partStyles } from '../parts/part-styles.ts';
import { tell } from '../parts/tell.ts';
import { formStyles } from './form-styles.ts';
import { aboveZero } from './above-zero.ts';
import { labWords } from './words.ts';

interface RawText { readonly rawLot: string; readonly material: string; readonly kg: string }
const emptyRaw: RawText = { rawLot: '', material: '', kg: '' };

/**
 * Opens a powder batch: grade, barrels, what it was made of.
 * @fires subject-opened - with `{ kind, id }`
 * @fires form-left
 */
@customElement('gh-open-batch')
export class GhOpenBatch extends LitElement {
  static override styles = [partStyles, formStyles];
  @property({ attribute: false }) grades: readonly GradeCard[] = [];
  @state() private values = { batch: '', grade: '', barrels: '', kg: '' };
  @state() private raws: readonly RawText[] = [emptyRaw];
  @state() private missing = false;
  @state() private busy = false;
  @state() private refusal: RefusalText | null = null;

  override render() {
    const words = labWords();
    const { values, missing, refusal } = this;
    const need = (text: string): string => (missing && text === '' ? words.missing : '');
    return html`<gh-sheet open .heading=${words.openBatch} .closeWord=${words.cancel} @sheet-closed=${() => tell(this, 'form-left')}>
      <gh-step-cautions .step=${'openBatch'}></gh-step-cautions>
      <form @submit=${this.#open}>
        ${refusal === null ? nothing : html`<gh-notice kind="refusal" .happened=${refusal.happened} .kept=${refusal.kept} .next=${refusal.next}></gh-notice>`}
        <gh-select-list columns="2" .label=${words.batch.grade} .value=${values.grade} .error=${need(values.grade)} .options=${this.grades.map(({ id, name }) => ({ value: id, text: name, hint: id }))} @option-chosen=${this.#take('grade')}></gh-select-list>
        <div class="pair">
          <gh-field .label=${words.number} .hint=${words.numberHint} .value=${values.batch} .error=${need(values.batch)} @field-input=${this.#take('batch')}></gh-field>
          <gh-field entry="numeric" .label=${words.batch.barrels} .value=${values.barrels} .error=${missing && (parseCount(values.barrels) ?? 0) < 1 ? words.whole : ''} @field-input=${this.#take('barrels')}></gh-field>
          <gh-field entry="decimal" unit="kg" .label=${words.batch.kg} .value=${values.kg} .error=${missing && aboveZero(values.kg) === null ? words.positive : ''} @field-input=${this.#take('kg')}></gh-field>
        </div>
        <h3>${words.batch.raw}</h3>
        ${missing && this.#rawShares() === null ? html`<p class="wrong">${words.batch.rawMissing}</p>` : nothing}
        ${this.raws.map((raw, at) => this.#raw(raw, at))}
        <div class="keys"><gh-button @click=${() => (this.raws = [...this.raws, emptyRaw])}>${words.batch.addRaw}</gh-button>
          <gh-button kind="primary" type="submit" ?busy=${this.busy} busy-word=${words.busy}>${words.batch.open}</gh-button></div>
      </form>
    </gh-sheet>`;
  }

  #raw(raw: RawText, at: number) {
    const words = labWords().batch;
    const take = (name: keyof RawText) => (event: CustomEvent<{ readonly value: string }>): void => {
      this.raws = this.raws.map((each, index) => (index === at ? { ...each, [name]: event.detail.value } : each));
    };
    return html`<div class="raw">
      <gh-field .label=${words.rawLot} .value=${raw.rawLot} @field-input=${take('rawLot')}></gh-field>
      <gh-field .label=${words.material} .value=${raw.material} @field-input=${take('material')}></gh-field>
      <gh-field entry="decimal" unit="kg" .label=${words.rawKg} .value=${raw.kg} @field-input=${take('kg')}></gh-field>
      ${this.raws.length === 1 ? nothing : html`<gh-button aria-label=${words.dropRaw(raw.rawLot)} @click=${() => (this.raws = this.raws.filter((_, index) => index !== at))}>−</gh-button>`}
    </div>`;
  }

  #take(name: keyof typeof this.values) {
    return (event: CustomEvent<{ readonly value: string }>): void => {
      this.values = { ...this.values, [name]: name === 'batch' ? event.detail.value.toUpperCase() : event.detail.value };
    };
  }

  /** The raw lots as they will be written; null while one is not whole or none is named. */
  #rawShares(): RawShare[] | null {
    const named = this.raws.filter(({ rawLot, material, kg }) => rawLot !== '' || material !== '' || kg !== '');
    const shares = named.flatMap(({ rawLot, material, kg }): RawShare[] => {
      const mass = aboveZero(kg);
      return rawLot.trim() === '' || material.trim() === '' || mass === null ? [] : [{ rawLot: rawLot.trim(), material: material.trim(), kg: mass }];
    });
    return shares.length === 0 || shares.length < named.length ? null : shares;
  }

  readonly #open = async (event: Event): Promise<void> => {
    event.preventDefault();
    const { batch, grade, barrels, kg } = this.values;
    const [count, kgPerBarrel, rawLots] = [parseCount(barrels) ?? 0, aboveZero(kg), this.#rawShares()];
    this.missing = batch === '' || grade === '' || count < 1 || kgPerBarrel === null || rawLots === null;
    if (this.missing || this.busy || kgPerBarrel === null || rawLots === null) return;
    this.busy = true;
    const outcome = await link.give({ type: 'openBatch', batch, grade, barrels: count, kgPerBarrel, rawLots });
    this.busy = false;
    if (outcome.state === 'refused') this.refusal = outcome.words;
    else tell(this, 'subject-opened', { kind: 'batch', id: batch });
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-open-batch': GhOpenBatch;
  }
}
