import { LitElement, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { InspectionPlan } from '../../shared/traveller/index.ts';
import { plansDeskWords } from '../../shared/words/plans-desk.en.ts';
import { askedNotice, refusalNotice } from '../desk/asked-notice.ts';
import { Asked } from '../desk/asked.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { Giving } from '../desk/giving.ts';
import { deskWords, labels } from '../desk/words.ts';
import { link } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-field.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-select-list.ts';
import type { SelectOption } from '../parts/gh-select-list.ts';
import { partStyles } from '../parts/part-styles.ts';
import { BY_DESIGNATION, BY_DRAWING, CARD_FIELDS, cardCommand, cardFault, textsFromDesignation, textsOf, UNCOATED, type CardField } from './card-fields.ts';
import type { CardKind, CatalogueView } from './catalogue-view.ts';
import './grade/gh-propose-key.ts';
import { planWithLayers } from './grade/propose-draft.ts';

const words = plansDeskWords.catalogue;
type Given = CustomEvent<{ value: string }>;

/** Defines a coating or product by hand, or with `card` changes one. */
@customElement('gh-card-form')
export class GhCardForm extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property() kind: CardKind = 'layer';
  @property() card = '';
  /** A designation that a new product begins with. */
  @property() designation = '';
  @state() private texts: Readonly<Record<string, string>> = {};
  @state() private asked = false;
  @state() private done = '';
  readonly #catalogue = new Asked<CatalogueView>(this, { key: () => '/api/catalogue', read: (path) => link.ask(path), topics: ['catalogue'] });
  readonly #giving = new Giving(this);

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('kind') && !changed.has('card')) return;
    this.texts = {};
    this.asked = false;
    this.done = '';
  }

  override render() {
    const { value } = this.#catalogue;
    if (value === null) return askedNotice(this.#catalogue);
    const { kind, card } = this;
    const before = card !== '' ? textsOf(kind, card, value) : this.designation === '' ? {} : textsFromDesignation(this.designation);
    const unknown = words.unknown(labels.streamKinds[kind], card);
    if (before === null) return html`<gh-notice kind="empty" happened=${unknown.happened} next=${unknown.next}></gh-notice>`;
    const texts = { ...before, ...this.texts };
    const fields = CARD_FIELDS[kind];
    const typed = fields.filter((field) => this.#options(field, value) === null);
    return html`<section class="page-part sheet" aria-labelledby="title">
      <h2 id="title">${card === '' ? words.defineTitle[kind] : words.changeTitle(labels.streamKinds[kind], card)}</h2>
      ${card === '' ? nothing : html`<p class="soft">${words.changeNote}</p>`}
      ${this.done === '' ? nothing : html`<gh-notice kind="done" happened=${this.done}></gh-notice>`} ${askedNotice(this.#catalogue)} ${refusalNotice(this.#giving)}
      <div class="fields">${typed.map((field) => this.#typed(field, texts[field.name] ?? '', texts))}</div>
      <div class="halves">${fields.map((field) => this.#chosen(field, texts[field.name] ?? (field.kind === 'madeTo' ? BY_DESIGNATION : ''), this.#options(field, value)))}</div>
      <div class="keys"><gh-button kind="primary" .busy=${this.#giving.busy !== null} busy-word=${deskWords.busy} @click=${() => void this.#save(texts)}>${words.save}</gh-button> <a href="/plans/catalogue">${deskWords.cancel}</a></div>
      ${this.#proposal(value)}
    </section>`;
  }

  /** A coating whose layers are named and saved may have its check drafted from them. */
  #proposal({ layers }: CatalogueView) {
    const saved = this.kind === 'layer' && Object.keys(this.texts).length === 0 ? layers.find(({ id }) => id === this.card) : undefined;
    return saved?.layers === undefined ? nothing : html`<gh-propose-key plan=${saved.coatingPlan} label=${words.draftLayers(saved.coatingPlan)} .propose=${(now: InspectionPlan) => planWithLayers(now, saved)}></gh-propose-key>`;
  }

  #typed(field: CardField, text: string, texts: Readonly<Record<string, string>>) {
    return html`<gh-field label=${field.label} hint=${field.hint} unit=${field.unit} max-length=${field.most} ?multiline=${field.kind === 'layers'} entry=${field.kind === 'positive' ? 'decimal' : field.kind === 'whole' ? 'numeric' : 'text'}
      ?readonly=${field.name === 'id' && this.card !== ''} .value=${text} error=${this.asked ? cardFault(field, text, texts) : ''} @field-input=${({ detail }: Given) => this.#take(field.name, detail.value)}></gh-field>`;
  }

  #chosen(field: CardField, text: string, options: readonly SelectOption[] | null) {
    if (options === null) return nothing;
    if (options.length === 0) return html`<gh-notice kind="empty" happened="${field.label}: ${field.kind === 'grade' ? words.fields.noGrade : words.fields.noPlan}"></gh-notice>`;
    return html`<gh-select-list label=${field.label} .options=${options} .value=${text} error=${this.asked ? cardFault(field, text) : ''} @option-chosen=${({ detail }: Given) => this.#take(field.name, detail.value)}></gh-select-list>`;
  }

  /** What a field is chosen from; null where it is typed. */
  #options({ kind }: CardField, { plans, grades, layers }: CatalogueView): readonly SelectOption[] | null {
    const listed = (cards: readonly { readonly id: string; readonly name: string }[]) => cards.map(({ id, name }) => ({ value: id, text: name, hint: id }));
    if (typeof kind === 'object') return listed(plans.filter(({ appliesTo }) => appliesTo === kind.planFor));
    if (kind === 'madeTo') return [{ value: BY_DESIGNATION, text: words.fields.byDesignation }, { value: BY_DRAWING, text: words.fields.byDrawing }];
    return kind === 'grade' ? listed(grades) : kind === 'layer' ? [{ value: UNCOATED, text: words.fields.uncoated }, ...listed(layers)] : null;
  }

  #take(name: string, text: string): void {
    this.texts = { ...this.texts, [name]: name === 'id' || name === 'itemCode' ? text.toUpperCase() : text };
    this.done = '';
  }

  async #save(texts: Readonly<Record<string, string>>): Promise<void> {
    this.asked = true;
    if (CARD_FIELDS[this.kind].some((field) => cardFault(field, texts[field.name] ?? '', texts) !== '')) return;
    const { kind, card } = this;
    if ((await this.#giving.give('save', cardCommand(kind, texts))) === null || kind !== this.kind || card !== this.card) return;
    await this.#catalogue.again();
    this.asked = false;
    this.done = words.saved((texts['id'] ?? '').trim());
    this.texts = {};
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-card-form': GhCardForm;
  }
}
