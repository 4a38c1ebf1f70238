import { LitElement, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { mayGive } from '../../shared/traveller/rights.ts';
import type { BenchList, BenchRow } from '../../shared/wire/views.ts';
import '../desk/gh-first-steps.ts';
import { Follow, link, LinkFault } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-state-mark.ts';
import { partStyles } from '../parts/part-styles.ts';
import { goTo } from '../shell/navigation.ts';
import { routeOf, travellerPath, type Route } from '../shell/routes.ts';
import { benchRow } from './bench-row.ts';
import { listStyles } from './list-styles.ts';
import { benchWords, format } from './words.ts';

/** The bench list: what waits at this bench, what is on hold, what falls due. `/bench/hand-over` is the same for the next shift, to be read and printed. */
@customElement('gh-bench-desk')
export class GhBenchDesk extends LitElement {
  static override styles = [partStyles, listStyles];
  @property({ attribute: false }) route: Route = routeOf('/bench');
  @state() private list: BenchList | null = null;
  @state() private fault: LinkFault | null = null;
  @state() private opening = false;
  #end: (() => void) | null = null;
  readonly #session = new Follow(this, () => link.session);

  override connectedCallback(): void {
    super.connectedCallback();
    void this.#read();
    this.#end = link.onChanged(['bench', 'catalogue'], () => void this.#read());
  }
  override disconnectedCallback(): void {
    this.#end?.();
    super.disconnectedCallback();
  }

  override render() {
    const words = benchWords();
    const { list, fault } = this;
    if (list === null) {
      if (fault === null) return html`<gh-notice alone kind="loading" .happened=${words.loading}></gh-notice>`;
      return html`<gh-notice alone kind=${fault.status === 0 ? 'offline' : 'refusal'} .happened=${fault.words.happened} .kept=${fault.words.kept} .next=${fault.words.next}><gh-button @click=${() => void this.#read()}>${words.tryAgain}</gh-button></gh-notice>`;
    }
    if (this.route.parts[0] === 'hand-over') return this.#handOver(list);
    const session = this.#session.value;
    return html`<div class="head"><h1>${words.title(list.bench)}</h1>
        <div class="keys">${session !== null && mayGive('openLot', session.roles) ? html`<gh-button @click=${() => void this.#openLotForm()}>${words.newLot}</gh-button>` : nothing}
          <gh-button @click=${() => goTo('/bench/hand-over')}>${words.handOver}</gh-button></div></div>
      ${fault === null ? nothing : html`<p class="old" role="status">${words.old}</p>`}
      ${list.waiting.length + list.held.length === 0 ? html`<gh-first-steps></gh-first-steps>` : nothing}
      ${this.#section(words.waiting, list.waiting, html`<gh-notice kind="empty" .happened=${words.empty.happened} .next=${words.empty.next}></gh-notice>`)}
      ${list.held.length === 0 ? nothing : this.#section(words.held, list.held, nothing)} ${this.#due(list)}
      ${this.opening ? html`<gh-open-lot @form-left=${() => (this.opening = false)} @lot-opened=${(event: CustomEvent<{ lot: string }>) => goTo(`${travellerPath('lot', event.detail.lot)}?work`)}></gh-open-lot>` : nothing}`;
  }

  #handOver(list: BenchList) {
    const words = benchWords();
    const open = list.waiting.filter(({ standing }) => standing === 'open' || standing === 'sorting');
    const yet = list.waiting.filter((row) => !open.includes(row));
    return html`<div class="head"><h1>${words.handOverTitle(list.bench)}</h1><div class="keys"><gh-button @click=${() => print()}>${words.print}</gh-button><gh-button @click=${() => goTo('/bench')}>${words.handOverDone}</gh-button></div></div>
      ${this.#section(words.open, open, html`<p class="none">${words.noneOpen}</p>`)}
      ${this.#section(words.held, list.held, html`<p class="none">${words.noneHeld}</p>`)}
      ${this.#due(list)} ${this.#section(words.yetToStart, yet, html`<p class="none">${words.empty.happened}</p>`)}`;
  }

  #section(head: string, rows: readonly BenchRow[], empty: unknown) {
    return html`<section><h2>${head}<span class="count">${rows.length}</span></h2>
      ${rows.length === 0 ? empty : html`<div role="list" aria-label=${head}>${repeat(rows, ({ stream }) => stream, benchRow)}</div>`}</section>`;
  }

  #due({ dueSoon }: BenchList) {
    const words = benchWords();
    if (dueSoon.length === 0) return nothing;
    return html`<section><h2>${words.due}<span class="count">${dueSoon.length}</span></h2><ul class="dues">
      ${dueSoon.map(({ id, name, due, overdue }) => html`<li><span>${words.calibration(id, name)}</span>
        <gh-state-mark state=${overdue ? 'overdue' : 'due'} word=${overdue ? words.calibrationOver(format().date(due)) : words.calibrationDue(format().date(due))}></gh-state-mark></li>`)}</ul></section>`;
  }

  async #openLotForm(): Promise<void> {
    await import('./gh-open-lot.ts');
    this.opening = true;
  }

  async #read(): Promise<void> {
    const bench = this.#session.value?.bench;
    if (bench === undefined) return;
    try {
      this.list = await link.ask<BenchList>(`/api/bench?bench=${encodeURIComponent(bench)}`);
      this.fault = null;
    } catch (error) {
      if (!(error instanceof LinkFault)) throw error;
      this.fault = error;
    }
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-bench-desk': GhBenchDesk;
  }
}
