import { LitElement, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { labelOf } from '../../shared/words/words-for.ts';
import { keeperDeskWords } from '../../shared/words/keeper-desk.en.ts';
import type { PersonRow } from '../../shared/wire/views.ts';
import { askedNotice } from '../desk/asked-notice.ts';
import { Asked } from '../desk/asked.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { showList } from '../desk/show.ts';
import { SortedTable, type DeskRow } from '../desk/sorted-table.ts';
import { labels } from '../desk/words.ts';
import { link } from '../link/index.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-state-mark.ts';
import { partStyles } from '../parts/part-styles.ts';
import './gh-person-form.ts';

const words = keeperDeskWords.people;
const columns = [
  { key: 'badge', head: words.columns.badge, sortable: true, filterable: true }, { key: 'name', head: words.columns.name, sortable: true, filterable: true },
  { key: 'roles', head: words.columns.roles, filterable: true }, { key: 'active', head: words.columns.active, sortable: true },
];

/** People of the plant: the list, one person, or a new one. */
@customElement('gh-people')
export class GhPeople extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property() badge = '';
  @property({ type: Boolean }) enrols = false;
  readonly #people = new Asked<{ readonly people: readonly PersonRow[] }>(this, { key: () => '/api/people', read: (path) => link.ask(path), topics: ['people'] });
  readonly #table = new SortedTable(this, { key: 'badge', direction: 'up' });

  override render() {
    const { value } = this.#people;
    if (value === null) return askedNotice(this.#people);
    const back = html`<p><a href="/keeper/people">${words.back}</a></p>`;
    if (this.enrols) return html`${back}<gh-person-form></gh-person-form>`;
    if (this.badge === '') return html`${askedNotice(this.#people)}<p><a href="/keeper/people?new">${words.enrol}</a></p>${this.#table.table(words.caption, columns, value.people.map(rowOf), { empty: words.empty, file: 'people' })}`;
    const person = value.people.find(({ badge }) => badge === this.badge);
    if (person === undefined) return html`${back}<gh-notice kind="empty" happened=${words.unknown(this.badge).happened} next=${words.unknown(this.badge).next}></gh-notice>`;
    return html`${back}${askedNotice(this.#people)}<gh-person-form .person=${person}></gh-person-form>`;
  }
}

function rowOf({ badge, name, roles, active }: PersonRow): DeskRow {
  const word = active ? words.active : words.inactive;
  return {
    key: badge, href: `/keeper/people/${encodeURIComponent(badge)}`, texts: { badge, name, roles: showList(roles.map((role) => labelOf(labels.roles, role))), active: word },
    shown: { active: html`<gh-state-mark state=${active ? 'accepted' : 'locked'} word=${word} size="small"></gh-state-mark>` },
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-people': GhPeople;
  }
}
