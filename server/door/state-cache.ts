import type { AnyState } from '../../shared/traveller/index.ts';
import { evolve } from '../../shared/traveller/index.ts';
import type { Journal, StoredSlip } from '../journal/journal.ts';
import { typed } from '../readmodels/typed-slip.ts';

/** One stream as the door knows it, entries on their way to the disk included. */
export interface KnownStream {
  readonly state: AnyState | null;
  /** 0 where nothing has ever happened. */
  readonly version: number;
  /** The last entry on its way to the disk for this stream; settles when it is durable or has failed; see `settled`. */
  readonly underWay: Promise<unknown> | null;
  /** Which reading of the journal this goes back to. */
  readonly lineage: number;
}

/** Waits until an entry is durable or has failed. How it ended is its own sender's business. */
export async function settled(underWay: Promise<unknown> | null): Promise<void> {
  await underWay?.catch(() => undefined);
}

/** Folds a stream from its first slip. */
export function fold(slips: readonly StoredSlip[], from: AnyState | null = null): AnyState | null {
  return slips.reduce<AnyState | null>((state, slip) => evolve(state, typed(slip)), from);
}

/**
 * The folded states of the streams used last. It may be wrong at any time (another server may have written): whoever decides on a state
 * sends its version along as a check, and forgets it here when the journal disagrees.
 */
export class StateCache {
  readonly #journal: Journal;
  readonly #most: number;
  readonly #known = new Map<string, KnownStream>();
  readonly #loading = new Map<string, Promise<void>>();
  #lineages = 0;

  constructor(journal: Journal, most = 2_000) {
    this.#journal = journal;
    this.#most = most;
  }

  /** What is at hand, counted as used now. */
  peek(stream: string): KnownStream | undefined {
    const known = this.#known.get(stream);
    if (known === undefined || !this.#orderMatters()) return known;
    this.#known.delete(stream);
    this.#known.set(stream, known);
    return known;
  }

  /** Brings a stream to hand. Several who ask at once share one reading. */
  async load(stream: string): Promise<void> {
    if (this.#known.has(stream)) return;
    const loading = this.#loading.get(stream) ?? this.#read(stream);
    this.#loading.set(stream, loading);
    await loading;
  }

  async get(stream: string): Promise<KnownStream> {
    for (;;) {
      const known = this.peek(stream);
      if (known !== undefined) return known;
      await this.load(stream);
    }
  }

  /** The stream as the journal has it now: durable, and another server's slips included. */
  async fresh(stream: string): Promise<KnownStream> {
    for (;;) {
      const known = await this.get(stream);
      await settled(known.underWay);
      if (known.underWay === null && (await this.#journal.versionOf(stream)) === known.version) return known;
      if (known.underWay === null) this.forget(stream, known.lineage);
    }
  }

  /** Takes in what is on its way to the disk and was decided on this version. Decided on any other version it will come to nothing. */
  advance(stream: string, decidedOn: KnownStream, state: AnyState, underWay: Promise<unknown>): void {
    const before = this.#known.get(stream);
    if (before === undefined || before.version !== decidedOn.version || before.lineage !== decidedOn.lineage) return;
    this.#keep(stream, { state, version: state.version, underWay, lineage: before.lineage });
  }

  /** Says that nothing is on its way any more, unless something newer is. */
  settle(stream: string, underWay: Promise<unknown>): void {
    const known = this.#known.get(stream);
    if (known?.underWay === underWay) this.#known.set(stream, { ...known, underWay: null });
  }

  /** Forgets a stream, unless it was read from the journal again since. */
  forget(stream: string, lineage: number): void {
    if (this.#known.get(stream)?.lineage === lineage) this.#known.delete(stream);
  }

  async #read(stream: string): Promise<void> {
    try {
      const slips = await this.#journal.read(stream);
      if (!this.#known.has(stream)) this.#keep(stream, { state: fold(slips), version: slips.at(-1)?.version ?? 0, underWay: null, lineage: (this.#lineages += 1) });
    } finally {
      this.#loading.delete(stream);
    }
  }

  /** Who was used last is asked only once something may soon have to be forgotten. A Map that loses and gains a key at every reading is laid out anew all the time. */
  #orderMatters(): boolean {
    return this.#known.size * 2 >= this.#most;
  }

  #keep(stream: string, known: KnownStream): void {
    if (this.#orderMatters()) this.#known.delete(stream);
    this.#known.set(stream, known);
    if (this.#known.size <= this.#most) return;
    for (const [oldest, { underWay }] of this.#known) {
      // What is on its way must stay: read from the journal it would look as if it had not happened.
      if (underWay === null) {
        this.#known.delete(oldest);
        return;
      }
    }
  }
}
