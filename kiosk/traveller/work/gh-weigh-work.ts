import { css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { nextLook } from '../../../shared/traveller/index.ts';
import type { Measured } from '../../../shared/traveller/index.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-demand.ts';
import '../../parts/gh-field.ts';
import '../../parts/gh-keypad.ts';
import '../../parts/gh-progress.ts';
import '../../parts/gh-sample-strip.ts';
import type { StripPiece } from '../../parts/gh-sample-strip.ts';
import '../../parts/gh-sheet.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { catalogue, format, travellerWords } from '../speak.ts';
import { GateWork, type WorkAt } from './gate-work.ts';
import { enteredFigure } from './entered-figure.ts';
import './gh-drift-view.ts';
import './gh-gauge-choice.ts';
import '../press/gh-press-target.ts';
import { standingOf, stripLimits } from './strip-of.ts';
import { driftRun, driftSide, LEARNING_VALUES } from '../../../shared/metrology/drift/index.ts';
import { readBlock } from './weights.ts';
import { powderToPressWords } from '../../../shared/words/powder-to-press.en.ts';
import { workStyles } from './work-styles.ts';

const { target } = powderToPressWords;

/** A block typed singly is entered by itself at this size. */
const blockOf = 25;
const shownWeights = 30;
/** The strip is drawn for at least so many, so that its limits are seen from the first weight on. */
const drawnFor = 12;

/** Weighs every piece in the order made: a balance types, a block is pasted, or figures are pressed and gathered into a block. */
@customElement('gh-weigh-work')
export class GhWeighWork extends GateWork {
  static override styles = [partStyles, workStyles, css`
    .drift { background: var(--held-ground); color: var(--on-held); padding: 0.5em var(--pad); font-weight: 650; font-size: var(--text-large); line-height: 1.25; }
  `];
  @state() private block: readonly number[] = [];
  @state() private gauge = { kind: '', id: '' };
  @state() private pasting = false;
  @state() private pasted = '';
  @state() private pasteFault = '';
  @state() private busy = false;

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener('pagehide', this.#sendWhatIsLeft);
  }
  override disconnectedCallback(): void {
    removeEventListener('pagehide', this.#sendWhatIsLeft);
    this.#sendWhatIsLeft();
    super.disconnectedCallback();
  }

  protected override renderWork(at: WorkAt): unknown {
    const { work, gate } = at;
    const { characteristic, n } = work.demand;
    if (characteristic.kind !== 'measured') return nothing;
    const words = travellerWords();
    const weighed = work.weights?.running.n ?? 0;
    const from = weighed + 1;
    const { number } = format();
    const written = (value: number | null): string => (value === null ? '–' : number(value, characteristic.decimals));
    return html`<div class="work">
      <div class="pile">
        <gh-demand .context=${[gate.original ? gate.name : this.contextOf(at), ...powderOf(at)].join(' · ')} .demand=${words.weigh.demand(from + this.block.length)} .hint=${words.weigh.hint(written(characteristic.target), written(characteristic.lower), written(characteristic.upper), characteristic.unit)}></gh-demand>
        ${this.#drift(at, characteristic)}<gh-drift-view shows="notice" .at=${at}></gh-drift-view>
        <gh-sample-strip .pieces=${this.#pieces(at, characteristic, weighed)} .limits=${stripLimits(characteristic, work.weights?.uncertainty ?? 0)}
          .words=${{ caption: words.weigh.last, piece: words.measure.piece, value: words.measure.value, standing: words.measure.standing }}></gh-sample-strip>
        <div class="row">
          ${this.block.length === 0 ? nothing : html`<gh-button ?busy=${this.busy} busy-word=${words.count.busy} @click=${() => void this.#send(at, this.block)}>${words.weigh.send(this.block.length)}</gh-button>
            <gh-button @click=${() => (this.block = this.block.slice(0, -1))}>${words.weigh.drop}</gh-button>`}
          <gh-button @click=${() => (this.pasting = true)}>${words.weigh.paste}</gh-button>
          ${at.subject.kind === 'lot' ? html`<gh-press-target compact .lot=${at.subject}></gh-press-target>` : nothing}
        </div>
      </div>
      <gh-keypad ?hears-all=${this.refusal === null && !this.pasting} .locale=${catalogue().locale} .unit=${characteristic.unit} .words=${{ ...words.keypad, demand: words.weigh.keypad(from + this.block.length) }}
        @value-entered=${(event: CustomEvent<{ plain: string }>) => this.#weigh(at, enteredFigure(event), gate.lotSize - weighed)}></gh-keypad>
      <div class="pile more">
        <gh-drift-view .at=${at}></gh-drift-view>
        <gh-progress .label=${this.#sums(at, characteristic)} .value=${weighed} .max=${n} .text=${words.progress(weighed, n)}></gh-progress>
        ${characteristic.gaugeKind === null ? nothing : html`<gh-gauge-choice .kind=${characteristic.gaugeKind} @gauge-chosen=${this.#chooseGauge}></gh-gauge-choice>`}
      </div>
      ${this.#pasteSheet(at, gate.lotSize - weighed)}
    </div>`;
  }

  #pieces({ work }: WorkAt, characteristic: Measured, weighed: number): StripPiece[] {
    const words = travellerWords();
    const uncertainty = work.weights?.uncertainty ?? 0;
    const before = work.weights?.lastBlock ?? [];
    const all = [...before.map((value, at) => ({ value, piece: weighed - before.length + at + 1, entered: true })), ...this.block.map((value, at) => ({ value, piece: weighed + at + 1, entered: false }))];
    const shown = all.slice(-shownWeights).map(({ value, piece, entered }): StripPiece => {
      const standing = standingOf(value, characteristic, uncertainty);
      const word = words.measure.standings[standing];
      return { label: String(piece), value, text: format().number(value, characteristic.decimals), standing, standingWord: entered ? word : `${word}, ${words.weigh.waiting}` };
    });
    const from = weighed + this.block.length + 1;
    const blank = (piece: number, standing: 'next' | 'waiting'): StripPiece => ({ label: String(piece), value: null, text: '–', standing, standingWord: words.measure.standings[standing] });
    const waiting = Math.max(0, Math.min(drawnFor - shown.length - 1, work.demand.n - from));
    return [...shown, ...(from > work.demand.n ? [] : [blank(from, 'next')]), ...Array.from({ length: waiting }, (_, at) => blank(from + at + 1, 'waiting'))];
  }

  #drift({ work }: WorkAt, { target, decimals }: Measured) {
    // Once the stream is watched, gh-drift-view says more than the last few can.
    if (target === null || (work.weights?.drift?.n ?? 0) >= LEARNING_VALUES) return nothing;
    const side = driftSide([...(work.weights?.lastBlock ?? []), ...this.block], target);
    return side === null ? nothing : html`<p class="drift" role="status">${travellerWords().weigh.drift(driftRun, side, format().number(target, decimals))}</p>`;
  }

  /** What has been weighed, how it lies, and when the next look falls due, in one line. */
  #sums({ gate, work: { weights } }: WorkAt, { decimals, unit }: Measured): string {
    const words = travellerWords();
    const { number, count } = format();
    const due = gate.work.map((work) => nextLook(work, gate.lotSize)).find((look) => look !== null && look.made !== null);
    const look = due === undefined || due === null ? [] : [due.dueTime === null ? words.look.next(count(Math.max(0, due.dueAt - (due.made ?? 0) - this.block.length))) : words.look.nextOr(count(due.dueAt), format().time(due.dueTime))];
    const summary = weights === null ? [] : [`${words.weigh.mean(number(weights.running.mean, decimals), unit)}, ${words.weigh.outside(weights.outside)}.`];
    return [`${words.weigh.progress}.`, ...look, ...summary].join(' ');
  }

  #weigh(at: WorkAt, value: number, left: number): void {
    if (this.block.length >= left) return;
    this.block = [...this.block, value];
    this.#sendWhenFull(at);
  }

  #sendWhenFull(at: WorkAt): void {
    const left = at.gate.lotSize - (at.work.weights?.running.n ?? 0);
    if (this.block.length > 0 && this.block.length >= Math.min(blockOf, left, this.#untilLook(at))) void this.#send(at, this.block);
  }

  /** Pieces until the next look falls due: the block ends there, so that the look is asked for on time. */
  #untilLook({ gate }: WorkAt): number {
    const waits = gate.work.flatMap((work) => {
      const next = nextLook(work, gate.lotSize);
      return next === null || next.made === null ? [] : [next.dueAt - next.made];
    });
    return Math.max(1, Math.min(Infinity, ...waits));
  }

  async #send(at: WorkAt, values: readonly number[]): Promise<boolean> {
    if (this.busy) return false;
    this.busy = true;
    const fromPiece = (at.work.weights?.running.n ?? 0) + 1;
    const given = this.give({ type: 'takeWeights', ...this.characteristicOf(at), fromPiece, values, ...this.#gaugeOf(at) });
    if (values === this.block) this.block = [];
    const outcome = await given;
    this.busy = false;
    if (outcome?.state === 'refused') {
      // What was weighed meanwhile comes after it; nothing is dropped.
      if (this.block !== values) this.block = [...values, ...this.block];
      return false;
    }
    // A block may have filled while this one was on its way.
    await this.updateComplete;
    if (this.at !== null) this.#sendWhenFull(this.at);
    return true;
  }

  /** Weights gathered here are entered when their person leaves the work, so that none is lost. */
  readonly #sendWhatIsLeft = (): void => {
    if (this.at !== null && this.block.length > 0) void this.#send(this.at, this.block);
  };

  #pasteSheet(at: WorkAt, left: number) {
    const words = travellerWords();
    return html`<gh-sheet ?open=${this.pasting} .heading=${words.weigh.pasteTitle} .closeWord=${words.cancel} @sheet-closed=${() => (this.pasting = false)}>
      <gh-field multiline .label=${words.weigh.pasteTitle} .hint=${words.weigh.pasteHint} .value=${this.pasted} .error=${this.pasteFault} @field-input=${(event: CustomEvent<{ value: string }>) => (this.pasted = event.detail.value)}></gh-field>
      <gh-button slot="actions" kind="primary" @click=${() => void this.#takePasted(at, left)}>${words.weigh.take}</gh-button>
    </gh-sheet>`;
  }

  async #takePasted(at: WorkAt, left: number): Promise<void> {
    const words = travellerWords().weigh;
    const read = readBlock(this.pasted, (text) => catalogue().parseNumber(text));
    this.pasteFault = !read.ok ? words.pasteWrong(read.wrong) : read.values.length === 0 ? travellerWords().missing : this.block.length + read.values.length > left ? words.tooMany(left) : '';
    if (!read.ok || this.pasteFault !== '') return;
    this.block = [...this.block, ...read.values];
    this.pasting = false;
    this.pasted = '';
    await this.#send(at, this.block);
  }

  /** The gauge that goes with a reading: only one of the kind asked for. */
  #gaugeOf({ work }: WorkAt): { readonly gauge?: string } {
    const { characteristic } = work.demand;
    const wanted = characteristic.kind === 'measured' ? characteristic.gaugeKind : null;
    return wanted === null || wanted !== this.gauge.kind || this.gauge.id === '' ? {} : { gauge: this.gauge.id };
  }

  readonly #chooseGauge = (event: CustomEvent<{ readonly kind: string; readonly id: string }>): void => {
    this.gauge = event.detail;
    if (this.gauge.id !== '') void this.at?.store.bring(`gauge:${this.gauge.id}`).catch(() => undefined);
  };
}

/** The powder a lot is pressed from, and what the press is set by beside the weight. */
function powderOf({ subject }: WorkAt): readonly string[] {
  if (subject.kind !== 'lot') return [];
  const { press } = subject;
  const { number } = format();
  const limits = press.greenThicknessLimits;
  const within = limits === undefined ? '' : ` (${target.limits(number(limits.lowerMm, 3), number(limits.upperMm, 3))})`;
  return [subject.batch, target.heightOf(`${number(press.greenThicknessMm, 3)} mm${within}`), ...(press.dieFactor === undefined ? [] : [target.dieFactorOf(number(press.dieFactor, 4))])];
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-weigh-work': GhWeighWork;
  }
}
