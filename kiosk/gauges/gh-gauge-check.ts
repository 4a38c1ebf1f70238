import { LitElement, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { GaugeCard } from '../../shared/traveller/index.ts';
import { gaugesDeskWords } from '../../shared/words/gauges-desk.en.ts';
import { refusalNotice } from '../desk/asked-notice.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { Giving } from '../desk/giving.ts';
import { readNumber, showFigure } from '../desk/show.ts';
import { deskWords } from '../desk/words.ts';
import '../parts/gh-button.ts';
import '../parts/gh-field.ts';
import { partStyles } from '../parts/part-styles.ts';
import { tell } from '../parts/tell.ts';

const words = gaugesDeskWords.check;

/**
 * The check of a gauge against a master, as it is made each day.
 * @fires gauge-changed - with `{ done }`, words of what was done
 */
@customElement('gh-gauge-check')
export class GhGaugeCheck extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property({ attribute: false }) gauge: GaugeCard | null = null;
  @state() private master = '';
  @state() private nominal = '';
  @state() private found = '';
  @state() private allowed: string | null = null;
  @state() private asked = false;
  readonly #giving = new Giving(this);

  override render() {
    const { gauge } = this;
    if (gauge === null) return nothing;
    const field = (label: string, value: string, unit: string, fault: string, put: (text: string) => void, hint = '') =>
      html`<gh-field label=${label} hint=${hint} unit=${unit} entry=${unit === '' ? 'text' : 'decimal'} max-length="60" .value=${value} error=${this.asked ? fault : ''} @field-input=${({ detail }: CustomEvent<{ value: string }>) => put(detail.value)}></gh-field>`;
    const number = (text: string) => (readNumber(text) === null ? gaugesDeskWords.register.noNumber : '');
    return html`<section class="sheet" aria-labelledby="check"><h3 id="check">${words.title}</h3><p class="soft">${words.lead}</p>
      ${refusalNotice(this.#giving)}
      <div class="fields">
        ${field(words.master, this.master, '', this.master.trim() === '' ? gaugesDeskWords.register.missing : '', (text) => (this.master = text), words.masterHint)}
        ${field(words.nominal, this.nominal, gauge.unit, number(this.nominal), (text) => (this.nominal = text))}
        ${field(words.found, this.found, gauge.unit, number(this.found), (text) => (this.found = text))}
        ${field(words.allowed, this.#allowed(gauge), gauge.unit, number(this.#allowed(gauge)), (text) => (this.allowed = text))}
      </div>
      <div class="keys"><gh-button kind="primary" .busy=${this.#giving.busy !== null} busy-word=${deskWords.busy} @click=${() => void this.#check(gauge)}>${words.enter}</gh-button></div></section>`;
  }

  #allowed({ allowedError }: GaugeCard): string {
    return this.allowed ?? (allowedError === undefined ? '' : showFigure(allowedError));
  }

  async #check(gauge: GaugeCard): Promise<void> {
    this.asked = true;
    const [nominal, found, allowedError] = [this.nominal, this.found, this.#allowed(gauge)].map(readNumber);
    const master = this.master.trim();
    if (master === '' || nominal === undefined || nominal === null || found === undefined || found === null || allowedError === undefined || allowedError === null || allowedError <= 0) return;
    const outcome = await this.#giving.give('check', { type: 'checkGauge', gauge: gauge.id, master, nominal, found, allowedError });
    if (outcome?.state !== 'acknowledged') return;
    this.asked = false;
    this.found = '';
    const opened = outcome.slips.some(({ body }) => body.type === 'recallOpened');
    const passed = outcome.slips.some(({ body }) => body.type === 'gaugeChecked' && body.passed);
    tell(this, 'gauge-changed', { done: passed ? words.good(gauge.id) : opened ? words.bad(gauge.id) : words.badAgain(gauge.id) });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-gauge-check': GhGaugeCheck;
  }
}
