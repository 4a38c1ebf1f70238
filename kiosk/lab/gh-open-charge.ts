import { LitElement, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { EquipmentCard, GradeCard, LayerCard } from '../../shared/traveller/index.ts';
import type { BenchRow } from '../../shared/wire/views.ts';
import { link, LinkFault, type RefusalText } from '../link/index.ts';
import '../desk/gh-step-cautions.ts';
import '../parts/gh-button.ts';
import '../parts/gh-field.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-select-list.ts';
import '../parts/gh-sheet.ts';
import { partStyles } from '../parts/part-styles.ts';
import { tell } from '../parts/tell.ts';
import { format } from '../bench/words.ts';
import { kioskChargeWords } from '../../shared/words/kiosk-charge.en.ts';
import { formStyles } from './form-styles.ts';
import './gh-place-lots.ts';
import type { Placing } from './gh-place-lots.ts';
import { labWords } from './words.ts';

/** Stands for no map among the choices. No equipment is numbered so: numbers hold capitals. */
const NO_MAP = 'none';

/**
 * Opens a furnace or coating charge with the lots that are ready for it, placed on the map of its furnace or coating plant, or with places in words where none is on record.
 * @fires subject-opened - with `{ kind, id }`
 * @fires form-left
 */
@customElement('gh-open-charge')
export class GhOpenCharge extends LitElement {
  static override styles = [partStyles, formStyles];
  @property() kind: 'furnace' | 'coating' = 'furnace';
  @property({ attribute: false }) specifications: readonly (GradeCard | LayerCard)[] = [];
  @property({ attribute: false }) equipment: readonly EquipmentCard[] = [];
  /** Number of the equipment whose map is placed on; empty: none chosen yet; `NO_MAP`: places in words. */
  @state() private on = '';
  @state() private placing: Placing = {};
  @state() private values = { charge: '', specification: '', programme: '', equipment: '' };
  @state() private ready: readonly BenchRow[] = [];
  @state() private lots: readonly string[] = [];
  @state() private places: Readonly<Record<string, string>> = {};
  @state() private missing = false;
  @state() private busy = false;
  @state() private refusal: RefusalText | null = null;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('kind')) void this.#read();
    const [only, ...others] = this.#maps();
    if (this.on === '' && others.length === 0) this.on = only?.id ?? NO_MAP;
  }

  override render() {
    const words = labWords();
    const { values, missing, refusal, kind } = this;
    const need = (text: string): string => (missing && text.trim() === '' ? words.missing : '');
    const card = this.#card();
    const lots = this.ready.map(({ id, designation, title, pieces }) => ({ value: id, text: id, hint: words.charge.ready(designation ?? title, pieces, format().count(pieces)) }));
    return html`<gh-sheet open .heading=${kind === 'furnace' ? words.openFurnace : words.openCoating} .closeWord=${words.cancel} @sheet-closed=${() => tell(this, 'form-left')}>
      <gh-step-cautions .step=${kind === 'furnace' ? 'openFurnace' : 'openCoating'}></gh-step-cautions>
      <form @submit=${this.#open}>
        ${refusal === null ? nothing : html`<gh-notice kind="refusal" .happened=${refusal.happened} .kept=${refusal.kept} .next=${refusal.next}></gh-notice>`}
        <gh-select-list columns="2" .label=${kind === 'furnace' ? words.charge.furnaceOf : words.charge.coatingOf} .value=${values.specification} .error=${need(values.specification)}
          .options=${this.specifications.map(({ id, name }) => ({ value: id, text: name, hint: id }))} @option-chosen=${this.#take('specification')}></gh-select-list>
        ${this.#maps().length === 0 ? nothing : html`<gh-select-list columns="2" .label=${kioskChargeWords.place.equipment} .value=${this.on} .error=${need(this.on)} .options=${[...this.#maps().map(({ id, name }) => ({ value: id, text: name, hint: id })), { value: NO_MAP, text: kioskChargeWords.place.noMap }]} @option-chosen=${(event: CustomEvent<{ value: string }>) => (this.on = event.detail.value)}></gh-select-list>`}
        <div class="pair"><gh-field .label=${words.number} .hint=${words.numberHint} .value=${values.charge} .error=${need(values.charge)} @field-input=${this.#take('charge')}></gh-field>
          <gh-field .label=${words.charge.programme} .value=${values.programme} .error=${need(values.programme)} @field-input=${this.#take('programme')}></gh-field>
          ${card === null ? html`<gh-field .label=${kind === 'furnace' ? words.charge.furnace : words.charge.coater} .value=${values.equipment} .error=${need(values.equipment)} @field-input=${this.#take('equipment')}></gh-field>` : nothing}</div>
        ${lots.length === 0
          ? html`<p>${words.charge.noLots}</p>`
          : html`<gh-select-list multiple columns="2" .label=${words.charge.lots} .options=${lots} .values=${[...this.lots]} .error=${missing && this.lots.length === 0 ? words.charge.noneChosen : ''} @options-chosen=${(event: CustomEvent<{ values: readonly string[] }>) => (this.lots = event.detail.values)}></gh-select-list>`}
        ${card === null ? nothing : html`<gh-place-lots .equipment=${card} .lots=${this.lots} .placing=${this.placing} .error=${missing && this.lots.some((lot) => (this.placing[lot] ?? []).length === 0) ? kioskChargeWords.place.missing : ''} @placing-changed=${(event: CustomEvent<{ placing: Placing }>) => (this.placing = event.detail.placing)}></gh-place-lots>`}
        <div class="pair">${card !== null ? nothing : this.lots.map((lot) => html`<gh-field .label=${words.charge.places(lot)} .hint=${words.charge.placesHint} .value=${this.places[lot] ?? ''} .error=${need(this.places[lot] ?? '')}
          @field-input=${(event: CustomEvent<{ value: string }>) => (this.places = { ...this.places, [lot]: event.detail.value })}></gh-field>`)}</div>
        <div><gh-button kind="primary" type="submit" ?busy=${this.busy} busy-word=${words.busy} .hint=${words.charge.chosen(this.lots.length)}>${words.charge.open}</gh-button></div>
      </form>
    </gh-sheet>`;
  }

  #take(name: keyof typeof this.values) {
    return (event: CustomEvent<{ readonly value: string }>): void => {
      this.values = { ...this.values, [name]: name === 'charge' ? event.detail.value.toUpperCase() : event.detail.value };
    };
  }

  readonly #open = async (event: Event): Promise<void> => {
    event.preventDefault();
    const { charge, specification, programme, equipment } = this.values;
    const card = this.#card();
    const members = card !== null ? this.lots.map((lot) => ({ lot, places: [], cells: this.placing[lot] ?? [] })) : this.lots.map((lot) => ({ lot, places: (this.places[lot] ?? '').split(',').map((place) => place.trim()).filter((place) => place !== '') }));
    const named = card?.name ?? equipment.trim();
    this.missing = [charge, specification, programme, named, this.on].some((text) => text.trim() === '') || members.length === 0 || this.lots.some((lot) => (card === null ? (this.places[lot] ?? '').trim() : this.placing[lot] ?? []).length === 0);
    if (this.missing || this.busy) return;
    this.busy = true;
    const outcome = await link.give({ type: 'openCharge', charge, kind: this.kind, specification, programme: programme.trim(), equipment: named, ...(card === null ? {} : { equipmentId: card.id }), members });
    this.busy = false;
    if (outcome.state === 'refused') this.refusal = outcome.words;
    else tell(this, 'subject-opened', { kind: this.kind, id: charge });
  };

  #maps(): readonly EquipmentCard[] {
    return this.equipment.filter(({ kind }) => kind === this.kind);
  }
  #card(): EquipmentCard | null {
    return this.#maps().find(({ id }) => id === this.on) ?? null;
  }

  async #read(): Promise<void> {
    try {
      this.ready = (await link.ask<{ rows: readonly BenchRow[] }>(`/api/ready/${this.kind}`)).rows;
    } catch (error) {
      if (!(error instanceof LinkFault)) throw error;
      this.refusal = error.words;
    }
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-open-charge': GhOpenCharge;
  }
}
