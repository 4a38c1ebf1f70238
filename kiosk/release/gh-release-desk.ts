import { LitElement, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { releaseDeskWords as words } from '../../shared/words/release-desk.en.ts';
import { labels } from '../desk/words.ts';
import type { BenchRow } from '../../shared/wire/views.ts';
import { askedNotice, offlineNotice } from '../desk/asked-notice.ts';
import { Asked } from '../desk/asked.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { showFigure, showMoment } from '../desk/show.ts';
import { SortedTable, type DeskRow } from '../desk/sorted-table.ts';
import { markOfStanding } from '../desk/state-of.ts';
import { Follow, link } from '../link/index.ts';
import { partStyles } from '../parts/part-styles.ts';
import '../parts/gh-state-mark.ts';
import type { Route } from '../shell/routes.ts';
import './gh-lot-standing.ts';
import './gh-verify-certificate.ts';

const columns = [
  { key: 'lot', head: words.columns.lot, sortable: true, filterable: true },
  { key: 'designation', head: words.columns.designation, sortable: true, filterable: true },
  { key: 'pieces', head: words.columns.pieces, kind: 'number' as const, sortable: true },
  { key: 'standing', head: words.columns.standing, sortable: true, filterable: true },
  { key: 'next', head: words.columns.next, filterable: true },
  { key: 'since', head: words.columns.since, sortable: true },
];

/** The release desk: lots that are ready or nearly, and one lot's whole standing on one screen. */
@customElement('gh-release-desk')
export class GhReleaseDesk extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property({ attribute: false }) route: Route | null = null;
  readonly #rows = new Asked<{ readonly rows: readonly BenchRow[] }>(this, { key: () => (this.#lot === null ? '/api/release' : null), read: (path) => link.ask(path), topics: ['release', 'bench'] });
  readonly #table = new SortedTable(this, { key: 'since', direction: 'up' });
  readonly connection = new Follow(this, () => link.connection);

  get #lot(): string | null {
    return this.route?.parts[0] ?? null;
  }

  override render() {
    if (this.#lot !== null) return html`<gh-lot-standing lot=${this.#lot}></gh-lot-standing>`;
    const { value } = this.#rows;
    return html`<div class="page">
      <h1>${words.title}</h1>
      ${offlineNotice()} ${askedNotice(this.#rows)}
      ${value === null ? '' : this.#table.table(words.listCaption, columns, value.rows.map(rowOf), { empty: words.listEmpty, file: 'release' })}
      <gh-verify-certificate></gh-verify-certificate>
    </div>`;
  }
}

function rowOf(row: BenchRow): DeskRow {
  const standing = labels.standings[row.standing];
  return {
    key: row.stream, href: `/release/${encodeURIComponent(row.id)}`,
    texts: { lot: row.id, designation: row.designation ?? row.title, pieces: row.pieces, standing, next: row.holdReason ?? row.gateName ?? '', since: row.since },
    shown: { pieces: showFigure(row.pieces), standing: html`<gh-state-mark state=${markOfStanding[row.standing]} word=${standing} size="small"></gh-state-mark>`, since: showMoment(row.since) },
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-release-desk': GhReleaseDesk;
  }
}
