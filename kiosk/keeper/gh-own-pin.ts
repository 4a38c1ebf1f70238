import { LitElement, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { keeperDeskWords } from '../../shared/words/keeper-desk.en.ts';
import { refusalNotice } from '../desk/asked-notice.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { Giving } from '../desk/giving.ts';
import { link } from '../link/index.ts';
import '../parts/gh-notice.ts';
import { partStyles } from '../parts/part-styles.ts';
import './gh-new-pin.ts';

const words = keeperDeskWords.pin;

/** Changing one's own PIN: the one so far goes with the command and is checked by the server. */
@customElement('gh-own-pin')
export class GhOwnPin extends LitElement {
  static override styles = [partStyles, deskStyles];
  @state() private changed = false;
  readonly #giving = new Giving(this);

  override render() {
    return html`<section class="sheet" aria-labelledby="title">
      <h2 id="title">${words.title}</h2>
      <p>${words.lead}</p>
      ${refusalNotice(this.#giving)} ${this.changed ? html`<gh-notice kind="done" happened=${words.changed} next=${words.changedNext}></gh-notice>` : nothing}
      <gh-new-pin own .busy=${this.#giving.busy !== null} @pin-chosen=${this.#change}></gh-new-pin>
    </section>`;
  }

  async #change(event: CustomEvent<{ pin: string; current: string }>): Promise<void> {
    const badge = link.session.value?.badge ?? '';
    const { pin, current } = event.detail;
    this.changed = false;
    this.changed = (await this.#giving.give('pin', { type: 'changePin', badge, pin }, { pin: current })) !== null;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-own-pin': GhOwnPin;
  }
}
