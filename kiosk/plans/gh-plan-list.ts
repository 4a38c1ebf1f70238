import { LitElement, css, html } from 'lit';
import { customElement } from 'lit/decorators.js';
import { mayGive } from '../../shared/traveller/index.ts';
import { planWritingWords } from '../../shared/words/plan-writing.en.ts';
import { plansDeskWords } from '../../shared/words/plans-desk.en.ts';
import { askedNotice } from '../desk/asked-notice.ts';
import { Asked } from '../desk/asked.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import '../desk/gh-first-steps.ts';
import { showFigure, showList } from '../desk/show.ts';
import { SortedTable, type DeskRow } from '../desk/sorted-table.ts';
import { deskWords, labels } from '../desk/words.ts';
import { Follow, link } from '../link/index.ts';
import '../parts/gh-state-mark.ts';
import { keyStyles, partStyles } from '../parts/part-styles.ts';
import { planPath, type CatalogueView } from './catalogue-view.ts';
import './gh-own-drafts.ts';

const words = plansDeskWords.list;
const columns = [
  { key: 'id', head: words.columns.id, sortable: true, filterable: true }, { key: 'name', head: words.columns.name, sortable: true, filterable: true }, { key: 'appliesTo', head: words.columns.appliesTo, sortable: true, filterable: true },
  { key: 'inForce', head: words.columns.inForce }, { key: 'drafts', head: words.columns.drafts }, { key: 'versions', head: words.columns.versions, kind: 'number' as const },
];

/** Every plan with the version in force and those that wait for approval. */
@customElement('gh-plan-list')
export class GhPlanList extends LitElement {
  static override styles = [partStyles, deskStyles, keyStyles, css`a.key { --target: 42px; display: inline-flex; align-items: center; text-decoration: none; } :host { display: grid; gap: calc(2 * var(--pad)); }`];
  readonly #catalogue = new Asked<CatalogueView>(this, { key: () => '/api/catalogue', read: (path) => link.ask(path), topics: ['catalogue'] });
  readonly #session = new Follow(this, () => link.session);
  readonly #table = new SortedTable(this);

  override render() {
    const { value } = this.#catalogue;
    return html`${askedNotice(this.#catalogue)}<gh-first-steps></gh-first-steps><gh-own-drafts badge=${this.#session.value?.badge ?? ''}></gh-own-drafts>
      ${mayGive('draftPlan', this.#session.value?.roles ?? []) ? html`<p class="screen-only"><a class="key" href="/plans/new">${planWritingWords.newPlan.start}</a></p>` : ''} ${value === null ? '' : this.#table.table(words.caption, columns, value.plans.map(rowOf), { empty: words.empty, file: 'plans' })}`;
  }
}

function rowOf({ id, name, appliesTo, versions }: CatalogueView['plans'][number]): DeskRow {
  const inForce = versions.find((version) => version.inForce);
  const waiting = versions.filter((version) => !version.inForce && version.approvals < 2).map(({ planVersion }) => showFigure(planVersion));
  const word = inForce === undefined ? words.noneInForce : words.versionWord(showFigure(inForce.planVersion));
  return {
    key: id, href: planPath(id),
    texts: { id, name, appliesTo: labels.subjectKinds[appliesTo], inForce: word, drafts: waiting.length === 0 ? deskWords.none : words.versionWord(showList(waiting)), versions: versions.length },
    shown: { inForce: html`<gh-state-mark state=${inForce === undefined ? 'waiting' : 'accepted'} word=${word} size="small"></gh-state-mark>` },
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-plan-list': GhPlanList;
  }
}
