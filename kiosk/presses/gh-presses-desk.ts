import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { mayGive } from '../../shared/traveller/rights.ts';
import type { Presses, PressRow } from '../../shared/wire/presses-view.ts';
import { pressesDeskWords as words } from '../../shared/words/presses-desk.en.ts';
import { Asked } from '../desk/asked.ts';
import { offlineNotice } from '../desk/asked-notice.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { saveCsv } from '../desk/save-csv.ts';
import { showFigure } from '../desk/show.ts';
import { Follow, link } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-sheet.ts';
import '../parts/gh-state-mark.ts';
import '../parts/gh-weight-line.ts';
import { partStyles } from '../parts/part-styles.ts';
import { travellerPath, type Route } from '../shell/routes.ts';
import './gh-press-form.ts';
import './gh-set-press.ts';
import { csvRows, driftText, factsOf, lookText, warningsOf } from './press-text.ts';

/** The silence of a feed is looked at so often, ms, and what was refused: neither leaves a slip that would say so. */
const lookEveryMs = 15_000;

/** The desk of the presses: what each presses, how its weights go, and when somebody is to look. The server decides each command. */
@customElement('gh-presses-desk')
export class GhPressesDesk extends LitElement {
  static override styles = [partStyles, deskStyles, css`
    .presses { display: grid; gap: var(--gap); grid-template-columns: minmax(0, 1fr); list-style: none; margin: 0; padding: 0; }
    .press { background: var(--slip); border: var(--rule) solid var(--line-strong); border-inline-start: 6px double var(--line-strong); padding: var(--pad); display: grid; gap: var(--gap); grid-template-columns: minmax(0, 1fr); }
    .top, .bottom { display: flex; flex-wrap: wrap; gap: 0.3em 1.2em; align-items: center; justify-content: space-between; }
    h2 { margin: 0; }
    .warn { margin: 0; font-weight: 650; border-inline-start: 5px solid var(--held); padding-inline-start: 0.6em; }
    .due { font-weight: 700; text-decoration: underline 2px; text-underline-offset: 0.2em; }
    code { font-family: var(--face-figures); overflow-wrap: anywhere; font-size: var(--text-large); }
  `];
  @property({ attribute: false }) route: Route | null = null;
  @state() private setting: PressRow | null = null;
  /** Null while no form is open; a press to change, or a new one. */
  @state() private form: { readonly press: PressRow | null } | null = null;
  @state() private token: { readonly press: string; readonly token: string } | null = null;
  readonly #session = new Follow(this, () => link.session);
  readonly connection = new Follow(this, () => link.connection);
  readonly #asked = new Asked<Presses>(this, { key: () => '/api/presses', read: (path) => this.#read(path), topics: ['presses'] });
  #readAtMs = 0;
  #timer: ReturnType<typeof setInterval> | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    this.#timer = setInterval(() => this.#lookAgain(), lookEveryMs);
  }
  override disconnectedCallback(): void {
    if (this.#timer !== null) clearInterval(this.#timer);
    super.disconnectedCallback();
  }

  override render() {
    const { view } = this.#asked;
    const roles = this.#session.value?.roles ?? [];
    const rows = view.state === 'here' ? view.value.rows : [];
    // The server's clock, carried on by this kiosk's. Without the network nobody here knows whether a press is silent.
    const nowMs = view.state === 'here' && this.connection.value !== 'offline' ? Date.parse(view.value.now) + Date.now() - this.#readAtMs : null;
    return html`<div class="page">
      <div class="head"><h1>${words.title}</h1><div class="keys">
        ${rows.length === 0 ? nothing : html`<gh-button @click=${() => saveCsv('presses', csvRows(rows))}>${words.csv}</gh-button>`}
        ${mayGive('registerPress', roles) ? html`<gh-button @click=${() => (this.form = { press: null })}>${words.register}</gh-button>` : nothing}</div></div>
      ${offlineNotice()}
      ${view.state === 'faulty' ? html`<gh-notice kind="refusal" .happened=${view.words.happened} .kept=${view.words.kept} .next=${view.words.next}><gh-button @click=${() => void this.#asked.again()}>${words.tryAgain}</gh-button></gh-notice>` : nothing}
      ${view.state === 'none' || view.state === 'loading' ? html`<gh-notice kind="loading" .happened=${words.loading}></gh-notice>` : nothing}
      ${view.state === 'here' && rows.length === 0 ? html`<gh-notice kind="empty" .happened=${words.empty.happened} .next=${words.empty.next}></gh-notice>` : nothing}
      <ul class="presses">${repeat(rows, ({ id }) => id, (row) => this.#press(row, nowMs, mayGive('setPress', roles), mayGive('registerPress', roles)))}</ul>
      ${this.setting === null ? nothing : html`<gh-set-press .press=${this.setting} @press-set=${() => (this.setting = null)}></gh-set-press>`}
      ${this.form === null ? nothing : html`<gh-press-form .press=${this.form.press} @press-form-left=${() => (this.form = null)}></gh-press-form>`}
      ${this.token === null ? nothing : html`<gh-sheet open .heading=${words.tokenTitle} .closeWord=${words.tokenClose} @sheet-closed=${() => (this.token = null)}><p>${words.tokenText(this.token.press)}</p><p><code>${this.token.token}</code></p></gh-sheet>`}
    </div>`;
  }

  #press(row: PressRow, nowMs: number | null, maySet: boolean, mayRegister: boolean) {
    const { id, name, lot, last, target, lower, upper, bench, balance } = row;
    const drift = driftText(row);
    const look = lookText(row);
    return html`<li class="press">
      <div class="top"><h2>${name} <span class="soft small">${bench} · ${balance}</span></h2>
        <span>${lot === null ? html`<gh-state-mark state="waiting" word=${words.stands}></gh-state-mark>` : html`<a href=${`${travellerPath('lot', lot)}?work`}>${words.presses(lot)}</a>`}</span></div>
      ${warningsOf(row, nowMs).map((text) => html`<p class="warn">${text}</p>`)}
      ${lot === null ? nothing : html`<div class="top"><span><gh-state-mark state=${drift.mark} word=${drift.word}></gh-state-mark> ${drift.more}</span>
          <span class=${look.isDue ? 'due' : ''}>${words.look}: ${look.text}</span></div>
        ${last.length === 0 ? html`<p class="soft">${words.noWeights}</p>` : html`<gh-weight-line .values=${last} .lines=${{ target, lower, upper }} label=${words.last(showFigure(last.length))}></gh-weight-line>`}
        <dl class="facts">${factsOf(row).map(([term, value]) => html`<div><dt>${term}</dt><dd>${value}</dd></div>`)}</dl>`}
      <div class="keys">${maySet ? html`<gh-button @click=${() => (this.setting = row)}>${lot === null ? words.set : words.change}</gh-button>` : nothing}
        ${mayRegister ? html`<gh-button @click=${() => (this.form = { press: row })}>${words.edit}</gh-button><gh-button @click=${() => void this.#renew(id)}>${words.token}</gh-button>` : nothing}</div>
    </li>`;
  }

  async #read(path: string): Promise<Presses> {
    const read = await link.ask<Presses>(path);
    this.#readAtMs = Date.now();
    return read;
  }

  #lookAgain(): void {
    this.requestUpdate();
    if (this.connection.value !== 'offline') void this.#asked.again();
  }

  async #renew(press: string): Promise<void> {
    this.token = await link.act<{ press: string; token: string }>(`/api/presses/${encodeURIComponent(press)}/token`);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-presses-desk': GhPressesDesk;
  }
}
