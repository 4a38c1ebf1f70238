import { css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { Charge } from '../../../shared/traveller/index.ts';
import { kioskChargeWords } from '../../../shared/words/kiosk-charge.en.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-demand.ts';
import '../../parts/gh-field.ts';
import '../../parts/gh-notice.ts';
import '../../parts/gh-sheet.ts';
import '../../parts/gh-state-mark.ts';
import { partStyles } from '../../parts/part-styles.ts';
import '../charge/gh-attach-log.ts';
import '../charge/gh-log-view.ts';
import { travellerWords } from '../speak.ts';
import { GateWork, type WorkAt } from './gate-work.ts';
import { workStyles } from './work-styles.ts';

/** The furnace charge whose log backs what is confirmed; null for any other confirmation. */
function backedCharge({ subject, work: { demand: { characteristic } } }: WorkAt): Charge | null {
  return characteristic.kind === 'confirmed' && characteristic.backedBy === 'furnaceLog' && subject.kind === 'furnace' ? subject : null;
}

/** Asks for a statement to be confirmed. A no rejects the gate, so it is asked for twice. */
@customElement('gh-confirm-work')
export class GhConfirmWork extends GateWork {
  static override styles = [partStyles, workStyles, css`.statement { background: var(--slip); padding: var(--pad) calc(1.4 * var(--pad)); font-size: calc(1.3 * var(--text-large)); line-height: 1.25; font-weight: 600; text-wrap: pretty; }`];
  @state() private doubting = false;
  @state() private despite = '';

  protected override renderWork(at: WorkAt): unknown {
    const { characteristic } = at.work.demand;
    if (characteristic.kind !== 'confirmed') return nothing;
    const words = travellerWords();
    return html`<div class="pile">
      <gh-demand .context=${this.contextOf(at)} .demand=${characteristic.name} .hint=${characteristic.method}></gh-demand>
      <p class="statement">${characteristic.statement}</p>
      ${this.#standing(at)}
      <div class="row">
        <gh-button kind="primary" @click=${() => void this.#say(at, true)}>${words.confirm.yes}</gh-button>
        <gh-button .hint=${words.confirm.noHint} @click=${() => (this.doubting = true)}>${words.confirm.no}</gh-button>
      </div>
      ${this.#log(at)}
      <gh-sheet grave ?open=${this.doubting} .heading=${words.confirm.sure} .closeWord=${words.cancel} @sheet-closed=${() => (this.doubting = false)}>
        <p>${words.confirm.sureText(characteristic.statement)}</p>
        <gh-button slot="actions" kind="grave" @click=${() => void this.#say(at, false)}>${words.confirm.doIt}</gh-button>
      </gh-sheet>
    </div>`;
  }

  /** How the log behind the statement stands; where it does not bear a yes out, the way to say why it is one. */
  #standing(at: WorkAt): unknown {
    const charge = backedCharge(at);
    if (charge === null) return nothing;
    const words = kioskChargeWords.log;
    const log = charge.logs.at(-1) ?? null;
    if (log?.check.within === true) return html`<p><gh-state-mark boxed state="accepted" word=${words.within}></gh-state-mark></p>`;
    return html`<gh-notice kind="refusal" .happened=${log === null ? words.noLog : words.outOfSight}></gh-notice>
      <gh-field .label=${words.despiteReason} .value=${this.despite} @field-input=${(event: CustomEvent<{ value: string }>) => (this.despite = event.detail.value)}></gh-field>`;
  }

  /** The log itself, and how to attach one. */
  #log(at: WorkAt): unknown {
    const charge = backedCharge(at);
    if (charge === null) return nothing;
    const log = charge.logs.at(-1) ?? null;
    return html`${log === null ? nothing : html`<gh-log-view short .log=${log}></gh-log-view>`}<gh-attach-log .charge=${charge}></gh-attach-log>`;
  }

  async #say(at: WorkAt, value: boolean): Promise<void> {
    this.doubting = false;
    const despite = this.despite.trim();
    const outcome = await this.give({ type: 'takeReading', ...this.characteristicOf(at), ordinal: 1, value, ...(value && despite !== '' ? { despite } : {}) });
    if (outcome?.state !== 'refused') this.despite = '';
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-confirm-work': GhConfirmWork;
  }
}
