import { LitElement, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { mayGive, type GaugeState } from '../../shared/traveller/index.ts';
import { gaugesDeskWords } from '../../shared/words/gauges-desk.en.ts';
import type { RecallRow, RecallView } from '../../shared/wire/gauge-views.ts';
import { askedNotice } from '../desk/asked-notice.ts';
import { Asked } from '../desk/asked.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { showDay, showFigure, showMoment } from '../desk/show.ts';
import { SortedTable, type DeskRow } from '../desk/sorted-table.ts';
import { deskWords, labels } from '../desk/words.ts';
import { Follow, link } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-notice.ts';
import { partStyles } from '../parts/part-styles.ts';
import { travellerPath } from '../shell/routes.ts';
import './gh-recall-signing.ts';
import './gh-recalled-readings.ts';

const words = gaugesDeskWords.recall;
const columns = (['id', 'kind', 'readings', 'through', 'first', 'standing', 'here', 'certificate', 'shipped'] as const).map((key) => ({ key, head: words.columns[key], sortable: true, filterable: key === 'id' || key === 'here' || key === 'kind', ...(key === 'readings' ? { kind: 'number' as const } : {}) }));

/** A recall: everything the gauge has read since its last good check, what is still here and what has left, and the one action that holds it. */
@customElement('gh-gauge-recall')
export class GhGaugeRecall extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property() gauge = '';
  @property() recall = '';
  @state() private signing: 'hold' | 'close' | null = null;
  @state() private done = '';
  readonly #session = new Follow(this, () => link.session);
  readonly #view = new Asked<RecallView | null>(this, { key: () => `${this.gauge} ${this.recall}`, read: () => readRecall(this.gauge, this.recall), topics: ['catalogue', 'bench'] });
  readonly #table = new SortedTable(this, { key: 'here', direction: 'down' });

  override render() {
    const { view } = this.#view;
    const back = html`<p class="screen-only"><a href="/gauges/${encodeURIComponent(this.gauge)}">${words.back(this.gauge)}</a></p>`;
    if (view.state !== 'here') return html`${back}${askedNotice(this.#view)}`;
    if (view.value === null) return html`${back}<gh-notice kind="empty" happened=${words.noneOf(this.gauge)}></gh-notice>`;
    const { gauge, recall, rows, readings, names } = view.value;
    const toHold = rows.filter(({ here, heldForThis }) => here && !heldForThis);
    const left = rows.filter(({ shipped }) => shipped.length > 0);
    const engineer = mayGive('holdRecall', this.#session.value?.roles ?? []);
    const facts: readonly (readonly [string, string])[] = [
      [words.found, words.foundBy[recall.found]], [words.opened, `${showMoment(recall.openedAt)}, ${names[recall.openedBy] ?? recall.openedBy}`], [words.since, recall.since === null ? words.always : showMoment(recall.since)],
      [words.error, `${showFigure(recall.error)} ${gauge.unit}`], [words.allowed, `± ${showFigure(recall.allowedError)} ${gauge.unit}`], [words.readings, showFigure(readings)], [words.held, showFigure(recall.held.length)],
    ];
    return html`${back}<div class="page">
      <h2>${words.title(recall.id, gauge.name)}</h2>
      ${askedNotice(this.#view)} ${this.done === '' ? nothing : html`<gh-notice kind="done" happened=${this.done}></gh-notice>`}
      ${recall.closed === null ? nothing : html`<gh-notice kind="done" happened=${words.closedBy(names[recall.closed.by] ?? recall.closed.by, showMoment(recall.closed.at), recall.closed.reason)}></gh-notice>`}
      <dl class="facts">${facts.map(([label, text]) => html`<div><dt>${label}</dt><dd>${text}</dd></div>`)}</dl>
      ${recall.closed !== null || !engineer ? nothing : html`<div class="keys screen-only">
        ${toHold.length === 0 ? html`<p>${words.nothingToHold}</p>` : html`<gh-button kind="grave" mark="hold" @click=${() => (this.signing = 'hold')}>${words.hold(toHold.length, showFigure(toHold.length))}</gh-button>`}
        <gh-button @click=${() => (this.signing = 'close')}>${words.close}</gh-button><gh-button @click=${() => window.print()}>${words.print}</gh-button></div>`}
      ${this.#table.table(words.caption, columns, rows.map(rowOf), { empty: words.empty, file: recall.id })}
      ${this.#leftTable(left)}
      <gh-recalled-readings .gauge=${gauge.id} .recall=${recall.id} .unit=${gauge.unit} .error=${recall.error}></gh-recalled-readings>
      <gh-recall-signing .what=${this.signing} .gauge=${gauge.id} .recall=${recall.id} .subjects=${toHold.map(({ stream }) => stream)} @recall-signed=${this.#signed} @sheet-closed=${() => (this.signing = null)}></gh-recall-signing>
    </div>`;
  }

  /** What has left the plant, by order and consignee: whom to write to. */
  #leftTable(rows: readonly RecallRow[]) {
    const lines = rows.flatMap(({ id, certificate, shipped }) => shipped.map(({ shipment, order, consignee, boxes, pieces }) => ({ id, certificate: certificate ?? deskWords.none, shipment, order, consignee, boxes, pieces })));
    const leftColumns = (['consignee', 'order', 'shipment', 'id', 'boxes', 'pieces', 'certificate'] as const).map((key) => ({ key, head: words.leftColumns[key], sortable: true, ...(key === 'boxes' || key === 'pieces' ? { kind: 'number' as const } : {}) }));
    return this.#left.table(words.leftCaption, leftColumns, lines.map((texts) => ({ key: `${texts.id} ${texts.shipment} ${texts.order}`, texts })), { empty: words.nothingLeft, file: `${this.recall === '' ? this.gauge : this.recall}-left` });
  }
  readonly #left = new SortedTable(this, { key: 'consignee', direction: 'up' });

  readonly #signed = ({ detail }: CustomEvent<{ done: string }>): void => {
    this.signing = null;
    this.done = detail.done;
    void this.#view.again();
  };
}

