import { LitElement, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { link, LinkFault, type PlantAtDoor } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-field.ts';
import type { GhField } from '../parts/gh-field.ts';
import '../parts/gh-pin-pad.ts';
import type { GhPinPad } from '../parts/gh-pin-pad.ts';
import '../parts/gh-select-list.ts';
import { keyStyles, partStyles } from '../parts/part-styles.ts';
import { tell } from '../parts/tell.ts';
import { rememberBench, rememberedBench } from '../shell/kiosk-memory.ts';
import { shellWords } from '../shell/words.ts';
import { signOnStyles } from './sign-on-styles.ts';

/**
 * Signs a person on: the badge is scanned or typed, the PIN pressed. The bench is the kiosk's own and is asked for once.
 * @fires signed-on
 * @fires sign-on-cancelled - where somebody else was at work and stays
 */
@customElement('gh-sign-on')
export class GhSignOn extends LitElement {
  static override styles = [partStyles, keyStyles, signOnStyles];
  @property({ attribute: false }) plant: PlantAtDoor = { opened: true, plant: null, demoPeople: null, benches: [] };
  /** A badge that was scanned already. */
  @property() badge = '';
  @property({ type: Boolean }) cancellable = false;
  @state() private bench = rememberedBench();
  @state() private choosingBench = false;
  @state() private typed = '';
  @state() private error = '';
  @state() private busy = false;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('badge')) this.typed = this.badge;
    if (this.bench === '') this.choosingBench = true;
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (changed.has('badge') && this.badge !== '') this.#toPin();
  }

  protected override firstUpdated(): void {
    if (this.badge === '') void this.updateComplete.then(() => this.renderRoot.querySelector<GhField>('gh-field')?.focus());
  }

  override render() {
    const words = shellWords();
    const { plant } = this.plant;
    return html`<div class="sheet">
      <header>
        <div><p class="printed">${words.product}</p><h1>${plant?.name ?? words.signOn}</h1></div>
        ${plant?.demo === true ? html`<p class="demo">${words.demo}</p>` : nothing}
      </header>
      ${this.choosingBench ? this.#benches() : this.#sign()}
    </div>`;
  }

  #benches() {
    const words = shellWords();
    const benches = [...new Set([...this.plant.benches, words.packingBench, words.office])];
    return html`<section><h2>${words.chooseBench}</h2>
      <div class="benches">${benches.map((bench) => html`<gh-button wide pressed=${bench === this.bench ? 'true' : 'false'} @click=${() => this.#chooseBench(bench)}>${bench}</gh-button>`)}</div>
    </section>`;
  }

  #sign() {
    const words = shellWords();
    return html`<div class="sign">
      <section class="who">
        <div class="stands"><p><span class="printed">${words.bench}</span><br /><strong>${this.bench}</strong></p>
          ${this.cancellable ? html`<gh-button @click=${() => tell(this, 'sign-on-cancelled')}>${words.cancel}</gh-button>` : nothing}
          <gh-button @click=${() => (this.choosingBench = true)}>${words.otherBench}</gh-button></div>
        <form @submit=${this.#badgeEntered}>
          <gh-field .label=${words.badge} .hint=${words.badgeHint} .value=${this.typed} @field-input=${this.#typeBadge}></gh-field>
        </form>
        ${this.#demoPeople()}
      </section>
      <gh-pin-pad .words=${{ ...words.pin, label: words.pinOf(this.typed) }} ?busy=${this.busy} .error=${this.error} @pin-entered=${this.#signIn}></gh-pin-pad>
    </div>`;
  }

  #demoPeople() {
    const { demoPeople } = this.plant;
    const words = shellWords();
    if (demoPeople === null || demoPeople.length === 0) return nothing;
    return html`<section class="people" aria-label=${words.demoPeople}><p class="printed">${words.demoPeople}</p>
      <ul>${demoPeople.map(({ badge, pin, name, roles }) => html`<li><button type="button" class="key person" aria-pressed=${badge === this.typed ? 'true' : 'false'} @click=${() => this.#chooseBadge(badge)}>
        <strong>${name}</strong><span>${roles.map((role) => (role in words.roles ? words.roles[role as keyof typeof words.roles] : role)).join(', ')}</span><span class="figure">${words.demoPerson(badge, pin)}</span></button></li>`)}</ul>
    </section>`;
  }

  #chooseBench(bench: string): void {
    this.bench = bench;
    rememberBench(bench);
    this.choosingBench = false;
    void this.updateComplete.then(() => this.renderRoot.querySelector<GhField>('gh-field')?.focus());
  }

  #chooseBadge(badge: string): void {
    this.typed = badge;
    this.error = '';
    this.#toPin();
  }

  readonly #typeBadge = (event: CustomEvent<{ readonly value: string }>): void => {
    this.typed = event.detail.value.trim();
    this.error = '';
  };

  readonly #badgeEntered = (event: Event): void => {
    event.preventDefault();
    if (this.typed !== '') this.#toPin();
  };

  #toPin(): void {
    void this.updateComplete.then(() => this.renderRoot.querySelector<GhPinPad>('gh-pin-pad')?.focus());
  }

  readonly #signIn = async (event: CustomEvent<{ readonly pin: string }>): Promise<void> => {
    if (this.typed === '') return void (this.error = shellWords().badgeFirst);
    this.busy = true;
    this.error = '';
    try {
      await link.signIn(this.typed, event.detail.pin, this.bench);
      tell(this, 'signed-on');
    } catch (error) {
      if (!(error instanceof LinkFault)) throw error;
      this.error = `${error.words.happened} ${error.words.next}`;
    } finally {
      this.busy = false;
    }
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-sign-on': GhSignOn;
  }
}
