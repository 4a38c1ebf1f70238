import { LitElement, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { packingDeskWords as words } from '../../shared/words/packing-desk.en.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { deskWords } from '../desk/words.ts';
import '../parts/gh-button.ts';
import '../parts/gh-field.ts';
import '../parts/gh-select-list.ts';
import '../parts/gh-sheet.ts';
import { partStyles } from '../parts/part-styles.ts';
import { tell } from '../parts/tell.ts';

const OTHER = 'other';

/**
 * Asks why, by one touch on a usual reason or in own words.
 * @fires reason-given - with `{ reason }`
 */
@customElement('gh-reason-sheet')
export class GhReasonSheet extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property({ type: Boolean }) open = false;
  @property({ type: Boolean }) grave = false;
  @property() heading = '';
  @property() why = '';
  @property() act = '';
  @property({ attribute: false }) suggestions: readonly string[] = [];
  @state() private chosen = '';
  @state() private own = '';
  @state() private error = '';

  override render() {
    const options = [...this.suggestions.map((text) => ({ value: text, text })), { value: OTHER, text: words.otherReason }];
    return html`<gh-sheet ?open=${this.open} ?grave=${this.grave} heading=${this.heading} close-word=${deskWords.cancel}>
      <div class="page-part keys">
        <p>${this.why}</p>
        <gh-select-list label=${deskWords.reason} columns="2" .options=${options} .value=${this.chosen} error=${this.error} @option-chosen=${({ detail }: CustomEvent<{ value: string }>) => (this.chosen = detail.value)}></gh-select-list>
        ${this.chosen === OTHER ? html`<gh-field label=${words.otherReason} max-length="500" .value=${this.own} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.own = detail.value)}></gh-field>` : nothing}
      </div>
      <gh-button slot="actions" kind=${this.grave ? 'grave' : 'primary'} @click=${this.#give}>${this.act}</gh-button>
    </gh-sheet>`;
  }

  #give(): void {
    const reason = (this.chosen === OTHER ? this.own : this.chosen).trim();
    this.error = reason === '' ? words.reasonMissing : '';
    if (reason === '') return;
    this.chosen = this.own = '';
    tell(this, 'reason-given', { reason });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-reason-sheet': GhReasonSheet;
  }
}
