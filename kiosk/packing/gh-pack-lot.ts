import { LitElement, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { isReleased, mayGive, remainingPieces, standingHolds, type Box, type Lot } from '../../shared/traveller/index.ts';
import { packingDeskWords as words } from '../../shared/words/packing-desk.en.ts';
import { askedNotice, offlineNotice, refusalNotice } from '../desk/asked-notice.ts';
import { Asked } from '../desk/asked.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { Giving } from '../desk/giving.ts';
import { Round } from '../desk/round.ts';
import { showFigure } from '../desk/show.ts';
import { readLot, type TravellerPage } from '../desk/traveller-page.ts';
import { deskWords, labels } from '../desk/words.ts';
import { Follow, link } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-progress.ts';
import '../parts/gh-traveller-head.ts';
import '../parts/gh-verdict.ts';
import { partStyles } from '../parts/part-styles.ts';
import { goTo } from '../shell/navigation.ts';
import { boxInHand, boxStanding } from './box-standing.ts';
import './gh-box-in-hand.ts';
import './gh-box-list.ts';
import { packStyles } from './pack-styles.ts';
import { labelPath, printLabels } from './print-labels.ts';

/** One lot at the packing bench: what is left, the box in hand with its label, and all its boxes. */
@customElement('gh-pack-lot')
export class GhPackLot extends LitElement {
  static override styles = [partStyles, deskStyles, packStyles];
  @property() lot = '';
  @property({ attribute: false }) box: string | null = null;
  readonly #page = new Asked<TravellerPage<Lot>>(this, { key: () => this.lot, read: readLot, topics: ['packing'], streams: ({ state }) => [state.stream] });
  readonly #giving = new Giving(this);
  readonly #round = new Round(this);
  readonly #session = new Follow(this, () => link.session);
  readonly connection = new Follow(this, () => link.connection);

  override render() {
    const lot = this.#page.value?.state ?? null;
    return html`<div class="page">
      ${offlineNotice()} ${askedNotice(this.#page)} ${lot === null ? html`<div class="keys"><a class="big" href="/packing">${words.back}</a></div>` : this.#whole(lot)}
    </div>`;
  }

  #whole(lot: Lot) {
    const { product, balance, boxes } = lot;
    const here = boxInHand(boxes, this.box);
    const [hold] = standingHolds(lot);
    const stopped = hold !== undefined ? { word: words.heldWord, sentence: words.heldSentence(hold.reason) } : isReleased(lot) ? null : { word: words.notReleasedWord, sentence: words.notReleasedSentence };
    const standing = hold !== undefined ? (['hold', labels.standings.held] as const) : isReleased(lot) ? (['released', labels.standings.toPack] as const) : (['waiting', words.notReleasedWord] as const);
    const big = (label: string, text: string) => html`<div><dt>${label}</dt><dd>${text}</dd></div>`;
    const shipped = boxes.filter((box) => boxStanding(box) === 'shipped').length;
    const alive = boxes.filter((box) => boxStanding(box) !== 'voided').length;
    const parts = [{ key: 'acts', part: this.#acts(lot, here) }, { key: 'hand', part: here === null ? nothing : html`<gh-box-in-hand .lot=${lot} .box=${here} @box-changed=${() => void this.#page.again()}></gh-box-in-hand>` }];
    // What is asked of the box in hand stands before the next box.
    if (here !== null && labelWaits(here)) parts.reverse();
    return html`
      <gh-traveller-head subject=${lot.id} what="${product.designation} · ${product.name}" state=${standing[0]} state-word=${standing[1]}></gh-traveller-head>
      ${stopped === null ? nothing : html`<gh-verdict state=${hold === undefined ? 'waiting' : 'hold'} word=${stopped.word} sentence=${stopped.sentence}></gh-verdict>`}
      <dl class="balance">${big(words.balance.remaining, showFigure(remainingPieces(balance)))} ${big(words.balance.boxed, showFigure(balance.boxed))} ${big(words.balance.boxes, showFigure(alive))} ${big(words.balance.shipped, showFigure(shipped))}</dl>
      ${refusalNotice(this.#giving)} ${repeat(parts, ({ key }) => key, ({ part }) => part)}
      <gh-box-list .lot=${lot} chosen=${here?.serial ?? ''}></gh-box-list>`;
  }

  #acts(lot: Lot, here: Box | null) {
    const ways = html`<a class="big aside" href="/packing/${encodeURIComponent(lot.id)}?ship">${words.toShip}</a><a class="big" href="/packing">${words.back}</a>`;
    if (!mayGive('packBox', this.#session.value?.roles ?? [])) return html`<div class="keys"><p class="soft">${words.mayNot}</p>${ways}</div>`;
    const left = remainingPieces(lot.balance);
    const { piecesPerBox } = lot.product;
    const next = Math.min(piecesPerBox, left);
    const boxesLeft = Math.ceil(left / piecesPerBox);
    const open = lot.boxes.filter((box) => boxStanding(box) === 'packed');
    const { now } = this.#round;
    if (now !== null) return html`<div class="sheet"><gh-progress label=${words.packing} value=${now.done} max=${now.of} text=${words.packedSoFar(showFigure(now.done), showFigure(now.of))}></gh-progress>
      <div class="keys"><gh-button @click=${() => this.#round.stop()}>${words.stop}</gh-button></div></div>`;
    // One obvious next thing: while a label waits to be printed or scanned, that is it, and packing on stands beside it.
    const atBox = here !== null && labelWaits(here);
    const busy = this.#giving.busy;
    return html`${left === 0 && isReleased(lot) ? html`<p class="done" role="status">${words.allPacked} ${words.allPackedNext}</p>` : nothing}
      <div class="keys">
        ${left === 0 || !isReleased(lot) ? nothing : html`<gh-button kind=${atBox ? 'quiet' : 'primary'} .busy=${busy === 'pack'} busy-word=${deskWords.busy} @click=${() => void this.#pack(lot, next)}>${(lot.boxes.length === 0 ? words.pack : words.packNext)(showFigure(next))}</gh-button>`}
        ${boxesLeft < 2 || !isReleased(lot) ? nothing : html`<gh-button @click=${() => void this.#packRest(lot, boxesLeft)}>${words.packRest(labels.boxes(boxesLeft, showFigure(boxesLeft)))}</gh-button>`}
        ${open.length < 2 ? nothing : html`<gh-button .busy=${busy === 'print'} busy-word=${words.printing} @click=${() => void this.#printOpen(lot, open)}>${words.printUnprinted(showFigure(open.length))}</gh-button>`}
        ${ways}
      </div>`;
  }

  async #pack(lot: Lot, pieces: number): Promise<void> {
    const done = await this.#giving.give('pack', { type: 'packBox', lot: lot.id, pieces });
    const packed = done?.state === 'acknowledged' ? done.slips.find(({ body }) => body.type === 'boxPacked')?.body : undefined;
    await this.#page.again();
    if (packed?.type === 'boxPacked') goTo(`/packing/${encodeURIComponent(lot.id)}?box=${encodeURIComponent(packed.box)}`, 'replace');
  }

  async #packRest(lot: Lot, boxes: number): Promise<void> {
    let left = remainingPieces(lot.balance);
    await this.#round.run(boxes, async () => {
      const pieces = Math.min(lot.product.piecesPerBox, left);
      const done = await this.#giving.give('rest', { type: 'packBox', lot: lot.id, pieces });
      if (done !== null) left -= pieces;
      return done !== null;
    });
    await this.#page.again();
  }

  /** Enters each open label as printed, then hands all of them to the printer in one go. */
  async #printOpen(lot: Lot, open: readonly Box[]): Promise<void> {
    const printed: string[] = [];
    await this.#round.run(open.length, async (at) => {
      const serial = open[at]?.serial ?? '';
      const done = await this.#giving.give('print', { type: 'printLabel', lot: lot.id, box: serial });
      if (done !== null) printed.push(serial);
      return done !== null;
    });
    if (printed.length > 0) await printLabels(printed.map((serial) => labelPath(lot.id, serial, 'label.svg')));
    await this.#page.again();
  }
}

/** Its label is still to be printed, or to be scanned. */
function labelWaits(box: Box): boolean {
  return ['packed', 'printed'].includes(boxStanding(box));
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-pack-lot': GhPackLot;
  }
}
