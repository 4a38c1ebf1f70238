import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { BenchList, BenchRow } from '../../shared/wire/views.ts';
import type { PressRow } from '../../shared/wire/presses-view.ts';
import { pressesDeskWords as words } from '../../shared/words/presses-desk.en.ts';
import { Giving } from '../desk/giving.ts';
import { link, LinkFault } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-select-list.ts';
import '../parts/gh-sheet.ts';
import { partStyles } from '../parts/part-styles.ts';
import { tell } from '../parts/tell.ts';

/**
 * Says which lot a press presses: one of those being weighed at its bench, or none.
 * @fires press-set - done, or left as it was
 */
@customElement('gh-set-press')
export class GhSetPress extends LitElement {
  static override styles = [partStyles, css`:host { display: contents; } .work { display: grid; gap: var(--gap); grid-template-columns: minmax(0, 1fr); }`];
  @property({ attribute: false }) press: PressRow | null = null;
  @state() private lots: readonly BenchRow[] | null = null;
  readonly #giving = new Giving(this);

  override connectedCallback(): void {
    super.connectedCallback();
    void this.#read();
  }

  override render() {
    const { press, lots } = this;
    if (press === null) return nothing;
    const { refused } = this.#giving;
    return html`<gh-sheet open .heading=${words.choose.title(press.name)} .closeWord=${words.choose.close} @sheet-closed=${() => tell(this, 'press-set')}><div class="work">
      ${refused === null ? nothing : html`<gh-notice kind="refusal" .happened=${refused.words.happened} .kept=${refused.words.kept} .next=${refused.words.next}></gh-notice>`}
      ${lots === null ? html`<gh-notice kind="loading" .happened=${words.loading}></gh-notice>` : lots.length === 0 ? html`<p>${words.choose.none}</p>`
        : html`<gh-select-list columns="2" .label=${words.choose.lots} .value=${press.lot ?? ''} .options=${lots.map(({ id, title }) => ({ value: id, text: id, hint: title }))} @option-chosen=${(event: CustomEvent<{ value: string }>) => void this.#set(event.detail.value)}></gh-select-list>`}
      ${press.lot === null ? nothing : html`<gh-button @click=${() => void this.#set(null)}>${words.stop}</gh-button>`}
    </div></gh-sheet>`;
  }

  async #set(lot: string | null): Promise<void> {
    if (this.press !== null && (await this.#giving.give('set', { type: 'setPress', press: this.press.id, lot })) !== null) tell(this, 'press-set');
  }

  async #read(): Promise<void> {
    try {
      const { waiting } = await link.ask<BenchList>(`/api/bench?bench=${encodeURIComponent(this.press?.bench ?? '')}`);
      this.lots = waiting.filter(({ kind, standing }) => kind === 'lot' && standing === 'open');
    } catch (error) {
      if (!(error instanceof LinkFault)) throw error;
      this.lots = [];
    }
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-set-press': GhSetPress;
  }
}
