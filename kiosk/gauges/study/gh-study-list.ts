import { LitElement, css, html, nothing } from 'lit';
import { customElement } from 'lit/decorators.js';
import { mayGive } from '../../../shared/traveller/index.ts';
import type { StudyRow } from '../../../shared/wire/studies-view.ts';
import { studiesDeskWords } from '../../../shared/words/studies-desk.en.ts';
import { Asked } from '../../desk/asked.ts';
import { askedNotice } from '../../desk/asked-notice.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { showFigure, showMoment, showNumber } from '../../desk/show.ts';
import { SortedTable } from '../../desk/sorted-table.ts';
import { deskWords } from '../../desk/words.ts';
import { Follow, link } from '../../link/index.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-state-mark.ts';
import { partStyles } from '../../parts/part-styles.ts';
import type { StateName } from '../../parts/state-name.ts';
import { goTo } from '../../shell/navigation.ts';
import { studiesPath } from './studies-path.ts';

const words = studiesDeskWords.list;
const MARK: Readonly<Record<StudyRow['standing'], StateName>> = { open: 'open', closed: 'accepted', abandoned: 'refused' };

/** Every study, what is to be measured by the person signed on first. */
@customElement('gh-study-list')
export class GhStudyList extends LitElement {
  static override styles = [partStyles, deskStyles, css`
    .yours { display: grid; gap: var(--gap); }
    .yours li { justify-content: space-between; align-items: center; }
    .yours gh-button { --target: 64px; --text: 19px; min-inline-size: 9rem; }
    .block { display: grid; gap: calc(1.4 * var(--pad)); grid-template-columns: minmax(0, 1fr); }
  `];
  readonly #session = new Follow(this, () => link.session);
  readonly #asked = new Asked(this, { key: () => '/api/studies', read: async (path) => (await link.ask<{ rows: readonly StudyRow[] }>(path)).rows, topics: ['studies'] });
  readonly #table = new SortedTable(this);

  override render() {
    const session = this.#session.value;
    const rows = this.#asked.value;
    return html`<div class="block">${askedNotice(this.#asked)}
      ${rows === null ? nothing : html`${this.#yours(rows, session?.badge ?? '')}
        ${session !== null && mayGive('openStudy', session.roles) ? html`<div class="keys"><gh-button kind="primary" @click=${() => goTo(studiesPath('new'))}>${words.open}</gh-button></div>` : nothing}
        ${this.#list(rows)}`}</div>`;
  }

  #yours(rows: readonly StudyRow[], badge: string) {
    const mine = rows.filter(({ standing, people }) => standing === 'open' && people.some((person) => person.badge === badge));
    return mine.length === 0 ? nothing : html`<section aria-labelledby="yours"><h2 id="yours">${words.yours}</h2><ul class="lines yours">${mine.map((row) => html`<li>
      <span>${words.yourRow(row.id, row.characteristic, row.gauge)}</span><gh-button kind="primary" @click=${() => goTo(studiesPath(row.id, 'measure'))}>${words.measure}</gh-button></li>`)}</ul></section>`;
  }

  #list(rows: readonly StudyRow[]) {
    const c = words.columns;
    const percent = (value: number | null): string => (value === null ? deskWords.none : showNumber(value, 1));
    return this.#table.table(words.caption, [
      { key: 'id', head: c.id, sortable: true, filterable: true }, { key: 'kind', head: c.kind, sortable: true, filterable: true }, { key: 'gauge', head: c.gauge, sortable: true, filterable: true }, { key: 'what', head: c.what, sortable: true, filterable: true },
      { key: 'size', head: c.size }, { key: 'taken', head: c.taken }, { key: 'standing', head: c.standing, sortable: true, filterable: true },
      { key: 'share', head: c.share, kind: 'number', sortable: true }, { key: 'tolerance', head: c.tolerance, kind: 'number', sortable: true }, { key: 'categories', head: c.categories, kind: 'number', sortable: true }, { key: 'opened', head: c.opened, sortable: true },
    ], rows.map((row) => ({
      key: row.id, href: studiesPath(row.id),
      texts: {
        id: row.id, kind: words.kinds[row.studyKind], gauge: row.gauge, what: row.characteristic, size: `${showFigure(row.parts)} × ${showFigure(row.people.length)} × ${showFigure(row.trials)}`, taken: words.of(showFigure(row.taken), showFigure(row.wanted)),
        standing: words.standings[row.standing], share: row.percentOfStudy ?? '', tolerance: row.percentOfTolerance ?? '', categories: row.categories ?? '', opened: row.openedAt,
      },
      shown: {
        standing: html`<gh-state-mark state=${MARK[row.standing]} word=${words.standings[row.standing]} size="small"></gh-state-mark>`, share: percent(row.percentOfStudy), tolerance: percent(row.percentOfTolerance),
        categories: row.categories === null ? deskWords.none : showFigure(row.categories), opened: showMoment(row.openedAt),
      },
    })), { empty: words.empty, file: words.file });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-study-list': GhStudyList;
  }
}
