import { LitElement, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { GOOD_BASE_LOTS } from '../../shared/metrology/charts/index.ts';
import type { ChartBase } from '../../shared/metrology/charts/index.ts';
import { baseFrom, drawnChart } from '../../shared/traveller/index.ts';
import type { BaseFault, ChartRecord, ChartState } from '../../shared/traveller/index.ts';
import { chartsDeskWords } from '../../shared/words/charts-desk.en.ts';
import { refusalNotice } from '../desk/asked-notice.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { focusSheet } from '../desk/focus-sheet.ts';
import { Giving } from '../desk/giving.ts';
import { readNumber } from '../desk/show.ts';
import { deskWords } from '../desk/words.ts';
import { Follow, link } from '../link/index.ts';
import '../parts/gh-drop-list.ts';
import '../parts/gh-field.ts';
import '../parts/gh-state-mark.ts';
import '../parts/gh-sheet.ts';
import '../parts/gh-signature.ts';
import { partStyles } from '../parts/part-styles.ts';
import { tell } from '../parts/tell.ts';
import { cautionStyles, formStyles } from './caution-styles.ts';
import { baseFaults, nameOfKey, subjectOf } from './chart-names.ts';
import { toFigure } from './chart-figures.ts';

const words = chartsDeskWords.freeze;
type Way = keyof typeof words.ways;

/**
 * Limits frozen by signature: from a run of lots on the chart, or given. Shows beforehand what they come to, and what speaks against it.
 * @fires chart-changed - with `{ done }`
 */
@customElement('gh-chart-freeze')
export class GhChartFreeze extends LitElement {
  static override styles = [partStyles, deskStyles, cautionStyles, formStyles];
  @property({ attribute: false }) state: ChartState | null = null;
  @property({ attribute: false }) record: ChartRecord | null = null;
  @property({ type: Boolean }) open = false;
  @state() private way: Way = 'lots';
  @state() private from = 0;
  @state() private to = 0;
  @state() private centre = '';
  @state() private sigma = '';
  @state() private reason = '';
  readonly #giving = new Giving(this);
  readonly #session = new Follow(this, () => link.session);

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('open') || !this.open) return;
    this.way = 'lots';
    this.from = 0;
    this.to = (this.state?.points.length ?? 1) - 1;
    this.centre = this.sigma = this.reason = '';
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (this.open && changed.has('open')) void focusSheet(this);
  }

  override render() {
    const { state, record } = this;
    const session = this.#session.value;
    if (!this.open || state === null || record === null || session === null) return nothing;
    const name = nameOfKey(record.key);
    const base = this.#base(state, record);
    const text = typeof base === 'string' ? '' : words.base(toFigure(base.centre), base.sigma === null ? null : toFigure(base.sigma));
    return html`<gh-sheet open heading=${words.title(name)} close-word=${deskWords.cancel}>${refusalNotice(this.#giving)}
      <gh-signature meaning=${words.sign} who="${session.name} (${session.badge})" statement=${words.statement(name, text)} .words=${deskWords.pin} .busy=${this.#giving.busy !== null} @signed=${({ detail }: CustomEvent<{ pin: string }>) => void this.#sign(detail.pin)}>
        <div class="form"><gh-drop-list label=${words.way} value=${this.way} .options=${(['lots', 'given'] as const).map((value) => ({ value, text: words.ways[value] }))} @option-chosen=${({ detail }: CustomEvent<{ value: string }>) => (this.way = detail.value === 'given' ? 'given' : 'lots')}></gh-drop-list>
        ${this.way === 'lots' ? this.#lots(state) : this.#given()}
        ${typeof base === 'string' ? html`<p class="caution"><gh-state-mark state="caution" size="small"></gh-state-mark><span>${chartsDeskWords.chart.noLimits(baseFaults[base])}</span></p>` : html`<p><strong>${text}</strong></p>${this.#against(state, record, base)}`}
        <gh-field name="reason" label=${words.reason} .value=${this.reason} required @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.reason = detail.value)}></gh-field></div>
      </gh-signature></gh-sheet>`;
  }

  #lots({ points }: ChartState) {
    const options = points.map(({ subject }, at) => ({ value: String(at), text: `${at + 1} · ${subjectOf(subject).id}` }));
    const list = (label: string, value: number, take: (at: number) => void) => html`<gh-drop-list label=${label} value=${String(value)} .options=${options} @option-chosen=${({ detail }: CustomEvent<{ value: string }>) => take(Number(detail.value))}></gh-drop-list>`;
    return html`<div class="fields">${list(words.from, this.from, (at) => (this.from = at))}${list(words.to, this.to, (at) => (this.to = at))}</div>`;
  }

  #given() {
    const field = (name: string, label: string, value: string, take: (text: string) => void) => html`<gh-field name=${name} label=${label} .value=${value} entry="decimal" required error=${value !== '' && readNumber(value) === null ? chartsDeskWords.define.badNumber : ''} @field-input=${({ detail }: CustomEvent<{ value: string }>) => take(detail.value)}></gh-field>`;
    return html`<div class="fields">${field('centre', words.centre, this.centre, (text) => (this.centre = text))}${this.#isCounted() ? nothing : field('sigma', words.sigma, this.sigma, (text) => (this.sigma = text))}</div>`;
  }

  #isCounted(): boolean {
    return this.state?.about.unit === null;
  }

  #chosen({ points }: ChartState): ChartState['points'] {
    return points.slice(Math.min(this.from, this.to), Math.max(this.from, this.to) + 1);
  }

  #base(state: ChartState, { card }: ChartRecord): ChartBase | BaseFault {
    if (this.way === 'lots') return baseFrom(card, this.#chosen(state));
    return { centre: readNumber(this.centre) ?? 0, sigma: this.#isCounted() ? null : readNumber(this.sigma) ?? 0 };
  }

  #against(state: ChartState, record: ChartRecord, base: ChartBase) {
    if (this.way === 'given') return nothing;
    const points = this.#chosen(state);
    const drawn = drawnChart({ ...state, points }, { ...record, card: { ...record.card, rules: ['beyondLimits'] }, frozen: null, starts: [] });
    const outside = typeof drawn === 'string' || drawn.base.centre !== base.centre ? 0 : new Set(drawn.signals.map(({ at }) => at)).size;
    return html`${points.length < GOOD_BASE_LOTS ? html`<p class="caution"><gh-state-mark state="caution" size="small"></gh-state-mark><span>${words.few(points.length)}</span></p>` : nothing}${outside === 0 ? nothing : html`<p class="caution"><gh-state-mark state="caution" size="small"></gh-state-mark><span>${words.outside(outside)}</span></p>`}`;
  }

  async #sign(pin: string): Promise<void> {
    const { state, record } = this;
    if (state === null || record === null) return;
    const base = this.#base(state, record);
    const given = this.way === 'given' && typeof base !== 'string' ? base : null;
    const lots = this.way === 'lots' ? this.#chosen(state).map(({ subject }) => subject) : [];
    if ((await this.#giving.give('freeze', { type: 'freezeChartLimits', chart: state.stream, key: record.key, lots, given, reason: this.reason }, { pin })) !== null) tell(this, 'chart-changed', { done: chartsDeskWords.chart.done.frozen });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-chart-freeze': GhChartFreeze;
  }
}
