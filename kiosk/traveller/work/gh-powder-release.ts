import { LitElement, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { ref } from 'lit/directives/ref.js';
import { mayGive } from '../../../shared/traveller/index.ts';
import type { Batch } from '../../../shared/traveller/index.ts';
import { Follow, link, type RefusalText } from '../../link/index.ts';
import type { TravellerStore } from '../../link/traveller-store.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-demand.ts';
import '../../parts/gh-notice.ts';
import '../../parts/gh-signature.ts';
import { partStyles } from '../../parts/part-styles.ts';
import '../press/gh-powder-gives.ts';
import { travellerWords } from '../speak.ts';
import { seenWhenShown } from './focus-when-shown.ts';
import { workStyles } from './work-styles.ts';

/** Every test of a powder batch is accepted: the lab signs that it may go to the presses, seeing what pressing will be given. */
@customElement('gh-powder-release')
export class GhPowderRelease extends LitElement {
  static override styles = [partStyles, workStyles];
  @property({ attribute: false }) store: TravellerStore | null = null;
  @property({ attribute: false }) batch: Batch | null = null;
  @state() private signing = false;
  @state() private busy = false;
  @state() private refusal: RefusalText | null = null;
  readonly #session = new Follow(this, () => link.session);

  override render() {
    const { batch, refusal } = this;
    const session = this.#session.value;
    if (batch === null || session === null) return nothing;
    const words = travellerWords();
    const may = mayGive('releaseBatch', session.roles);
    return html`<div class="pile">
      <gh-demand .context=${batch.id} .demand=${words.powder.demand} .hint=${may ? words.powder.hint : words.powder.notYours}>
        ${may && !this.signing ? html`<gh-button kind="primary" @click=${() => (this.signing = true)}>${words.powder.key}</gh-button>` : nothing}
      </gh-demand>
      ${this.signing ? html`<gh-signature ${ref(seenWhenShown)} .meaning=${words.powder.sign} .who=${session.name} .statement=${words.powder.statement(batch.id)} .words=${words.pin} ?busy=${this.busy}
          @signed=${(event: CustomEvent<{ pin: string }>) => void this.#release(batch, event.detail.pin)}>
          <gh-powder-gives .batch=${batch}></gh-powder-gives>
          ${refusal === null ? nothing : html`<gh-notice kind="refusal" .happened=${refusal.happened} .kept=${refusal.kept} .next=${refusal.next}></gh-notice>`}
        </gh-signature>
        <div class="row"><gh-button @click=${() => (this.signing = false)}>${words.cancel}</gh-button></div>` : html`<gh-powder-gives .batch=${batch}></gh-powder-gives>`}
    </div>`;
  }

  async #release(batch: Batch, pin: string): Promise<void> {
    this.busy = true;
    const outcome = await this.store?.give({ type: 'releaseBatch', batch: batch.id }, { pin, seen: batch.version });
    this.busy = false;
    this.refusal = outcome?.state === 'refused' ? outcome.words : null;
    if (this.refusal === null) this.signing = false;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-powder-release': GhPowderRelease;
  }
}
