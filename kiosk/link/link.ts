import type { Command, PlantCard } from '../../shared/traveller/index.ts';
import type { Reply } from '../../shared/wire/reply.ts';
import type { StampedSlip } from '../../shared/wire/stamped-slip.ts';
import type { Session } from '../../shared/wire/views.ts';
import { newClientId } from './client-id.ts';
import { mayWait } from './kept-commands.ts';
import { LiveWatches } from './live-watches.ts';
import { LinkFault, type LinkRefusal, type Outcome, type RefusalText } from './outcome.ts';
import { Outbox } from './outbox.ts';
import type { KeptEntry, OutboxStore } from './outbox-store.ts';
import { Unreachable, type Answer, type Topic, type Transport } from './transport.ts';
import { Source, type Watched } from './watched.ts';

export type Connection = 'online' | 'offline' | 'signedOut';
/** What a kiosk may know before anyone signs in. */
export interface PlantAtDoor {
  readonly opened: boolean;
  readonly plant: PlantCard | null;
  readonly demoPeople: readonly { readonly badge: string; readonly pin: string; readonly name: string; readonly roles: readonly string[] }[] | null;
  readonly benches: readonly string[];
}
/** What goes with a command besides itself. */
export interface GiveOptions {
  /** The PIN re-entered, for a signed command. It leaves memory with the request. */
  readonly pin?: string;
  readonly coSigner?: { readonly badge: string; readonly pin: string };
  /** Version of the command's own stream as it was shown: a later one makes the server refuse with `staleVersion`. */
  readonly seen?: number;
  /** Where it is given while nobody is signed on, which only the opening of a plant is. */
  readonly bench?: string;
  /** For an entry that was given before and is sent again. */
  readonly clientId?: string;
}
/** What the link needs from around it. */
export interface LinkParts {
  readonly transport: Transport;
  readonly store: OutboxStore;
  readonly words: (refusal: LinkRefusal) => RefusalText;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  readonly later: (ms: number, then: () => void) => void;
}

/** After a passing fault of the server, entries are sent again this much later, ms. */
const retryMs = 2000;
/** An entry counts as having waited from a minute on, and to a week, which is as far back as the door believes a kiosk. */
const WAITED_MS = { least: 60_000, most: 604_800_000 };
const WHILE_SIGNED_OUT = ['openPlant'];

/** The kiosk's one line to the server. Its pages are described in docs/kiosk-link.md. */
export class Link {
  readonly outbox: Outbox;
  readonly #parts: LinkParts;
  readonly #watches: LiveWatches;
  readonly #session = new Source<Session | null>(null);
  readonly #connection = new Source<Connection>('signedOut');

