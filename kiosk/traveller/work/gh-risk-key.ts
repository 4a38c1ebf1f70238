import { LitElement, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Measured, Subject } from '../../../shared/traveller/index.ts';
import { summarise } from '../../../shared/metrology/summary/index.ts';
import { decisionRiskWords as words } from '../../../shared/words/decision-risk.en.ts';
import type { ProcessSeen } from '../../../shared/wire/gauge-views.ts';
import '../../gauges/gh-decision-risk.ts';
import type { RiskBasis } from '../../gauges/gh-decision-risk.ts';
import { link, LinkFault } from '../../link/index.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-sheet.ts';
import { partStyles } from '../../parts/part-styles.ts';
import type { ListedGauge } from '../gauges.ts';
import { format, travellerWords } from '../speak.ts';

/** So many readings of earlier lots tell more of a process than the lot in hand (common practice, no source). */
const enough = 20;

/** "How sure?": the risk of a wrong decision with the gauge in use, for the process of the last lots or, where there are none, of the lot in hand. */
@customElement('gh-risk-key')
export class GhRiskKey extends LitElement {
  static override styles = [partStyles];
  @property({ attribute: false }) subject: Subject | null = null;
  @property() gate = '';
  @property({ attribute: false }) characteristic: Measured | null = null;
  @property({ attribute: false }) gauge: ListedGauge | null = null;
  /** Readings of the lot in hand. */
  @property({ attribute: false }) values: readonly number[] = [];
  @state() private open = false;
  @state() private seen: ProcessSeen | null = null;

  override render() {
    const { characteristic, gauge } = this;
    if (characteristic === null || gauge === null || characteristic.entry.how !== 'direct') return nothing;
    return html`<gh-button @click=${() => void this.#ask()}>${words.key}</gh-button>
      <gh-sheet ?open=${this.open} heading=${words.heading} .closeWord=${travellerWords().close} @sheet-closed=${() => (this.open = false)}>
        ${this.open ? html`<gh-decision-risk .characteristic=${characteristic} .basis=${this.#basis(gauge)}></gh-decision-risk>` : nothing}</gh-sheet>`;
  }

  #basis({ expandedUncertainty: uncertainty, coverageFactor }: ListedGauge): RiskBasis {
    const { seen, values } = this;
    const gauge = { uncertainty, ...(coverageFactor === undefined ? {} : { coverageFactor }) };
    if (seen !== null && seen.mean !== null && (seen.n >= enough || values.length < 2)) return { ...gauge, mean: seen.mean, s: seen.s, process: words.process.recent(seen.lots.length, format().count(seen.n), seen.lots.join(', ')) };
    if (values.length < 2) return { ...gauge, mean: values[0] ?? 0, s: null, process: words.process.here(format().count(values.length)) };
    const { mean, s } = summarise(values);
    return { ...gauge, mean, s, process: words.process.here(format().count(values.length)) };
  }

  async #ask(): Promise<void> {
    const { subject, characteristic } = this;
    if (subject === null || characteristic === null) return;
    const asked = new URLSearchParams({ kind: subject.kind, owner: ownerOf(subject), gate: this.gate, characteristic: characteristic.id, without: subject.stream });
    try {
      this.seen = await link.ask<ProcessSeen>(`/api/process?${asked.toString()}`);
    } catch (error) {
      // Without the network the lot in hand must do; the panel says so.
      if (!(error instanceof LinkFault)) throw error;
      this.seen = null;
    }
    this.open = true;
  }
}

function ownerOf(subject: Subject): string {
  switch (subject.kind) {
    case 'lot': return subject.product.id;
    case 'batch': return subject.grade.id;
    case 'furnace': case 'coating': return subject.specification.id;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-risk-key': GhRiskKey;
  }
}
