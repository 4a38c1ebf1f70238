import { LitElement, css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { link, type RefusalText } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-field.ts';
import '../parts/gh-notice.ts';
import { partStyles } from '../parts/part-styles.ts';
import { tell } from '../parts/tell.ts';
import { shellWords } from '../shell/words.ts';

type Field = 'plantName' | 'address' | 'country' | 'name' | 'badge' | 'pin' | 'pinAgain';

/**
 * The very first page: names the plant and enrols its keeper.
 * @fires plant-opened
 */
@customElement('gh-set-up')
export class GhSetUp extends LitElement {
  static override styles = [
    partStyles,
    css`
      form { max-inline-size: 62rem; margin: 0 auto; background: var(--slip); border-block-start: calc(3 * var(--rule-strong)) solid var(--ink); padding: calc(1.4 * var(--pad)) calc(2 * var(--pad)) calc(2 * var(--pad)); display: grid; gap: calc(1.5 * var(--pad)); }
      h1 { font-size: calc(1.6 * var(--text-large)); margin: 0; line-height: 1.1; }
      h2 { font-size: var(--text-large); }
      .pair { display: grid; gap: calc(1.5 * var(--pad)); grid-template-columns: repeat(auto-fit, minmax(16rem, 1fr)); align-items: start; }
      fieldset { border: 0; border-block-start: 4px double var(--line); margin: 0; padding: var(--pad) 0 0; display: grid; gap: calc(1.2 * var(--pad)); }
      legend { font-size: var(--text-large); font-weight: 650; padding: 0 0.5em 0 0; }
    `,
  ];
  @state() private values: Readonly<Record<Field, string>> = { plantName: '', address: '', country: '', name: '', badge: '', pin: '', pinAgain: '' };
  @state() private errors: Partial<Readonly<Record<Field, string>>> = {};
  @state() private busy = false;
  @state() private refusal: RefusalText | null = null;

  override render() {
    const words = shellWords().setUp;
    const { refusal } = this;
    return html`<form @submit=${this.#open} novalidate>
      <div><h1>${words.title}</h1><p>${words.lead}</p></div>
      <fieldset><legend>${words.plant}</legend>
        <div class="pair">${this.#field('plantName', words.plantName)} ${this.#field('country', words.country, words.countryHint)}</div>
        ${this.#field('address', words.address)}
      </fieldset>
      <fieldset><legend>${words.keeper}</legend>
        <div class="pair">${this.#field('name', words.name)} ${this.#field('badge', words.badge, words.badgeHint)}</div>
        <div class="pair">${this.#field('pin', words.pin, '', 'password')} ${this.#field('pinAgain', words.pinAgain, '', 'password')}</div>
      </fieldset>
      ${refusal === null ? nothing : html`<gh-notice kind="refusal" .happened=${refusal.happened} .kept=${refusal.kept} .next=${refusal.next}></gh-notice>`}
      <p>${words.kept}</p>
      <div><gh-button kind="primary" type="submit" ?busy=${this.busy} busy-word=${words.opening}>${words.open}</gh-button></div>
    </form>`;
  }

  #field(name: Field, label: string, hint = '', type = 'text') {
    return html`<gh-field .name=${name} .label=${label} .hint=${hint} type=${type} entry=${type === 'password' ? 'numeric' : 'text'} required .value=${this.values[name]} .error=${this.errors[name] ?? ''}
      @field-input=${(event: CustomEvent<{ readonly value: string }>) => (this.values = { ...this.values, [name]: name === 'country' || name === 'badge' ? event.detail.value.toUpperCase() : event.detail.value })}></gh-field>`;
  }

  readonly #open = async (event: Event): Promise<void> => {
    event.preventDefault();
    if (this.busy || !this.#isFilledIn()) return;
    const { plantName, address, country, name, badge, pin } = this.values;
    this.busy = true;
    const outcome = await link.give({ type: 'openPlant', plant: { name: plantName.trim(), address: address.trim(), country, demo: false }, keeper: { badge, name: name.trim(), pin } }, { bench: shellWords().office });
    this.busy = false;
    this.refusal = outcome.state === 'refused' ? outcome.words : null;
    if (outcome.state !== 'acknowledged') return;
    this.values = { ...this.values, pin: '', pinAgain: '' };
    tell(this, 'plant-opened');
  };

  #isFilledIn(): boolean {
    const words = shellWords().setUp;
    const { pin, pinAgain } = this.values;
    const missing = Object.fromEntries(Object.entries(this.values).filter(([, value]) => value.trim() === '').map(([name]) => [name, words.missing]));
    this.errors = {
      ...missing,
      ...(pin !== '' && !/^[0-9]{4,8}$/.test(pin) ? { pin: words.pinShort } : {}),
      ...(pin !== '' && pinAgain !== '' && pin !== pinAgain ? { pinAgain: words.pinDiffers } : {}),
      ...(this.values.country !== '' && !/^[A-Z]{2}$/.test(this.values.country) ? { country: words.country } : {}),
    };
    return Object.keys(this.errors).length === 0;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-set-up': GhSetUp;
  }
}
