import { LitElement, css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { html as open, unsafeStatic } from 'lit/static-html.js';
import { link, LinkFault, Follow, type PlantAtDoor } from '../link/index.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-button.ts';
import { partStyles } from '../parts/part-styles.ts';
import { chooseDensity } from '../theme/choose-theme.ts';
import { announce, announced } from './announce.ts';
import { loadDesk } from './desk-modules.ts';
import { fetchAhead } from './fetch-ahead.ts';
import './gh-kiosk-head.ts';
import './gh-kiosk-outbox.ts';
import { watchIdle } from './idle.ts';
import { goTo, listenForNavigation, route } from './navigation.ts';
import { openScanned } from './open-scanned.ts';
import { densityAt, DESKS, homeOf, type Desk } from './routes.ts';
import { called, listenForCalls, putCallAway } from './listen-for-calls.ts';
import { listenForScans } from './scan-listener.ts';
import { shellWords } from './words.ts';

/** After a failed start the server is tried again this much later, ms. */
const startAgainMs = 3000;

/** The frame around every desk: head, the desk, the line of the outbox. It knows who is signed on and where the page is. */
@customElement('gh-kiosk')
export class GhKiosk extends LitElement {
  static override styles = [
    partStyles,
    css`
      :host { min-block-size: 100dvh; display: flex; flex-direction: column; }
      main { flex: 1; padding: var(--pad) var(--pad) calc(2 * var(--pad)); min-inline-size: 0; outline: none; }
      main:focus-visible { outline: none; }
      main.bare { display: grid; align-content: center; }
      main > gh-notice { margin-block-end: calc(1.6 * var(--pad)); }
      .skip { position: absolute; inset-block-start: -10em; background: var(--slip); color: var(--link); padding: 0.6em 1em; z-index: 3; }
      .skip:focus { inset-block-start: 0; }
      .narrow { max-inline-size: 60rem; inline-size: 100%; margin-inline: auto; }
      @media print { main { padding: 0; } }
    `,
  ];
  @state() private plant: PlantAtDoor | null = null;
  @state() private fault: LinkFault | null = null;
  @state() private started = false;
  @state() private changing = false;
  @state() private badge = '';
  @state() private desk: { readonly name: string; readonly state: 'loading' | 'ready' | 'failed' } = { name: '', state: 'loading' };
  @state() private scanned: { readonly happened: string; readonly kept: string; readonly next: string } | null = null;
  readonly #session = new Follow(this, () => link.session);
  readonly #route = new Follow(this, () => route);
  readonly #called = new Follow(this, () => called);
  readonly #announced = new Follow(this, () => announced);

  override connectedCallback(): void {
    super.connectedCallback();
    listenForNavigation();
    listenForScans((text) => void this.#open(text));
    route.follow(() => (this.scanned = null));
    link.session.follow((session) => {
      if (session !== null) fetchAhead(session.roles);
    });
    listenForCalls();
    watchIdle(() => this.#rest());
    void this.#start();
  }

  protected override willUpdate(): void {
    const desk = this.#deskHere();
    const atDesk = this.#session.value !== null && !this.changing;
    chooseDensity(atDesk && desk !== undefined ? densityAt(desk, this.#route.value) : 'bench');
    if (atDesk && desk !== undefined && this.desk.name !== desk.name) void this.#load(desk);
    document.title = [this.#route.value.parts[1], shellWords().product].filter((part) => part !== undefined).join(' · ');
  }

  override render() {
    return html`<div class="unseen" role="status">${this.#announced.value}</div>${this.#shown()}`;
  }

  #shown() {
    const words = shellWords();
    const { plant, fault } = this;
    if (fault !== null) return html`<main class="bare"><gh-notice alone class="narrow" kind="offline" .happened=${fault.words.happened} .kept=${fault.words.kept} .next=${fault.words.next}></gh-notice></main>`;
    if (plant === null || !this.started) return html`<main class="bare"><gh-notice alone class="narrow" kind="loading" .happened=${words.starting}></gh-notice></main>`;
    if (!plant.opened) return html`<main>${this.#lazily('gh-set-up', () => import('../sign-on/gh-set-up.ts'), html`<gh-set-up @plant-opened=${() => void this.#start()}></gh-set-up>`)}</main>`;
    if (this.#session.value === null || this.changing) return html`<main id="work" tabindex="-1">${this.#lazily('gh-sign-on', () => import('../sign-on/gh-sign-on.ts'), this.#signOn(plant))}</main><gh-kiosk-outbox></gh-kiosk-outbox>`;
    return this.#atWork(plant);
  }

  #signOn(plant: PlantAtDoor) {
    return html`<gh-sign-on .plant=${plant} .badge=${this.badge} ?cancellable=${this.changing} @signed-on=${this.#signedOn} @sign-on-cancelled=${() => (this.changing = false)}></gh-sign-on>`;
  }

  #atWork(plant: PlantAtDoor) {
    const words = shellWords();
    const { value: here } = this.#route;
    const { scanned } = this;
    // Work at a traveller takes the whole screen; it brings its own head and outbox line.
    const working = here.desk === 'traveller' && here.query.has('work');
    return html`<nav aria-label=${words.skip}><a class="skip" href="#work" @click=${this.#skip}>${words.skip}</a></nav>
      ${working ? nothing : html`<gh-kiosk-head .route=${here} ?demo=${plant.plant?.demo === true} @person-wanted=${() => this.#changePerson('')}></gh-kiosk-head>`}
      <main id="work" tabindex="-1" @person-wanted=${() => this.#changePerson('')}>
        ${scanned === null ? nothing : html`<gh-notice kind="refusal" .happened=${scanned.happened} .kept=${scanned.kept} .next=${scanned.next} .dismiss=${words.close} @notice-dismissed=${() => (this.scanned = null)}></gh-notice>`}
        ${this.#callHere()}${this.#deskElement()}
      </main>
      ${working ? nothing : html`<gh-kiosk-outbox></gh-kiosk-outbox>`}`;
  }

  #callHere() {
    const words = shellWords();
    const call = this.#called.value;
    if (call === null) return nothing;
    return html`<gh-notice kind="fault" .happened=${call.kind === 'look' ? words.called.look(call.lot, String(call.look)) : words.called.drift(call.lot)} .next=${words.called.next} .dismiss=${words.close} @notice-dismissed=${putCallAway}></gh-notice>`;
  }

  #deskElement() {
    const words = shellWords();
    const { value: here } = this.#route;
    const desk = this.#deskHere();
    if (desk === undefined) return html`<gh-notice alone kind="empty" .happened=${words.notThere(here.path).happened} .next=${words.notThere(here.path).next}></gh-notice>`;
    if (this.desk.state === 'failed') {
      const { happened, kept, next } = words.deskFailed;
      return html`<gh-notice alone kind="fault" .happened=${happened} .kept=${kept} .next=${next}><gh-button @click=${() => void this.#load(desk)}>${words.tryAgain}</gh-button></gh-notice>`;
    }
    if (this.desk.state === 'loading' || this.desk.name !== desk.name) return html`<gh-notice alone kind="loading" .happened=${words.loadingDesk}></gh-notice>`;
    const tag = unsafeStatic(`gh-${desk.name}-desk`);
    return open`<${tag} .route=${here}></${tag}>`;
  }

  /** Shows an element once its code is here; a custom element fills itself in when it is defined. */
  #lazily(tag: string, load: () => Promise<unknown>, element: unknown): unknown {
    if (customElements.get(tag) === undefined) void load().then(() => this.requestUpdate(), () => setTimeout(() => this.requestUpdate(), startAgainMs));
    return element;
  }

  #deskHere(): Desk | undefined {
    return DESKS.find(({ name }) => name === this.#route.value.desk);
  }

  async #load(desk: Desk): Promise<void> {
    this.desk = { name: desk.name, state: customElements.get(`gh-${desk.name}-desk`) === undefined ? 'loading' : 'ready' };
    if (this.desk.state === 'ready') return;
    const state = await loadDesk(desk.name).then(() => 'ready' as const, () => 'failed' as const);
    if (this.desk.name === desk.name) this.desk = { name: desk.name, state };
  }

  async #start(): Promise<void> {
    try {
      this.plant = await link.plant();
      const session = this.plant.opened ? await link.resumeSession() : null;
      this.fault = null;
      this.started = true;
      if (session !== null && this.#route.value.desk === '') goTo(homeOf(session.roles), 'replace');
    } catch (error) {
      if (!(error instanceof LinkFault)) throw error;
      this.fault = error;
      setTimeout(() => void this.#start(), startAgainMs);
    }
  }

  readonly #signedOn = (): void => {
    const session = link.session.value;
    this.changing = false;
    this.badge = '';
    if (session === null) return;
    announce(shellWords().signedOn(session.name, session.bench));
    const desk = this.#deskHere();
    if (desk === undefined || !desk.roles.some((role) => session.roles.includes(role))) goTo(homeOf(session.roles), 'replace');
    void this.updateComplete.then(() => this.renderRoot.querySelector('main')?.focus());
  };

  #changePerson(badge: string): void {
    this.badge = badge;
    this.changing = true;
  }

  async #open(text: string): Promise<void> {
    if (this.#session.value === null || this.changing) return void (this.badge = text);
    const found = await openScanned(link, text);
    if (found.what === 'badge') return this.#changePerson(found.badge);
    if (found.what === 'nothing') return void (this.scanned = shellWords().scanUnknown(text));
    if (found.what === 'noNetwork') return void (this.scanned = shellWords().scanOffline);
    goTo(found.path);
  }

  /** Nobody has touched the kiosk for long: it shows the bench list, and nobody is signed on any more. */
  #rest(): void {
    if (this.#session.value === null) return;
    this.changing = false;
    goTo(homeOf(this.#session.value.roles), 'replace');
    if (link.connection.value === 'online' && link.outbox.unsent.length === 0) void link.signOut();
  }

  readonly #skip = (event: Event): void => {
    event.preventDefault();
    this.renderRoot.querySelector('main')?.focus();
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-kiosk': GhKiosk;
  }
}
