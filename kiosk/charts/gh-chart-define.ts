import { LitElement, html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { CHART_RULES, FINDING_CLASSES } from '../../shared/traveller/index.ts';
import type { ChartCard, ChartKind, ChartRecord, ChartRule, ChartState, FindingClass } from '../../shared/traveller/index.ts';
import { chartsDeskWords } from '../../shared/words/charts-desk.en.ts';
import { refusalNotice } from '../desk/asked-notice.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { Giving } from '../desk/giving.ts';
import { deskWords, labels } from '../desk/words.ts';
import { link, LinkFault } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-drop-list.ts';
import '../parts/gh-field.ts';
import '../parts/gh-select-list.ts';
import '../parts/gh-sheet.ts';
import { partStyles } from '../parts/part-styles.ts';
import { tell } from '../parts/tell.ts';
import { formStyles } from './caution-styles.ts';
import { kindNames, nameOfKey, ruleNames } from './chart-names.ts';
import { cardOf, constantsOf, FRESH, type Constants } from './chart-choice.ts';

const words = chartsDeskWords.define;
const MEASURED: readonly ChartKind[] = ['meanAndS', 'meanAndRange', 'individuals', 'ewma', 'cusum'];
const COUNTED: readonly ChartKind[] = ['p', 'np', 'u', 'c'];

/**
 * A new chart of a characteristic, or other rules for one that is there. With the first one, lots judged before are taken along.
 * @fires chart-changed - with `{ done }`
 */
@customElement('gh-chart-define')
export class GhChartDefine extends LitElement {
  static override styles = [partStyles, deskStyles, formStyles];
  @property() stream = '';
  /** null while nothing of the characteristic is charted. */
  @property({ attribute: false }) state: ChartState | null = null;
  /** The chart to be changed; null for a new one. */
  @property({ attribute: false }) record: ChartRecord | null = null;
  @property({ type: Boolean }) open = false;
  @state() private kind: ChartKind = 'meanAndS';
  @state() private class: FindingClass | null = null;
  @state() private constants: Constants = FRESH;
  @state() private rules: readonly ChartRule[] = ['beyondLimits'];
  @state() private mayHold = false;
  @state() private isCounted: boolean | null = null;
  @state() private lots: readonly string[] = [];
  readonly #giving = new Giving(this);

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('open') || !this.open) return;
    const { record } = this;
    this.isCounted = this.state === null ? null : this.state.about.unit === null;
    this.kind = record?.card.spec.kind ?? (this.isCounted === true ? 'p' : 'meanAndS');
    this.class = record?.card.class ?? null;
    this.constants = record === null ? FRESH : constantsOf(record.card.spec);
    this.rules = record?.card.rules ?? ['beyondLimits', 'twoOfThreeBeyondTwo', 'fourOfFiveBeyondOne', 'eightOnOneSide'];
    this.mayHold = record?.card.mayHold ?? false;
    this.lots = [];
    if (this.state === null) void this.#look();
  }

  override render() {
    if (!this.open) return nothing;
    const { record } = this;
    const card = cardOf(this.kind, this.class, this.constants, this.rules, this.mayHold);
    return html`<gh-sheet open heading=${record === null ? words.title : words.change(nameOfKey(record.key))} close-word=${deskWords.cancel}>${refusalNotice(this.#giving)}
      <div class="form"><div class="fields">
        ${record === null ? this.#drop(words.kind, this.kind, this.#kinds().map((value) => ({ value, text: kindNames[value] })), (value) => (this.kind = this.#kinds().find((each) => each === value) ?? this.kind)) : nothing}
        ${record === null && COUNTED.includes(this.kind) ? this.#drop(words.class, this.class ?? '', [{ value: '', text: words.allClasses }, ...FINDING_CLASSES.map((value) => ({ value, text: labels.findingClasses[value] }))], (value) => (this.class = FINDING_CLASSES.find((each) => each === value) ?? null)) : nothing}
        ${this.#constants()}
      </div>
      <gh-select-list multiple name="rules" label=${words.rules} .values=${this.rules} .options=${CHART_RULES.map((value) => ({ value, text: ruleNames[value] }))} columns="2" @options-chosen=${({ detail }: CustomEvent<{ values: readonly string[] }>) => (this.rules = CHART_RULES.filter((rule) => detail.values.includes(rule)))}></gh-select-list>
      <p class="small soft">${words.falseAlarms}</p>
      ${this.#drop(words.may, this.mayHold ? 'yes' : 'no', (['no', 'yes'] as const).map((value) => ({ value, text: words.hold[value] })), (value) => (this.mayHold = value === 'yes'))}
      ${this.lots.length === 0 ? nothing : html`<p>${words.lots(this.lots.length)}</p>`}</div>
      <gh-button slot="actions" kind="primary" .busy=${this.#giving.busy !== null} busy-word=${deskWords.busy} ?disabled=${card === null} @click=${() => void this.#give(card)}>${record === null ? words.do : words.save}</gh-button></gh-sheet>`;
  }

  #kinds(): readonly ChartKind[] {
    return this.isCounted === null ? [...MEASURED, ...COUNTED] : this.isCounted ? COUNTED : MEASURED;
  }

  #drop(label: string, value: string, options: readonly { readonly value: string; readonly text: string }[], take: (value: string) => void): TemplateResult {
    return html`<gh-drop-list label=${label} value=${value} .options=${options} @option-chosen=${({ detail }: CustomEvent<{ value: string }>) => take(detail.value)}></gh-drop-list>`;
  }

  #constants() {
    const field = (key: 'lambda' | 'width' | 'k' | 'h') => html`<gh-field name=${key} label=${words[key]} .value=${this.constants[key]} entry="decimal" required @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.constants = { ...this.constants, [key]: detail.value })}></gh-field>`;
    const spread = this.#drop(words.spread, this.constants.spread, (['betweenLots', 'withinLots'] as const).map((value) => ({ value, text: words.spreads[value] })), (value) => (this.constants = { ...this.constants, spread: value === 'withinLots' ? 'withinLots' : 'betweenLots' }));
    switch (this.kind) {
      case 'ewma': return html`${field('lambda')}${field('width')}${spread}`;
      case 'cusum': return html`${field('k')}${field('h')}${spread}`;
      case 'p': case 'np': case 'u': case 'c': return this.#drop(words.limits, this.constants.limits, (['threeSigma', 'exact'] as const).map((value) => ({ value, text: words.limitKinds[value] })), (value) => (this.constants = { ...this.constants, limits: value === 'exact' ? 'exact' : 'threeSigma' }));
      case 'meanAndS': case 'meanAndRange': case 'individuals': return nothing;
    }
  }

  /** Which lots judged before may be taken along. Without an answer the chart begins empty. */
  async #look(): Promise<void> {
    try {
      this.lots = (await link.ask<{ lots: readonly string[] }>(`/api/charts/lots?chart=${encodeURIComponent(this.stream)}`)).lots;
    } catch (error) {
      if (!(error instanceof LinkFault)) throw error;
      this.lots = [];
    }
  }

  async #give(card: ChartCard | null): Promise<void> {
    if (card !== null && (await this.#giving.give('define', { type: 'defineChart', chart: this.stream, card, lots: this.lots })) !== null) tell(this, 'chart-changed', { done: chartsDeskWords.chart.done.defined });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-chart-define': GhChartDefine;
  }
}
