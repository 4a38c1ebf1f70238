import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { isReleased, mayGive, remainingPieces, standingHolds } from '../../shared/traveller/index.ts';
import { deskWords, labels } from '../desk/words.ts';
import { releaseDeskWords as words } from '../../shared/words/release-desk.en.ts';
import { askedNotice, offlineNotice } from '../desk/asked-notice.ts';
import { Asked } from '../desk/asked.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { showFigure, showMoment } from '../desk/show.ts';
import { readLotStanding, type LotStanding } from '../desk/traveller-page.ts';
import { Follow, link } from '../link/index.ts';
import { partStyles } from '../parts/part-styles.ts';
import '../parts/gh-button.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-traveller-head.ts';
import { announce } from '../shell/announce.ts';
import { travellerPath } from '../shell/routes.ts';
import './gh-gate-table.ts';
import './gh-release-signing.ts';
import './gh-verify-certificate.ts';
import './gh-withdraw-release.ts';
import { balanceStrip, upstreamSheet } from './standing-sheets.ts';
import { trailSheets } from './trail-sheets.ts';
import { whatStops } from './what-stops.ts';

/** One lot's whole standing before release, with numbers: what stops it, every gate, where it comes from, its pieces, and the signature. */
@customElement('gh-lot-standing')
export class GhLotStanding extends LitElement {
  static override styles = [partStyles, deskStyles, css`
    .stops { border-block: var(--rule-strong) solid var(--bad); background: var(--slip); padding: var(--pad) calc(1.4 * var(--pad)); }
    .stops ul { padding-inline-start: 1.2em; margin-block-start: 0.3em; }
    .stops li { font-size: var(--text-large); line-height: 1.3; }
    .documents { align-items: center; }
  `];
  @property() lot = '';
  @state() private sheet: 'none' | 'sign' | 'withdraw' = 'none';
  readonly #standing = new Asked<LotStanding>(this, {
    key: () => this.lot, read: readLotStanding, topics: ['release'],
    streams: ({ lot, batch, charges }) => [lot.stream, ...(batch === null ? [] : [batch.stream]), ...charges.map(({ stream }) => stream)],
  });
  readonly #session = new Follow(this, () => link.session);
  readonly connection = new Follow(this, () => link.connection);

  override render() {
    const { value } = this.#standing;
    return html`<div class="page" id="page" tabindex="-1">
      <div class="keys screen-only"><a href="/release">${words.back}</a></div>
      ${offlineNotice()} ${askedNotice(this.#standing)} ${value === null ? nothing : this.#whole(value)}
    </div>`;
  }

  #whole(standing: LotStanding) {
    const { lot, names } = standing;
    const stops = whatStops(standing);
    return html`
      ${this.#head(standing, stops)}
      ${stops.length === 0 || (lot.release !== null && lot.release.withdrawn === null && standingHolds(lot).length === 0) ? nothing : html`<section class="stops" aria-labelledby="stops"><h2 id="stops">${words.stops}</h2><ul>${stops.map((text) => html`<li>${text}</li>`)}</ul></section>`}
      ${this.#acts(standing, stops)}
      ${trailSheets(standing)} ${balanceStrip(lot)}
      <gh-gate-table .lot=${lot} .names=${names}></gh-gate-table>
      ${upstreamSheet(standing)}
    `;
  }

  #head({ lot }: LotStanding, stops: readonly string[]) {
    const { product, release } = lot;
    const [state, word] = isReleased(lot) ? (['released', words.released] as const) : standingHolds(lot).length > 0 ? (['hold', labels.standings.held] as const)
      : release !== null && release.withdrawn !== null ? (['recalled', words.withdrawn] as const) : stops.length === 0 ? (['accepted', words.ready] as const) : (['waiting', words.notReady] as const);
    const quantity = remainingPieces(lot.balance) + lot.balance.boxed;
    const facts = [
      { label: words.facts.quantity, text: showFigure(quantity) }, { label: words.facts.grade, text: product.grade }, { label: words.facts.coating, text: product.layer ?? words.uncoated },
      { label: words.facts.batch, text: lot.batch }, { label: words.facts.order, text: lot.order ?? deskWords.none }, { label: words.facts.plan, text: words.planVersion(lot.plan, lot.planVersion) },
      ...(release === null ? [] : [{ label: words.facts.certificate, text: release.certificate }]),
    ];
    return html`<gh-traveller-head subject=${lot.id} what="${product.designation} · ${product.name}" state=${state} state-word=${word} .facts=${facts}>
      <a href=${travellerPath('lot', lot.id)}>${words.traveller}</a>
    </gh-traveller-head>`;
  }

  #acts(standing: LotStanding, stops: readonly string[]) {
    const { lot } = standing;
    const roles = this.#session.value?.roles ?? [];
    const { release } = lot;
    const stands = release !== null && release.withdrawn === null;
    if (stands) return this.#certificate(standing);
    const mayRelease = mayGive('releaseLot', roles);
    return html`<div class="screen-only">
      ${release?.withdrawn == null ? nothing : html`<p>${words.withdrawnWhy(showMoment(release.withdrawn.at), release.withdrawn.reason)}</p>`}
      ${stops.length > 0 ? nothing : mayRelease ? html`<div class="keys"><gh-button kind="primary" @click=${() => (this.sheet = 'sign')}>${words.sign}</gh-button></div>` : html`<p class="soft">${words.mayNot}</p>`}
      <gh-release-signing .standing=${standing} ?open=${this.sheet === 'sign'} @sheet-closed=${this.#closed} @lot-released=${() => void this.#after('#certificate', words.released)}></gh-release-signing>
    </div>`;
  }

  #certificate({ lot }: LotStanding) {
    const { release } = lot;
    if (release === null) return nothing;
    const path = `/api/lots/${encodeURIComponent(lot.id)}/certificate`;
    return html`<section class="sheet" aria-labelledby="certificate">
      <h2 id="certificate" tabindex="-1">${words.certificate} ${release.certificate}</h2>
      <ul class="lines">${release.signatures.map(({ name, role, at, meaning }) => html`<li>${words.releasedBy(name, labels.roles[role], showMoment(at), labels.signatureMeanings[meaning])}</li>`)}</ul>
      <div class="keys documents screen-only">
        <a href="${path}.pdf" target="_blank" rel="noopener">${words.openPdf}</a> <a href="${path}.pdf?drawing=1" target="_blank" rel="noopener">${words.openPdfWithDrawing}</a> <a href="${path}.json" target="_blank" rel="noopener">${words.openData}</a>
        <a href="/packing/${encodeURIComponent(lot.id)}">${words.packing}</a>
        ${mayGive('withdrawRelease', this.#session.value?.roles ?? []) ? html`<gh-button kind="grave" @click=${() => (this.sheet = 'withdraw')}>${words.withdraw}</gh-button>` : nothing}
      </div>
      <gh-verify-certificate class="screen-only" lot=${lot.id}></gh-verify-certificate>
      <gh-withdraw-release .lot=${lot} ?open=${this.sheet === 'withdraw'} @sheet-closed=${this.#closed} @release-withdrawn=${() => void this.#after('#page', words.withdrawn)}></gh-withdraw-release>
    </section>`;
  }

  /** After a signature the pressed key is gone: what was done is said, and the focus goes to what has come of it. */
  async #after(place: '#certificate' | '#page', said: string): Promise<void> {
    this.sheet = 'none';
    await this.#standing.again();
    await this.updateComplete;
    announce(said);
    this.renderRoot.querySelector<HTMLElement>(place)?.focus();
  }

  readonly #closed = (): void => {
    this.sheet = 'none';
    void this.#standing.again();
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-lot-standing': GhLotStanding;
  }
}
