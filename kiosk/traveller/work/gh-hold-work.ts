import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { ref } from 'lit/directives/ref.js';
import { mayGive, possibleDispositions, RIGHTS, streamParts, verdictOf } from '../../../shared/traveller/index.ts';
import type { Disposition, DispositionKind, Hold, Subject } from '../../../shared/traveller/index.ts';
import { failedPositionSentence, nearSentence } from '../../../shared/words/charge-slips.en.ts';
import type { Reader } from '../../../shared/words/index.ts';
import { chartAddressOf } from '../../desk/chart-address.ts';
import { Follow, link, type RefusalText } from '../../link/index.ts';
import type { TravellerStore } from '../../link/traveller-store.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-demand.ts';
import '../../parts/gh-field.ts';
import '../../parts/gh-notice.ts';
import '../../parts/gh-select-list.ts';
import '../../parts/gh-signature.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { travellerPath } from '../../shell/routes.ts';
import { catalogue, format, travellerWords } from '../speak.ts';
import { dispositionOf, textNeeded, type DispositionText } from './disposition-of.ts';
import { productsOfGrade, type ProductChoice } from './products-of-grade.ts';
import './gh-some-members.ts';
import type { SomeChosen } from './gh-some-members.ts';
import { seenWhenShown } from './focus-when-shown.ts';
import { workStyles } from './work-styles.ts';

const WHOLE: SomeChosen = { some: null, fits: true };

/** A held subject: why, what was found, and for those who may, what becomes of it, signed. */
@customElement('gh-hold-work')
export class GhHoldWork extends LitElement {
  static override styles = [partStyles, workStyles, css`
    .evidence { background: var(--slip); padding: var(--pad) calc(1.4 * var(--pad)); border-inline-start: calc(3 * var(--rule-strong)) solid var(--held); }
    .evidence ul { padding-inline-start: 1.2em; }
    .form { display: grid; gap: var(--gap); }
  `];
  @property({ attribute: false }) store: TravellerStore | null = null;
  @property({ attribute: false }) subject: Subject | null = null;
  @property({ attribute: false }) hold: Hold | null = null;
  @property({ attribute: false }) reader: Reader = {};
  /** The verdict that holds the subject is on the screen already. */
  @property({ type: Boolean }) seen = false;
  @state() private kind: DispositionKind | null = null;
  @state() private texts: DispositionText = { reason: '', text: '' };
  @state() private missing: { readonly reason: boolean; readonly text: boolean } = { reason: false, text: false };
  @state() private some: SomeChosen = WHOLE;
  @state() private signing = false;
  @state() private busy = false;
  @state() private refusal: RefusalText | null = null;
  @state() private products: readonly ProductChoice[] = [];
  readonly #session = new Follow(this, () => link.session);

