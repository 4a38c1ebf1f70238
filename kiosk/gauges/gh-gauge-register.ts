import { LitElement, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { gaugesDeskWords } from '../../shared/words/gauges-desk.en.ts';
import { askedNotice } from '../desk/asked-notice.ts';
import { Asked } from '../desk/asked.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { showDay, showFigure, showMoment } from '../desk/show.ts';
import { SortedTable, type DeskRow } from '../desk/sorted-table.ts';
import { deskWords } from '../desk/words.ts';
import { link } from '../link/index.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-state-mark.ts';
import { partStyles } from '../parts/part-styles.ts';
import { benchesOf, gaugeStanding, markOfGauge, today, type GaugeRow } from './gauge-standing.ts';
import './gh-gauge-form.ts';

const words = gaugesDeskWords.register;
const columns = [
  { key: 'id', head: words.columns.id, sortable: true, filterable: true }, { key: 'standing', head: words.columns.standing, sortable: true, filterable: true }, { key: 'due', head: words.columns.due, sortable: true },
  { key: 'name', head: words.columns.name, sortable: true, filterable: true }, { key: 'bench', head: words.columns.bench, sortable: true }, { key: 'kind', head: words.columns.kind, sortable: true, filterable: true },
  { key: 'range', head: words.columns.range }, { key: 'resolution', head: words.columns.resolution, kind: 'number' as const }, { key: 'uncertainty', head: words.columns.uncertainty, kind: 'number' as const },
  { key: 'lastGood', head: words.columns.lastGood, sortable: true }, { key: 'certificate', head: words.columns.certificate },
];

/** The gauges of the plant: the list with what is overdue, or a new one. */
@customElement('gh-gauge-register')
export class GhGaugeRegister extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property({ type: Boolean }) registers = false;
  @state() private done = '';
  readonly #catalogue = new Asked<{ readonly gauges: readonly GaugeRow[] }>(this, { key: () => '/api/catalogue', read: (path) => link.ask(path), topics: ['catalogue'] });
  readonly #table = new SortedTable(this, { key: 'due', direction: 'up' });

  override render() {
    const { value } = this.#catalogue;
    if (value === null) return askedNotice(this.#catalogue);
    const done = this.done === '' ? nothing : html`<gh-notice kind="done" happened=${this.done}></gh-notice>`;
    const back = html`<p><a href="/gauges">${words.back}</a></p>${done}`;
    const told = ({ detail }: CustomEvent<{ done: string }>) => {
      this.done = detail.done;
      void this.#catalogue.again();
    };
    if (this.registers) return html`${back}<gh-gauge-form @gauge-changed=${told}></gh-gauge-form>`;
    const day = today();
    const overdue = value.gauges.filter((gauge) => gaugeStanding(gauge, day) === 'overdue').length;
    return html`${askedNotice(this.#catalogue)}${overdue === 0 ? nothing : html`<gh-notice kind="fault" happened=${words.overdueNote(overdue, showFigure(overdue))}></gh-notice>`}
      <p><a href="/gauges?new">${words.registerOne}</a></p>
      ${this.#table.table(words.caption, columns, value.gauges.map((gauge) => rowOf(gauge, day)), { empty: words.empty, file: 'gauges' })}`;
  }
}

function rowOf(gauge: GaugeRow, day: string): DeskRow {
  const standing = gaugeStanding(gauge, day);
  const word = words.standings[standing];
  return {
    key: gauge.id, href: `/gauges/${encodeURIComponent(gauge.id)}`,
    texts: {
      id: gauge.id, name: gauge.name, kind: gauge.gaugeKind, range: words.range(showFigure(gauge.least), showFigure(gauge.most), gauge.unit), resolution: words.withUnit(showFigure(gauge.resolution), gauge.unit),
      uncertainty: `${words.withUnit(showFigure(gauge.expandedUncertainty), gauge.unit)} (${showFigure(gauge.coverageFactor ?? 2)})`, due: gauge.calibrationDue, standing: word, bench: benchesOf(gauge),
      lastGood: gauge.lastGoodAt ?? deskWords.none, certificate: gauge.certificate ?? deskWords.none,
    },
    // A range stays on one line with its unit.
    shown: { range: words.range(showFigure(gauge.least), showFigure(gauge.most), gauge.unit).replaceAll(' ', '\u00a0'), due: showDay(gauge.calibrationDue), ...(gauge.lastGoodAt === null ? {} : { lastGood: showMoment(gauge.lastGoodAt) }), standing: html`<gh-state-mark state=${markOfGauge[standing]} word=${word} size="small"></gh-state-mark>` },
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-gauge-register': GhGaugeRegister;
  }
}
