import { LitElement, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { chartedCapability, chartParts, drawnChart, mayGive } from '../../shared/traveller/index.ts';
import type { ChartedCapability, ChartState, DrawnChart, BaseFault } from '../../shared/traveller/index.ts';
import { chartsDeskWords } from '../../shared/words/charts-desk.en.ts';
import { askedNotice } from '../desk/asked-notice.ts';
import { Asked } from '../desk/asked.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { showFigure, showMoment, showNumber } from '../desk/show.ts';
import { labels } from '../desk/words.ts';
import { Follow, link } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-notice.ts';
import { partStyles } from '../parts/part-styles.ts';
import './gh-capability.ts';
import './gh-chart-card.ts';
import './gh-chart-define.ts';

const words = chartsDeskWords.page;
/** Of the two-sided intervals shown. */
const CONFIDENCE = 0.95;
interface Here { readonly state: ChartState | null; readonly names: Readonly<Record<string, string>> }

/** A characteristic: how it stands in figures, its control charts, its histogram and its capability. */
@customElement('gh-characteristic-page')
export class GhCharacteristicPage extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property() stream = '';
  @state() private defines = false;
  @state() private done = '';
  readonly #session = new Follow(this, () => link.session);
  readonly #chart = new Asked<Here>(this, {
    key: () => (chartParts(this.stream) === null ? null : this.stream),
    read: async (stream) => {
      const [{ state }, { people }] = await Promise.all([link.ask<{ state: ChartState | null }>(`/api/states?stream=${encodeURIComponent(stream)}`), link.ask<{ people: readonly { badge: string; name: string }[] }>('/api/people')]);
      return { state, names: Object.fromEntries(people.map(({ badge, name }) => [badge, name])) };
    },
    streams: () => [this.stream], topics: ['charts'],
  });
  #drawn: readonly (DrawnChart | BaseFault)[] = [];
  #capability: ChartedCapability | null = null;
  #of: ChartState | null = null;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('stream')) this.done = '';
    const state = this.#chart.value?.state ?? null;
    if (state === this.#of) return;
    this.#of = state;
    this.#drawn = state?.charts.map((record) => drawnChart(state, record)) ?? [];
    this.#capability = state === null || state.about.unit === null ? null : chartedCapability(state.points, CONFIDENCE);
  }

  override render() {
    const parts = chartParts(this.stream);
    if (parts === null) return html`<gh-notice kind="empty" happened=${chartsDeskWords.unknown}></gh-notice>`;
    const { value } = this.#chart;
    if (value === null) return askedNotice(this.#chart);
    const { state } = value;
    const notCharted = words.notCharted(parts.characteristic);
    return html`<div class="page">${askedNotice(this.#chart)}
      <div class="head"><div><h1>${state?.about.characteristicName ?? parts.characteristic}</h1><p class="soft">${words.about(state?.about.gateName ?? parts.gate, state?.about.ownerName ?? parts.owner)}</p></div>
        ${mayGive('defineChart', this.#session.value?.roles ?? []) ? html`<gh-button class="screen-only" @click=${() => (this.defines = true)}>${words.define}</gh-button>` : html`<p class="soft screen-only">${words.mayNot}</p>`}</div>
      ${this.done === '' ? nothing : html`<gh-notice kind="done" happened=${this.done}></gh-notice>`}
      ${state === null ? html`<gh-notice kind="empty" happened=${notCharted.happened} next=${notCharted.next}></gh-notice>` : this.#whole(state, value.names)}
      <gh-chart-define ?open=${this.defines} stream=${this.stream} .state=${state} @sheet-closed=${() => (this.defines = false)} @chart-changed=${this.#told}></gh-chart-define></div>`;
  }

  #whole(state: ChartState, names: Readonly<Record<string, string>>) {
    return html`${this.#facts(state)}
      ${state.points.length === 0 ? html`<gh-notice kind="empty" happened=${words.noPoints}></gh-notice>` : nothing}
      <h2>${words.charts}</h2>
      ${state.charts.length === 0 ? html`<p class="soft">${words.noChart}</p>` : nothing}
      ${state.charts.map((record, at) => html`<gh-chart-card .state=${state} .record=${record} .drawn=${this.#drawn[at] ?? null} .names=${names} @chart-changed=${this.#told}></gh-chart-card>`)}
      ${this.#capability === null || state.points.length === 0 ? nothing : html`<gh-capability .about=${state.about} .capability=${this.#capability} ?steady=${this.#isSteady(state)}></gh-capability>`}`;
  }

  /** Some chart has signed limits, and none signals at any of the lots. */
  #isSteady(state: ChartState): boolean {
    return state.charts.some(({ frozen }) => frozen !== null) && this.#drawn.every((drawn) => typeof drawn === 'string' || drawn.signals.length === 0);
  }

  #facts({ points, about }: ChartState) {
    const values = points.reduce((sum, { value }) => sum + (value.by === 'measured' ? value.n : value.of), 0);
    const newest = points.at(-1)?.value;
    const [first, last] = [points[0], points.at(-1)];
    const show = (limit: number | null): string | null => (limit === null ? null : showNumber(limit, about.decimals));
    return html`<dl class="facts"><div><dt>${words.facts.lots}</dt><dd>${showFigure(points.length)}</dd></div><div><dt>${words.facts.values}</dt><dd>${showFigure(values)}</dd></div>
      ${newest?.by === 'measured' ? html`<div><dt>${words.facts.limits}</dt><dd>${labels.between(show(newest.lower), show(newest.upper))} ${about.unit}</dd></div>` : nothing}
      ${first === undefined || last === undefined ? nothing : html`<div><dt>${words.facts.first}</dt><dd>${showMoment(first.judgedAt)}</dd></div><div><dt>${words.facts.last}</dt><dd>${showMoment(last.judgedAt)}</dd></div>`}</dl>`;
  }

  readonly #told = ({ detail }: CustomEvent<{ done: string }>): void => {
    this.defines = false;
    this.done = detail.done;
    void this.#chart.again();
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-characteristic-page': GhCharacteristicPage;
  }
}
