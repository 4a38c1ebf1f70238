import { LitElement, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Lot } from '../../shared/traveller/index.ts';
import { packingDeskWords as words } from '../../shared/words/packing-desk.en.ts';
import { askedNotice, offlineNotice } from '../desk/asked-notice.ts';
import { Asked } from '../desk/asked.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { Giving } from '../desk/giving.ts';
import { Round } from '../desk/round.ts';
import { showFigure } from '../desk/show.ts';
import { readLot, type TravellerPage } from '../desk/traveller-page.ts';
import { labels } from '../desk/words.ts';
import { Follow, link, type RefusalText } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-field.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-progress.ts';
import '../parts/gh-state-mark.ts';
import '../parts/gh-verdict.ts';
import { partStyles } from '../parts/part-styles.ts';
import { boxStanding } from './box-standing.ts';
import './gh-scan-field.ts';
import { packStyles } from './pack-styles.ts';
import { readScanned } from './scanned-code.ts';
import { boxesOut, shipTo, type ShipTo } from './ship-to.ts';

const FIELDS = ['shipment', 'order', 'consignee'] as const;
const mostCharacters: Readonly<Record<(typeof FIELDS)[number], number>> = { shipment: 40, order: 60, consignee: 100 };

/** Boxes on their way out: where they go, once; then each box by its scan, or all ready ones of a lot. */
@customElement('gh-ship-boxes')
export class GhShipBoxes extends LitElement {
  static override styles = [partStyles, deskStyles, packStyles];
  @property({ attribute: false }) lot: string | null = null;
  @state() private refused: RefusalText | null = null;
  @state() private asked = false;
  readonly #page = new Asked<TravellerPage<Lot>>(this, { key: () => this.lot, read: readLot, topics: ['packing'], streams: ({ state }) => [state.stream] });
  readonly #giving = new Giving(this);
  readonly #round = new Round(this);
  readonly #to = new Follow(this, () => shipTo);
  readonly #out = new Follow(this, () => boxesOut);
  readonly connection = new Follow(this, () => link.connection);

  override render() {
    const lot = this.#page.value?.state ?? null;
    const refusal = this.refused ?? this.#giving.refused?.words ?? null;
    const [last] = this.#out.value;
    return html`<div class="page">
      <div class="keys screen-only"><a class="big" href="/packing">${words.back}</a>${this.lot === null ? nothing : html`<a class="big" href="/packing/${encodeURIComponent(this.lot)}">${words.inLot(this.lot)}</a>`}</div>
      <h1>${words.ship.title}</h1>
      ${offlineNotice()} ${this.#details(lot)}
      <gh-verdict state="refused" word=${refusal === null ? '' : words.ship.refusedWord} sentence=${refusal?.happened ?? ''}>${refusal === null ? nothing : html`<p>${refusal.kept} <strong>${refusal.next}</strong></p>`}</gh-verdict>
      <gh-scan-field hears label=${words.ship.scan} take-word=${words.scanTake} .busy=${this.#giving.busy === 'scan'} @code-scanned=${this.#scan}></gh-scan-field>
      <p class="read" role="status">${last === undefined || refusal !== null ? '' : words.ship.out(last.serial, last.shipment)}</p>
      ${askedNotice(this.#page)} ${this.#lotPart(lot)} ${this.#outPart()}
    </div>`;
  }

  #details(lot: Lot | null) {
    const to = this.#to.value;
    return html`<section class="sheet"><div class="fields">${FIELDS.map((field) => html`<gh-field label=${words.ship[field]} max-length=${mostCharacters[field]} .value=${to[field]}
      .suggestions=${field === 'order' && lot?.order != null ? [lot.order] : []} error=${this.asked && to[field].trim() === '' ? words.ship.missing : ''}
      @field-input=${({ detail }: CustomEvent<{ value: string }>) => shipTo.set({ ...shipTo.value, [field]: detail.value })}></gh-field>`)}</div>
      <p class="printed">${words.ship.hint}</p></section>`;
  }

  #lotPart(lot: Lot | null) {
    if (this.lot === null) return html`<p class="soft">${words.ship.whichLot}</p>`;
    if (lot === null) return nothing;
    const ready = lot.boxes.filter((box) => boxStanding(box) === 'read').map(({ serial }) => serial);
    const { now } = this.#round;
    return html`<section class="sheet" aria-labelledby="ready">
      <h2 id="ready">${words.ship.readyTitle(lot.id)}</h2>
      ${now !== null ? html`<gh-progress label=${words.ship.shipping} value=${now.done} max=${now.of} text=${words.packedSoFar(showFigure(now.done), showFigure(now.of))}></gh-progress><div class="keys"><gh-button @click=${() => this.#round.stop()}>${words.stop}</gh-button></div>`
        : ready.length === 0 ? html`<p class="soft">${words.ship.readyNone}</p>` : html`<div class="keys"><gh-button kind="primary" @click=${() => void this.#shipAll(lot.id, ready)}>${words.ship.all(labels.boxes(ready.length, showFigure(ready.length)))}</gh-button></div>`}
    </section>`;
  }

  #outPart() {
    const out = this.#out.value;
    return html`<section class="sheet" aria-labelledby="out"><h2 id="out">${words.ship.outTitle}: ${labels.boxes(out.length, showFigure(out.length))}</h2>
      ${out.length === 0 ? html`<p class="soft">${words.ship.outNone}</p>` : html`<ul class="lines">${out.map(({ serial, shipment }) => html`<li><gh-state-mark state="released" word=${serial} size="small"></gh-state-mark> <span class="soft">${shipment}</span></li>`)}</ul>`}</section>`;
  }

  async #scan(event: CustomEvent<{ text: string }>): Promise<void> {
    const code = readScanned(event.detail.text);
    this.#giving.forget();
    this.refused = code.what === 'fault' ? { ...code, kept: words.codeKept } : code.what === 'text' ? words.notABox : code.serial === null ? words.ship.noBox : null;
    if (code.what === 'box' && code.serial !== null) await this.#ship('scan', code.lot, code.serial);
  }

  async #shipAll(lot: string, serials: readonly string[]): Promise<void> {
    this.refused = null;
    await this.#round.run(serials.length, (at) => this.#ship('all', lot, serials[at] ?? ''));
  }

  async #ship(key: string, lot: string, box: string): Promise<boolean> {
    const to = trimmed(shipTo.value);
    this.asked = FIELDS.some((field) => to[field] === '');
    if (this.asked) {
      this.refused = { happened: words.ship.missing, kept: words.codeKept, next: words.ship.hint };
      return false;
    }
    const done = await this.#giving.give(key, { type: 'shipBox', lot, box, ...to });
    if (done === null) return false;
    boxesOut.set([{ lot, serial: box, shipment: to.shipment }, ...boxesOut.value]);
    await this.#page.again();
    return true;
  }
}

function trimmed({ shipment, order, consignee }: ShipTo): ShipTo {
  return { shipment: shipment.trim(), order: order.trim(), consignee: consignee.trim() };
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-ship-boxes': GhShipBoxes;
  }
}
