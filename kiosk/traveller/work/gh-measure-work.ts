import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { askedInputs, inputsFrom, takesPressLimits, type CharacteristicWork, type Measured, type ReadingInputs, type Refusal } from '../../../shared/traveller/index.ts';
import { readGaugeLine } from '../../../shared/metrology/gauge-line/index.ts';
import { link, type Outcome } from '../../link/index.ts';
import { Scans } from '../../desk/scans.ts';
import '../../parts/gh-demand.ts';
import '../../parts/gh-keypad.ts';
import { partStyles } from '../../parts/part-styles.ts';
import '../../parts/gh-sample-strip.ts';
import { announce } from '../../shell/announce.ts';
import { nextOrdinal } from '../asked-now.ts';
import { catalogue, format, travellerWords } from '../speak.ts';
import { enteredFigure } from './entered-figure.ts';
import '../../gauges/gh-serial-gauge.ts';
import { gaugeInUse, gaugesOfPlant, type ListedGauge } from '../gauges.ts';
import './gh-gauge-choice.ts';
import '../press/gh-press-target.ts';
import './gh-likely-question.ts';
import './gh-risk-key.ts';
import './gh-which-pieces.ts';
import { GateWork, type WorkAt } from './gate-work.ts';
import { inputName, keypadWord, layerNames } from './input-names.ts';
import { layersTable } from './layers-table.ts';
import { saturationLines } from './saturation-lines.ts';
import { stripLimits, stripPieces } from './strip-of.ts';
import { workStyles } from './work-styles.ts';

interface Entry { readonly ordinal: number; readonly value: number | null; readonly inputs?: ReadingInputs }
interface Noted { readonly characteristic: string; readonly ordinal: number; readonly figures: readonly number[] }
type Unlikely = Extract<Refusal, { code: 'unlikelyValue' }>;

/** Takes the readings of one measured characteristic: the strip of the sample, the place to go to next, the keypad. */
@customElement('gh-measure-work')
export class GhMeasureWork extends GateWork {
  static override styles = [partStyles, workStyles];
  @state() private gauge: { readonly kind: string; readonly id: string; readonly card: ListedGauge | null } = { kind: '', id: '', card: null };
  /** Figures read at the piece so far, where its value is worked out. */
  @state() private noted: Noted | null = null;
  @state() private asking: { readonly entry: Entry; readonly refusal: Unlikely; readonly clientId: string } | null = null;

  /** A gauge that types more than a bare figure is heard as a scan: where its card says how such a line is read, and the line is one, it is a reading. */
  protected readonly scans = new Scans(this, (event) => this.#scanned(event));

  readonly #scanned = (event: Event): void => {
    const { line, unit = '' } = this.gauge.card ?? {};
    if (!(event instanceof CustomEvent) || event.defaultPrevented || line === undefined || (line.after === '' && line.unit === '') || this.refusal !== null || this.asking !== null) return;
    const { text } = event.detail as { readonly text: string };
    const read = readGaugeLine(text, line, unit);
    const take = this.#takeNow;
    if (!('value' in read) || take === null) return;
    event.preventDefault();
    take(read.value);
  };
  /** Takes a figure for the place that is asked for now. */
  #takeNow: ((value: number) => void) | null = null;

