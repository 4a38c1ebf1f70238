import { LitElement, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { mayGive } from '../../shared/traveller/index.ts';
import type { GaugeSlip, GaugeState, Slip } from '../../shared/traveller/index.ts';
import { gaugesDeskWords as words } from '../../shared/words/gauges-desk.en.ts';
import type { GaugeUses } from '../../shared/wire/gauge-views.ts';
import { askedNotice } from '../desk/asked-notice.ts';
import { Asked } from '../desk/asked.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { showFigure, showMoment } from '../desk/show.ts';
import { SortedTable } from '../desk/sorted-table.ts';
import { deskWords } from '../desk/words.ts';
import { Follow, link, LinkFault } from '../link/index.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-state-mark.ts';
import { partStyles } from '../parts/part-styles.ts';
import { travellerPath } from '../shell/routes.ts';
import { gaugeHistory } from './gauge-history.ts';
import './gh-gauge-card.ts';
import './gh-gauge-check.ts';
import './gh-gauge-line.ts';

interface Page { readonly gauge: GaugeState; readonly slips: readonly Slip<GaugeSlip>[]; readonly uses: GaugeUses }
const historyColumns = (['at', 'what', 'against', 'found', 'error', 'allowed', 'good', 'by'] as const).map((key) => ({ key, head: words.history.columns[key], sortable: key === 'at' || key === 'what', filterable: key === 'what', ...(key === 'found' || key === 'error' || key === 'allowed' ? { kind: 'number' as const } : {}) }));
const useColumns = (['id', 'title', 'readings', 'pieces', 'firstAt', 'lastAt'] as const).map((key) => ({ key, head: words.uses.columns[key], sortable: true, filterable: key === 'id', ...(key === 'readings' || key === 'pieces' ? { kind: 'number' as const } : {}) }));

/** One gauge: what it is, its checks and calibrations, what it measured, and its recalls. */
@customElement('gh-gauge-page')
export class GhGaugePage extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property() gauge = '';
  @state() private done = '';
  readonly #session = new Follow(this, () => link.session);
  readonly #page = new Asked<Page | null>(this, { key: () => (this.gauge === '' ? null : this.gauge), read: readPage, topics: ['catalogue'] });
  readonly #history = new SortedTable(this);
  readonly #uses = new SortedTable(this);

  override render() {
    const { view } = this.#page;
    if (view.state !== 'here') return askedNotice(this.#page);
    if (view.value === null) return html`<gh-notice kind="empty" happened=${words.register.unknown(this.gauge).happened} next=${words.register.unknown(this.gauge).next}></gh-notice>`;
    const { gauge, slips, uses } = view.value;
    const roles = this.#session.value?.roles ?? [];
    const { withdrawn, outOfTolerance, lastGood, recalls } = gauge;
    const row = { ...gauge.card, withdrawn, outOfTolerance, lastGoodAt: lastGood?.at ?? null, openRecalls: recalls.filter(({ closed }) => closed === null).length };
    return html`<div class="page" @gauge-changed=${this.#told}>
      ${askedNotice(this.#page)} ${this.done === '' ? nothing : html`<gh-notice kind="done" happened=${this.done}></gh-notice>`}
      ${recalls.filter(({ closed }) => closed === null).map(({ id }) => html`<gh-notice kind="fault" happened=${words.recall.stands(id)}><a href="/gauges/${encodeURIComponent(this.gauge)}/recall?recall=${encodeURIComponent(id)}">${words.recall.open}</a></gh-notice>`)}
      <gh-gauge-card .gauge=${row} ?changes=${mayGive('calibrateGauge', roles)}></gh-gauge-card>
      ${withdrawn === null && mayGive('checkGauge', roles) ? html`<gh-gauge-check .gauge=${gauge.card}></gh-gauge-check>` : nothing}
      ${this.#historyTable(slips, gauge.card.unit)}
      ${this.#usesTable(uses)}
      ${mayGive('setGaugeLine', roles) ? html`<gh-gauge-line .gauge=${gauge.card}></gh-gauge-line>` : nothing}
    </div>`;
  }

  #historyTable(slips: readonly Slip<GaugeSlip>[], unit: string) {
    const show = (value: number | null) => (value === null ? deskWords.none : showFigure(value));
    const rows = gaugeHistory(slips).map(({ version, at, by, what, against, found, error, allowed, good }) => {
      const word = good === null ? deskWords.none : good ? words.history.good : words.history.bad;
      return {
        key: String(version), texts: { at, what: words.history.whats[what], against, found: show(found), error: show(error), allowed: show(allowed), good: word, by },
        shown: { at: showMoment(at), ...(good === null ? {} : { good: html`<gh-state-mark state=${good ? 'accepted' : 'rejected'} word=${word} size="small"></gh-state-mark>` }) },
      };
    });
    return this.#history.table(words.history.caption(unit), historyColumns, rows, { empty: words.history.empty, file: `${this.gauge}-history` });
  }

  #usesTable({ rows, readings, subjects }: GaugeUses) {
    return html`<p class="soft">${words.uses.total(showFigure(readings), showFigure(subjects))}</p>${this.#uses.table(words.uses.caption, useColumns, rows.map(({ stream, kind, id, title, readings: count, pieces, firstAt, lastAt }) => ({
      key: stream, href: travellerPath(kind, id), texts: { id, title, readings: count, pieces, firstAt, lastAt }, shown: { firstAt: showMoment(firstAt), lastAt: showMoment(lastAt) },
    })), { empty: words.uses.empty, file: `${this.gauge}-uses` })}`;
  }

  readonly #told = ({ detail }: CustomEvent<{ done: string }>): void => {
    this.done = detail.done;
    void this.#page.again();
  };
}

async function readPage(id: string): Promise<Page | null> {
  const stream = encodeURIComponent(`gauge:${id}`);
  try {
    const [{ state: gauge }, { slips }, uses] = await Promise.all([link.ask<{ state: GaugeState | null }>(`/api/states?stream=${stream}`), link.ask<{ slips: readonly Slip<GaugeSlip>[] }>(`/api/slips?stream=${stream}&limit=1000`), link.ask<GaugeUses>(`/api/gauges/${encodeURIComponent(id)}/uses`)]);
    return gauge === null ? null : { gauge, slips, uses };
  } catch (error) {
    if (error instanceof LinkFault && error.status === 404) return null;
    throw error;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-gauge-page': GhGaugePage;
  }
}
