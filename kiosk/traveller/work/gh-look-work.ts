import { css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { ref } from 'lit/directives/ref.js';
import { nextLook } from '../../../shared/traveller/index.ts';
import type { NonconformityKind } from '../../../shared/traveller/index.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-demand.ts';
import '../../parts/gh-keypad.ts';
import '../../parts/gh-progress.ts';
import '../../parts/gh-sheet.ts';
import '../../parts/gh-tally-key.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { catalogue, format, travellerWords } from '../speak.ts';
import { focusWhenShown } from './focus-when-shown.ts';
import { GateWork, type WorkAt } from './gate-work.ts';
import { workStyles } from './work-styles.ts';

/** Up to so many pieces, one key each answers how many. */
const keysUpTo = 12;

/** A look at a few pieces each time so many have been made. One kind is named when something is found. */
@customElement('gh-look-work')
export class GhLookWork extends GateWork {
  static override styles = [partStyles, workStyles, css`.counts { display: grid; grid-template-columns: repeat(auto-fill, minmax(calc(20 * var(--true-mm)), 1fr)); gap: var(--gap); }`];
  @state() private counting: NonconformityKind | null = null;

  protected override renderWork(at: WorkAt): unknown {
    const { work, gate } = at;
    const { characteristic, n, basis } = work.demand;
    const next = nextLook(work, gate.lotSize);
    if (characteristic.kind !== 'counted' || basis.by !== 'interval' || next === null) return nothing;
    const words = travellerWords();
    const { count } = format();
    const hint = next.made === null ? characteristic.method : words.look.hint(count(next.made), count(next.dueAt));
    return html`<div class="work keys-wide">
      <div class="pile">
        <gh-demand .context=${this.contextOf(at)} .demand=${words.look.demand(next.look, n)} .hint=${`${hint} ${characteristic.method}`}>
          <gh-button kind="primary" @click=${() => this.#take(at, next.look, 0)}>${words.look.none(n)}</gh-button>
        </gh-demand>
        <gh-progress .label=${words.look.progress} .value=${work.looks.length} .max=${basis.looks} .text=${words.progress(work.looks.length, basis.looks)}></gh-progress>
      </div>
      <div class="keys" role="group" aria-label=${words.count.seen} @tally-tapped=${(event: CustomEvent<{ kind: string }>) => (this.counting = characteristic.kinds.find(({ code }) => code === event.detail.kind) ?? null)}>
        ${characteristic.kinds.map((kind) => html`<gh-tally-key .kind=${kind.code} rank=${kind.class} .count=${0} .words=${{ name: kind.name, rank: words.count.class[kind.class], less: '', more: '' }}></gh-tally-key>`)}
      </div>
      ${this.#countSheet(at, next.look)}
    </div>`;
  }

  #countSheet(at: WorkAt, look: number) {
    const { counting } = this;
    if (counting === null) return nothing;
    const words = travellerWords();
    const { n } = at.work.demand;
    return html`<gh-sheet open .heading=${words.look.how(counting.name)} .closeWord=${words.cancel} @sheet-closed=${() => (this.counting = null)}>
      ${n <= keysUpTo ? html`<div class="counts">${Array.from({ length: n }, (_, index) => html`<gh-button wide kind="primary" @click=${() => this.#take(at, look, index + 1)}>${format().count(index + 1)}</gh-button>`)}</div>` : html`<gh-keypad ${ref(focusWhenShown)} whole hears-all .locale=${catalogue().locale} .words=${{ ...words.keypad, demand: words.look.how(counting.name), enter: words.count.record }}
        @value-entered=${(event: CustomEvent<{ plain: string }>) => this.#take(at, look, Number(event.detail.plain))}></gh-keypad>`}
    </gh-sheet>`;
  }

  #take(at: WorkAt, look: number, found: number): void {
    const { counting } = this;
    this.counting = null;
    void this.give({ type: 'takeLook', ...this.characteristicOf(at), look, found, ...(counting === null || found === 0 ? {} : { code: counting.code }) });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-look-work': GhLookWork;
  }
}
