import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { CharacteristicWork, Measured, ReadingInputs, Refusal } from '../../../shared/traveller/index.ts';
import type { Outcome } from '../../link/index.ts';
import '../../parts/gh-demand.ts';
import '../../parts/gh-keypad.ts';
import { partStyles } from '../../parts/part-styles.ts';
import '../../parts/gh-sample-strip.ts';
import { announce } from '../../shell/announce.ts';
import { nextOrdinal } from '../asked-now.ts';
import { catalogue, format, travellerWords } from '../speak.ts';
import { enteredFigure } from './entered-figure.ts';
import './gh-gauge-choice.ts';
import './gh-likely-question.ts';
import './gh-which-pieces.ts';
import { GateWork, type WorkAt } from './gate-work.ts';
import { stripLimits, stripPieces } from './strip-of.ts';
import { workStyles } from './work-styles.ts';

interface Entry { readonly ordinal: number; readonly value: number | null; readonly inputs?: ReadingInputs }
type Unlikely = Extract<Refusal, { code: 'unlikelyValue' }>;

/** Takes the readings of one measured characteristic: the strip of the sample, the place to go to next, the keypad. */
@customElement('gh-measure-work')
export class GhMeasureWork extends GateWork {
  static override styles = [partStyles, workStyles];
  @state() private gauge = { kind: '', id: '' };
  @state() private outerMm: { readonly ordinal: number; readonly value: number } | null = null;
  @state() private asking: { readonly entry: Entry; readonly refusal: Unlikely; readonly clientId: string } | null = null;

  protected override renderWork(at: WorkAt): unknown {
    const { work, subject } = at;
    const { characteristic, n, places } = work.demand;
    if (characteristic.kind !== 'measured') return nothing;
    const words = travellerWords();
    const ordinal = nextOrdinal(work) ?? n;
    const place = places[ordinal - 1];
    const taken = words.measure.takenAs[place?.at ?? 'tray'];
    const uncertainty = uncertaintyOf(work);
    const hint = place === undefined ? catalogue().limitsSentence(characteristic) : catalogue().placeSentence(place);
    const which = html`<gh-which-pieces .subject=${subject} .places=${places}></gh-which-pieces>`;
    return html`<div class="work">
      <div class="pile">
        <gh-demand .context=${this.contextOf(at)} .demand=${this.#demand(characteristic, ordinal, taken)} .hint=${hint}></gh-demand>
        <gh-sample-strip .pieces=${stripPieces(work, characteristic, uncertainty, ordinal)} .limits=${stripLimits(characteristic, uncertainty)}
          .words=${{ caption: words.measure.strip(characteristic.name, characteristic.unit), piece: words.measure.piece, value: words.measure.value, standing: words.measure.standing }}></gh-sample-strip>
      </div>
      <gh-keypad ?hears-all=${this.refusal === null && this.asking === null} .locale=${catalogue().locale} .unit=${characteristic.entry.how === 'direct' ? characteristic.unit : 'mm'} ?signed=${characteristic.plausible.least < 0}
        .words=${{ ...words.keypad, demand: this.#keypadWord(characteristic, ordinal, n, taken) }} @value-entered=${(event: CustomEvent<{ plain: string }>) => this.#take(at, characteristic, ordinal, enteredFigure(event))}></gh-keypad>
      <div class="pile more">
        ${characteristic.gaugeKind === null ? html`<div class="row">${which}</div>` : html`<gh-gauge-choice .kind=${characteristic.gaugeKind} @gauge-chosen=${this.#chooseGauge}>${which}</gh-gauge-choice>`}
        ${this.outerMm === null ? nothing : html`<div class="row"><gh-button @click=${() => (this.outerMm = null)}>${words.measure.crater.again}</gh-button></div>`}
      </div>
      ${this.asking === null ? nothing : html`<gh-likely-question .refusal=${this.asking.refusal} .characteristic=${characteristic}
        @value-confirmed=${() => this.#confirmed(at)} @value-likely=${(event: CustomEvent<{ value: number }>) => this.#likely(at, event.detail.value)} @value-dropped=${() => this.#answered()}></gh-likely-question>`}
    </div>`;
  }

  #demand(characteristic: Measured, ordinal: number, taken: 'piece' | 'sample'): string {
    const words = travellerWords().measure;
    switch (characteristic.entry.how) {
      case 'crater': return this.outerMm === null ? words.crater.asked.outer : words.crater.asked.inner;
      case 'shrinkage': return words.demand(words.shrinkage.demand, ordinal, taken);
      case 'direct': return words.demand(characteristic.name, ordinal, taken);
    }
  }

  #keypadWord(characteristic: Measured, ordinal: number, n: number, taken: 'piece' | 'sample'): string {
    const words = travellerWords().measure;
    switch (characteristic.entry.how) {
      case 'crater': return this.outerMm === null ? words.crater.outer(ordinal) : `${words.crater.inner(ordinal)}. ${words.crater.taken(format().number(this.outerMm.value))}`;
      case 'shrinkage': return `${words.shrinkage.keypad(ordinal)}, ${words.shrinkage.from(format().number(characteristic.entry.dieMm))}`;
      case 'direct': return words.keypad(characteristic.name, ordinal, n, taken);
    }
  }

  #take(at: WorkAt, characteristic: Measured, ordinal: number, value: number): void {
    switch (characteristic.entry.how) {
      case 'direct': return void this.#enter(at, { ordinal, value });
      case 'shrinkage': return void this.#enter(at, { ordinal, value: null, inputs: { sinteredMm: value } });
      case 'crater': {
        if (this.outerMm === null || this.outerMm.ordinal !== ordinal) return void (this.outerMm = { ordinal, value });
        const outerMm = this.outerMm.value;
        this.outerMm = null;
        return void this.#enter(at, { ordinal, value: null, inputs: { outerMm, innerMm: value } });
      }
    }
  }

  async #enter(at: WorkAt, entry: Entry, sure = false): Promise<void> {
    const outcome = await this.give({
      type: 'takeReading', ...this.characteristicOf(at), ...entry, ...this.#gaugeOf(at), ...(sure ? { sure: true } : {}),
    });
    if (outcome?.state === 'refused' && outcome.refusal.code === 'unlikelyValue') this.asking = { entry, refusal: outcome.refusal, clientId: outcome.clientId };
    if (outcome !== null && outcome.state !== 'refused') announce(travellerWords().measure.taken(entry.ordinal, entry.value === null ? '' : format().number(entry.value)));
  }

  protected override showsItself(outcome: Extract<Outcome, { state: 'refused' }>): boolean {
    return outcome.refusal.code !== 'unlikelyValue';
  }

  #confirmed(at: WorkAt): void {
    const entry = this.#answered();
    if (entry !== null) void this.#enter(at, entry, true);
  }
  #likely(at: WorkAt, value: number): void {
    const entry = this.#answered();
    if (entry !== null) void this.#enter(at, { ...entry, value });
  }
  /** The question is answered; the refused entry that raised it needs no further notice. */
  #answered(): Entry | null {
    const { asking } = this;
    this.asking = null;
    if (asking !== null) void this.at?.store.dismiss(asking.clientId);
    return asking?.entry ?? null;
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

/** The largest uncertainty among the gauges used so far, as the verdict will take it. */
function uncertaintyOf(work: CharacteristicWork): number {
  return work.readings.reduce((most, { gauge }) => Math.max(most, gauge?.expandedUncertainty ?? 0), 0);
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-measure-work': GhMeasureWork;
  }
}
