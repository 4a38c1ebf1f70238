import { LitElement, html } from 'lit';
import { customElement } from 'lit/decorators.js';
import { gaugesDeskWords as words } from '../../shared/words/gauges-desk.en.ts';
import { askedNotice } from '../desk/asked-notice.ts';
import { Asked } from '../desk/asked.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { showFigure } from '../desk/show.ts';
import { SortedTable } from '../desk/sorted-table.ts';
import { link } from '../link/index.ts';
import { partStyles } from '../parts/part-styles.ts';
import type { GaugeRow } from './gauge-standing.ts';

const columns = [{ key: 'id', head: words.register.columns.id, sortable: true, filterable: true }, { key: 'name', head: words.register.columns.name, sortable: true }, { key: 'open', head: words.recall.openRecalls, kind: 'number' as const, sortable: true }, { key: 'standing', head: words.register.columns.standing }];

/** Gauges with a recall that is not closed. */
@customElement('gh-recall-list')
export class GhRecallList extends LitElement {
  static override styles = [partStyles, deskStyles];
  readonly #catalogue = new Asked<{ readonly gauges: readonly GaugeRow[] }>(this, { key: () => '/api/catalogue', read: (path) => link.ask(path), topics: ['catalogue'] });
  readonly #table = new SortedTable(this, { key: 'id', direction: 'up' });

  override render() {
    const { value } = this.#catalogue;
    if (value === null) return askedNotice(this.#catalogue);
    const rows = value.gauges.filter(({ openRecalls }) => openRecalls > 0).map(({ id, name, openRecalls, outOfTolerance }) => ({
      key: id, href: `/gauges/${encodeURIComponent(id)}/recall`, texts: { id, name, open: showFigure(openRecalls), standing: outOfTolerance === null ? words.recall.backInUse : words.register.standings.outOfTolerance },
    }));
    return html`${askedNotice(this.#catalogue)}<p class="soft">${words.recall.lead}</p>${this.#table.table(words.recall.listCaption, columns, rows, { empty: words.recall.none, file: 'recalls' })}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-recall-list': GhRecallList;
  }
}
