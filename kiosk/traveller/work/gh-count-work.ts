import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { ref } from 'lit/directives/ref.js';
import { findingNeedsPiece, samplingStanding } from '../../../shared/traveller/index.ts';
import type { Counted, NonconformityKind, SamplingStanding } from '../../../shared/traveller/index.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-demand.ts';
import '../../parts/gh-keypad.ts';
import '../../parts/gh-notice.ts';
import '../../parts/gh-progress.ts';
import '../../parts/gh-sequential-lines.ts';
import '../../parts/gh-sheet.ts';
import '../../parts/gh-tally-key.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { catalogue, travellerWords } from '../speak.ts';
import { classTallies, countOfKind, foundAt, foundInAll, newestOfKind, sequentialOf } from './count-of.ts';
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
    const { characteristic, places } = work.demand;
    const standing = samplingStanding(work);
    if (characteristic.kind !== 'counted' || standing === null) return nothing;
    const words = travellerWords();
    const asks = this.#asks(at, standing);
    return html`<div class="work keys-wide">
      <div class="pile">
        ${standing.sample > 1 ? html`<gh-notice kind="empty" .happened=${words.count.undecided(standing.sample - 1, standing.sample)}></gh-notice>` : nothing}
        <gh-demand .context=${this.contextOf(at)} .demand=${asks.demand} .hint=${[...asks.hint, characteristic.method].join(' · ')}>
          <gh-button kind="primary" @click=${() => (this.confirming = true)}>${asks.done}</gh-button>
          <gh-which-pieces .subject=${subject} .places=${places.slice(asks.from - 1, standing.to)} .first=${asks.from}></gh-which-pieces>
        </gh-demand>
        ${standing.samples > 1 ? html`<gh-progress label=${words.count.sample(standing.sample, standing.samples)} value=${standing.looked} max=${work.demand.n} text=${words.progress(standing.looked, work.demand.n)}></gh-progress>` : nothing}
        ${this.#tallies(at)}
      </div>
      <div class="pile"><div class="keys" role="group" aria-label=${words.count.seen} @tally-tapped=${(event: CustomEvent<{ kind: string; by: number }>) => this.#tapped(at, characteristic, event.detail)}>
        ${characteristic.kinds.map((kind) => html`<gh-tally-key .kind=${kind.code} rank=${kind.class} .count=${countOfKind(work, kind.code)}
          .words=${{ name: kind.name, rank: words.count.class[kind.class], less: words.count.less(kind.name), more: words.count.more(kind.name) }}></gh-tally-key>`)}
      </div>${this.#lines(at, standing)}</div>
      ${this.#confirmSheet(at, standing, asks)} ${this.#placeSheet(at)}
    </div>`;
  }

  /** What is asked for now, in words: the whole sample, the next one of several, or piece by piece. */
  #asks({ work }: WorkAt, standing: SamplingStanding): { readonly demand: string; readonly hint: readonly string[]; readonly done: string; readonly confirm: string; readonly from: number } {
    const words = travellerWords().count;
    const { sample, samples, from, to } = standing;
    const found = foundInAll(work);
    if (isInSequence(work)) {
      return { demand: words.inSequence.demand, hint: [words.inSequence.hint(from)], done: words.inSequence.goodTo(from, to), confirm: words.inSequence.confirm(from, to), from };
    }
    const n = to - from + 1;
    if (samples === 1) return { demand: words.demand(n), hint: [], done: found === 0 ? words.allGood(n) : words.done(n), confirm: found === 0 ? words.confirmNone(n) : words.confirmFound(n, found), from };
    return { demand: sample === 1 ? words.demand(n) : words.demandMore(n), hint: [words.sample(sample, samples), words.ofDraw(from, to)], done: found === 0 ? words.goodSample(n) : words.doneSample(n), confirm: words.confirmSample(n, found), from };
  }

  #lines({ work }: WorkAt, standing: SamplingStanding) {
    const { basis } = work.demand;
    if (basis.by !== 'attributes') return nothing;
    const words = travellerWords().count;
    return basis.classes.map(({ class: each, plan }) => {
      const lines = sequentialOf(plan);
      if (lines === null) return nothing;
      const found = foundAt(work, each);
      const caption = words.inSequence.caption(standing.looked, found.length, standing.to);
      return html`<gh-sequential-lines .lines=${lines} .path=${{ foundAt: found, looked: standing.looked }} .words=${words.inSequence.words} .caption=${basis.classes.length === 1 ? caption : `${words.inSequence.of(words.class[each])}: ${caption}`}></gh-sequential-lines>`;
    });
  }

  #tallies({ work }: WorkAt) {
    const words = travellerWords().count;
    const head = words.tallyHead;
    return html`<table><thead><tr><th scope="col">${head.class}</th><th scope="col">${head.found}</th><th scope="col">${head.n}</th><th scope="col">${head.ac}</th><th scope="col">${head.re}</th></tr></thead>
      <tbody>${classTallies(work).map((tally) => html`<tr><th scope="row">${words.class[tally.class]}</th><td>${tally.found}</td><td>${tally.n}</td><td>${tally.ac ?? words.notYet}</td><td>${tally.re ?? words.notYet}</td></tr>`)}</tbody></table>`;
  }

  #confirmSheet(at: WorkAt, { to }: SamplingStanding, asks: { readonly confirm: string }) {
    const words = travellerWords().count;
    return html`<gh-sheet ?open=${this.confirming} .heading=${words.confirmTitle} .closeWord=${words.back} @sheet-closed=${() => (this.confirming = false)}>
      <p>${asks.confirm}</p>
      ${foundInAll(at.work) === 0 ? nothing : this.#tallies(at)}
      <gh-button slot="actions" kind="primary" ?busy=${this.busy} busy-word=${words.busy} @click=${() => void this.#complete(at, to)}>${words.confirm}</gh-button>
    </gh-sheet>`;
  }

  #placeSheet(at: WorkAt) {
    const { placing } = this;
    if (placing === null) return nothing;
    const words = travellerWords();
    const plan = at.work.demand.basis.by === 'attributes' ? at.work.demand.basis.classes.find((each) => each.class === placing.class)?.plan : undefined;
    return html`<gh-sheet open .heading=${words.count.which(placing.name)} .closeWord=${words.cancel} @sheet-closed=${() => (this.placing = null)}>
      <p>${plan !== undefined && sequentialOf(plan) !== null ? words.count.inSequence.whichHint : words.count.whichHint(words.count.class[placing.class], plan?.sampleSize ?? 0)}</p>
      <gh-keypad ${ref(focusWhenShown)} whole hears-all .locale=${catalogue().locale} .words=${{ ...words.keypad, demand: words.count.pieceNo, enter: words.count.record }}
        @value-entered=${(event: CustomEvent<{ plain: string }>) => this.#record(at, placing, [Number(event.detail.plain)])}></gh-keypad>
    </gh-sheet>`;
  }

  #tapped(at: WorkAt, { kinds }: Counted, { kind: code, by }: { readonly kind: string; readonly by: number }): void {
    const kind = kinds.find((each) => each.code === code);
    if (kind === undefined) return;
    if (by < 0) return this.#takeBack(at, code);
    if (findingNeedsPiece(at.work, kind.class)) return void (this.placing = kind);
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

function isInSequence({ demand: { basis } }: WorkAt['work']): boolean {
  return basis.by === 'attributes' && basis.classes.some(({ plan }) => sequentialOf(plan) !== null);
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-count-work': GhCountWork;
  }
}
