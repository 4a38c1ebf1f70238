import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { GaugeCard } from '../../shared/traveller/index.ts';
import type { PressRow } from '../../shared/wire/presses-view.ts';
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
 * Registers a press with its bench and balance, or changes one with a reason.
 * @fires press-form-left - done, or left
 */
@customElement('gh-press-form')
export class GhPressForm extends LitElement {
  static override styles = [partStyles, css`:host { display: contents; } form { display: grid; gap: var(--gap); grid-template-columns: minmax(0, 1fr); }`];
  /** The press to change; null registers a new one. */
  @property({ attribute: false }) press: PressRow | null = null;
  @state() private values = { id: '', name: '', bench: '', balance: '', reason: '' };
  @state() private countsAnew = false;
  @state() private balances: readonly GaugeCard[] = [];
  @state() private missing = false;
  readonly #giving = new Giving(this);

  override connectedCallback(): void {
    super.connectedCallback();
    const { id, name, bench, balance } = this.press ?? { ...this.values, bench: link.session.value?.bench ?? '' };
    this.values = { id, name, bench, balance, reason: '' };
    void this.#read();
  }

  override render() {
    const { values, press } = this;
    const { refused, busy } = this.#giving;
    const need = (text: string): string => (this.missing && text.trim() === '' ? words.form.missing : '');
    const field = (name: 'id' | 'name' | 'bench' | 'reason', hint = '') => html`<gh-field .label=${words.form[name]} .hint=${hint} .value=${values[name]} .error=${need(values[name])} @field-input=${this.#take(name)}></gh-field>`;
    return html`<gh-sheet open .heading=${press === null ? words.form.title : words.form.changeTitle(press.name)} .closeWord=${press === null ? words.form.close : words.choose.close} @sheet-closed=${() => tell(this, 'press-form-left')}><form @submit=${this.#save}>
      ${refused === null ? nothing : html`<gh-notice kind="refusal" .happened=${refused.words.happened} .kept=${refused.words.kept} .next=${refused.words.next}></gh-notice>`}
      ${press === null ? field('id', words.form.idHint) : nothing}${field('name')}${field('bench')}
      ${this.balances.length === 0 ? html`<p>${words.form.noBalance}</p>` : html`<gh-select-list columns="2" .label=${words.form.balance} .value=${values.balance} .error=${need(values.balance)} .options=${this.balances.map(({ id, name }) => ({ value: id, text: id, hint: name }))} @option-chosen=${this.#take('balance')}></gh-select-list>`}
      ${press === null ? nothing : this.#change(press)}${press === null ? nothing : field('reason')}
      <div><gh-button kind="primary" type="submit" ?busy=${busy !== null}>${press === null ? words.form.save : words.form.saveChange}</gh-button></div>
    </form></gh-sheet>`;
  }

  /** Whether the count begins anew: with another balance it always does. */
  #change({ balance }: PressRow) {
    if (balance !== this.values.balance) return html`<p>${words.form.otherBalance}</p>`;
    return html`<gh-select-list .label=${words.form.count} .value=${this.countsAnew ? 'anew' : 'on'} .options=${[{ value: 'on', text: words.form.countOn }, { value: 'anew', text: words.form.countAnew, hint: words.form.countAnewHint }]} @option-chosen=${(event: CustomEvent<{ readonly value: string }>) => (this.countsAnew = event.detail.value === 'anew')}></gh-select-list>`;
  }

  #take(name: keyof typeof this.values) {
    return (event: CustomEvent<{ readonly value: string }>): void => {
      this.values = { ...this.values, [name]: name === 'id' ? event.detail.value.toUpperCase() : event.detail.value };
    };
  }

  readonly #save = async (event: Event): Promise<void> => {
    event.preventDefault();
    const { reason, ...press } = this.values;
    this.missing = [...Object.values(press), ...(this.press === null ? [] : [reason])].some((text) => text.trim() === '');
    if (this.missing) return;
    const command = this.press === null ? { type: 'registerPress', press } as const : { type: 'changePress', press, reason: reason.trim(), ...(this.countsAnew && this.press.balance === press.balance ? { countsAnew: true } : {}) } as const;
    if ((await this.#giving.give(command.type, command)) !== null) tell(this, 'press-form-left');
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
    'gh-press-form': GhPressForm;
  }
}
