import { LitElement, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { EquipmentCard, ProgrammeCard } from '../../shared/traveller/index.ts';
import { furnaceRecordWords as words } from '../../shared/words/furnace-records.en.ts';
import { kioskChargeWords } from '../../shared/words/kiosk-charge.en.ts';
import { plansDeskWords } from '../../shared/words/plans-desk.en.ts';
import { askedNotice, refusalNotice } from '../desk/asked-notice.ts';
import { Asked } from '../desk/asked.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { Giving } from '../desk/giving.ts';
import { deskWords } from '../desk/words.ts';
import { link } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-charge-map.ts';
import '../parts/gh-field.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-select-list.ts';
import { partStyles } from '../parts/part-styles.ts';
import { drawnLevels } from '../traveller/charge/drawn-map.ts';
import { EMPTY_TEXTS, equipmentOf, equipmentTexts, programmeOf, programmeTexts, type FurnaceTexts } from './furnace-card-text.ts';

export type FurnaceRecordKind = 'equipment' | 'programme';
interface Records { readonly equipment: readonly EquipmentCard[]; readonly programmes: readonly ProgrammeCard[] }
const FIELDS = { equipment: ['id', 'name', 'levels', 'testPositions'], programme: ['id', 'name', 'rateOverMin', 'largestGapMin', 'segments'] } as const satisfies Record<FurnaceRecordKind, readonly (keyof FurnaceTexts)[]>;
const LINES: readonly (keyof FurnaceTexts)[] = ['levels', 'testPositions', 'segments'];
const FIGURES: readonly (keyof FurnaceTexts)[] = ['rateOverMin', 'largestGapMin'];

/** Puts a furnace or coating plant with its map, or a furnace programme with its limits, on record, or with `card` changes one. */
@customElement('gh-furnace-record-form')
export class GhFurnaceRecordForm extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property() kind: FurnaceRecordKind = 'equipment';
  @property() card = '';
  @state() private texts: Partial<FurnaceTexts> = {};
  @state() private asked = false;
  @state() private done = '';
  readonly #records = new Asked<Records>(this, { key: () => '/api/catalogue', read: (path) => link.ask(path), topics: ['catalogue'] });
  readonly #giving = new Giving(this);

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('kind') && !changed.has('card')) return;
    this.texts = {};
    this.asked = false;
    this.done = '';
  }

  override render() {
    const { value } = this.#records;
    if (value === null) return askedNotice(this.#records);
    const before = this.#before(value);
    const unknown = plansDeskWords.catalogue.unknown(words.title[this.kind], this.card);
    if (before === null) return html`<gh-notice kind="empty" happened=${unknown.happened} next=${unknown.next}></gh-notice>`;
    const texts: FurnaceTexts = { ...before, ...this.texts };
    const read = this.kind === 'equipment' ? equipmentOf(texts) : programmeOf(texts);
    const wrong = this.asked && 'wrong' in read ? read.wrong : {};
    return html`<section class="page-part sheet" aria-labelledby="title"><h2 id="title">${this.card === '' ? words.title[this.kind] : words.change(this.card)}</h2>
      ${this.card === '' ? nothing : html`<p class="soft">${words.note}</p>`}
      ${this.done === '' ? nothing : html`<gh-notice kind="done" happened=${this.done}></gh-notice>`} ${askedNotice(this.#records)} ${refusalNotice(this.#giving)}
      ${this.kind === 'equipment' ? html`<gh-select-list columns="2" label=${words.fields.kind} .value=${texts.kind} error=${'kind' in wrong ? words.missing : ''} .options=${(['furnace', 'coating'] as const).map((each) => ({ value: each, text: words.kinds[each] }))} @option-chosen=${(event: CustomEvent<{ value: string }>) => this.#take('kind', event.detail.value)}></gh-select-list>` : nothing}
      ${FIELDS[this.kind].map((name) => html`<gh-field label=${words.fields[name]} hint=${name in words.hints ? words.hints[name as keyof typeof words.hints] : ''} unit=${FIGURES.includes(name) ? words.unit : ''} entry=${FIGURES.includes(name) ? 'decimal' : 'text'} ?multiline=${LINES.includes(name)} ?readonly=${name === 'id' && this.card !== ''}
        .value=${texts[name]} error=${this.#fault(name, wrong)} @field-input=${(event: CustomEvent<{ value: string }>) => this.#take(name, event.detail.value)}></gh-field>`)}
      ${'levels' in read ? html`<h3>${words.preview}</h3><gh-charge-map .levels=${drawnLevels(read, [])} .words=${{ caption: kioskChargeWords.map.caption(read.name), test: kioskChargeWords.map.test, failed: '', near: '' }}></gh-charge-map>` : nothing}
      <div class="keys"><gh-button kind="primary" .busy=${this.#giving.busy !== null} busy-word=${deskWords.busy} @click=${() => void this.#save(read)}>${words.save}</gh-button> <a href="/plans/catalogue">${deskWords.cancel}</a></div>
    </section>`;
  }

  #before({ equipment, programmes }: Records): FurnaceTexts | null {
    if (this.card === '') return EMPTY_TEXTS;
    if (this.kind === 'equipment') {
      const card = equipment.find(({ id }) => id === this.card);
      return card === undefined ? null : equipmentTexts(card);
    }
    const card = programmes.find(({ id }) => id === this.card);
    return card === undefined ? null : programmeTexts(card);
  }

  #fault(name: keyof FurnaceTexts, wrong: Partial<FurnaceTexts>): string {
    const line = wrong[name];
    if (line === undefined) return '';
    if (FIGURES.includes(name)) return words.number;
    return line === '' ? words.missing : words.wrongLine(line);
  }

  #take(name: keyof FurnaceTexts, text: string): void {
    this.texts = { ...this.texts, [name]: name === 'id' ? text.toUpperCase() : text };
    this.done = '';
  }

  async #save(read: EquipmentCard | ProgrammeCard | { readonly wrong: Partial<FurnaceTexts> }): Promise<void> {
    this.asked = true;
    if ('wrong' in read) return;
    const command = 'levels' in read ? ({ type: 'defineEquipment', equipment: read } as const) : ({ type: 'defineProgramme', programme: read } as const);
    if ((await this.#giving.give('save', command)) === null) return;
    await this.#records.again();
    this.asked = false;
    this.done = words.saved(read.id);
    this.texts = {};
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-furnace-record-form': GhFurnaceRecordForm;
  }
}
