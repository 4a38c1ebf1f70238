import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { ChartLine } from '../../shared/metrology/charts/index.ts';
import { mayGive } from '../../shared/traveller/index.ts';
import type { BaseFault, ChartRecord, ChartState, DrawnChart, PostedSignal } from '../../shared/traveller/index.ts';
import { chartsDeskWords } from '../../shared/words/charts-desk.en.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { showFigure, showMoment } from '../desk/show.ts';
import { SortedTable, type DeskRow } from '../desk/sorted-table.ts';
import { deskWords } from '../desk/words.ts';
import { Follow, link } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-control-chart.ts';
import type { ChartedLot, ControlChartSays } from '../parts/gh-control-chart.ts';
import '../parts/gh-state-mark.ts';
import { partStyles } from '../parts/part-styles.ts';
import '../plans/compare/gh-why-sheet.ts';
import { baseFaults, lineNames, MARKS, nameOfKey, ruleNames, signalClause, subjectOf } from './chart-names.ts';
import { plainOn, showOn, toFigure, unitOn } from './chart-figures.ts';
import { chartedLots } from './charted-lots.ts';
import './gh-chart-define.ts';
import './gh-chart-freeze.ts';
import './gh-chart-reason.ts';
import './gh-chart-how.ts';
import { whyOfLimits } from './why-of-limits.ts';

const words = chartsDeskWords.chart;
type Sheet = 'freeze' | 'change' | 'unfreeze' | 'restart' | 'withdraw' | 'how';

/** One control chart: its lines, what its limits rest on, its signals, its table, and what an engineer may do with it. */
@customElement('gh-chart-card')
export class GhChartCard extends LitElement {
  static override styles = [partStyles, deskStyles, css`
    :host { display: block; }
    .standing { display: flex; flex-wrap: wrap; gap: var(--gap); align-items: center; justify-content: space-between; }
    .now { color: var(--bad); font-weight: 650; }
    @media print { details { display: block; } }
  `];
  @property({ attribute: false }) state: ChartState | null = null;
  @property({ attribute: false }) record: ChartRecord | null = null;
  @property({ attribute: false }) drawn: DrawnChart | BaseFault | null = null;
  @property({ attribute: false }) names: Readonly<Record<string, string>> = {};
  @state() private sheet: Sheet | null = null;
  readonly #session = new Follow(this, () => link.session);
  readonly #table = new SortedTable(this);

