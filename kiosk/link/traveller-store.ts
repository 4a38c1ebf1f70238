import { decide, evolve, NotAtHand, streamOf, streamParts } from '../../shared/traveller/index.ts';
import type { AnyState, Command, Known, NewSlip, Refusal, Slip, Stamp, Subject } from '../../shared/traveller/index.ts';
import type { StampedSlip } from '../../shared/wire/stamped-slip.ts';
import { newClientId } from './client-id.ts';
import { foldNew } from './fold-new.ts';
import type { GiveOptions, Link } from './link.ts';
import { LinkFault, type Outcome, type RefusalText } from './outcome.ts';
import { Source, type Watched } from './watched.ts';

/** An entry of this kiosk that the server has not confirmed yet, or has refused. */
export interface OwnEntry {
  readonly clientId: string;
  readonly command: Command;
  readonly standing: 'sending' | 'kept' | 'refused';
  /** The slips it will become, as far as this kiosk can tell; empty where it cannot, and for a refused one. */
  readonly slips: readonly Slip[];
  /** Why it was refused. */
  readonly words: RefusalText | null;
}

/** What a traveller desk shows. */
export type TravellerView =
  | { readonly state: 'loading' }
  | { readonly state: 'faulty'; readonly fault: LinkFault }
  | {
      readonly state: 'open';
      /** With this kiosk's own entries folded in. */
      readonly subject: Subject;
      /** As the server has it. */
      readonly confirmed: Subject;
      /** Confirmed slips, ascending, without a gap; older ones may still be on the server. */
      readonly slips: readonly StampedSlip[];
      readonly own: readonly OwnEntry[];
      readonly names: Readonly<Record<string, string>>;
    };

interface Page { readonly state: Subject; readonly slips: readonly StampedSlip[]; readonly names: Readonly<Record<string, string>> }
type Pending = Omit<OwnEntry, 'slips'>;

/** Slips brought with the traveller, and with each page of earlier ones. */
const pageOfSlips = 200;

/**
 * One traveller, live. Slips from everywhere are folded with the rules' own `evolve`; this kiosk's entries are decided here first, so
 * they show at once, and are taken back when the server says no.
 */
export class TravellerStore {
  readonly stream: string;
  readonly #link: Link;
  readonly #refusalWords: (refusal: Refusal) => RefusalText;
  readonly #view = new Source<TravellerView>({ state: 'loading' });
  readonly #atHand = new Map<string, AnyState | null>();
  #page: Page | null = null;
  #pending: readonly Pending[] = [];
  #fetching: Promise<void> | null = null;
  readonly #ends: (() => void)[] = [];

  /** @param refusalWords words for a refusal this kiosk finds by itself */
  constructor(link: Link, stream: string, refusalWords: (refusal: Refusal) => RefusalText) {
    this.#link = link;
    this.stream = stream;
    this.#refusalWords = refusalWords;
  }

  get view(): Watched<TravellerView> {
    return this.#view;
  }

