import { LitElement, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { mayGive } from '../../shared/traveller/index.ts';
import { labelOf } from '../../shared/words/words-for.ts';
import { plansDeskWords } from '../../shared/words/plans-desk.en.ts';
import type { SwitchingRow } from '../../shared/wire/views.ts';
import { refusalNotice } from '../desk/asked-notice.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { focusSheet } from '../desk/focus-sheet.ts';
import { Giving } from '../desk/giving.ts';
import { showFigure } from '../desk/show.ts';
import { deskWords, labels } from '../desk/words.ts';
import { Follow, link } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-field.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-select-list.ts';
import '../parts/gh-sheet.ts';
import '../parts/gh-signature.ts';
import '../parts/gh-state-mark.ts';
import { partStyles } from '../parts/part-styles.ts';
import { tell } from '../parts/tell.ts';
import { travellerPath } from '../shell/routes.ts';
import { movedText } from './moved-text.ts';

const words = plansDeskWords.switching;
type Given = CustomEvent<{ value: string }>;

/**
 * One switching state: why it stands where it stands, its settings, and the engineer's word that lets discontinued inspection go on.
 * @fires switching-changed - when something was written
 */
@customElement('gh-switching-state')
export class GhSwitchingState extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property({ attribute: false }) row: SwitchingRow | null = null;
  @state() private steady = false;
  @state() private reducedAllowed = false;
  @state() private reason = '';
  @state() private cause = '';
  @state() private asked: 'none' | 'set' | 'resume' = 'none';
  @state() private resumes = false;
  @state() private done = '';
  readonly #giving = new Giving(this);
  readonly #session = new Follow(this, () => link.session);

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('row') || this.row === null) return;
    this.steady = this.row.steady;
    this.reducedAllowed = this.row.reducedAllowed;
  }

  override render() {
    const { row } = this;
    if (row === null) return nothing;
    const what = this.#what(row);
    const mayChange = mayGive('setSwitching', this.#session.value?.roles ?? []);
    return html`<div class="page-part sheet">
      <h2>${what} <gh-state-mark state=${row.severity} word=${labels.severities[row.severity]} boxed></gh-state-mark></h2>
      ${this.done === '' ? nothing : html`<gh-notice kind="done" happened=${this.done}></gh-notice>`}
      <dl class="facts">${[[words.columns.score, showFigure(row.score)], [words.columns.inRow, showFigure(row.acceptedInRow)], [words.onTightened, showFigure(row.notAcceptedOnTightened)], [words.columns.moved, movedText(row)]].map(([label, text]) => html`<div><dt>${label}</dt><dd>${text}</dd></div>`)}</dl>
      ${row.movedLots.length === 0 ? nothing : html`<h3>${words.lots}</h3><ul class="lines">${row.movedLots.map((lot) => html`<li><a href=${travellerPath('lot', lot)}>${lot}</a></li>`)}</ul>`}
      <h3>${words.recent}</h3>
      ${row.recent.length === 0 ? html`<p class="soft">${words.recentNone}</p>` : html`<ul class="lines">${row.recent.map(({ lot, accepted }) => html`<li><gh-state-mark state=${accepted ? 'accepted' : 'rejected'} word=${labels.verdicts[accepted ? 'accepted' : 'rejected']} size="small"></gh-state-mark> <a href=${travellerPath('lot', lot)}>${lot}</a></li>`)}</ul>`}
      ${!mayChange ? html`<p class="soft">${words.mayNot}</p>` : html`${row.severity === 'discontinued' ? this.#discontinued(row, what) : nothing} ${this.#settings(row)}`}
    </div>`;
  }

  protected override updated(changed: PropertyValues): void {
    if (this.resumes && changed.has('resumes')) void focusSheet(this);
  }

  #what({ product, gate, characteristic, class: findingClass }: SwitchingRow): string {
    return [product, gate, characteristic, ...(findingClass === null ? [] : [labelOf(labels.findingClasses, findingClass)])].join(' / ');
  }

  #discontinued(row: SwitchingRow, what: string) {
    const session = this.#session.value;
    return html`<section class="sheet"><p>${words.discontinued}</p><div class="keys"><gh-button kind="grave" @click=${() => (this.resumes = true)}>${words.resume}</gh-button></div>
      <gh-sheet grave ?open=${this.resumes} heading=${words.resumeHeading} close-word=${deskWords.cancel} @sheet-closed=${() => (this.resumes = false)}>
        ${refusalNotice(this.#giving, ['resume'])}
        <gh-signature meaning=${words.resumeMeaning} who="${session?.name ?? ''} (${session?.badge ?? ''})" statement=${words.resumeStatement(what)} .words=${deskWords.pin} .busy=${this.#giving.busy !== null} @signed=${(event: CustomEvent<{ pin: string }>) => void this.#resume(row, event.detail.pin)}>
          <gh-field multiline label=${words.resumeReason} max-length="500" .value=${this.cause} error=${this.asked === 'resume' && this.cause.trim() === '' ? words.reasonMissing : ''} @field-input=${({ detail }: Given) => (this.cause = detail.value)}></gh-field>
        </gh-signature>
      </gh-sheet></section>`;
  }

  #settings(row: SwitchingRow) {
    const yesNo = [{ value: 'yes', text: words.yes }, { value: 'no', text: words.no }];
    return html`<section class="sheet" aria-labelledby="settings"><h3 id="settings">${words.settings}</h3><p class="soft">${words.settingsHint}</p>
      ${refusalNotice(this.#giving, ['set'])}
      <div class="halves">
        <gh-select-list label=${words.steady} columns="2" .options=${yesNo} .value=${this.steady ? 'yes' : 'no'} @option-chosen=${({ detail }: Given) => (this.steady = detail.value === 'yes')}></gh-select-list>
        <gh-select-list label=${words.reducedAllowed} columns="2" .options=${yesNo} .value=${this.reducedAllowed ? 'yes' : 'no'} @option-chosen=${({ detail }: Given) => (this.reducedAllowed = detail.value === 'yes')}></gh-select-list>
      </div>
      <gh-field label=${deskWords.reason} max-length="500" .value=${this.reason} error=${this.asked !== 'set' ? '' : this.#same(row) ? words.nothing : this.reason.trim() === '' ? words.reasonMissing : ''} @field-input=${({ detail }: Given) => (this.reason = detail.value)}></gh-field>
      <div class="keys"><gh-button kind="primary" .busy=${this.#giving.busy === 'set'} busy-word=${deskWords.busy} @click=${() => void this.#set(row)}>${words.save}</gh-button></div></section>`;
  }

  #same(row: SwitchingRow): boolean {
    return row.steady === this.steady && row.reducedAllowed === this.reducedAllowed;
  }

  async #set(row: SwitchingRow): Promise<void> {
    this.asked = 'set';
    this.done = '';
    if (this.#same(row) || this.reason.trim() === '') return;
    const { steady, reducedAllowed } = this;
    const command = { type: 'setSwitching', switching: row.stream, steady: steady === row.steady ? null : steady, reducedAllowed: reducedAllowed === row.reducedAllowed ? null : reducedAllowed, reason: this.reason.trim() } as const;
    if ((await this.#giving.give('set', command)) !== null) this.#tellDone(words.saved);
  }

  async #resume(row: SwitchingRow, pin: string): Promise<void> {
    this.asked = 'resume';
    if (this.cause.trim() === '') return;
    if ((await this.#giving.give('resume', { type: 'resumeInspection', switching: row.stream, reason: this.cause.trim() }, { pin })) === null) return;
    this.resumes = false;
    this.#tellDone(words.resumed);
  }

  #tellDone(done: string): void {
    this.asked = 'none';
    this.reason = this.cause = '';
    this.done = done;
    tell(this, 'switching-changed');
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-switching-state': GhSwitchingState;
  }
}
