import { LitElement, css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { link, type RefusalText } from '../../link/index.ts';
import { Scans } from '../../desk/scans.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-select-list.ts';
import '../../parts/gh-sheet.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { tell } from '../../parts/tell.ts';
import { chooseGauge, forgetGauges, gaugeFault, gaugeInUse, gaugesOfKind, gaugesOfPlant, type ListedGauge } from '../gauges.ts';
import { catalogue, format, travellerWords } from '../speak.ts';

/**
 * Which gauge gives the readings: chosen or scanned once a session, shown always.
 * @slot - keys that stand beside its own
 * @fires gauge-chosen - with `{ kind, id, card }`, also for the one in use from the start; `card` null for none
 */
@customElement('gh-gauge-choice')
export class GhGaugeChoice extends LitElement {
  static override styles = [
    partStyles,
    css`
      .with > span { min-inline-size: 0; }
      .with { display: flex; align-items: center; justify-content: space-between; gap: 0.2em var(--gap); background: var(--slip); border: var(--rule) solid var(--line); padding: 0.15em 0.15em 0.15em var(--pad); }
      .with > .keys { flex: none; display: flex; gap: calc(0.5 * var(--gap)); }
      strong { font-family: var(--face-figures); }
      .needed { color: var(--bad); font-weight: 650; }
    `,
  ];
  @property() kind = '';
  @state() private gauges: readonly ListedGauge[] = [];
  @state() private read = false;
  @state() private choosing = false;
  /** Why the gauge just scanned may not count here. */
  @state() private unfit: RefusalText | null = null;
  #told = '';
  #end: (() => void) | null = null;

  protected readonly scans = new Scans(this, (event) => this.#scanned(event));

  override connectedCallback(): void {
    super.connectedCallback();
    void this.#read();
    this.#end = link.onChanged(['catalogue'], () => {
      forgetGauges();
      void this.#read();
    });
  }
  override disconnectedCallback(): void {
    this.#end?.();
    super.disconnectedCallback();
  }

  protected override updated(_: PropertyValues<this>): void {
    const id = this.#inUse()?.id ?? '';
    const chosen = `${this.kind}/${id}`;
    if (!this.read || chosen === this.#told) return;
    this.#told = chosen;
    tell(this, 'gauge-chosen', { kind: this.kind, id, card: this.#inUse() });
  }

  override render() {
    const words = travellerWords().gauge;
    const used = this.#inUse();
    if (!this.read) return nothing;
    return html`<div class="with">
        ${used === null
          ? html`<span class="needed">${words.needed(this.kind)}</span>`
          : html`<span><span class="printed">${words.with}</span> <strong>${used.id}</strong><br /><span class="printed">${used.name}<br />${words.uncertainty(format().number(used.expandedUncertainty))} ${used.unit}, ${words.due(format().date(used.calibrationDue))}</span></span>`}
        <span class="keys"><gh-button @click=${() => (this.choosing = true)}>${used === null ? words.choose : words.change}</gh-button><slot></slot></span>
      </div>
      <gh-sheet ?open=${this.choosing} .heading=${words.choose} .closeWord=${travellerWords().close} @sheet-closed=${() => (this.choosing = false)}>${this.choosing ? this.#list(used) : nothing}</gh-sheet>
      ${this.unfit === null ? nothing : html`<gh-sheet open grave .heading=${this.unfit.happened} .closeWord=${travellerWords().dismiss} @sheet-closed=${() => (this.unfit = null)}><p><strong>${this.unfit.next}</strong></p></gh-sheet>`}`;
  }

  #list(used: ListedGauge | null) {
    const words = travellerWords().gauge;
    const options = gaugesOfKind(this.gauges, this.kind, this.#bench()).map((gauge) => {
      const fault = gaugeFault(gauge, today());
      const hint = fault === 'overdue' ? words.overdue(format().date(gauge.calibrationDue)) : fault === 'withdrawn' ? words.withdrawn(gauge.withdrawn ?? '') : fault === 'outOfTolerance' ? words.outOfTolerance(gauge.outOfTolerance ?? '') : words.due(format().date(gauge.calibrationDue));
      return { value: gauge.id, text: `${gauge.id} ${gauge.name}`, hint, disabled: fault !== null, ...(fault === 'overdue' ? { mark: 'overdue' as const } : fault === null ? {} : { mark: 'locked' as const }) };
    });
    if (options.length === 0) return html`<p>${words.none(this.kind)}</p>`;
    return html`<gh-select-list .label=${words.choose} .options=${options} .value=${used?.id ?? ''} @option-chosen=${this.#choose}></gh-select-list>`;
  }

  readonly #choose = (event: CustomEvent<{ readonly value: string }>): void => {
    chooseGauge(this.kind, this.#bench(), event.detail.value);
    this.choosing = false;
    this.requestUpdate();
  };

  /** A gauge's own code chooses it, where it may count. */
  readonly #scanned = (event: Event): void => {
    if (!(event instanceof CustomEvent)) return;
    const { text } = event.detail as { readonly text: string };
    const gauge = this.gauges.find(({ id }) => id === text.trim().toUpperCase());
    if (gauge === undefined) return;
    event.preventDefault();
    this.choosing = false;
    const fault = gauge.gaugeKind === this.kind ? gaugeFault(gauge, today()) : 'wrongKind';
    if (fault === null) {
      this.unfit = null;
      chooseGauge(this.kind, this.#bench(), gauge.id);
      return this.requestUpdate();
    }
    const detail = { overdue: gauge.calibrationDue, withdrawn: gauge.withdrawn ?? '', outOfTolerance: gauge.outOfTolerance ?? '', wrongKind: this.kind }[fault];
    this.unfit = catalogue().refusal({ code: 'gaugeCannotCount', gauge: gauge.id, why: fault, detail });
  };

  async #read(): Promise<void> {
    this.gauges = await gaugesOfPlant();
    this.read = true;
  }
  #bench(): string {
    return link.session.value?.bench ?? '';
  }
  #inUse(): ListedGauge | null {
    return gaugeInUse(this.gauges, this.kind, this.#bench(), today());
  }
}

function today(): string {
  return new Date().toISOString().slice(0, 10);
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-gauge-choice': GhGaugeChoice;
  }
}
