import { LitElement, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { remainingPieces } from '../../shared/traveller/index.ts';
import { deskWords, labels } from '../desk/words.ts';
import { releaseDeskWords as words } from '../../shared/words/release-desk.en.ts';
import { refusalNotice } from '../desk/asked-notice.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { focusSheet } from '../desk/focus-sheet.ts';
import { Giving } from '../desk/giving.ts';
import { showFigure } from '../desk/show.ts';
import type { LotStanding } from '../desk/traveller-page.ts';
import { Follow, link } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-field.ts';
import '../parts/gh-pin-pad.ts';
import '../parts/gh-sheet.ts';
import '../parts/gh-signature.ts';
import { partStyles } from '../parts/part-styles.ts';
import { tell } from '../parts/tell.ts';
import { needsCoSigner } from './what-stops.ts';

/**
 * Signing a release. Whoever worked the last gate signs together with a second releaser; both PINs leave memory with the command.
 * @fires lot-released - when the release stands
 */
@customElement('gh-release-signing')
export class GhReleaseSigning extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property({ attribute: false }) standing: LotStanding | null = null;
  @property({ type: Boolean }) open = false;
  @state() private badge = '';
  @state() private badgeError = '';
  @state() private coReady = false;
  #coSigner: { readonly badge: string; readonly pin: string } | null = null;
  readonly #giving = new Giving(this);
  readonly #session = new Follow(this, () => link.session);

  override render() {
    const { standing } = this;
    const session = this.#session.value;
    if (standing === null || session === null) return nothing;
    const { lot } = standing;
    const together = needsCoSigner(standing, session.badge);
    const quantity = remainingPieces(lot.balance) + lot.balance.boxed;
    return html`<gh-sheet ?open=${this.open} heading=${words.signHeading(lot.id)} close-word=${deskWords.cancel} @sheet-closed=${this.#forget}>
      ${refusalNotice(this.#giving)}
      ${together && !this.coReady ? this.#coSigning(lot.gates.at(-1)?.name ?? '') : html`<gh-signature
        meaning=${words.signMeaning} who="${session.name} (${session.badge})" .words=${deskWords.pin} .busy=${this.#giving.busy !== null}
        statement=${words.signStatement(labels.pieces(quantity, showFigure(quantity)), lot.id, lot.product.designation)} @signed=${this.#sign}>
        ${lot.concessions.length === 0 ? nothing : html`<p><gh-state-mark state="concession" word=${words.signConcessions(lot.concessions.length)}></gh-state-mark></p>`}
        ${this.coReady ? html`<p>${words.coSignReady(this.badge)}</p><gh-button @click=${this.#forget}>${words.coSignAgain}</gh-button>` : nothing}
      </gh-signature>`}
    </gh-sheet>`;
  }

  protected override updated(changed: PropertyValues): void {
    if (this.open && (changed.has('open') || changed.has('coReady'))) void focusSheet(this);
  }

  #coSigning(gate: string) {
    return html`<div class="sheet">
      <p>${words.coSignWhy(gate)}</p>
      <gh-field label=${words.coSignBadge} .value=${this.badge} error=${this.badgeError} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.badge = detail.value.trim())}></gh-field>
      <gh-pin-pad .words=${words.coSignPin} @pin-entered=${this.#takeCoSigner}></gh-pin-pad>
    </div>`;
  }

  #takeCoSigner(event: CustomEvent<{ pin: string }>): void {
    this.badgeError = this.badge === '' ? words.coSignBadgeMissing : '';
    if (this.badge === '') return;
    this.#coSigner = { badge: this.badge, pin: event.detail.pin };
    this.coReady = true;
  }

  async #sign(event: CustomEvent<{ pin: string }>): Promise<void> {
    const { standing } = this;
    if (standing === null) return;
    const { lot } = standing;
    const coSigner = this.#coSigner;
    const done = await this.#giving.give('sign', { type: 'releaseLot', lot: lot.id }, { pin: event.detail.pin, seen: lot.version, ...(coSigner === null ? {} : { coSigner }) });
    // A refusal may be about the second releaser, so both sign anew.
    this.#forget();
    if (done !== null) tell(this, 'lot-released', { lot: lot.id });
  }

  readonly #forget = (): void => {
    this.#coSigner = null;
    this.coReady = false;
    this.badgeError = '';
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-release-signing': GhReleaseSigning;
  }
}
