import { LitElement, html } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { keeperDeskWords } from '../../shared/words/keeper-desk.en.ts';
import '../parts/gh-pin-pad.ts';
import { tell } from '../parts/tell.ts';

const words = keeperDeskWords.pin;

/**
 * Asks for a new PIN twice, with `own` first for the one so far. The PINs stand in no attribute and are forgotten once told.
 * @fires pin-chosen - with `{ pin, current }`; current is empty without `own`
 */
@customElement('gh-new-pin')
export class GhNewPin extends LitElement {
  @property({ type: Boolean }) own = false;
  @property({ type: Boolean }) busy = false;
  @state() private step: 'current' | 'fresh' | 'again' | null = null;
  @state() private error = '';
  #current = '';
  #fresh = '';

  override render() {
    const step = this.step ?? (this.own ? 'current' : 'fresh');
    return html`<gh-pin-pad .words=${words[step]} .busy=${this.busy} .error=${this.error} @pin-entered=${(event: CustomEvent<{ pin: string }>) => this.#take(step, event)}></gh-pin-pad>`;
  }

  /** Forgets everything entered and begins anew. */
  startAgain(): void {
    this.#current = this.#fresh = '';
    this.step = null;
  }

  #take(step: 'current' | 'fresh' | 'again', event: CustomEvent<{ pin: string }>): void {
    event.stopPropagation();
    const { pin } = event.detail;
    this.error = '';
    if (step === 'current') {
      this.#current = pin;
      this.step = 'fresh';
    } else if (step === 'fresh') {
      this.#fresh = pin;
      this.step = 'again';
    } else if (pin !== this.#fresh) {
      this.error = words.differs;
      this.step = 'fresh';
    } else {
      const current = this.#current;
      this.startAgain();
      tell(this, 'pin-chosen', { pin, current });
    }
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-new-pin': GhNewPin;
  }
}