function rowOf({ stream, kind, id, title, readings, through, firstAt, lastAt, standing, here, heldForThis, certificate, shipped, measuredAgain }: RecallRow): DeskRow {
  const where = heldForThis ? words.isHeld : here ? words.isHere : shipped.length > 0 ? words.hasLeft : words.isGone;
  const counted = measuredAgain > 0 ? words.again(showFigure(readings), showFigure(measuredAgain)) : showFigure(readings);
  return {
    key: stream, href: travellerPath(kind, id),
    texts: { id: `${id} ${title}`, kind: labels.subjectKinds[kind], readings: counted, through: through === null ? words.itself : through.slice(through.indexOf(':') + 1), first: firstAt, standing: words.standings[standing], here: where, certificate: certificate ?? deskWords.none, shipped: shipped.map(({ order, consignee }) => `${order}, ${consignee}`).join('; ') },
    shown: { id, first: words.span(showDay(firstAt.slice(0, 10)), showDay(lastAt.slice(0, 10))) },
  };
}

/** The recall asked for, or the newest one of the gauge. */
async function readRecall(gauge: string, recall: string): Promise<RecallView | null> {
  const { state } = await link.ask<{ state: GaugeState | null }>(`/api/states?stream=${encodeURIComponent(`gauge:${gauge}`)}`);
  const chosen = state?.recalls.find(({ id }) => id === recall) ?? state?.recalls.at(-1);
  return chosen === undefined ? null : link.ask<RecallView>(`/api/gauges/${encodeURIComponent(gauge)}/recalls/${encodeURIComponent(chosen.id)}`);
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-gauge-recall': GhGaugeRecall;
  }
}
