import { LitElement, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Lot } from '../../shared/traveller/index.ts';
import { deskWords } from '../desk/words.ts';
import { releaseDeskWords as words } from '../../shared/words/release-desk.en.ts';
import { refusalNotice } from '../desk/asked-notice.ts';
import { focusSheet } from '../desk/focus-sheet.ts';
import { Giving } from '../desk/giving.ts';
import { Follow, link } from '../link/index.ts';
import '../parts/gh-field.ts';
import '../parts/gh-sheet.ts';
import '../parts/gh-signature.ts';
import { tell } from '../parts/tell.ts';

/**
 * Taking a release back, signed and with its reason.
 * @fires release-withdrawn - when it is taken back
 */
@customElement('gh-withdraw-release')
export class GhWithdrawRelease extends LitElement {
  @property({ attribute: false }) lot: Lot | null = null;
  @property({ type: Boolean }) open = false;
  @state() private reason = '';
  @state() private error = '';
  readonly #giving = new Giving(this);
  readonly #session = new Follow(this, () => link.session);

  override render() {
    const { lot } = this;
    const session = this.#session.value;
    if (lot === null || lot.release === null || session === null) return nothing;
    return html`<gh-sheet grave ?open=${this.open} heading=${words.withdrawHeading(lot.id)} close-word=${deskWords.cancel}>
      ${refusalNotice(this.#giving)}
      <gh-signature meaning=${words.withdrawMeaning} who="${session.name} (${session.badge})" statement=${words.withdrawStatement(lot.release.certificate)} .words=${deskWords.pin} .busy=${this.#giving.busy !== null} @signed=${this.#sign}>
        <gh-field multiline label=${deskWords.reason} hint=${words.withdrawReasonHint} max-length="500" .value=${this.reason} error=${this.error}
          @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.reason = detail.value)}></gh-field>
      </gh-signature>
    </gh-sheet>`;
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (this.open && changed.has('open')) void focusSheet(this);
  }

  async #sign(event: CustomEvent<{ pin: string }>): Promise<void> {
    const { lot, reason } = this;
    this.error = reason.trim() === '' ? words.withdrawReasonMissing : '';
    if (lot === null || this.error !== '') return;
    if ((await this.#giving.give('withdraw', { type: 'withdrawRelease', lot: lot.id, reason: reason.trim() }, { pin: event.detail.pin, seen: lot.version })) === null) return;
    this.reason = '';
    tell(this, 'release-withdrawn', { lot: lot.id });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-withdraw-release': GhWithdrawRelease;
  }
}
