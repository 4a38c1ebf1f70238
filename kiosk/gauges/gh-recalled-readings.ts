import { LitElement, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { gaugesDeskWords } from '../../shared/words/gauges-desk.en.ts';
import type { RecalledReadings } from '../../shared/wire/gauge-views.ts';
import { askedNotice } from '../desk/asked-notice.ts';
import { Asked } from '../desk/asked.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { showFigure, showMoment, showNumber } from '../desk/show.ts';
import { SortedTable } from '../desk/sorted-table.ts';
import { deskWords } from '../desk/words.ts';
import { link } from '../link/index.ts';
import '../parts/gh-button.ts';
import { partStyles } from '../parts/part-styles.ts';

const words = gaugesDeskWords.recall;
const perPage = 100;
const columns = (['at', 'id', 'characteristic', 'piece', 'value', 'asRead', 'withError', 'again'] as const).map((key) => ({ key, head: words.readingColumns[key], ...(key === 'value' || key === 'piece' ? { kind: 'number' as const } : {}) }));

/** The readings of a recall, page by page, each judged by itself as it was read and with the error found taken out. */
@customElement('gh-recalled-readings')
export class GhRecalledReadings extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property() gauge = '';
  @property() recall = '';
  @property() unit = '';
  @property({ type: Number }) error = 0;
  @state() private passed = 0;
  readonly #base = () => `/api/gauges/${encodeURIComponent(this.gauge)}/recalls/${encodeURIComponent(this.recall)}/readings`;
  readonly #page = new Asked<RecalledReadings>(this, { key: () => (this.recall === '' ? null : `${this.#base()}?after=${this.passed}&limit=${perPage}`), read: (path) => link.ask(path) });
  readonly #table = new SortedTable(this);

  override render() {
    const { value } = this.#page;
    if (value === null) return askedNotice(this.#page);
    const { rows, total } = value;
    const said = (count: number | null, pieces: number) => (count === null ? deskWords.none : pieces === 1 ? (count === 1 ? words.accepted : words.rejected) : words.ofPieces(showFigure(count), showFigure(pieces)));
    const to = this.passed + rows.length;
    return html`<h3>${words.readingsTitle}</h3><p class="soft">${words.errorNote(showFigure(this.error), this.unit)}</p>
      ${this.#table.table(words.readingsCaption(showFigure(rows.length === 0 ? 0 : this.passed + 1), showFigure(to), showFigure(total)), columns, rows.map(({ stream, version, at, characteristic, ordinal, pieces, value: read, decimals, unit, acceptedAsRead, acceptedWithError, again }) => ({
        key: `${stream} ${version}`,
        texts: { at, id: stream.slice(stream.indexOf(':') + 1), characteristic, piece: pieces === 1 ? showFigure(ordinal) : words.block(showFigure(ordinal), showFigure(ordinal + pieces - 1)), value: read === null ? deskWords.none : `${showNumber(read, decimals)} ${unit}`, asRead: said(acceptedAsRead, pieces), withError: said(acceptedWithError, pieces), again: again ?? deskWords.none },
        shown: { at: showMoment(at), ...(acceptedAsRead === acceptedWithError ? {} : { withError: html`<strong>${said(acceptedWithError, pieces)}</strong>` }) },
      })), { empty: words.empty })}
      <div class="keys screen-only">
        ${this.passed > 0 ? html`<gh-button @click=${() => (this.passed = Math.max(0, this.passed - perPage))}>${words.earlier}</gh-button>` : nothing}
        ${to < total ? html`<gh-button @click=${() => (this.passed += perPage)}>${words.later}</gh-button>` : nothing}
        <a href="${this.#base()}.csv" download>${words.allCsv}</a>
      </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-recalled-readings': GhRecalledReadings;
  }
}
