import { LitElement, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { packingDeskWords as words } from '../../shared/words/packing-desk.en.ts';
import type { BenchRow, SearchHit } from '../../shared/wire/views.ts';
import { askedNotice, offlineNotice } from '../desk/asked-notice.ts';
import { Asked } from '../desk/asked.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { showFigure } from '../desk/show.ts';
import { markOfStanding } from '../desk/state-of.ts';
import { deskWords, labels } from '../desk/words.ts';
import { Follow, link, LinkFault, type RefusalText } from '../link/index.ts';
import '../desk/gh-step-cautions.ts';
import '../parts/gh-bench-row.ts';
import '../parts/gh-notice.ts';
import { partStyles } from '../parts/part-styles.ts';
import { goTo } from '../shell/navigation.ts';
import type { Route } from '../shell/routes.ts';
import './gh-pack-lot.ts';
import './gh-scan-field.ts';
import './gh-ship-boxes.ts';
import { packStyles } from './pack-styles.ts';
import { readScanned } from './scanned-code.ts';

/** The packing desk: released lots to pack and ship; one lot in hand; boxes on their way out. */
@customElement('gh-packing-desk')
export class GhPackingDesk extends LitElement {
  static override styles = [partStyles, deskStyles, packStyles];
  @property({ attribute: false }) route: Route | null = null;
  @state() private refused: RefusalText | null = null;
  readonly #rows = new Asked<{ readonly rows: readonly BenchRow[] }>(this, { key: () => (this.#atList ? '/api/packing' : null), read: (path) => link.ask(path), topics: ['packing', 'release'] });
  readonly connection = new Follow(this, () => link.connection);

  get #lot(): string | null {
    return this.route?.parts[0] ?? null;
  }
  get #ships(): boolean {
    return this.route?.query.has('ship') ?? false;
  }
  get #atList(): boolean {
    return this.#lot === null && !this.#ships;
  }

  override render() {
    if (this.#ships) return html`<gh-ship-boxes .lot=${this.#lot}></gh-ship-boxes>`;
    if (this.#lot !== null) return html`<gh-pack-lot lot=${this.#lot} .box=${this.route?.query.get('box') ?? null}></gh-pack-lot>`;
    const { value } = this.#rows;
    return html`<div class="page">
      <div class="head"><h1>${words.title}</h1><a class="big" href="/packing?ship">${words.toShip}</a></div>
      <gh-step-cautions .step=${'packing'}></gh-step-cautions>
      ${offlineNotice()} ${this.refused === null ? nothing : this.#refusal(this.refused)}
      <gh-scan-field hears label=${words.scanLot} take-word=${words.scanTake} @code-scanned=${this.#open}></gh-scan-field>
      ${askedNotice(this.#rows)}
      ${value === null ? nothing : value.rows.length === 0 ? html`<gh-notice kind="empty" happened=${words.listEmpty.happened} next=${words.listEmpty.next}></gh-notice>`
        : html`<div role="list" aria-label=${words.toPack}>${value.rows.map(rowOf)}</div>`}
    </div>`;
  }

  #refusal({ happened, kept, next }: RefusalText) {
    return html`<gh-notice kind="refusal" happened=${happened} kept=${kept} next=${next} dismiss=${deskWords.dismiss} @notice-dismissed=${() => (this.refused = null)}></gh-notice>`;
  }

  async #open(event: CustomEvent<{ text: string }>): Promise<void> {
    const code = readScanned(event.detail.text);
    this.refused = code.what === 'fault' ? { ...code, kept: words.codeKept } : null;
    if (code.what === 'fault') return;
    if (code.what === 'box') return goTo(`/packing/${encodeURIComponent(code.lot)}${code.serial === null ? '' : `?box=${encodeURIComponent(code.serial)}`}`);
    try {
      const { hits } = await link.ask<{ hits: readonly SearchHit[] }>(`/api/search?q=${encodeURIComponent(code.text)}`);
      const lot = hits.find(({ stream }) => stream.startsWith('lot:'));
      if (lot === undefined) this.refused = words.notABox;
      else goTo(`/packing/${encodeURIComponent(lot.stream.slice('lot:'.length))}`);
    } catch (error) {
      if (!(error instanceof LinkFault)) throw error;
      this.refused = error.words;
    }
  }
}

function rowOf({ id, title, designation, pieces, standing, holdReason, bench }: BenchRow) {
  return html`<gh-bench-row href="/packing/${encodeURIComponent(id)}" lot=${id} product=${designation ?? title} pieces=${labels.pieces(pieces, showFigure(pieces))}
    gate=${bench} demand=${holdReason ?? ''} state=${markOfStanding[standing]} state-word=${labels.standings[standing]}></gh-bench-row>`;
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-packing-desk': GhPackingDesk;
  }
}