  protected override renderWork(at: WorkAt): unknown {
    const { work, subject } = at;
    const { characteristic, n, places } = work.demand;
    if (characteristic.kind !== 'measured') return nothing;
    const words = travellerWords();
    const ordinal = nextOrdinal(work) ?? n;
    const place = places[ordinal - 1];
    const taken = words.measure.takenAs[place?.at ?? 'tray'];
    const uncertainty = uncertaintyOf(work);
    const asked = askedInputs(characteristic.entry);
    const figures = this.noted?.ordinal === ordinal && this.noted.characteristic === characteristic.id ? this.noted.figures : [];
    const input = asked[figures.length];
    const name = input === undefined ? characteristic.name : inputName(input, layerNames(at.gate, characteristic));
    const hint = place === undefined ? catalogue().limitsSentence(characteristic) : catalogue().placeSentence(place);
    this.#takeNow = (value) => this.#take(at, characteristic, ordinal, figures, value);
    const which = html`<gh-which-pieces .subject=${subject} .places=${places}></gh-which-pieces>`;
    return html`<div class="work">
      <div class="pile">
        <gh-demand .context=${this.contextOf(at)} .demand=${asked.length > 1 ? name : words.measure.demand(name, ordinal, taken)} .hint=${hint}></gh-demand>
        ${subject.kind === 'lot' && takesPressLimits(characteristic) ? html`<gh-press-target .lot=${subject}></gh-press-target>` : nothing}
        <gh-sample-strip .pieces=${stripPieces(work, characteristic, uncertainty, ordinal)} .limits=${stripLimits(characteristic, uncertainty)}
          .words=${{ caption: words.measure.strip(characteristic.name, characteristic.unit), piece: words.measure.piece, value: words.measure.value, standing: words.measure.standing }}></gh-sample-strip>
        ${layersTable(at.gate, characteristic, n)}${saturationLines(work, characteristic)}
      </div>
      <gh-keypad ?hears-all=${this.refusal === null && this.asking === null} .locale=${catalogue().locale} .unit=${input?.unit ?? characteristic.unit} ?signed=${characteristic.plausible.least < 0}
        .words=${{ ...words.keypad, demand: input === undefined ? words.measure.keypad(name, ordinal, n, taken) : keypadWord(characteristic, name, ordinal, figures) }} @value-entered=${(event: CustomEvent<{ plain: string }>) => this.#take(at, characteristic, ordinal, figures, enteredFigure(event))}></gh-keypad>
      <div class="pile more">
        ${characteristic.gaugeKind === null ? html`<div class="row">${which}</div>` : html`<gh-gauge-choice .kind=${characteristic.gaugeKind} @gauge-chosen=${this.#chooseGauge}>${which}</gh-gauge-choice>
          <div class="row"><gh-serial-gauge .reads=${this.gauge.card} ?hears=${this.refusal === null && this.asking === null} @gauge-read=${({ detail }: CustomEvent<{ value: number }>) => this.#take(at, characteristic, ordinal, figures, detail.value)}></gh-serial-gauge><gh-risk-key .subject=${subject} gate=${at.gate.id} .characteristic=${characteristic} .gauge=${this.gauge.card} .values=${work.readings.flatMap(({ value }) => (typeof value === 'number' ? [value] : []))}></gh-risk-key></div>`}
        ${figures.length === 0 ? nothing : html`<div class="row"><gh-button @click=${() => (this.noted = null)}>${words.measure.input.again}</gh-button>
          ${input?.what === 'waterTemperature' ? this.#sameWater(at, characteristic, ordinal, figures) : nothing}</div>`}
      </div>
      ${this.asking === null ? nothing : html`<gh-likely-question .refusal=${this.asking.refusal} .characteristic=${characteristic}
        @value-confirmed=${() => this.#confirmed(at)} @value-likely=${(event: CustomEvent<{ value: number }>) => this.#likely(at, event.detail.value)} @value-dropped=${() => this.#answered()}></gh-likely-question>`}
    </div>`;
  }

  /** The water is seldom another one from piece to piece: one touch instead of a figure. */
  #sameWater(at: WorkAt, characteristic: Measured, ordinal: number, figures: readonly number[]) {
    const before = at.work.readings.at(-1)?.inputs ?? null;
    if (before === null || !('waterTemperatureC' in before)) return nothing;
    const { waterTemperatureC } = before;
    return html`<gh-button @click=${() => this.#take(at, characteristic, ordinal, figures, waterTemperatureC)}>${travellerWords().measure.input.sameWater(format().number(waterTemperatureC))}</gh-button>`;
  }

  #take(at: WorkAt, characteristic: Measured, ordinal: number, before: readonly number[], value: number): void {
    const figures = [...before, value];
    const asked = askedInputs(characteristic.entry).length;
    if (asked === 0) return void this.#enter(at, { ordinal, value });
    if (figures.length < asked) return void (this.noted = { characteristic: characteristic.id, ordinal, figures });
    this.noted = null;
    const inputs = inputsFrom(characteristic.entry, figures);
    if (inputs !== null) void this.#enter(at, { ordinal, value: null, inputs });
  }

  async #enter(at: WorkAt, entry: Entry, sure = false): Promise<void> {
    await this.#gaugeRead(at);
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
  /** A gauge may type before its choice stands on the screen: the reading waits for the list and is not refused for want of a gauge. */
  async #gaugeRead({ work }: WorkAt): Promise<void> {
    const kind = gaugeKindOf(work);
    if (kind === null || kind === this.gauge.kind) return;
    const card = gaugeInUse(await gaugesOfPlant(), kind, link.session.value?.bench ?? '', new Date().toISOString().slice(0, 10));
    this.gauge = { kind, id: card?.id ?? '', card };
  }

  #gaugeOf({ work }: WorkAt): { readonly gauge?: string } {
    const wanted = gaugeKindOf(work);
    return wanted === null || wanted !== this.gauge.kind || this.gauge.id === '' ? {} : { gauge: this.gauge.id };
  }

  readonly #chooseGauge = (event: CustomEvent<{ readonly kind: string; readonly id: string; readonly card: ListedGauge | null }>): void => {
    this.gauge = event.detail;
    if (this.gauge.id !== '') void this.at?.store.bring(`gauge:${this.gauge.id}`).catch(() => undefined);
  };
}

function gaugeKindOf({ demand: { characteristic } }: CharacteristicWork): string | null {
  return characteristic.kind === 'measured' ? characteristic.gaugeKind : null;
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
