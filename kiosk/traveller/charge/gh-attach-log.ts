import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { LONGEST_LOG } from '../../../shared/traveller/index.ts';
import type { Charge } from '../../../shared/traveller/index.ts';
import { kioskChargeWords } from '../../../shared/words/kiosk-charge.en.ts';
import { Follow, link, LinkFault, type RefusalText } from '../../link/index.ts';
import '../../parts/gh-notice.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { travellerWords } from '../speak.ts';

const words = kioskChargeWords.log;

/** Chooses a furnace log, hands it to the server and attaches it to the charge. Without the network it says that this must wait. */
@customElement('gh-attach-log')
export class GhAttachLog extends LitElement {
  static override styles = [partStyles, css`
    label { display: grid; gap: 0.3em; }
    input { font: inherit; min-block-size: var(--target); max-inline-size: 100%; }
    input::file-selector-button { font: inherit; font-weight: 650; min-block-size: var(--target); padding-inline: var(--pad); background: var(--slip); color: var(--ink); border: var(--rule-strong) solid var(--line-strong); border-radius: var(--corner); margin-inline-end: var(--pad); cursor: pointer; }
    input:focus-visible { outline: 3px solid var(--focus); }
  `];
  @property({ attribute: false }) charge: Charge | null = null;
  @state() private busy = false;
  @state() private refusal: RefusalText | null = null;
  readonly #connection = new Follow(this, () => link.connection);

  override render() {
    const { charge } = this;
    if (charge === null || charge.kind !== 'furnace' || charge.ended !== null) return nothing;
    const offline = this.#connection.value === 'offline';
    const shown = offline ? words.waits : this.refusal;
    return html`${shown === null ? nothing : html`<gh-notice kind=${offline ? 'offline' : 'refusal'} .happened=${shown.happened} .kept=${shown.kept} .next=${shown.next} .dismiss=${offline ? '' : travellerWords().dismiss} @notice-dismissed=${() => (this.refusal = null)}></gh-notice>`}
      ${this.busy ? html`<gh-notice kind="loading" .happened=${words.busy}></gh-notice>` : nothing}
      ${offline ? nothing : html`<label><span class="printed">${charge.logs.length === 0 ? words.attach : words.another}</span><input type="file" accept=".csv,text/csv,text/plain" aria-describedby="what" ?disabled=${this.busy} @change=${this.#choose} /><span id="what" class="printed">${words.choose}</span></label>`}`;
  }

  readonly #choose = async (event: Event): Promise<void> => {
    const input = event.target;
    const file = input instanceof HTMLInputElement ? input.files?.[0] : undefined;
    const { charge } = this;
    if (file === undefined || charge === null || this.busy) return;
    this.busy = true;
    this.refusal = file.size > LONGEST_LOG ? words.tooLarge : await this.#attach(charge, file);
    this.busy = false;
    if (input instanceof HTMLInputElement) input.value = '';
  };

  async #attach(charge: Charge, file: File): Promise<RefusalText | null> {
    try {
      const { digest } = await link.act<{ readonly digest: string }>('/api/attachments', { text: await file.text() });
      const outcome = await link.give({ type: 'attachFurnaceLog', charge: charge.id, attachment: digest, fileName: file.name.slice(-120).trim() });
      return outcome.state === 'refused' ? outcome.words : null;
    } catch (error) {
      if (error instanceof LinkFault) return error.words;
      throw error;
    }
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-attach-log': GhAttachLog;
  }
}
