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
const TEXTS = ['id', 'name', 'gaugeKind', 'unit', 'calibrationDue', 'bench'] as const;
const NUMBERS = ['resolution', 'expandedUncertainty', 'least', 'most'] as const;
type Key = (typeof TEXTS)[number] | (typeof NUMBERS)[number];
const ORDER: readonly Key[] = ['id', 'name', 'gaugeKind', 'unit', 'resolution', 'expandedUncertainty', 'least', 'most', 'calibrationDue', 'bench'];
const empty: Readonly<Record<Key, string>> = { id: '', name: '', gaugeKind: '', unit: '', resolution: '', expandedUncertainty: '', least: '', most: '', calibrationDue: '', bench: '' };

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
        entry=${NUMBERS.some((number) => number === key) ? 'decimal' : 'text'} max-length="64" .value=${this.fields[key]} error=${this.asked ? this.#faultOf(key) : ''}
        @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.fields = { ...this.fields, [key]: detail.value })}></gh-field>`)}</div>
      <div class="keys"><gh-button kind="primary" .busy=${this.#giving.busy !== null} busy-word=${deskWords.busy} @click=${() => void this.#register()}>${words.save}</gh-button></div>
    </section>`;
  }

  #faultOf(key: Key): string {
    const text = this.fields[key].trim();
    if (key === 'bench') return '';
    if (text === '') return words.missing;
    if (!NUMBERS.some((number) => number === key)) return '';
    const value = readNumber(text);
    if (value === null) return words.noNumber;
    if ((key === 'resolution' && value <= 0) || (key === 'expandedUncertainty' && value < 0)) return words.notPositive;
    return key === 'most' && value <= (readNumber(this.fields.least) ?? value - 1) ? words.rangeEmpty : '';
  }

  async #register(): Promise<void> {
    this.asked = true;
    if (ORDER.some((key) => this.#faultOf(key) !== '')) return;
    const { fields } = this;
    const number = (key: (typeof NUMBERS)[number]): number => readNumber(fields[key]) ?? 0;
    const gauge: GaugeCard = {
      id: fields.id.trim(), name: fields.name.trim(), gaugeKind: fields.gaugeKind.trim(), unit: fields.unit.trim(), calibrationDue: fields.calibrationDue.trim(), bench: fields.bench.trim() === '' ? null : fields.bench.trim(),
      resolution: number('resolution'), expandedUncertainty: number('expandedUncertainty'), least: number('least'), most: number('most'),
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
