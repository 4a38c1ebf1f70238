import { LitElement, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { AsFound } from '../../shared/traveller/index.ts';
import { gaugesDeskWords } from '../../shared/words/gauges-desk.en.ts';
import { refusalNotice } from '../desk/asked-notice.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { Giving } from '../desk/giving.ts';
import { readNumber, showDay, showFigure, showMoment } from '../desk/show.ts';
import { deskWords } from '../desk/words.ts';
import '../parts/gh-button.ts';
import '../parts/gh-field.ts';
import '../parts/gh-state-mark.ts';
import { partStyles } from '../parts/part-styles.ts';
import { tell } from '../parts/tell.ts';
import { benchesOf, gaugeStanding, markOfGauge, today, type GaugeRow } from './gauge-standing.ts';

const words = gaugesDeskWords.register;

/**
 * One gauge: what it is, its next calibration entered, or taken out of use.
 * @fires gauge-changed - with `{ done }`, words of what was done
 */
@customElement('gh-gauge-card')
export class GhGaugeCard extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property({ attribute: false }) gauge: GaugeRow | null = null;
  /** The person may calibrate and withdraw it. */
  @property({ type: Boolean }) changes = false;
  @state() private due = '';
  @state() private uncertainty = '';
  @state() private certificate = '';
  @state() private factor = '';
  @state() private foundError = '';
  @state() private foundAllowed = '';
  @state() private reason = '';
  @state() private asked: 'none' | 'calibrate' | 'withdraw' = 'none';
  readonly #giving = new Giving(this);

  override render() {
    const { gauge } = this;
    if (gauge === null) return html``;
    const standing = gaugeStanding(gauge, today());
    const facts = [
      [words.columns.kind, gauge.gaugeKind], [words.columns.range, words.range(showFigure(gauge.least), showFigure(gauge.most), gauge.unit)], [words.columns.resolution, words.withUnit(showFigure(gauge.resolution), gauge.unit)],
      [words.columns.uncertainty, `${words.withUnit(showFigure(gauge.expandedUncertainty), gauge.unit)} (${showFigure(gauge.coverageFactor ?? 2)})`], [words.columns.due, showDay(gauge.calibrationDue)],
      [words.columns.interval, gauge.intervalMonths === undefined ? deskWords.none : words.months(showFigure(gauge.intervalMonths))], [words.columns.certificate, gauge.certificate ?? deskWords.none],
      [words.columns.lastGood, gauge.lastGoodAt === null ? words.neverChecked : showMoment(gauge.lastGoodAt)], [words.columns.allowedError, gauge.allowedError === undefined ? deskWords.none : `± ${words.withUnit(showFigure(gauge.allowedError), gauge.unit)}`], [words.columns.bench, benchesOf(gauge)],
    ];
    return html`<div class="sheet">
      <h2>${gauge.id}, ${gauge.name} <gh-state-mark state=${markOfGauge[standing]} word=${words.standings[standing]}></gh-state-mark></h2>
      <dl class="facts">${facts.map(([label, text]) => html`<div><dt>${label}</dt><dd>${text}</dd></div>`)}</dl>
      ${refusalNotice(this.#giving)} ${gauge.withdrawn === null ? nothing : html`<p>${words.withdrawnWhy(gauge.withdrawn)}</p>`}
      ${this.changes ? html`${this.#calibration(gauge)} ${gauge.withdrawn === null ? this.#withdrawal(gauge) : nothing}` : nothing}
    </div>`;
  }

  #calibration(gauge: GaugeRow) {
    const asked = this.asked === 'calibrate';
    const missing = (text: string) => (asked && text.trim() === '' ? words.missing : '');
    return html`<section class="sheet" aria-labelledby="calibrate"><h3 id="calibrate">${words.calibrateTitle}</h3><div class="fields">
      <gh-field type="date" label=${words.fields.calibrationDue} .value=${this.due} error=${missing(this.due)} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.due = detail.value)}></gh-field>
      <gh-field entry="decimal" label=${words.fields.expandedUncertainty} unit=${gauge.unit} .value=${this.uncertainty} error=${asked && this.#uncertainty() === null ? words.noNumber : ''} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.uncertainty = detail.value)}></gh-field>
      <gh-field entry="decimal" label=${words.fields.coverageFactor} .value=${this.factor} error=${asked && this.factor.trim() !== '' && readNumber(this.factor) === null ? words.noNumber : ''} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.factor = detail.value)}></gh-field>
      <gh-field entry="decimal" label=${words.fields.asFoundError} hint=${words.asFoundHint} unit=${gauge.unit} .value=${this.foundError} error=${asked && this.#asFound() === null ? words.asFoundPair : ''} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.foundError = detail.value)}></gh-field>
      <gh-field entry="decimal" label=${words.fields.asFoundAllowed} unit="± ${gauge.unit}" .value=${this.foundAllowed} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.foundAllowed = detail.value)}></gh-field>
      <gh-field label=${words.fields.certificate} max-length="60" .value=${this.certificate} error=${missing(this.certificate)} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.certificate = detail.value)}></gh-field>
      </div><div class="keys"><gh-button kind="primary" .busy=${this.#giving.busy === 'calibrate'} busy-word=${deskWords.busy} @click=${() => void this.#calibrate(gauge)}>${words.calibrate}</gh-button></div></section>`;
  }

  #withdrawal(gauge: GaugeRow) {
    return html`<section class="sheet" aria-labelledby="withdraw"><h3 id="withdraw">${words.withdrawTitle}</h3>
      <gh-field label=${deskWords.reason} max-length="500" .value=${this.reason} error=${this.asked === 'withdraw' && this.reason.trim() === '' ? words.reasonMissing : ''} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.reason = detail.value)}></gh-field>
      <div class="keys"><gh-button kind="grave" .busy=${this.#giving.busy === 'withdraw'} busy-word=${deskWords.busy} @click=${() => void this.#withdraw(gauge)}>${words.withdraw}</gh-button></div></section>`;
  }

  #uncertainty(): number | null {
    const value = readNumber(this.uncertainty);
    return value === null || value < 0 ? null : value;
  }

  /** What the certificate says was found; undefined where it says nothing, null where only half of it was entered. */
  #asFound(): AsFound | undefined | null {
    if (this.foundError.trim() === '' && this.foundAllowed.trim() === '') return undefined;
    const [error, allowedError] = [readNumber(this.foundError), readNumber(this.foundAllowed)];
    return error === null || allowedError === null || allowedError <= 0 ? null : { error, allowedError };
  }

  async #calibrate({ id }: GaugeRow): Promise<void> {
    this.asked = 'calibrate';
    const expandedUncertainty = this.#uncertainty();
    const [calibrationDue, certificate] = [this.due.trim(), this.certificate.trim()];
    if (calibrationDue === '' || certificate === '' || expandedUncertainty === null) return;
    const [asFound, coverageFactor] = [this.#asFound(), this.factor.trim() === '' ? undefined : readNumber(this.factor)];
    if (asFound === null || coverageFactor === null) return;
    if ((await this.#giving.give('calibrate', { type: 'calibrateGauge', gauge: id, calibrationDue, expandedUncertainty, certificate, ...(asFound === undefined ? {} : { asFound }), ...(coverageFactor === undefined ? {} : { coverageFactor }) })) === null) return;
    this.asked = 'none';
    this.due = this.uncertainty = this.certificate = this.factor = this.foundError = this.foundAllowed = '';
    tell(this, 'gauge-changed', { done: words.calibrated(id) });
  }

  async #withdraw({ id }: GaugeRow): Promise<void> {
    this.asked = 'withdraw';
    const reason = this.reason.trim();
    if (reason === '') return;
    if ((await this.#giving.give('withdraw', { type: 'withdrawGauge', gauge: id, reason })) === null) return;
    tell(this, 'gauge-changed', { done: words.withdrawnDone(id) });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-gauge-card': GhGaugeCard;
  }
}
