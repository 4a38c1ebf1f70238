import { LitElement, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { FIRST_NUMBER, readGaugeLine } from '../../shared/metrology/gauge-line/index.ts';
import type { GaugeLine } from '../../shared/metrology/gauge-line/index.ts';
import type { GaugeCard } from '../../shared/traveller/index.ts';
import { gaugesDeskWords } from '../../shared/words/gauges-desk.en.ts';
import { refusalNotice } from '../desk/asked-notice.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { Giving } from '../desk/giving.ts';
import { readNumber, showFigure, typedFigure } from '../desk/show.ts';
import { deskWords } from '../desk/words.ts';
import '../parts/gh-button.ts';
import '../parts/gh-field.ts';
import { partStyles } from '../parts/part-styles.ts';
import { tell } from '../parts/tell.ts';

const words = gaugesDeskWords.line;

/**
 * How the line a gauge sends is read, with a line to try it on.
 * @fires gauge-changed - with `{ done }`, words of what was done
 */
@customElement('gh-gauge-line')
export class GhGaugeLine extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property({ attribute: false }) gauge: GaugeCard | null = null;
  @state() private fields: Readonly<Record<keyof GaugeLine, string>> | null = null;
  @state() private sample = '';
  @state() private asked = false;
  readonly #giving = new Giving(this);

  override render() {
    const { gauge } = this;
    if (gauge === null) return nothing;
    const fields = this.#fields(gauge);
    const rule = ruleOf(fields);
    const field = (key: keyof GaugeLine) => html`<gh-field label=${words.fields[key]} hint=${words.hints[key]} entry=${key === 'number' || key === 'factor' ? 'decimal' : 'text'} max-length="20" .value=${fields[key]}
      error=${this.asked && rule === null && (key === 'number' || key === 'factor') ? gaugesDeskWords.register.noNumber : ''} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.fields = { ...fields, [key]: detail.value })}></gh-field>`;
    const read = rule === null || this.sample === '' ? null : readGaugeLine(this.sample, rule, gauge.unit);
    return html`<section class="sheet" aria-labelledby="line"><h3 id="line">${words.title}</h3><p class="soft">${words.lead}</p>
      ${refusalNotice(this.#giving)}
      <div class="fields">${field('number')} ${field('after')} ${field('unit')} ${field('factor')}
        <gh-field label=${words.sample} hint=${words.sampleHint} max-length="80" .value=${this.sample} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.sample = detail.value)}></gh-field></div>
      <p role="status">${read === null ? '' : 'value' in read ? words.reads(showFigure(read.value), gauge.unit) : words.faults[read.fault]}</p>
      <div class="keys"><gh-button .busy=${this.#giving.busy !== null} busy-word=${deskWords.busy} @click=${() => void this.#save(gauge, rule)}>${words.save}</gh-button></div></section>`;
  }

  #fields({ line = FIRST_NUMBER }: GaugeCard): Readonly<Record<keyof GaugeLine, string>> {
    return this.fields ?? { number: String(line.number), after: line.after, unit: line.unit, factor: typedFigure(line.factor) };
  }

  async #save({ id }: GaugeCard, line: GaugeLine | null): Promise<void> {
    this.asked = true;
    if (line === null || (await this.#giving.give('line', { type: 'setGaugeLine', gauge: id, line })) === null) return;
    this.asked = false;
    this.fields = null;
    tell(this, 'gauge-changed', { done: words.saved(id) });
  }
}

function ruleOf({ number, after, unit, factor }: Readonly<Record<keyof GaugeLine, string>>): GaugeLine | null {
  const [nth, times] = [readNumber(number), readNumber(factor)];
  return nth === null || !Number.isInteger(nth) || nth < 1 || nth > 20 || times === null || times <= 0 ? null : { number: nth, after, unit: unit.trim(), factor: times };
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-gauge-line': GhGaugeLine;
  }
}
