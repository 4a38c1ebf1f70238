import { LitElement, css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { GradeCard, ProductCard } from '../../shared/traveller/index.ts';
import type { BenchRow } from '../../shared/wire/views.ts';
import { parseCount } from '../../shared/words/index.ts';
import { link, LinkFault, type RefusalText } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-field.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-select-list.ts';
import '../parts/gh-sheet.ts';
import { partStyles } from '../parts/part-styles.ts';
import { tell } from '../parts/tell.ts';
import { benchWords } from './words.ts';

/** How many trays' places are counted when nothing else is said. */
const usualTray = '100';

/**
 * Opens an insert lot: product, released powder, how many pieces.
 * @fires lot-opened - with `{ lot }`
 * @fires form-left
 */
@customElement('gh-open-lot')
export class GhOpenLot extends LitElement {
  static override styles = [partStyles, css`form { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--gap); } .pair { display: grid; gap: var(--gap); grid-template-columns: repeat(auto-fit, minmax(14rem, 1fr)); align-items: start; }`];
  @state() private products: readonly ProductCard[] = [];
  @state() private grades: readonly GradeCard[] = [];
  @state() private batches: readonly BenchRow[] = [];
  @state() private values = { lot: '', product: '', batch: '', quantity: '', tray: usualTray, order: '' };
  @state() private missing = false;
  @state() private busy = false;
  @state() private refusal: RefusalText | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    void this.#read();
  }

  override render() {
    const words = benchWords().lot;
    const { values, missing, refusal } = this;
    const product = this.products.find(({ id }) => id === values.product);
    const batches = this.batches.map(({ id, title }) => ({ value: id, text: id, hint: title }));
    const need = (text: string): string => (missing && text.trim() === '' ? words.missing : '');
    const count = (text: string): string => (missing && (parseCount(text) ?? 0) < 1 ? words.whole : '');
    return html`<gh-sheet open .heading=${words.title} .closeWord=${words.cancel} @sheet-closed=${() => tell(this, 'form-left')}>
      <form @submit=${this.#open}>
        ${refusal === null ? nothing : html`<gh-notice kind="refusal" .happened=${refusal.happened} .kept=${refusal.kept} .next=${refusal.next}></gh-notice>`}
        <gh-select-list columns="2" .label=${words.product} .value=${values.product} .error=${need(values.product)} .options=${this.products.map(({ id, designation, name }) => ({ value: id, text: designation, hint: name }))} @option-chosen=${this.#take('product')}></gh-select-list>
        ${product === undefined ? nothing : batches.length === 0 ? html`<p>${words.noBatch}</p>` : html`<gh-select-list columns="3" .label=${words.batch} .value=${values.batch} .error=${need(values.batch)} .options=${batches} @option-chosen=${this.#take('batch')}></gh-select-list>`}
        <div class="pair"><gh-field .label=${words.number} .hint=${words.numberHint} .value=${values.lot} .error=${need(values.lot)} @field-input=${this.#take('lot')}></gh-field>
          <gh-field .label=${words.order} .value=${values.order} @field-input=${this.#take('order')}></gh-field></div>
        <div class="pair"><gh-field entry="numeric" .label=${words.quantity} .value=${values.quantity} .error=${count(values.quantity)} @field-input=${this.#take('quantity')}></gh-field>
          <gh-field entry="numeric" .label=${words.tray} .value=${values.tray} .error=${count(values.tray)} @field-input=${this.#take('tray')}></gh-field></div>
        <div><gh-button kind="primary" type="submit" ?busy=${this.busy} busy-word=${words.busy}>${words.open}</gh-button></div>
      </form>
    </gh-sheet>`;
  }

  #take(name: keyof typeof this.values) {
    return (event: CustomEvent<{ readonly value: string }>): void => {
      const value = name === 'lot' ? event.detail.value.toUpperCase() : event.detail.value;
      this.values = { ...this.values, [name]: value };
      if (name === 'product') void this.#readBatches();
    };
  }

  readonly #open = async (event: Event): Promise<void> => {
    event.preventDefault();
    const { lot, product, batch, quantity, tray, order } = this.values;
    const [pieces, trayCapacity] = [parseCount(quantity) ?? 0, parseCount(tray) ?? 0];
    this.missing = lot === '' || product === '' || batch === '' || pieces < 1 || trayCapacity < 1;
    if (this.missing || this.busy) return;
    this.busy = true;
    const outcome = await link.give({ type: 'openLot', lot, product, batch, quantity: pieces, trayCapacity, ...(order.trim() === '' ? {} : { order: order.trim() }) });
    this.busy = false;
    if (outcome.state === 'refused') this.refusal = outcome.words;
    else tell(this, 'lot-opened', { lot });
  };

  async #read(): Promise<void> {
    const { products, grades } = await link.ask<{ products: readonly ProductCard[]; grades: readonly GradeCard[] }>('/api/catalogue').catch(nothingOfIt({ products: [], grades: [] }));
    this.products = products;
    this.grades = grades;
  }
  /** Released powder of the product's grade. The server has the last word: it may be held by the time the lot is opened. */
  async #readBatches(): Promise<void> {
    const product = this.products.find(({ id }) => id === this.values.product);
    const grade = this.grades.find(({ id }) => id === product?.grade);
    const { rows } = await link.ask<{ rows: readonly BenchRow[] }>('/api/batches').catch(nothingOfIt({ rows: [] }));
    this.batches = rows.filter(({ standing, title }) => standing === 'done' && (title === grade?.name || title === grade?.id));
  }
}

/** Lists stay empty when the network is gone; the form then says what is missing. */
function nothingOfIt<T>(empty: T): (error: unknown) => T {
  return (error) => {
    if (error instanceof LinkFault) return empty;
    throw error;
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-open-lot': GhOpenLot;
  }
}
