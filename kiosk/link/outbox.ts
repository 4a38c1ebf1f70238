import type { Reply } from '../../shared/wire/reply.ts';
import type { KeptEntry, OutboxStore } from './outbox-store.ts';
import type { Outcome } from './outcome.ts';
import { Source, type Watched } from './watched.ts';

/** What the outbox needs of the link. */
export interface OutboxDoor {
  /** True while this entry may be sent: the network is there and the person who entered it is signed in. */
  readonly maySend: (entry: KeptEntry) => boolean;
  /** Sends one entry; null when no answer came. */
  readonly send: (entry: KeptEntry) => Promise<Reply | null>;
}

/** Refusals that are no answer to the entry itself: it stays and is sent again. */
const NOT_YET = ['notSignedIn', 'storageFault', 'tooBusy', 'setUpFirst'] as const;

/**
 * Entries on their way to the server. Each is written down before it is sent, sent in order, and taken out when the server has it.
 * One that the server refuses stays, marked as refused, until a person dismisses it. The same entry sent twice does no harm: it carries
 * its client id.
 */
export class Outbox {
  readonly #store: OutboxStore;
  readonly #door: OutboxDoor;
  readonly #entries: Source<readonly KeptEntry[]>;
  readonly #waiting = new Map<string, (outcome: Outcome) => void>();
  #sending: Promise<void> | null = null;
  #again = false;

  /** @param entries what was left in the store */
  constructor(store: OutboxStore, door: OutboxDoor, entries: readonly KeptEntry[]) {
    this.#store = store;
    this.#door = door;
    this.#entries = new Source(entries);
  }

  /** Everything in the outbox in the order entered, refused entries included. */
  get entries(): Watched<readonly KeptEntry[]> {
    return this.#entries;
  }
  /** False when entries would not outlive this page. */
  get durable(): boolean {
    return this.#store.durable;
  }
  /** Entries still to be sent. */
  get unsent(): readonly KeptEntry[] {
    return this.#entries.value.filter(({ refused }) => refused === null);
  }

  /** Writes the entry down; resolves when it is safe on this kiosk. */
  async keep(entry: KeptEntry): Promise<void> {
    this.#entries.set([...this.#entries.value, entry]);
    await this.#store.put(entry);
  }

  /** Writes the entry down and tries to send it. `kept` when that cannot be done now. */
  async give(entry: KeptEntry): Promise<Outcome> {
    const { clientId } = entry;
    const settled = new Promise<Outcome>((resolve) => this.#waiting.set(clientId, resolve));
    await this.keep(entry);
    const tried = this.flush().then((): Outcome => ({ state: 'kept', clientId }));
    return Promise.race([settled, tried]).finally(() => this.#waiting.delete(clientId));
  }

  /** Sends what waits, in order. Called while already sending, it looks once more at the end. */
  flush(): Promise<void> {
    this.#again = true;
    this.#sending ??= this.#run().finally(() => (this.#sending = null));
    return this.#sending;
  }

  /** Takes a refused entry out, after a person has seen it. */
  async dismiss(clientId: string): Promise<void> {
    if (this.#entries.value.some((entry) => entry.clientId === clientId && entry.refused !== null)) await this.#takeOut(clientId);
  }

  async #run(): Promise<void> {
    while (this.#again) {
      this.#again = false;
      for (let head = this.#next(); head !== undefined; head = this.#next()) {
        const reply = await this.#door.send(head);
        if (reply === null || (!reply.ok && NOT_YET.some((code) => code === reply.refusal.code))) break;
        await this.#settle(head, reply);
      }
    }
  }

  #next(): KeptEntry | undefined {
    return this.unsent.find(this.#door.maySend);
  }

  async #settle(entry: KeptEntry, reply: Reply): Promise<void> {
    const { clientId } = entry;
    if (reply.ok) {
      await this.#takeOut(clientId);
      return this.#tell(clientId, { state: 'acknowledged', clientId, slips: reply.slips });
    }
    const { refusal, words } = reply;
    const refused: KeptEntry = { ...entry, refused: { refusal, words } };
    await this.#store.put(refused);
    this.#entries.set(this.#entries.value.map((each) => (each.clientId === clientId ? refused : each)));
    this.#tell(clientId, { state: 'refused', clientId, refusal, words });
  }

  async #takeOut(clientId: string): Promise<void> {
    await this.#store.remove(clientId);
    this.#entries.set(this.#entries.value.filter((entry) => entry.clientId !== clientId));
  }

  #tell(clientId: string, outcome: Outcome): void {
    this.#waiting.get(clientId)?.(outcome);
  }
}
