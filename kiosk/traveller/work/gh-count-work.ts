import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { ref } from 'lit/directives/ref.js';
import type { Counted, NonconformityKind } from '../../../shared/traveller/index.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-demand.ts';
import '../../parts/gh-keypad.ts';
import '../../parts/gh-sheet.ts';
import '../../parts/gh-tally-key.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { catalogue, travellerWords } from '../speak.ts';
import { classTallies, countOfKind, needsPiece, newestOfKind } from './count-of.ts';
import { focusWhenShown } from './focus-when-shown.ts';
import { GateWork, type WorkAt } from './gate-work.ts';
import './gh-which-pieces.ts';
import { workStyles } from './work-styles.ts';

/** A visual sample by attributes: tap what is seen, then give the sample as done. */
@customElement('gh-count-work')
export class GhCountWork extends GateWork {
  static override styles = [partStyles, workStyles];
  @state() private confirming = false;
  @state() private placing: NonconformityKind | null = null;
  @state() private busy = false;

  protected override renderWork(at: WorkAt): unknown {
    const { work, subject } = at;
    const { characteristic, n, places } = work.demand;
    if (characteristic.kind !== 'counted') return nothing;
    const words = travellerWords();
    const found = characteristic.kinds.reduce((sum, { code }) => sum + countOfKind(work, code), 0);
    return html`<div class="work keys-wide">
      <div class="pile">
        <gh-demand .context=${this.contextOf(at)} .demand=${words.count.demand(n)} .hint=${characteristic.method}>
          <gh-button kind="primary" @click=${() => (this.confirming = true)}>${found === 0 ? words.count.allGood(n) : words.count.done(n)}</gh-button>
          <gh-which-pieces .subject=${subject} .places=${places}></gh-which-pieces>
        </gh-demand>
        ${this.#tallies(at)}
      </div>
      <div class="keys" role="group" aria-label=${words.count.seen} @tally-tapped=${(event: CustomEvent<{ kind: string; by: number }>) => this.#tapped(at, characteristic, event.detail)}>
        ${characteristic.kinds.map((kind) => html`<gh-tally-key .kind=${kind.code} rank=${kind.class} .count=${countOfKind(work, kind.code)}
          .words=${{ name: kind.name, rank: words.count.class[kind.class], less: words.count.less(kind.name), more: words.count.more(kind.name) }}></gh-tally-key>`)}
      </div>
      ${this.#confirmSheet(at, n, found)} ${this.#placeSheet(at)}
    </div>`;
  }

  #tallies({ work }: WorkAt) {
    const words = travellerWords().count;
    const head = words.tallyHead;
    return html`<table><thead><tr><th scope="col">${head.class}</th><th scope="col">${head.found}</th><th scope="col">${head.n}</th><th scope="col">${head.ac}</th><th scope="col">${head.re}</th></tr></thead>
      <tbody>${classTallies(work).map((tally) => html`<tr><th scope="row">${words.class[tally.class]}</th><td>${tally.found}</td><td>${tally.n}</td><td>${tally.ac}</td><td>${tally.re}</td></tr>`)}</tbody></table>`;
  }

  #confirmSheet(at: WorkAt, n: number, found: number) {
    const words = travellerWords().count;
    return html`<gh-sheet ?open=${this.confirming} .heading=${words.confirmTitle} .closeWord=${words.back} @sheet-closed=${() => (this.confirming = false)}>
      <p>${found === 0 ? words.confirmNone(n) : words.confirmFound(n, found)}</p>
      ${found === 0 ? nothing : this.#tallies(at)}
      <gh-button slot="actions" kind="primary" ?busy=${this.busy} busy-word=${words.busy} @click=${() => void this.#complete(at, n)}>${words.confirm}</gh-button>
    </gh-sheet>`;
  }

  #placeSheet(at: WorkAt) {
    const { placing } = this;
    if (placing === null) return nothing;
    const words = travellerWords();
    const plan = at.work.demand.basis.by === 'attributes' ? at.work.demand.basis.classes.find((each) => each.class === placing.class)?.plan : undefined;
    return html`<gh-sheet open .heading=${words.count.which(placing.name)} .closeWord=${words.cancel} @sheet-closed=${() => (this.placing = null)}>
      <p>${words.count.whichHint(words.count.class[placing.class], plan?.sampleSize ?? 0)}</p>
      <gh-keypad ${ref(focusWhenShown)} whole hears-all .locale=${catalogue().locale} .words=${{ ...words.keypad, demand: words.count.pieceNo, enter: words.count.record }}
        @value-entered=${(event: CustomEvent<{ plain: string }>) => this.#record(at, placing, [Number(event.detail.plain)])}></gh-keypad>
    </gh-sheet>`;
  }

  #tapped(at: WorkAt, { kinds }: Counted, { kind: code, by }: { readonly kind: string; readonly by: number }): void {
    const kind = kinds.find((each) => each.code === code);
    if (kind === undefined) return;
    if (by < 0) return this.#takeBack(at, code);
    if (needsPiece(at.work.demand, kind.class)) return void (this.placing = kind);
    void this.give({ type: 'recordFinding', ...this.characteristicOf(at), code, pieces: by });
  }

  #record(at: WorkAt, { code }: NonconformityKind, ordinals: readonly number[]): void {
    this.placing = null;
    void this.give({ type: 'recordFinding', ...this.characteristicOf(at), code, pieces: ordinals.length, ordinals });
  }

  #takeBack(at: WorkAt, code: string): void {
    const finding = newestOfKind(at.work, code);
    if (finding !== null) void this.give({ type: 'withdrawFinding', ...this.characteristicOf(at), finding, reason: travellerWords().count.mistaken });
  }

  async #complete(at: WorkAt, looked: number): Promise<void> {
    this.busy = true;
    const given = this.give({ type: 'completeSample', ...this.characteristicOf(at), looked });
    this.confirming = false;
    await given;
    this.busy = false;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-count-work': GhCountWork;
  }
}
