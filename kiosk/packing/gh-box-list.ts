import { LitElement, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Box, Lot } from '../../shared/traveller/index.ts';
import { packingDeskWords as words } from '../../shared/words/packing-desk.en.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { showFigure } from '../desk/show.ts';
import { labels } from '../desk/words.ts';
import '../parts/gh-state-mark.ts';
import { partStyles } from '../parts/part-styles.ts';
import { boxStanding, markOfBox, type BoxStanding } from './box-standing.ts';
import { packStyles } from './pack-styles.ts';

/** All boxes of a lot, those that still want something first; each is a link that takes it in hand. */
@customElement('gh-box-list')
export class GhBoxList extends LitElement {
  static override styles = [partStyles, deskStyles, packStyles];
  @property({ attribute: false }) lot: Lot | null = null;
  @property() chosen = '';

  override render() {
    const boxes = this.lot?.boxes ?? [];
    const of = (standings: readonly BoxStanding[]) => boxes.filter((box) => standings.includes(boxStanding(box)));
    const here = [...of(['packed']), ...of(['printed']), ...of(['read'])];
    const gone = of(['shipped', 'voided']);
    return html`<section class="page-part" aria-labelledby="title">
      <h2 id="title">${words.boxesTitle}</h2>
      ${boxes.length === 0 ? html`<p class="soft">${words.boxesEmpty}</p>` : nothing}
      ${here.length === 0 ? nothing : html`<ul class="rows" tabindex="0" aria-labelledby="title">${here.map((box) => this.#row(box))}</ul>`}
      ${gone.length === 0 ? nothing : html`<details><summary>${words.standing.shipped}, ${words.standing.voided.toLowerCase()}: ${showFigure(gone.length)}</summary><ul class="rows">${gone.map((box) => this.#row(box))}</ul></details>`}
    </section>`;
  }

  #row(box: Box) {
    const standing = boxStanding(box);
    const told = box.shipped === null ? words.standing[standing] : `${words.standing.shipped}: ${words.shippedTo(box.shipped.consignee, box.shipped.shipment)}`;
    return html`<li><a class="row" href="/packing/${encodeURIComponent(this.lot?.id ?? '')}?box=${encodeURIComponent(box.serial)}" aria-current=${box.serial === this.chosen ? 'true' : nothing}>
      <span class="figure">${box.serial}</span> <span>${labels.pieces(box.pieces, showFigure(box.pieces))}</span> <gh-state-mark state=${markOfBox[standing]} word=${told} size="small"></gh-state-mark>
    </a></li>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-box-list': GhBoxList;
  }
}
