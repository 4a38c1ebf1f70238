import { LitElement, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { isWhole, verdictOf } from '../../shared/traveller/index.ts';
import type { Charge, GateRecord, Subject } from '../../shared/traveller/index.ts';
import type { Reader } from '../../shared/words/index.ts';
import { Follow, link } from '../link/index.ts';
import { TravellerStore, type TravellerView } from '../link/traveller-store.ts';
import '../parts/gh-button.ts';
import '../desk/gh-cautions.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-state-mark.ts';
import '../parts/gh-traveller-head.ts';
import { partStyles } from '../parts/part-styles.ts';
import { tell } from '../parts/tell.ts';
import '../shell/gh-kiosk-outbox.ts';
import { homeOf, routeOf, travellerPath, type Route } from '../shell/routes.ts';
import { askedNow, type AskedNow } from './asked-now.ts';
import { deskStyles } from './desk-styles.ts';
import './charge/gh-charge-view.ts';
import './gh-asked.ts';
import type { GhAsked } from './gh-asked.ts';
import './gh-correct-sheet.ts';
import './gh-slips.ts';
import './gh-text-sheet.ts';
import './gh-verdict-panel.ts';
import { headFacts, severitiesInForce, standingOf, whatItIs } from './head-facts.ts';
import { linkKey } from './link-key.ts';
import { slipRows, type Correctable } from './slip-rows.ts';
import { catalogue, travellerWords } from './speak.ts';

function isCharge(subject: Subject): subject is Charge {
  return subject.kind === 'furnace' || subject.kind === 'coating';
}
type OpenView = Extract<TravellerView, { state: 'open' }>;

/** The desk of one traveller: its head, its slips, and at the foot the one thing asked now. With `?work` the history folds away and the work fills the screen. */
@customElement('gh-traveller-desk')
export class GhTravellerDesk extends LitElement {
  static override styles = [partStyles, linkKey, deskStyles];
  @property({ attribute: false }) route: Route = routeOf('/');
  @state() private store: TravellerStore | null = null;
  @state() private chosen: string | null = null;
  /** The gate worked on during this visit, whose verdict is shown when it falls. */
  @state() private worked: string | null = null;
  @state() private unfolded = false;
  @state() private writing: 'hold' | 'note' | null = null;
  @state() private correcting: Correctable | null = null;
  @state() private more: boolean | null = null;
  #arriving = true;
  #asked = '';
  #end: (() => void) | null = null;
  readonly #session = new Follow(this, () => link.session);
  readonly #connection = new Follow(this, () => link.connection);

  override connectedCallback(): void {
    super.connectedCallback();
    if (this.store !== null) this.#enter();
  }
  override disconnectedCallback(): void {
    this.#leave();
    super.disconnectedCallback();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('route')) return;
    this.toggleAttribute('working', this.#working());
    const stream = `${this.route.parts[0] ?? ''}:${this.route.parts[1] ?? ''}`;
    this.unfolded = false;
    this.#arriving = true;
    if (this.store?.stream === stream) return;
    this.#leave();
    this.store = new TravellerStore(link, stream, (refusal) => catalogue().refusal(refusal));
    this.chosen = this.worked = this.writing = this.correcting = this.more = null;
    this.#enter();
  }

  protected override updated(): void {
    const view = this.store?.view.value;
    if (view?.state !== 'open') return;
    const asked = askedNow(view.subject, this.chosen);
    if (asked.what === 'work') this.worked = asked.gate.id;
    this.toggleAttribute('keypad', asked.what === 'work' && asked.work.demand.characteristic.kind === 'measured');
    this.#openWhenCalledFor(view.subject, asked);
    this.#startAtTop(asked);
  }

  override render() {
    const view = this.store?.view.value ?? { state: 'loading' };
    const words = travellerWords();
    if (view.state === 'loading') return html`<gh-notice alone kind="loading" .happened=${words.loading(this.route.parts[1] ?? '')}></gh-notice>`;
    if (view.state === 'faulty') {
      const { happened, kept, next } = view.fault.words;
      return html`<gh-notice alone kind=${view.fault.status === 0 ? 'offline' : 'refusal'} .happened=${happened} .kept=${kept} .next=${next}>
        <gh-button @click=${() => this.store?.retry()}>${words.tryAgain}</gh-button></gh-notice>`;
    }
    const reader: Reader = { names: view.names, subject: view.subject };
    const asked = askedNow(view.subject, this.chosen);
    const folded = this.#working() && !this.unfolded;
    return html`${this.#working() ? this.#workHead(view) : this.#head(view)}
      ${folded ? nothing : this.#slips(view, reader)}
      <section class="foot">
        ${this.#verdict(view, asked, reader)} ${this.#shownAsked(view, asked, reader)} ${this.#cautions(asked)} ${this.#others(asked)}
      </section>
      ${folded || !isCharge(view.subject) ? nothing : html`<gh-charge-view .charge=${view.subject}></gh-charge-view>`}
      ${this.#working() ? html`<gh-kiosk-outbox></gh-kiosk-outbox>` : nothing} ${this.#sheets(view.subject)}`;
  }

  #head({ subject }: OpenView) {
    const words = travellerWords();
    const { state: mark, word } = standingOf(subject);
    const id = encodeURIComponent(subject.id);
    return html`<gh-traveller-head .subject=${subject.id} .what=${`${words.subject[subject.kind]} · ${whatItIs(subject)}`} .state=${mark} .stateWord=${word} .facts=${headFacts(subject)}>
        <a class="key" href=${`${travellerPath(subject.kind, subject.id)}?work`}>${words.keys.work}</a>
        <gh-button @click=${() => (this.writing = 'note')}>${words.keys.note}</gh-button>
        <gh-button mark="hold" @click=${() => (this.writing = 'hold')}>${words.keys.hold}</gh-button>
        <a class="key" href=${`/trace/${subject.kind}/${id}`}>${words.keys.trace}</a>
        <a class="key" href=${`/api/travellers/${subject.kind}/${id}/traveller.pdf`} target="_blank" rel="noopener">${words.keys.print}</a>
      </gh-traveller-head>
      ${this.#severities(subject)}`;
  }

  /** One row: back, what it is, the keys of the whole traveller, the person. Nothing else takes height from the work. */
  #workHead({ subject, slips }: OpenView) {
    const words = travellerWords();
    const { state: mark } = standingOf(subject);
    const session = this.#session.value;
    const newest = slips.at(-1)?.version ?? 0;
    return html`<header class="bar">
      <a class="key" href=${session === null ? '/bench' : homeOf(session.roles)}>${words.back}</a>
      <h1><gh-state-mark state=${mark}></gh-state-mark><span class="id">${subject.id}</span> <span class="what">${subject.kind === 'lot' ? subject.product.designation : whatItIs(subject)}</span></h1>
      ${severitiesInForce(subject).map((severity) => html`<gh-state-mark boxed state=${severity} word=${severity === 'tightened' ? words.severity.tightened : words.severity.reduced}></gh-state-mark>`)}
      <gh-button pressed=${this.unfolded ? 'true' : 'false'} @click=${() => (this.unfolded = !this.unfolded)}>${words.keys.slips(newest)}</gh-button>
      ${this.unfolded ? html`<gh-button @click=${() => (this.writing = 'note')}>${words.keys.note}</gh-button>` : nothing}
      <gh-button mark="hold" @click=${() => (this.writing = 'hold')}>${words.keys.hold}</gh-button>
      ${session === null ? nothing : html`<button type="button" class="key" aria-label=${words.person(session.name)} @click=${() => tell(this, 'person-wanted')}>${session.name}</button>`}
    </header>`;
  }

  #severities(subject: Subject) {
    const words = travellerWords().severity;
    const severities = severitiesInForce(subject);
    return severities.length === 0 ? nothing : html`<p class="severities">${severities.map((severity) => html`<gh-state-mark boxed state=${severity} word=${severity === 'tightened' ? words.tightened : words.reduced}></gh-state-mark>`)}</p>`;
  }

  #slips(view: OpenView, reader: Reader) {
    const { slips, own, subject } = view;
    return html`<gh-slips .rows=${slipRows(slips, own)} .subject=${subject} .reader=${reader} ?more=${this.more ?? (slips[0]?.version ?? 1) > 1} ?correcting=${subject.ended === null}
      @earlier-wanted=${() => void this.#earlier()} @correction-wanted=${(event: CustomEvent<Correctable>) => (this.correcting = event.detail)}
      @entry-dismissed=${(event: CustomEvent<{ clientId: string }>) => void this.store?.dismiss(event.detail.clientId)}></gh-slips>`;
  }

  /** The gate worked during this visit, once its verdict has fallen and nothing else is asked here in the meantime. */
  #judged({ subject }: OpenView, asked: AskedNow): GateRecord | null {
    const worked = subject.gates.find(({ id }) => id === this.worked);
    const again = asked.what === 'work' || asked.what === 'sort' || (subject.kind === 'batch' && subject.released !== null);
    return worked === undefined || again || verdictOf(worked) === null ? null : worked;
  }

  /** The verdict of the gate just worked; its place is kept from the start so that its live region is there before it falls. */
  #verdict(view: OpenView, asked: AskedNow, reader: Reader) {
    const { subject, confirmed } = view;
    const shown = this.#judged(view, asked);
    const session = this.#session.value;
    const back = this.#working() && session !== null && !this.#isAskedHere(asked) ? homeOf(session.roles) : '';
    const kept = shown !== null && (confirmed.gates.find(({ id }) => id === shown.id)?.verdicts.length ?? 0) < shown.verdicts.length;
    return html`<gh-verdict-panel class=${shown === null ? 'none' : ''} .subject=${subject} .gate=${shown} .reader=${reader} .back=${back} ?askedBelow=${this.#isAskedHere(asked)} ?kept=${kept}></gh-verdict-panel>`;
  }

  /** After a verdict, what another bench does next is said there in words only. */
  #shownAsked(view: OpenView, asked: AskedNow, reader: Reader) {
    const { subject } = view;
    const judged = this.#judged(view, asked) !== null;
    if (judged && !this.#isAskedHere(asked)) return nothing;
    return html`<gh-asked .store=${this.store} .subject=${subject} .asked=${asked} .reader=${reader} ?verdictShown=${judged}></gh-asked>`;
  }

  #isAskedHere(asked: AskedNow): boolean {
    if (asked.what === 'open') return asked.gate.bench === this.#session.value?.bench;
    return asked.what === 'work' || asked.what === 'sort' || asked.what === 'decide' || asked.what === 'releasePowder';
  }

  /** The other characteristics of the open gate that still ask for something. */
  #others(asked: AskedNow) {
    if (asked.what !== 'work') return nothing;
    const { gate, work } = asked;
    const others = gate.work.filter((each) => each !== work && !isWhole(each, gate.lotSize) && each.demand.basis.by !== 'interval');
    if (others.length === 0) return nothing;
    return html`<nav class="others" aria-label=${travellerWords().other}><span class="printed">${travellerWords().other}</span>
      ${others.map(({ demand: { characteristic } }) => html`<gh-button @click=${() => (this.chosen = characteristic.id)}>${characteristic.name}</gh-button>`)}</nav>`;
  }

  #cautions(asked: AskedNow) {
    if (asked.what !== 'work') return nothing;
    const { gate } = asked;
    return html`<gh-cautions .cautions=${gate.cautions ?? (gate.plan?.cautions ?? []).map((caution) => ({ caution, text: null }))}></gh-cautions>`;
  }

  #sheets(subject: Subject) {
    const words = travellerWords();
    const { store, writing, correcting } = this;
    if (store === null) return nothing;
    const done = (): void => void (this.writing = this.correcting = null);
    return html`${writing === 'hold' ? html`<gh-text-sheet grave .heading=${words.hold.put} .label=${words.hold.putReason} .doWord=${words.hold.put} .give=${(reason: string) => store.give({ type: 'hold', subject: subject.stream, reason })} @text-done=${done}></gh-text-sheet>` : nothing}
      ${writing === 'note' ? html`<gh-text-sheet .heading=${words.note.title} .label=${words.note.text} .doWord=${words.note.add} .give=${(text: string) => store.give({ type: 'addNote', subject: subject.stream, text })} @text-done=${done}></gh-text-sheet>` : nothing}
      ${correcting?.what === 'reading' ? html`<gh-correct-sheet .store=${store} .at=${{ subject, gate: correcting.gate, characteristic: correcting.characteristic, reading: correcting.reading }} @text-done=${done}></gh-correct-sheet>` : nothing}
      ${correcting?.what === 'finding' ? html`<gh-text-sheet .heading=${words.correct.withdraw(catalogue().labels.findingClasses[correcting.finding.class])} .label=${words.correct.reason} .doWord=${words.correct.withdrawDo}
        .give=${(reason: string) => store.give({ type: 'withdrawFinding', subject: subject.stream, gate: correcting.gate, characteristic: correcting.characteristic.id, finding: correcting.finding.slip, reason })} @text-done=${done}></gh-text-sheet>` : nothing}`;
  }

  #working(): boolean {
    return this.route.query.has('work');
  }

  /** Touching a row of the bench list means "start": a gate that is due at this bench on arrival is opened. Later ones wait for their key. */
  #openWhenCalledFor(subject: Subject, asked: AskedNow): void {
    const arriving = this.#arriving;
    // A page that was just loaded may not have its channel yet; the server draws the sample, so it is waited for.
    this.#arriving = arriving && this.#connection.value === 'offline';
    if (!arriving || this.#arriving || asked.what !== 'open' || !this.#working() || asked.gate.bench !== this.#session.value?.bench) return;
    void this.updateComplete.then(() => this.renderRoot.querySelector<GhAsked>('gh-asked')?.openGate(subject, asked.gate));
  }

  /** When something else is asked, it begins at the top of the screen. */
  #startAtTop(asked: AskedNow): void {
    const now = [asked.what, 'gate' in asked ? asked.gate.id : '', asked.what === 'work' ? asked.work.demand.characteristic.id : ''].join('/');
    if (this.#working() && now !== this.#asked) scrollTo({ top: 0, behavior: 'instant' });
    this.#asked = now;
  }

  async #earlier(): Promise<void> {
    this.more = (await this.store?.earlier()) ?? false;
  }

  #enter(): void {
    this.store?.open();
    this.#end = this.store?.view.follow(() => this.requestUpdate()) ?? null;
  }
  #leave(): void {
    this.#end?.();
    this.#end = null;
    this.store?.close();
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-traveller-desk': GhTravellerDesk;
  }
}
