import { LitElement, html, nothing } from 'lit';
import { customElement } from 'lit/decorators.js';
import { mayGive } from '../../shared/traveller/index.ts';
import type { ChartRow } from '../../shared/wire/charts-view.ts';
import { chartsDeskWords } from '../../shared/words/charts-desk.en.ts';
import { askedNotice } from '../desk/asked-notice.ts';
import { chartAddress } from '../desk/chart-address.ts';
import { Asked } from '../desk/asked.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { showMoment } from '../desk/show.ts';
import { SortedTable, type DeskRow } from '../desk/sorted-table.ts';
import { deskWords } from '../desk/words.ts';
import { Follow, link } from '../link/index.ts';
import '../parts/gh-state-mark.ts';
import { partStyles } from '../parts/part-styles.ts';
import { MARKS, nameOfKey, ruleNames, subjectOf } from './chart-names.ts';

const words = chartsDeskWords.list;
const columns = (['characteristic', 'standing', 'owner', 'gate', 'chart', 'lots', 'last', 'lastSignal', 'holds'] as const).map((key) => ({
  key, head: words.columns[key], sortable: true, filterable: key !== 'lots' && key !== 'last', ...(key === 'lots' ? { kind: 'number' as const } : {}),
}));

/** Every chart with how it stands; signals come first. */
@customElement('gh-chart-list')
export class GhChartList extends LitElement {
  static override styles = [partStyles, deskStyles];
  readonly #rows = new Asked<{ readonly rows: readonly ChartRow[] }>(this, { key: () => '/api/charts', read: (path) => link.ask(path), topics: ['charts'] });
  readonly #session = new Follow(this, () => link.session);
  readonly #table = new SortedTable(this);

  override render() {
    const { value } = this.#rows;
    if (value === null) return askedNotice(this.#rows);
    return html`${askedNotice(this.#rows)}${mayGive('defineChart', this.#session.value?.roles ?? []) ? html`<p class="screen-only"><a href="/charts?new">${words.add}</a></p>` : nothing}
      ${this.#table.table(words.caption, columns, value.rows.map(rowOf), { empty: words.empty, file: 'charts' })}`;
  }
}

function rowOf(row: ChartRow): DeskRow {
  const standing = words.standings[row.standing];
  const signal = row.lastSignal === null ? deskWords.none : `${ruleNames[row.lastSignal.rule]} (${subjectOf(row.lastSignal.subject).id})`;
  return {
    key: `${row.stream} ${row.key}`, href: chartAddress(row),
    texts: { characteristic: row.characteristicName, standing, owner: row.ownerName, gate: row.gateName, chart: nameOfKey(row.key), lots: row.lots, last: row.lastAt ?? '', lastSignal: signal, holds: row.mayHold ? words.holds : words.holdsNot },
    shown: { standing: html`<gh-state-mark state=${MARKS[row.standing]} word=${standing} size="small"></gh-state-mark>`, last: row.lastAt === null ? deskWords.none : showMoment(row.lastAt) },
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-chart-list': GhChartList;
  }
}
