import { LitElement, html } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { GaugeCard } from '../../shared/traveller/index.ts';
import { gaugesDeskWords } from '../../shared/words/gauges-desk.en.ts';
import { refusalNotice } from '../desk/asked-notice.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { Giving } from '../desk/giving.ts';
import { readNumber } from '../desk/show.ts';
import { deskWords } from '../desk/words.ts';
import '../parts/gh-button.ts';
import '../parts/gh-field.ts';
import { partStyles } from '../parts/part-styles.ts';
import { tell } from '../parts/tell.ts';

const words = gaugesDeskWords.register;
const TEXTS = ['id', 'name', 'gaugeKind', 'unit', 'calibrationDue', 'bench', 'benches', 'certificate'] as const;
const NUMBERS = ['resolution', 'expandedUncertainty', 'least', 'most', 'coverageFactor', 'intervalMonths', 'allowedError'] as const;
/** These may stay empty. */
const OPTIONAL: readonly Key[] = ['bench', 'benches', 'certificate', 'coverageFactor', 'intervalMonths', 'allowedError'];
type Key = (typeof TEXTS)[number] | (typeof NUMBERS)[number];
const ORDER: readonly Key[] = ['id', 'name', 'gaugeKind', 'unit', 'resolution', 'expandedUncertainty', 'coverageFactor', 'least', 'most', 'calibrationDue', 'intervalMonths', 'certificate', 'allowedError', 'bench', 'benches'];
const empty: Readonly<Record<Key, string>> = { id: '', name: '', gaugeKind: '', unit: '', resolution: '', expandedUncertainty: '', least: '', most: '', calibrationDue: '', bench: '', benches: '', certificate: '', coverageFactor: '', intervalMonths: '', allowedError: '' };

/**
 * Registers a gauge.
 * @fires gauge-changed - with `{ done }`, words of what was done
 */
@customElement('gh-gauge-form')
export class GhGaugeForm extends LitElement {
  static override styles = [partStyles, deskStyles];
  @state() private fields = empty;
  @state() private asked = false;
  readonly #giving = new Giving(this);

  override render() {
    return html`<section class="sheet" aria-labelledby="title">
      <h2 id="title">${words.registerOne}</h2>
      ${refusalNotice(this.#giving)}
      <div class="fields">${ORDER.map((key) => html`<gh-field label=${words.fields[key]} hint=${key === 'gaugeKind' ? words.kindHint : ''} type=${key === 'calibrationDue' ? 'date' : 'text'}
        entry=${NUMBERS.some((number) => number === key) ? 'decimal' : 'text'} ?multiline=${key === 'benches'} max-length=${key === 'benches' ? 400 : 64} .value=${this.fields[key]} error=${this.asked ? this.#faultOf(key) : ''}
        @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.fields = { ...this.fields, [key]: detail.value })}></gh-field>`)}</div>
      <div class="keys"><gh-button kind="primary" .busy=${this.#giving.busy !== null} busy-word=${deskWords.busy} @click=${() => void this.#register()}>${words.save}</gh-button></div>
    </section>`;
  }

  #faultOf(key: Key): string {
    const text = this.fields[key].trim();
    if (text === '') return OPTIONAL.includes(key) ? '' : words.missing;
    if (!NUMBERS.some((number) => number === key)) return '';
    const value = readNumber(text);
    if (value === null) return words.noNumber;
    if (key === 'intervalMonths' && (!Number.isInteger(value) || value < 1)) return words.noNumber;
    if (((key === 'resolution' || key === 'allowedError' || key === 'coverageFactor') && value <= 0) || (key === 'expandedUncertainty' && value < 0)) return words.notPositive;
    return key === 'most' && value <= (readNumber(this.fields.least) ?? value - 1) ? words.rangeEmpty : '';
  }

  async #register(): Promise<void> {
    this.asked = true;
    if (ORDER.some((key) => this.#faultOf(key) !== '')) return;
    const { fields } = this;
    const number = (key: (typeof NUMBERS)[number]): number => readNumber(fields[key]) ?? 0;
    const benches = fields.benches.split('\n').map((bench) => bench.trim()).filter((bench) => bench !== '');
    const gauge: GaugeCard = {
      id: fields.id.trim(), name: fields.name.trim(), gaugeKind: fields.gaugeKind.trim(), unit: fields.unit.trim(), calibrationDue: fields.calibrationDue.trim(), bench: fields.bench.trim() === '' ? null : fields.bench.trim(),
      resolution: number('resolution'), expandedUncertainty: number('expandedUncertainty'), least: number('least'), most: number('most'),
      ...(fields.coverageFactor.trim() === '' ? {} : { coverageFactor: number('coverageFactor') }), ...(fields.intervalMonths.trim() === '' ? {} : { intervalMonths: number('intervalMonths') }), ...(fields.allowedError.trim() === '' ? {} : { allowedError: number('allowedError') }),
      ...(fields.certificate.trim() === '' ? {} : { certificate: fields.certificate.trim() }), ...(benches.length === 0 ? {} : { benches }),
    };
    if ((await this.#giving.give('register', { type: 'registerGauge', gauge })) === null) return;
    this.asked = false;
    this.fields = empty;
    tell(this, 'gauge-changed', { done: words.registered(gauge.id) });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-gauge-form': GhGaugeForm;
  }
}