  override render() {
    const { subject, hold } = this;
    if (subject === null || hold === null) return nothing;
    const words = travellerWords().hold;
    const who = words.by(this.#name(hold.by), format().dateTime(hold.at));
    return html`<div class="pile">
      <gh-demand .context=${`${subject.id} · ${hold.id}`} .demand=${words.demand} .hint=${`${hold.reason}. ${words.because[hold.cause.by]} ${who}`}></gh-demand>
      ${this.seen || this.signing ? nothing : this.#evidence(subject, hold)}
      ${this.refusal === null ? nothing : html`<gh-notice kind="refusal" .happened=${this.refusal.happened} .kept=${this.refusal.kept} .next=${this.refusal.next} .dismiss=${travellerWords().dismiss} @notice-dismissed=${() => (this.refusal = null)}></gh-notice>`}
      ${this.#mayDecide() ? (this.signing ? this.#sign(subject, hold) : this.#choose(subject, hold)) : html`<p>${words.who(this.#deciders())}</p>`}
      <div class="row"><a class="key" href=${`/api/travellers/${subject.kind}/${encodeURIComponent(subject.id)}/hold-tag.pdf`} target="_blank" rel="noopener">${words.tag}</a>${this.#chargeLink(hold)}${this.#chartLink(hold)}</div>
    </div>`;
  }

  #evidence(subject: Subject, { cause }: Hold) {
    if (cause.by === 'person' || cause.by === 'recall') return nothing;
    const gate = subject.gates.find(({ id }) => id === cause.gate);
    const verdict = gate === undefined ? null : verdictOf(gate)?.verdict ?? null;
    if (verdict === null) return nothing;
    const lines = catalogue().verdictLines(verdict, this.reader);
    const speak = { format: format(), labels: catalogue().labels };
    return html`<section class="evidence" aria-label=${travellerWords().hold.evidence}><p><strong>${catalogue().verdictSentence(verdict, this.reader)}</strong></p>
      ${lines.length === 0 ? nothing : html`<ul>${lines.map((line) => html`<li>${line}</li>`)}</ul>`}
      ${(verdict.failedPositions ?? []).map((failed) => html`<p>${failedPositionSentence(failed, speak)}</p>`)}
      ${cause.by === 'charge' && cause.near !== undefined ? html`<p><strong>${nearSentence(cause.near, speak)}</strong></p>` : nothing}</section>`;
  }

  #chargeLink({ cause }: Hold) {
    const parts = cause.by === 'charge' ? streamParts(cause.charge) : null;
    if (parts === null) return nothing;
    return html`<span>${travellerWords().hold.chargeDecides} <a href=${travellerPath(parts.kind, parts.id)}>${parts.id}</a></span>`;
  }

  #chartLink({ cause }: Hold) {
    const address = cause.by === 'chart' ? chartAddressOf(cause.chart) : null;
    return address === null ? nothing : html`<a class="key" href=${address}>${travellerWords().slip.chart}</a>`;
  }

  #choose(subject: Subject, hold: Hold) {
    const words = travellerWords().hold;
    const { dispositions } = catalogue().labels;
    const options = possibleDispositions(subject, hold).map((kind) => ({ value: kind, text: dispositions[kind].name, hint: dispositions[kind].hint }));
    return html`<div class="form">
      <gh-select-list columns="2" .label=${words.dispose} .options=${options} .value=${this.kind ?? ''} @option-chosen=${(event: CustomEvent<{ value: string }>) => void this.#chooseKind(subject, options.find(({ value }) => value === event.detail.value)?.value ?? null)}></gh-select-list>
      ${this.kind === null ? nothing : html`${this.#textField(this.kind)} ${this.#someOf(subject, this.kind)}
        <gh-field multiline .label=${words.reason} .value=${this.texts.reason} .error=${this.missing.reason ? words.missing : ''} @field-input=${(event: CustomEvent<{ value: string }>) => (this.texts = { ...this.texts, reason: event.detail.value })}></gh-field>
        <div class="row"><gh-button kind="primary" @click=${() => this.#goOnToSign()}>${words.next}</gh-button></div>`}
    </div>`;
  }

  #textField(kind: DispositionKind) {
    const words = travellerWords().hold;
    const error = this.missing.text ? words.missing : '';
    const take = (event: CustomEvent<{ value: string }>): void => void (this.texts = { ...this.texts, text: event.detail.value });
    switch (textNeeded(kind)) {
      case 'none': return nothing;
      case 'product': return html`<gh-select-list columns="2" .label=${words.product} .options=${this.products} .value=${this.texts.text} .error=${error} @option-chosen=${take}></gh-select-list>`;
      case 'instruction': return html`<gh-field multiline .label=${words.instruction} .value=${this.texts.text} .error=${error} @field-input=${take}></gh-field>`;
      case 'statement': return html`<gh-field multiline .label=${words.statement} .value=${this.texts.text} .error=${error} @field-input=${take}></gh-field>`;
      case 'to': return html`<gh-field .label=${words.to} .value=${this.texts.text} .error=${error} @field-input=${take}></gh-field>`;
    }
  }

  /** Of a charge with several lots some alone may be done again. */
  #someOf(subject: Subject, kind: DispositionKind) {
    if ((subject.kind !== 'furnace' && subject.kind !== 'coating') || (kind !== 'reSinter' && kind !== 'recoat')) return nothing;
    return html`<gh-some-members .charge=${subject} ?missing=${this.missing.text} @some-chosen=${(event: CustomEvent<SomeChosen>) => (this.some = event.detail)}></gh-some-members>`;
  }

  #sign(subject: Subject, hold: Hold) {
    const words = travellerWords();
    const disposition = this.kind === null ? null : dispositionOf(this.kind, this.texts, this.some.some);
    if (disposition === null) return nothing;
    return html`<gh-signature ${ref(seenWhenShown)} .meaning=${words.hold.sign(catalogue().labels.dispositions[disposition.kind].name)} .who=${this.#session.value?.name ?? ''} .statement=${words.hold.statementSigned(subject.id)}
        .words=${words.pin} ?busy=${this.busy} @signed=${(event: CustomEvent<{ pin: string }>) => void this.#dispose(subject, hold, disposition, event.detail.pin)}>
        ${this.#evidence(subject, hold)}<p><strong>${catalogue().dispositionSentence(disposition)}</strong></p><p>${this.texts.reason}</p>
      </gh-signature>
      <div class="row"><gh-button @click=${() => (this.signing = false)}>${words.hold.back}</gh-button></div>`;
  }

  async #chooseKind(subject: Subject, kind: DispositionKind | null): Promise<void> {
    this.kind = kind;
    this.some = WHOLE;
    this.texts = { ...this.texts, text: '' };
    if (kind === 'regrade' && subject.kind === 'lot') this.products = await productsOfGrade(subject.product);
  }

  #goOnToSign(): void {
    const needsText = this.kind !== null && textNeeded(this.kind) !== 'none';
    this.missing = { reason: this.texts.reason.trim() === '', text: (needsText && this.texts.text.trim() === '') || !this.some.fits };
    this.signing = !this.missing.reason && !this.missing.text;
  }

  async #dispose(subject: Subject, hold: Hold, disposition: Disposition, pin: string): Promise<void> {
    this.busy = true;
    const outcome = await this.store?.give({ type: 'dispose', subject: subject.stream, hold: hold.id, disposition, reason: this.texts.reason.trim() }, { pin, seen: subject.version });
    this.busy = false;
    if (outcome?.state === 'refused') return void (this.refusal = outcome.words);
    this.refusal = null;
    this.signing = false;
    this.kind = null;
    this.texts = { reason: '', text: '' };
  }

  #mayDecide(): boolean {
    const session = this.#session.value;
    return session !== null && mayGive('dispose', session.roles);
  }
  #deciders(): string {
    return format().list(RIGHTS.dispose.map((role) => catalogue().labels.roles[role]));
  }
  #name(badge: string): string {
    return this.reader.names?.[badge] ?? badge;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-hold-work': GhHoldWork;
  }
}