  override render() {
    const { state, record, drawn } = this;
    if (state === null || record === null || drawn === null) return nothing;
    const name = nameOfKey(record.key);
    return html`<section class="sheet" aria-label=${name}>
      <div class="standing"><h3>${name}</h3>${this.#standing(record, drawn)}</div>
      <p class="small">${this.#limits(record)} ${typeof drawn === 'string' ? words.noLimits(baseFaults[drawn]) : this.#base(state, name, drawn)}</p>
      ${typeof drawn === 'string' ? nothing : html`${drawn.lines.map((line) => this.#line(state, record, drawn, line, name))}${this.#signals(state, record, drawn)}${this.#points(state, record, drawn, name)}`}
      <p class="small soft">${words.rules}: ${record.card.rules.map((rule) => ruleNames[rule]).join('; ')}. ${record.card.mayHold ? words.mayHold : words.mayNotHold}</p>
      ${mayGive('freezeChartLimits', this.#session.value?.roles ?? []) ? this.#keys(record) : nothing}
      ${this.#sheets(state, record, drawn, name)}
    </section>`;
  }

  #standing({ frozen }: ChartRecord, drawn: DrawnChart | BaseFault) {
    const newest = typeof drawn === 'string' ? -1 : drawn.places.length - 1;
    const standing = frozen === null ? 'provisional' : typeof drawn !== 'string' && drawn.signals.some(({ at }) => at === newest) ? 'signal' : 'inControl';
    return html`<gh-state-mark boxed state=${MARKS[standing]} word=${words.names[standing]}></gh-state-mark>`;
  }

  #limits({ frozen }: ChartRecord): string {
    if (frozen === null) return words.provisional;
    const { badge, name, at } = frozen.signature;
    const who = this.names[badge] ?? name;
    return frozen.lots.length === 0 ? words.frozenGiven(who, showMoment(at), frozen.reason) : words.frozenFrom(chartsDeskWords.freeze.lots(frozen.lots.length), who, showMoment(at), frozen.reason);
  }

  #base({ about }: ChartState, name: string, { base, lines }: DrawnChart) {
    const show = showOn(lines[0]?.name === 'cusumUp' ? 'mean' : lines[0]?.name ?? 'mean', about);
    const text = base.sigma === null ? `${words.centre} ${toFigure(base.centre)}` : `${words.centre} ${show(base.centre)}, ${words.sigma.toLocaleLowerCase()} ${toFigure(base.sigma, 4)}`;
    return html`<gh-chart-how label="${text}. ${words.ask(name)}" shown=${text} @how-wanted=${() => (this.sheet = 'how')}></gh-chart-how>`;
  }

  #line(state: ChartState, record: ChartRecord, drawn: DrawnChart, line: ChartLine, name: string) {
    if (line.points.length === 0) return nothing;
    const [show, plain] = [showOn(line.name, state.about), plainOn(line.name, state.about)];
    const unit = unitOn(line.name, state.about);
    const says: ControlChartSays = {
      x: words.axisX, y: `${lineNames[line.name]}${unit === '' ? '' : `, ${unit}`}`, upper: words.upper, lower: words.lower, centre: words.middle, base: words.base, start: words.start, signal: 'S', show: plain,
      cursor: words.cursorOf(lineNames[line.name], name), back: words.backOne, on: words.onOne,
      read: (lot: ChartedLot) => words.read(lot.name, show(lot.value), `${lot.lower === null ? words.noLimit : plain(lot.lower)} … ${lot.upper === null ? words.noLimit : plain(lot.upper)}`, lot.signal === null ? '' : words.readSignal(lot.signal)),
    };
    return html`<gh-control-chart .lots=${chartedLots(state, record, drawn, line)} .says=${says}></gh-control-chart>`;
  }

  #signals(state: ChartState, record: ChartRecord, drawn: DrawnChart) {
    if (drawn.signals.length === 0 && record.signals.length === 0) return html`<p class="small">${words.none}</p>`;
    const streamAt = (at: number): string => state.points[drawn.places[at] ?? -1]?.subject ?? '';
    const now = drawn.signals.map((signal) => ({ ...signal, subject: streamAt(signal.at) }));
    const same = (posted: PostedSignal) => now.some(({ subject, rule, line, side }) => posted.subject === subject && posted.rule === rule && posted.line === line && posted.side === side);
    const gone = record.signals.filter((posted) => !same(posted));
    return html`${now.length === 0 ? nothing : html`<h4>${words.signalsNow}</h4><ul class="lines">${now.map(({ rule, line, side, subject }, at) => html`<li><gh-state-mark state="caution" size="small"></gh-state-mark><span class="now">${words.signal(at + 1, signalClause(rule, line, side))}</span><a href=${subjectOf(subject).href}>${subjectOf(subject).id}</a><span class="soft small">${record.signals.some((posted) => posted.subject === subject && posted.rule === rule && posted.line === line && posted.side === side) ? words.posted : words.notPosted}</span></li>`)}</ul>`}
      ${gone.length === 0 ? nothing : html`<h4>${words.gone}</h4><ul class="lines">${gone.map(({ rule, line, side, subject, at }) => html`<li><span>${signalClause(rule, line, side)}</span><a href=${subjectOf(subject).href}>${subjectOf(subject).id}</a><span class="soft small">${showMoment(at)}</span></li>`)}</ul>`}`;
  }

  #points(state: ChartState, record: ChartRecord, drawn: DrawnChart, name: string) {
    const lines = drawn.lines.filter(({ points }) => points.length > 0);
    const columns = [
      { key: 'no', head: words.columns.no, kind: 'number' as const, sortable: true }, { key: 'lot', head: words.columns.lot, sortable: true, filterable: true }, { key: 'when', head: words.columns.when, sortable: true }, { key: 'n', head: words.columns.n, kind: 'number' as const },
      ...lines.flatMap((line) => [{ key: line.name, head: lineNames[line.name], unit: unitOn(line.name, state.about), kind: 'number' as const, sortable: true }, { key: `${line.name}Limits`, head: `${words.columns.lower} … ${words.columns.upper.toLocaleLowerCase()}`, kind: 'number' as const }]),
      { key: 'signal', head: words.columns.signal, filterable: true }, { key: 'note', head: words.columns.note, filterable: true },
    ];
    const rows = drawn.places.flatMap((place, at): DeskRow[] => {
      const point = state.points[place];
      if (point === undefined) return [];
      const { id, href } = subjectOf(point.subject);
      const figures = lines.flatMap(({ name: line, points }): (readonly [string, string])[] => {
        const there = points.find((each) => each.at === at);
        const plain = plainOn(line, state.about);
        return there === undefined ? [] : [[line, plain(there.value)], [`${line}Limits`, `${there.lower === null ? deskWords.none : plain(there.lower)} … ${there.upper === null ? deskWords.none : plain(there.upper)}`]];
      });
      const notes = [...(record.frozen?.lots.includes(point.subject) === true ? [words.base] : []), ...(point.revised ? [words.revised] : []), ...(place > 0 && record.starts.includes(place) ? [words.start] : [])];
      const signals = drawn.signals.flatMap((signal, number) => (signal.at === at ? [`S${number + 1}`] : []));
      return [{ key: point.subject, texts: { no: at + 1, lot: id, when: point.judgedAt, n: point.value.by === 'measured' ? point.value.n : point.value.of, ...Object.fromEntries(figures), signal: signals.join(' '), note: notes.join(', ') }, shown: { when: showMoment(point.judgedAt), lot: html`<a href=${href}>${id}</a>`, n: showFigure(point.value.by === 'measured' ? point.value.n : point.value.of) } }];
    });
    return html`<details><summary>${words.open}</summary>${this.#table.table(words.table(name), columns, rows, { empty: deskWords.noMatch, file: `chart-${state.about.characteristic}-${record.key}` })}</details>`;
  }

  #keys({ frozen }: ChartRecord) {
    const key = (sheet: Sheet, text: string) => html`<gh-button @click=${() => (this.sheet = sheet)}>${text}</gh-button>`;
    return html`<div class="keys screen-only">${key('freeze', frozen === null ? words.freeze : words.renew)}${key('change', words.change)}${frozen === null ? nothing : html`${key('restart', words.restart)}${key('unfreeze', words.unfreeze)}`}${key('withdraw', words.withdraw)}</div>`;
  }

  #sheets(state: ChartState, record: ChartRecord, drawn: DrawnChart | BaseFault, name: string) {
    const closed = () => (this.sheet = null);
    const why = this.sheet === 'how' && typeof drawn !== 'string' ? whyOfLimits(record, drawn) : null;
    return html`<div @chart-changed=${closed} @sheet-closed=${closed}>
      <gh-why-sheet .why=${why} heading=${words.ask(name)} shown=${typeof drawn === 'string' ? '' : chartsDeskWords.freeze.base(toFigure(drawn.base.centre), drawn.base.sigma === null ? null : toFigure(drawn.base.sigma))}></gh-why-sheet>
      <gh-chart-freeze ?open=${this.sheet === 'freeze'} .state=${state} .record=${record}></gh-chart-freeze>
      <gh-chart-define ?open=${this.sheet === 'change'} stream=${state.stream} .state=${state} .record=${record}></gh-chart-define>
      <gh-chart-reason does=${this.sheet === 'unfreeze' || this.sheet === 'restart' || this.sheet === 'withdraw' ? this.sheet : nothing} chart=${state.stream} key-of=${record.key}></gh-chart-reason></div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-chart-card': GhChartCard;
  }
}