  private constructor(parts: LinkParts, left: readonly KeptEntry[]) {
    this.#parts = parts;
    this.#watches = new LiveWatches(parts.transport);
    this.outbox = new Outbox(parts.store, { maySend: (entry) => this.#maySend(entry), send: (entry) => this.#send(entry, {}, this.#waitedMs(entry)) }, left);
    parts.transport.live.follow(() => this.#atBreak());
    this.#session.follow(() => this.#judge());
  }

  /** A link with what its outbox still holds. Nothing is asked of the server yet. */
  static async open(parts: LinkParts): Promise<Link> {
    return new Link(parts, await parts.store.all());
  }

  /** `offline` while someone is signed in and the live channel is down. */
  get connection(): Watched<Connection> {
    return this.#connection;
  }
  get session(): Watched<Session | null> {
    return this.#session;
  }

  /** Reads anything the server has under `/api`. @throws LinkFault with words */
  async ask<T>(path: string): Promise<T> {
    const { status, body } = await this.#answer(path);
    if (status < 400) return body as T;
    if (status === 401) this.#session.set(null);
    throw this.#faultOf(status, body);
  }

  /** Has the server do what is no command, such as signing a checkpoint or keeping a file. @throws LinkFault with words */
  async act<T>(path: string, what: unknown = {}): Promise<T> {
    const { status, body } = await this.#request('POST', path, what);
    if (status < 400) return body as T;
    if (status === 401) this.#session.set(null);
    throw this.#faultOf(status, body);
  }

  /** Gives a command. Never throws: everything that can become of it is an Outcome. */
  async give(command: Command, options: GiveOptions = {}): Promise<Outcome> {
    const clientId = options.clientId ?? newClientId(this.#parts.now());
    const session = this.#session.value;
    if (session !== null && mayWait(command)) {
      return this.outbox.give({ clientId, command, by: session.badge, name: session.name, bench: session.bench, keptAt: new Date(this.#parts.now()).toISOString(), refused: null });
    }
    if (session === null && !WHILE_SIGNED_OUT.includes(command.type)) return this.#refused(clientId, { code: 'outOfReach' });
    // What was entered before this command goes first.
    await this.outbox.flush();
    return this.#giveNow(clientId, command, options);
  }

  /** Hears every new slip of these streams; the answer ends it. `onVersions` tells the last version of each whenever the channel opens. */
  watch(streams: readonly string[], onSlips: (slips: readonly StampedSlip[]) => void, onVersions: (versions: Readonly<Record<string, number>>) => void = () => undefined): () => void {
    return this.#watches.watch({ streams, onSlips, onVersions });
  }

  /** Hears when lists of these topics should be read again, also after every break; the answer ends it. */
  onChanged(topics: readonly Topic[], onChanged: () => void): () => void {
    return this.#watches.listen(topics, onChanged);
  }

  /** Finds out who is signed in on this kiosk already. @throws LinkFault when the server is out of reach */
  async resumeSession(): Promise<Session | null> {
    const { status, body } = await this.#request('GET', '/api/session');
    if (status >= 400 && status !== 401) throw this.#faultOf(status, body);
    return this.#welcome(status === 401 ? null : (body as Session));
  }

  /** Signs a person on at a bench; whoever was there is signed off. @throws LinkFault with words */
  async signIn(badge: string, pin: string, bench: string): Promise<Session | null> {
    const { status, body } = await this.#request('POST', '/api/session', { badge, pin, bench });
    if (status >= 400) throw this.#faultOf(status, body);
    return this.#welcome(body as Session);
  }

  /** Signs off. What waits in the outbox stays, and is sent when its person signs on again. */
  async signOut(): Promise<void> {
    await this.#parts.transport.request('DELETE', '/api/session').catch(() => null);
    this.#welcome(null);
  }

  /** What may be known before anyone signs on. @throws LinkFault */
  async plant(): Promise<PlantAtDoor> {
    const { status, body } = await this.#request('GET', '/api/plant');
    if (status >= 400) throw this.#faultOf(status, body);
    return body as PlantAtDoor;
  }

  #welcome(session: Session | null): Session | null {
    // The channel goes first: nothing may be sent on one that still speaks for the person before.
    this.#parts.transport.close();
    this.#session.set(session);
    if (session !== null) this.#parts.transport.open();
    return session;
  }

  #judge(): void {
    const { live } = this.#parts.transport;
    this.#connection.set(this.#session.value === null ? 'signedOut' : live.value ? 'online' : 'offline');
  }

  #atBreak(): void {
    this.#judge();
    if (!this.#parts.transport.live.value) return;
    this.#watches.resume();
    void this.outbox.flush();
  }

  #maySend(entry: KeptEntry): boolean {
    return this.#connection.value === 'online' && entry.by === this.#session.value?.badge;
  }

  /** How long an entry has waited here, by this kiosk's own clock; unsaid where it was sent at once, or is too old to be told of. */
  #waitedMs({ keptAt }: KeptEntry): number | undefined {
    const waited = this.#parts.now() - Date.parse(keptAt);
    return waited >= WAITED_MS.least && waited <= WAITED_MS.most ? Math.round(waited) : undefined;
  }

  async #send({ clientId, command, bench }: Pick<KeptEntry, 'clientId' | 'command' | 'bench'>, { pin, coSigner, seen }: GiveOptions, waitedMs?: number): Promise<Reply | null> {
    const envelope = { clientId, command, bench, ...(waitedMs === undefined ? {} : { waitedMs }), ...(seen === undefined ? {} : { seen }), ...(pin === undefined ? {} : { pin }), ...(coSigner === undefined ? {} : { coSigner }) };
    try {
      const reply = (await this.#sayOrPost(envelope)) as Reply;
      // What was just written is known here before the channel brings it.
      if (reply.ok) this.#watches.spread(reply.slips);
      if (!reply.ok && reply.refusal.code === 'notSignedIn') this.#session.set(null);
      if (!reply.ok && (reply.refusal.code === 'storageFault' || reply.refusal.code === 'tooBusy')) this.#parts.later(retryMs, () => void this.outbox.flush());
      return reply;
    } catch (error) {
      if (error instanceof Unreachable) return null;
      throw error;
    }
  }

  async #sayOrPost(envelope: unknown): Promise<unknown> {
    const { transport } = this.#parts;
    if (transport.live.value) return transport.say('command', envelope);
    return (await transport.request('POST', '/api/commands', envelope)).body;
  }

  async #giveNow(clientId: string, command: Command, options: GiveOptions): Promise<Outcome> {
    const signed = options.pin !== undefined;
    if (this.#connection.value === 'offline') return this.#refused(clientId, { code: signed ? 'signingNeedsNetwork' : 'commandNeedsNetwork' });
    const bench = this.#session.value?.bench ?? options.bench ?? '';
    const entry = { clientId, command, bench };
    // A lost answer is asked for once more; the same client id makes that harmless.
    const reply = (await this.#send(entry, options)) ?? (await this.#send(entry, options));
    if (reply === null) return this.#refused(clientId, { code: 'answerLost' });
    return reply.ok ? { state: 'acknowledged', clientId, slips: reply.slips } : { state: 'refused', clientId, refusal: reply.refusal, words: reply.words };
  }

  #refused(clientId: string, refusal: LinkRefusal): Outcome {
    return { state: 'refused', clientId, refusal, words: this.#parts.words(refusal) };
  }

  async #answer(path: string): Promise<Answer> {
    const { transport } = this.#parts;
    if (transport.live.value) {
      const said = await transport.say('ask', path).catch(() => null);
      if (isAnswer(said)) return said;
    }
    return this.#request('GET', path);
  }

  async #request(method: 'GET' | 'POST' | 'DELETE', path: string, body?: unknown): Promise<Answer> {
    try {
      return await this.#parts.transport.request(method, path, body);
    } catch (error) {
      if (!(error instanceof Unreachable)) throw error;
      const refusal: LinkRefusal = { code: 'outOfReach' };
      throw new LinkFault(refusal, this.#parts.words(refusal), 0);
    }
  }

  #faultOf(status: number, body: unknown): LinkFault {
    if (isRefusal(body)) return new LinkFault(body.refusal, body.words, status);
    const refusal: LinkRefusal = { code: 'outOfReach' };
    return new LinkFault(refusal, this.#parts.words(refusal), status);
  }
}

function isAnswer(said: unknown): said is Answer {
  return typeof said === 'object' && said !== null && 'status' in said && typeof said.status === 'number' && 'body' in said;
}
function isRefusal(body: unknown): body is Extract<Reply, { ok: false }> {
  return typeof body === 'object' && body !== null && 'refusal' in body && 'words' in body;
}
