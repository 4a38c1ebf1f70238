import { css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import '../../parts/gh-button.ts';
import '../../parts/gh-demand.ts';
import '../../parts/gh-sheet.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { travellerWords } from '../speak.ts';
import { GateWork, type WorkAt } from './gate-work.ts';
import { workStyles } from './work-styles.ts';

/** Asks for a statement to be confirmed. A no rejects the gate, so it is asked for twice. */
@customElement('gh-confirm-work')
export class GhConfirmWork extends GateWork {
  static override styles = [partStyles, workStyles, css`.statement { background: var(--slip); padding: var(--pad) calc(1.4 * var(--pad)); font-size: calc(1.3 * var(--text-large)); line-height: 1.25; font-weight: 600; text-wrap: pretty; }`];
  @state() private doubting = false;

  protected override renderWork(at: WorkAt): unknown {
    const { characteristic } = at.work.demand;
    if (characteristic.kind !== 'confirmed') return nothing;
    const words = travellerWords();
    return html`<div class="pile">
      <gh-demand .context=${this.contextOf(at)} .demand=${characteristic.name} .hint=${characteristic.method}></gh-demand>
      <p class="statement">${characteristic.statement}</p>
      <div class="row">
        <gh-button kind="primary" @click=${() => void this.#say(at, true)}>${words.confirm.yes}</gh-button>
        <gh-button .hint=${words.confirm.noHint} @click=${() => (this.doubting = true)}>${words.confirm.no}</gh-button>
      </div>
      <gh-sheet grave ?open=${this.doubting} .heading=${words.confirm.sure} .closeWord=${words.cancel} @sheet-closed=${() => (this.doubting = false)}>
        <p>${words.confirm.sureText(characteristic.statement)}</p>
        <gh-button slot="actions" kind="grave" @click=${() => void this.#say(at, false)}>${words.confirm.doIt}</gh-button>
      </gh-sheet>
    </div>`;
  }

  async #say(at: WorkAt, value: boolean): Promise<void> {
    this.doubting = false;
    await this.give({ type: 'takeReading', ...this.characteristicOf(at), ordinal: 1, value });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-confirm-work': GhConfirmWork;
  }
}