  /** Begins: fetches the traveller and hears its slips. */
  open(): void {
    const fetched = this.#fetch();
    this.#ends.push(
      this.#link.watch([this.stream], (slips) => this.#hear(slips), (versions) => this.#compare(versions[this.stream])),
      this.#link.outbox.entries.follow(() => this.#followOutbox()),
    );
    void fetched;
  }
  /** Ends; entries on their way are sent all the same. */
  close(): void {
    for (const end of this.#ends.splice(0)) end();
  }

  /** Brings another stream's state to hand (a gauge, say), so that entries that need it can be decided here. */
  async bring(stream: string): Promise<void> {
    if (this.#atHand.has(stream)) return;
    const { state } = await this.#link.ask<{ state: AnyState | null }>(`/api/states?stream=${encodeURIComponent(stream)}`);
    this.#atHand.set(stream, state);
    this.#show();
  }

  /** Fetches slips before the first one shown. True when there are older ones still. */
  async earlier(): Promise<boolean> {
    const page = this.#page;
    const first = page?.slips[0]?.version ?? 1;
    if (page === null || first <= 1) return false;
    const parts = streamParts(this.stream);
    const { slips } = await this.#link.ask<{ slips: readonly StampedSlip[] }>(`/api/travellers/${parts?.kind}/${encodeURIComponent(parts?.id ?? '')}/slips?before=${first}&limit=${pageOfSlips}`);
    this.#page = { ...(this.#page ?? page), slips: [...slips, ...(this.#page ?? page).slips] };
    this.#show();
    return (slips[0]?.version ?? 1) > 1;
  }

  /** Fetches the whole anew, after a fault. */
  retry(): void {
    this.#view.set({ state: 'loading' });
    void this.#fetch();
  }

  /**
   * Gives a command about this traveller. What this kiosk can see to be wrong is refused here and not sent; the rest shows at once and
   * goes to the server.
   */
  async give(command: Command, options: GiveOptions = {}): Promise<Outcome> {
    const clientId = options.clientId ?? newClientId();
    const refusal = this.#refusalHere(command, options.pin !== undefined);
    if (refusal !== null) return { state: 'refused', clientId, refusal, words: this.#refusalWords(refusal) };
    this.#pending = [...this.#pending, { clientId, command, standing: 'sending', words: null }];
    this.#show();
    const outcome = await this.#link.give(command, { ...options, clientId });
    if (outcome.state === 'acknowledged') {
      this.#forget([clientId]);
      this.#hear(outcome.slips.filter(({ stream }) => stream === this.stream));
      this.#show();
    } else this.#followOutbox(clientId);
    return outcome;
  }

  /** Takes a refused entry off the traveller and out of the outbox. */
  async dismiss(clientId: string): Promise<void> {
    await this.#link.outbox.dismiss(clientId);
    this.#forget([clientId]);
    this.#show();
  }

  /** The refusal this kiosk can see coming; null when there is none or it cannot tell. */
  #refusalHere(command: Command, signed: boolean): Refusal | null {
    const subject = this.#foldedSubject();
    const session = this.#link.session.value;
    if (subject === null || session === null || streamOf(command) !== this.stream) return null;
    const decision = tryDecide(this.#known(subject, command), command, this.#stamp(signed));
    return decision !== null && 'refusal' in decision ? decision.refusal : null;
  }

  #hear(slips: readonly StampedSlip[]): void {
    const page = this.#page;
    if (page === null) return;
    const fold = foldNew(page.state, page.slips, slips.filter(({ stream }) => stream === this.stream));
    if (fold === 'gap') return void this.#fetch();
    this.#page = { ...page, ...fold };
    this.#forget(slips.map(({ clientId }) => clientId));
    this.#show();
    const strange = slips.find(({ by }) => page.names[by] === undefined);
    if (strange !== undefined && fold.slips.length > page.slips.length) void this.#fetch();
  }

  #compare(version: number | undefined): void {
    if (version !== undefined && this.#page !== null && version > this.#page.state.version) void this.#fetch();
  }

  /** Own entries that wait in the outbox, also those of before a reload, show as kept or refused. */
  #followOutbox(settledId?: string): void {
    const waiting = this.#link.outbox.entries.value.filter(({ command }) => streamOf(command) === this.stream);
    const standing = this.#link.connection.value === 'online' ? 'sending' : 'kept';
    const fromOutbox = new Map(waiting.map(({ clientId, command, refused }): [string, Pending] => [clientId, { clientId, command, standing: refused === null ? standing : 'refused', words: refused?.words ?? null }]));
    // One that has left the outbox is on its way here as a slip, unless it was refused and set aside, or was never to wait.
    const staying = this.#pending.filter((each) => fromOutbox.has(each.clientId) || (each.standing !== 'refused' && each.clientId !== settledId));
    const added = [...fromOutbox.values()].filter(({ clientId }) => !staying.some((each) => each.clientId === clientId));
    this.#pending = [...staying.map((each) => fromOutbox.get(each.clientId) ?? each), ...added];
    this.#show();
  }

  #forget(clientIds: readonly string[]): void {
    this.#pending = this.#pending.filter(({ clientId }) => !clientIds.includes(clientId));
  }

  #fetch(): Promise<void> {
    this.#fetching ??= this.#fetchPage().finally(() => (this.#fetching = null));
    return this.#fetching;
  }

  async #fetchPage(): Promise<void> {
    const parts = streamParts(this.stream);
    try {
      this.#page = await this.#link.ask<Page>(`/api/travellers/${parts?.kind}/${encodeURIComponent(parts?.id ?? '')}?tail=${pageOfSlips}`);
      this.#forget(this.#page.slips.map(({ clientId }) => clientId));
      this.#show();
    } catch (error) {
      if (!(error instanceof LinkFault)) throw error;
      // What is on the screen stays; a break heals itself when the channel comes back.
      if (this.#page === null) this.#view.set({ state: 'faulty', fault: error });
    }
  }

  #foldedSubject(): Subject | null {
    const view = this.#view.value;
    return view.state === 'open' ? view.subject : null;
  }

  #show(): void {
    if (this.#page === null) return;
    const { state: confirmed, slips, names } = this.#page;
    let subject = confirmed;
    const own: OwnEntry[] = [];
    for (const entry of this.#pending) {
      const predicted = entry.standing === 'refused' ? [] : this.#predict(subject, entry.command);
      subject = predicted.reduce<Subject>((state, slip) => evolve(state, slip) as Subject, subject);
      own.push({ ...entry, slips: predicted });
    }
    const session = this.#link.session.value;
    this.#view.set({ state: 'open', subject, confirmed, slips, own, names: session === null ? names : { ...names, [session.badge]: session.name } });
  }

  /** The slips on this traveller that a command would become; none where this kiosk cannot tell. */
  #predict(subject: Subject, command: Command): Slip[] {
    const stamp = this.#stamp(false);
    const decision = tryDecide(this.#known(subject, command), command, stamp);
    if (decision === null || 'refusal' in decision) return [];
    const own = decision.slips.filter(({ stream }) => stream === this.stream);
    return own.map(({ stream, body }, at) => ({ stream, version: subject.version + at + 1, at: stamp.at, by: stamp.by.badge, bench: stamp.bench, body }));
  }

  /**
   * A switching state, a count for skip-lot, an own table or a chart never changes what an opened gate asks for, so it may be left out when
   * one's own slips are foretold; a hold that a chart brings comes with the server's answer. What a gate asks for when it is opened is for the server to say.
   */
  #known(subject: Subject, { type }: Command): Known {
    const spared = type === 'openGate' ? [] : ['switching', 'skip', 'table', 'chart'];
    return {
      state: (stream) => {
        if (stream === this.stream) return subject;
        const there = this.#atHand.get(stream);
        if (there !== undefined) return there;
        if (spared.includes(streamParts(stream)?.kind ?? '')) return null;
        throw new NotAtHand(stream);
      },
    };
  }

  #stamp(signed: boolean): Stamp {
    const session = this.#link.session.value;
    const { badge, name, roles, bench } = session ?? { badge: '', name: '', roles: [], bench: '' };
    return { at: new Date().toISOString(), by: { badge, name, roles }, bench, seed: '', signed, coSigner: null };
  }
}

function tryDecide(known: Known, command: Command, stamp: Stamp): { readonly slips: readonly NewSlip[] } | { readonly refusal: Refusal } | null {
  try {
    return decide(known, command, stamp);
  } catch (error) {
    if (error instanceof NotAtHand) return null;
    throw error;
  }
}
