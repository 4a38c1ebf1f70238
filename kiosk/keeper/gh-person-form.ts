import { LitElement, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { ROLES, type Role } from '../../shared/traveller/index.ts';
import { keeperDeskWords } from '../../shared/words/keeper-desk.en.ts';
import type { PersonRow } from '../../shared/wire/views.ts';
import { refusalNotice } from '../desk/asked-notice.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { Giving } from '../desk/giving.ts';
import { deskWords, labels } from '../desk/words.ts';
import '../parts/gh-button.ts';
import '../parts/gh-field.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-select-list.ts';
import { partStyles } from '../parts/part-styles.ts';
import './gh-new-pin.ts';

const words = keeperDeskWords.people;
interface Fields { readonly badge: string; readonly name: string; readonly roles: readonly Role[]; readonly active: boolean; readonly reason: string }
const empty: Fields = { badge: '', name: '', roles: [], active: true, reason: '' };

/** Enrols a person, or with `person` changes one. A first PIN is typed on the pad and stands nowhere else. */
@customElement('gh-person-form')
export class GhPersonForm extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property({ attribute: false }) person: PersonRow | null = null;
  @state() private fields = empty;
  @state() private asked = false;
  @state() private done = '';
  readonly #giving = new Giving(this);

  protected override willUpdate(changed: PropertyValues<this>): void {
    const { person } = this;
    if (!changed.has('person') || person === null) return;
    this.fields = { badge: person.badge, name: person.name, roles: ROLES.filter((role) => person.roles.includes(role)), active: person.active, reason: '' };
  }

  override render() {
    const { person } = this;
    return html`<section class="sheet" aria-labelledby="title">
      <h2 id="title">${person === null ? words.enrolTitle : words.changeTitle(person.name)}</h2>
      ${refusalNotice(this.#giving)} ${this.done === '' ? nothing : html`<gh-notice kind="done" happened=${this.done}></gh-notice>`}
      <div class="fields">
        ${this.#field('badge', words.badge, { hint: words.badgeHint, fixed: person !== null, most: 64 })} ${this.#field('name', words.name, { most: 80 })}
      </div>
      <gh-select-list label=${words.roles} multiple columns="3" .options=${ROLES.map((role) => ({ value: role, text: labels.roles[role] }))} .values=${this.fields.roles} error=${this.#missing('roles')}
        @options-chosen=${({ detail }: CustomEvent<{ values: readonly string[] }>) => this.#set({ roles: ROLES.filter((role) => detail.values.includes(role)) })}></gh-select-list>
      ${person === null ? this.#firstPin() : this.#change(person)}
    </section>`;
  }

  #firstPin() {
    return html`<h3>${words.firstPin}</h3><p class="soft">${words.firstPinHint}</p>
      <gh-new-pin .busy=${this.#giving.busy !== null} @pin-chosen=${this.#enrol}></gh-new-pin>`;
  }

  #change(person: PersonRow) {
    return html`<gh-select-list label=${words.standing} columns="2" .options=${[{ value: 'yes', text: words.mayWork }, { value: 'no', text: words.mayNotWork }]} .value=${this.fields.active ? 'yes' : 'no'}
        @option-chosen=${({ detail }: CustomEvent<{ value: string }>) => this.#set({ active: detail.value === 'yes' })}></gh-select-list>
      ${this.#field('reason', deskWords.reason, { hint: words.reasonHint, most: 500 })}
      <div class="keys"><gh-button kind="primary" .busy=${this.#giving.busy === 'change'} busy-word=${deskWords.busy} @click=${() => void this.#save(person)}>${words.save}</gh-button></div>
      <h3>${words.setPin}</h3><p class="soft">${words.setPinHint}</p>
      <gh-new-pin .busy=${this.#giving.busy !== null} @pin-chosen=${(event: CustomEvent<{ pin: string }>) => void this.#setPin(person, event.detail.pin)}></gh-new-pin>`;
  }

  #field(key: 'badge' | 'name' | 'reason', label: string, { hint = '', fixed = false, most }: { readonly hint?: string; readonly fixed?: boolean; readonly most: number }) {
    return html`<gh-field label=${label} hint=${hint} ?readonly=${fixed} max-length=${most} .value=${this.fields[key]} error=${this.#missing(key)}
      @field-input=${({ detail }: CustomEvent<{ value: string }>) => this.#set({ [key]: detail.value })}></gh-field>`;
  }

  #missing(key: 'badge' | 'name' | 'roles' | 'reason'): string {
    if (!this.asked || (key === 'reason' && this.person === null)) return '';
    const { fields } = this;
    const isMissing = key === 'roles' ? fields.roles.length === 0 : fields[key].trim() === '';
    return isMissing ? words.missing[key] : '';
  }

  #set(part: Partial<Fields>): void {
    this.fields = { ...this.fields, ...part };
    this.done = '';
  }

  get #lacks(): boolean {
    this.asked = true;
    return (['badge', 'name', 'roles', 'reason'] as const).some((key) => this.#missing(key) !== '');
  }

  async #enrol(event: CustomEvent<{ pin: string }>): Promise<void> {
    const { badge, name, roles } = this.fields;
    if (this.#lacks) return;
    if ((await this.#giving.give('enrol', { type: 'enrolPerson', badge: badge.trim(), name: name.trim(), roles, pin: event.detail.pin })) === null) return;
    this.asked = false;
    this.fields = empty;
    this.done = words.enrolled(name.trim());
  }

  async #save(person: PersonRow): Promise<void> {
    const { name, roles, active, reason } = this.fields;
    if (this.#lacks) return;
    if ((await this.#giving.give('change', { type: 'changePerson', badge: person.badge, name: name.trim(), roles, active, reason: reason.trim() })) === null) return;
    this.asked = false;
    this.#set({ reason: '' });
    this.done = words.changed(name.trim());
  }

  async #setPin(person: PersonRow, pin: string): Promise<void> {
    if ((await this.#giving.give('pin', { type: 'changePin', badge: person.badge, pin })) !== null) this.done = words.pinSet(person.name);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-person-form': GhPersonForm;
  }
}
