import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Charge, SomeMembers } from '../../../shared/traveller/index.ts';
import { kioskChargeWords } from '../../../shared/words/kiosk-charge.en.ts';
import '../../parts/gh-field.ts';
import '../../parts/gh-select-list.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { tell } from '../../parts/tell.ts';
import { failedOf } from '../charge/drawn-map.ts';
import { travellerWords } from '../speak.ts';

type Scope = 'whole' | 'near' | 'chosen';
/** What was chosen: null for the whole charge; `fits` is false while something is missing. */
export interface SomeChosen { readonly some: SomeMembers | null; readonly fits: boolean }

/**
 * Asks whether the whole charge is done again or only some of its lots, such as those near a failed position, and what becomes of the others.
 * @fires some-chosen - at each change, with `SomeChosen`
 */
@customElement('gh-some-members')
export class GhSomeMembers extends LitElement {
  static override styles = [partStyles, css`:host { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--gap); }`];
  @property({ attribute: false }) charge: Charge | null = null;
  @property({ type: Boolean }) missing = false;
  @state() private scope: Scope = 'whole';
  @state() private lots: readonly string[] = [];
  @state() private rest: 'retest' | 'concession' | '' = '';
  @state() private statement = '';

  override render() {
    const { charge } = this;
    if (charge === null) return nothing;
    const words = kioskChargeWords.some;
    const members = charge.members.filter(({ left }) => left !== true).map(({ lot }) => lot);
    const near = [...new Set(failedOf(charge).flatMap((failed) => failed.near.map(({ lot }) => lot)))].filter((lot) => members.includes(lot));
    if (members.length < 2) return nothing;
    const scopes = [
      { value: 'whole', text: words.whole, hint: words.wholeHint },
      ...(near.length > 0 && near.length < members.length ? [{ value: 'near', text: words.near(near.length), hint: near.join(', ') }] : []), { value: 'chosen', text: words.chosen },
    ];
    const needed = travellerWords().missing;
    return html`<gh-select-list columns="3" .label=${words.which} .options=${scopes} .value=${this.scope} @option-chosen=${(event: CustomEvent<{ value: string }>) => this.#take({ scope: scopeOf(event.detail.value), lots: event.detail.value === 'near' ? near : event.detail.value === 'whole' ? [] : this.lots })}></gh-select-list>
      ${this.scope === 'chosen' ? html`<gh-select-list multiple columns="3" .label=${words.lots} .options=${members.map((lot) => ({ value: lot, text: lot, ...(near.includes(lot) ? { hint: words.nearMark } : {}) }))} .values=${[...this.lots]} .error=${this.missing && this.lots.length === 0 ? needed : ''} @options-chosen=${(event: CustomEvent<{ values: readonly string[] }>) => this.#take({ lots: event.detail.values })}></gh-select-list>` : nothing}
      ${this.scope === 'whole' ? nothing : html`<gh-select-list columns="2" .label=${words.rest} .value=${this.rest} .error=${this.missing && this.rest === '' ? needed : ''} .options=${[{ value: 'retest', text: words.retest, hint: words.retestHint }, { value: 'concession', text: words.concession, hint: words.concessionHint }]} @option-chosen=${(event: CustomEvent<{ value: string }>) => this.#take({ rest: event.detail.value === 'retest' ? 'retest' : 'concession' })}></gh-select-list>`}
      ${this.scope === 'whole' || this.rest !== 'concession' ? nothing : html`<gh-field multiline .label=${travellerWords().hold.statement} .value=${this.statement} .error=${this.missing && this.statement.trim() === '' ? needed : ''} @field-input=${(event: CustomEvent<{ value: string }>) => this.#take({ statement: event.detail.value })}></gh-field>`}`;
  }

  #take({ scope = this.scope, lots = this.lots, rest = this.rest, statement = this.statement }: Partial<{ readonly scope: Scope; readonly lots: readonly string[]; readonly rest: 'retest' | 'concession' | ''; readonly statement: string }>): void {
    Object.assign(this, { scope, lots, rest, statement });
    const written = statement.trim();
    const chosen: SomeChosen = scope === 'whole' ? { some: null, fits: true }
      : { some: { lots, rest: rest === 'concession' ? { by: 'concession', statement: written } : { by: 'retest' } }, fits: lots.length > 0 && rest !== '' && (rest === 'retest' || written !== '') };
    tell(this, 'some-chosen', chosen);
  }
}

function scopeOf(value: string): Scope {
  return value === 'near' || value === 'chosen' ? value : 'whole';
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-some-members': GhSomeMembers;
  }
}
