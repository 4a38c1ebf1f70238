import { LitElement, css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { GaugeCard } from '../../shared/traveller/index.ts';
import { pressesDeskWords as words } from '../../shared/words/presses-desk.en.ts';
import { Giving } from '../desk/giving.ts';
import { link, LinkFault } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-field.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-select-list.ts';
import '../parts/gh-sheet.ts';
import { partStyles } from '../parts/part-styles.ts';
import { tell } from '../parts/tell.ts';

/**
 * Registers a press with its bench and balance.
 * @fires press-registered - done, or left
 */
@customElement('gh-register-press')
export class GhRegisterPress extends LitElement {
  static override styles = [partStyles, css`:host { display: contents; } form { display: grid; gap: var(--gap); grid-template-columns: minmax(0, 1fr); }`];
  @state() private values = { id: '', name: '', bench: '', balance: '' };
  @state() private balances: readonly GaugeCard[] = [];
  @state() private missing = false;
  readonly #giving = new Giving(this);

  override connectedCallback(): void {
    super.connectedCallback();
    this.values = { ...this.values, bench: link.session.value?.bench ?? '' };
    void this.#read();
  }

  override render() {
    const { values } = this;
    const { refused, busy } = this.#giving;
    const need = (text: string): string => (this.missing && text.trim() === '' ? words.form.missing : '');
    const field = (name: 'id' | 'name' | 'bench', hint = '') => html`<gh-field .label=${words.form[name]} .hint=${hint} .value=${values[name]} .error=${need(values[name])} @field-input=${this.#take(name)}></gh-field>`;
    return html`<gh-sheet open .heading=${words.form.title} .closeWord=${words.form.close} @sheet-closed=${() => tell(this, 'press-registered')}><form @submit=${this.#save}>
      ${refused === null ? nothing : html`<gh-notice kind="refusal" .happened=${refused.words.happened} .kept=${refused.words.kept} .next=${refused.words.next}></gh-notice>`}
      ${field('id', words.form.idHint)}${field('name')}${field('bench')}
      ${this.balances.length === 0 ? html`<p>${words.form.noBalance}</p>` : html`<gh-select-list columns="2" .label=${words.form.balance} .value=${values.balance} .error=${need(values.balance)} .options=${this.balances.map(({ id, name }) => ({ value: id, text: id, hint: name }))} @option-chosen=${this.#take('balance')}></gh-select-list>`}
      <div><gh-button kind="primary" type="submit" ?busy=${busy !== null}>${words.form.save}</gh-button></div>
    </form></gh-sheet>`;
  }

  #take(name: keyof typeof this.values) {
    return (event: CustomEvent<{ readonly value: string }>): void => {
      this.values = { ...this.values, [name]: name === 'id' ? event.detail.value.toUpperCase() : event.detail.value };
    };
  }

  readonly #save = async (event: Event): Promise<void> => {
    event.preventDefault();
    this.missing = Object.values(this.values).some((text) => text.trim() === '');
    if (!this.missing && (await this.#giving.give('register', { type: 'registerPress', press: { ...this.values } })) !== null) tell(this, 'press-registered');
  };

  async #read(): Promise<void> {
    try {
      const { gauges } = await link.ask<{ gauges: readonly (GaugeCard & { readonly withdrawn: string | null })[] }>('/api/catalogue');
      // Whatever weighs: a plan says which kind of balance counts.
      this.balances = gauges.filter(({ unit, withdrawn }) => unit === 'g' && withdrawn === null);
    } catch (error) {
      if (!(error instanceof LinkFault)) throw error;
    }
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-register-press': GhRegisterPress;
  }
}
