import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Capability, CapabilityIndex, FractionOutside } from '../../shared/metrology/capability/index.ts';
import { GOOD_CAPABILITY_VALUES } from '../../shared/metrology/capability/index.ts';
import type { ChartedCapability, ChartedThing } from '../../shared/traveller/index.ts';
import { chartsDeskWords } from '../../shared/words/charts-desk.en.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { showFigure, showNumber } from '../desk/show.ts';
import { SortedTable, type DeskRow } from '../desk/sorted-table.ts';
import { labels } from '../desk/words.ts';
import '../parts/gh-histogram.ts';
import { histogramClasses } from '../parts/histogram-drawing.ts';
import '../parts/gh-state-mark.ts';
import { partStyles } from '../parts/part-styles.ts';
import '../plans/compare/gh-why-sheet.ts';
import { cautionStyles } from './caution-styles.ts';
import { toFigure } from './chart-figures.ts';
import './gh-chart-how.ts';
import { whyOfCapability, type CapabilityAsked } from './why-of-capability.ts';

const words = chartsDeskWords.capability;
const columns = (['index', 'value', 'low', 'high', 'by'] as const).map((key) => ({ key, head: words.columns[key], ...(key === 'index' || key === 'by' ? {} : { kind: 'number' as const }) }));
const classColumns = [{ key: 'from', head: words.class, kind: 'number' as const }, { key: 'to', head: words.classTo, kind: 'number' as const }, { key: 'count', head: words.count, kind: 'number' as const }];

/** Histogram with limits and the capability table: every figure with its interval and the reason behind it, and what speaks against it. */
@customElement('gh-capability')
export class GhCapability extends LitElement {
  static override styles = [partStyles, deskStyles, cautionStyles, css`:host { display: grid; gap: calc(1.2 * var(--pad)); grid-template-columns: minmax(0, 1fr); }`];
  @property({ attribute: false }) about: ChartedThing | null = null;
  @property({ attribute: false }) capability: ChartedCapability | null = null;
  /** A chart with signed limits shows no signal. */
  @property({ type: Boolean }) steady = false;
  @state() private asked: CapabilityAsked | null = null;
  readonly #table = new SortedTable(this);
  readonly #classes = new SortedTable(this);

  override render() {
    const { about, capability } = this;
    if (about === null || capability === null) return nothing;
    const { figures } = capability;
    return html`<h2>${chartsDeskWords.page.capability}</h2><section class="sheet">
      ${typeof figures === 'string' ? html`<p>${words[figures]}</p>` : html`${this.#against(capability, figures)}${this.#table.table(words.caption, columns, this.#rows(about, capability, figures), { empty: '', file: `capability-${about.characteristic}` })}`}
      ${this.#histogram(about, capability)}
      <gh-why-sheet .why=${this.asked === null ? null : whyOfCapability(this.asked)} heading=${this.asked?.name ?? ''} shown=${this.asked?.shown ?? ''} @sheet-closed=${() => (this.asked = null)}></gh-why-sheet></section>`;
  }

  #against({ normality, limitsDiffer }: ChartedCapability, { values }: Capability) {
    const notes: readonly string[] = [
      ...(this.steady ? [] : [words.notSteady]), ...(limitsDiffer ? [words.differ] : []), ...(values < GOOD_CAPABILITY_VALUES ? [words.few(showFigure(values))] : []),
      ...('pValue' in normality && normality.says === 'doubtful' ? [words.notNormal(showNumber(normality.pValue, 4))] : []),
    ];
    const said = 'pValue' in normality ? (normality.says === 'doubtful' ? null : words.normal(showNumber(normality.pValue, 3), showFigure(normality.n))) : words.notTested;
    return html`${notes.map((note) => html`<p class="caution"><gh-state-mark state="caution" size="small"></gh-state-mark><span>${note}</span></p>`)}${said === null ? nothing : html`<p class="small soft">${said}</p>`}`;
  }

  #rows({ unit }: ChartedThing, { lower, upper, counted }: ChartedCapability, figures: Capability): readonly DeskRow[] {
    const limits = `${labels.between(lower === null ? null : toFigure(lower), upper === null ? null : toFigure(upper))} ${unit ?? ''}`;
    const rows = (['within', 'overall'] as const).flatMap((by) => {
      const group = figures[by];
      if (group === null) return [];
      return ([['width', 'width'], ['lowerSide', 'side'], ['upperSide', 'side'], ['centred', 'centred']] as const).flatMap(([key, kind]) => {
        const index = group[key];
        const name = words.names[key][by];
        return index === null ? [] : [this.#row(`${name} (${words[by]})`, index, (shown) => ({ kind, name, shown, index, spread: group.spread, by, limits }))];
      });
    });
    const { spread } = figures.overall;
    const seen = counted === null ? [] : [this.#share(words.counted, counted, (shown) => ({ kind: 'counted', name: words.counted, shown, share: counted, inputs: `${Math.round(counted.value * figures.values)} / ${figures.values}` }))];
    return [...rows, this.#share(words.share, figures.outside, (shown) => ({ kind: 'share', name: words.share, shown, share: figures.outside, inputs: `${limits}\nx̄ = ${toFigure(spread.mean, 8)}, s = ${toFigure(spread.s)}, N = ${spread.values}` })), ...seen];
  }

  #row(name: string, { value, low, high, by }: CapabilityIndex, asked: (shown: string) => CapabilityAsked): DeskRow {
    return this.#figure(name, showNumber(value, 3), showNumber(low, 3), showNumber(high, 3), words.by[by], asked);
  }

  #share(name: string, { value, low, high, by }: FractionOutside, asked: (shown: string) => CapabilityAsked): DeskRow {
    const percent = (share: number): string => `${toFigure(100 * share, 3)} %`;
    return this.#figure(name, percent(value), percent(low), percent(high), words.by[by], asked);
  }

  #figure(name: string, value: string, low: string, high: string, by: string, asked: (shown: string) => CapabilityAsked): DeskRow {
    return { key: name, texts: { index: name, value, low, high, by }, shown: { value: html`<gh-chart-how label=${words.ask(name, value)} shown=${value} @how-wanted=${() => (this.asked = asked(value))}></gh-chart-how>` } };
  }

  #histogram({ unit, decimals, characteristicName }: ChartedThing, { keptValues, lower, upper, figures }: ChartedCapability) {
    const all = typeof figures === 'string' ? keptValues.length : figures.values;
    if (keptValues.length === 0) return nothing;
    const show = (value: number): string => showNumber(value, decimals);
    const classes = histogramClasses(keptValues, 10 ** -decimals);
    const mean = keptValues.reduce((sum, value) => sum + value, 0) / keptValues.length;
    const edge = (value: number): string => showNumber(value, decimals + 1);
    return html`<gh-histogram .classes=${classes} .marks=${{ lower, upper, mean }} caption="${characteristicName}: ${words.histogram(showFigure(keptValues.length), showFigure(all))}" .words=${{ x: `${characteristicName}, ${unit ?? ''}`, y: words.axisCount, lower: words.lower, upper: words.upper, mean: words.mean, show }}></gh-histogram>
      <details><summary>${words.histogramTable}</summary>${this.#classes.table(words.histogramTable, classColumns, classes.map(({ from, to, count }) => ({ key: String(from), texts: { from: edge(from), to: edge(to), count } })), { empty: '' })}</details>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-capability': GhCapability;
  }
}
