import { LitElement, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { ref } from 'lit/directives/ref.js';
import { remainingPieces } from '../../../shared/traveller/index.ts';
import type { GateRecord, Lot } from '../../../shared/traveller/index.ts';
import type { RefusalText } from '../../link/index.ts';
import type { TravellerStore } from '../../link/traveller-store.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-demand.ts';
import '../../parts/gh-keypad.ts';
import '../../parts/gh-notice.ts';
import '../../parts/gh-sheet.ts';
import '../../parts/gh-tally-key.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { catalogue, format, travellerWords } from '../speak.ts';
import { focusWhenShown } from './focus-when-shown.ts';
import { sortReasons } from './sort-reasons.ts';
import { workStyles } from './work-styles.ts';

/** Takes in the result of a sort: every piece looked at, so many taken out for each reason. */
@customElement('gh-sort-work')
export class GhSortWork extends LitElement {
  static override styles = [partStyles, workStyles];
  @property({ attribute: false }) store: TravellerStore | null = null;
  @property({ attribute: false }) lot: Lot | null = null;
  @property({ attribute: false }) gate: GateRecord | null = null;
  @state() private out: Readonly<Record<string, number>> = {};
  @state() private counting: string | null = null;
  @state() private confirming = false;
  @state() private busy = false;
  @state() private refusal: RefusalText | null = null;

  override render() {
    const { lot, gate, refusal } = this;
    if (lot === null || gate === null) return nothing;
    const words = travellerWords();
    const left = remainingPieces(lot.balance);
    const total = Object.values(this.out).reduce((sum, pieces) => sum + pieces, 0);
    const { count } = format();
    return html`${refusal === null ? nothing : html`<gh-notice kind="refusal" .happened=${refusal.happened} .kept=${refusal.kept} .next=${refusal.next} .dismiss=${words.dismiss} @notice-dismissed=${() => (this.refusal = null)}></gh-notice>`}
      <div class="work keys-wide">
        <div class="pile">
          <gh-demand .context=${`${lot.id} · ${words.gateAt(gate.name, gate.bench)}`} .demand=${words.sort.demand(count(left))} .hint=${words.sort.hint}>
            <gh-button kind="primary" @click=${() => (this.confirming = true)}>${words.sort.key(count(left), total)}</gh-button>
          </gh-demand>
        </div>
        <div class="keys" role="group" aria-label=${words.sort.found} @tally-tapped=${(event: CustomEvent<{ kind: string; by: number }>) => this.#tap(event.detail.kind, event.detail.by)}>
          ${sortReasons(gate).map(({ code, name, rank }) => html`<gh-tally-key .kind=${code} rank=${rank} .count=${this.out[code] ?? 0}
            .words=${{ name, rank: words.count.class[rank], less: words.count.less(name), more: name }}></gh-tally-key>`)}
        </div>
        <gh-sheet ?open=${this.confirming} .heading=${words.sort.confirm} .closeWord=${words.count.back} @sheet-closed=${() => (this.confirming = false)}>
          <p>${words.sort.sum(total, count(left - total))}</p>
          <gh-button slot="actions" kind="primary" ?busy=${this.busy} busy-word=${words.count.busy} @click=${() => void this.#record(lot, gate, left)}>${words.count.confirm}</gh-button>
        </gh-sheet>
        ${this.#countSheet(gate)}
      </div>`;
  }

  /** What, then how many: the key asks for the count; its minus takes one back. */
  #tap(code: string, by: number): void {
    if (by > 0) this.counting = code;
    else this.out = { ...this.out, [code]: Math.max(0, (this.out[code] ?? 0) + by) };
  }

  #countSheet(gate: GateRecord) {
    const { counting } = this;
    const reason = sortReasons(gate).find(({ code }) => code === counting);
    if (reason === undefined) return nothing;
    const words = travellerWords();
    return html`<gh-sheet open .heading=${words.sort.how(reason.name)} .closeWord=${words.cancel} @sheet-closed=${() => (this.counting = null)}>
      <gh-keypad ${ref(focusWhenShown)} whole .locale=${catalogue().locale} .words=${{ ...words.keypad, demand: words.sort.of(reason.name), enter: words.count.record }}
        @value-entered=${(event: CustomEvent<{ plain: string }>) => this.#count(reason.code, Number(event.detail.plain))}></gh-keypad>
    </gh-sheet>`;
  }

  #count(code: string, pieces: number): void {
    this.out = { ...this.out, [code]: pieces };
    this.counting = null;
  }

  async #record(lot: Lot, gate: GateRecord, looked: number): Promise<void> {
    const removed = Object.entries(this.out).filter(([, pieces]) => pieces > 0).map(([code, pieces]) => ({ code, pieces }));
    this.busy = true;
    const outcome = await this.store?.give({ type: 'recordSort', lot: lot.id, gate: gate.id, looked, removed });
    this.busy = false;
    this.confirming = false;
    if (outcome?.state === 'refused') {
      this.refusal = outcome.words;
      void this.store?.dismiss(outcome.clientId);
    } else this.out = {};
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-sort-work': GhSortWork;
  }
}
