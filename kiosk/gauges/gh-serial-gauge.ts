import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { FIRST_NUMBER, readGaugeLine } from '../../shared/metrology/gauge-line/index.ts';
import type { GaugeLine } from '../../shared/metrology/gauge-line/index.ts';
import { serialGaugeWords as words } from '../../shared/words/serial-gauge.en.ts';
import { Follow } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-select-list.ts';
import '../parts/gh-sheet.ts';
import '../parts/gh-state-mark.ts';
import { partStyles } from '../parts/part-styles.ts';
import type { StateName } from '../parts/state-name.ts';
import { tell } from '../parts/tell.ts';
import { serialGauge, type SerialState } from './serial-port.ts';
import { BAUD_RATES, rememberedSettings, type SerialSettings } from './serial-settings.ts';

const marks: Readonly<Record<SerialState, StateName>> = { none: 'locked', closed: 'waiting', opening: 'waiting', open: 'online', lost: 'offline', refused: 'refused' };

/**
 * The gauge on this kiosk's serial port: whether it is there, its settings, and each reading it sends.
 * @fires gauge-read - with `{ value }`, in the gauge's unit
 */
@customElement('gh-serial-gauge')
export class GhSerialGauge extends LitElement {
  static override styles = [
    partStyles,
    css`
      .state { display: inline-flex; align-items: center; gap: 0.4em; }
      .settings { display: grid; gap: var(--pad); }
      .fault { color: var(--bad); font-weight: 650; }
    `,
  ];
  /** How the line is read, and in which unit; null where no gauge is chosen yet. */
  @property({ attribute: false }) reads: { readonly unit: string; readonly line?: GaugeLine | undefined } | null = null;
  /** Lines are taken; false while a question is to be answered first. */
  @property({ type: Boolean }) hears = false;
  @state() private sheet = false;
  @state() private settings: SerialSettings = rememberedSettings();
  @state() private fault: { readonly happened: string; readonly next: string } | null = null;
  readonly #port = new Follow(this, () => serialGauge.state);
  #end: (() => void) | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    this.#end = serialGauge.onLine(this.#hear);
    void serialGauge.resume(this.settings);
  }
  override disconnectedCallback(): void {
    this.#end?.();
    super.disconnectedCallback();
  }

  override render() {
    const port = this.#port.value;
    return html`<gh-button @click=${() => (this.sheet = true)}><span class="state"><gh-state-mark state=${marks[port]}></gh-state-mark>${port === 'open' || port === 'lost' ? words.states[port] : words.key}</span></gh-button>
      <gh-sheet ?open=${this.sheet} heading=${words.heading} close-word=${words.done} @sheet-closed=${() => (this.sheet = false)}>${this.sheet ? this.#settings(port) : nothing}</gh-sheet>
      ${this.fault === null ? nothing : html`<gh-sheet open grave heading=${this.fault.happened} close-word=${words.done} @sheet-closed=${() => (this.fault = null)}><p><strong>${this.fault.next}</strong></p></gh-sheet>`}`;
  }

  #settings(port: SerialState) {
    const { settings } = this;
    const list = <K extends keyof SerialSettings>(key: K, label: string, values: readonly SerialSettings[K][], text: (value: SerialSettings[K]) => string) =>
      html`<gh-select-list columns="4" label=${label} .value=${String(settings[key])} .options=${values.map((value) => ({ value: String(value), text: text(value) }))}
        @option-chosen=${({ detail }: CustomEvent<{ value: string }>) => (this.settings = { ...settings, [key]: values.find((each) => String(each) === detail.value) ?? settings[key] })}></gh-select-list>`;
    return html`<div class="settings"><p role="status"><gh-state-mark state=${marks[port]} word=${words.states[port]}></gh-state-mark></p><p>${words.told[port]}</p>
      ${port === 'none' ? nothing : html`
        ${list('baudRate', words.baud, BAUD_RATES, String)} ${list('dataBits', words.dataBits, [7, 8], String)}
        ${list('parity', words.parity, ['none', 'even', 'odd'], (parity) => words.parities[parity])} ${list('stopBits', words.stopBits, [1, 2], String)}
        <div><gh-button kind="primary" @click=${() => void serialGauge.choose(this.settings)}>${words.choose}</gh-button>
          ${port === 'closed' ? nothing : html`<gh-button @click=${() => void serialGauge.close()}>${words.close}</gh-button>`}</div>`}</div>`;
  }

  readonly #hear = (line: string): void => {
    if (!this.hears || this.reads === null || this.fault !== null) return;
    const read = readGaugeLine(line, this.reads.line ?? FIRST_NUMBER, this.reads.unit);
    if ('value' in read) return tell(this, 'gauge-read', { value: read.value });
    this.fault = { happened: words.faults[read.fault], next: words.sent(read.line) };
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-serial-gauge': GhSerialGauge;
  }
}
