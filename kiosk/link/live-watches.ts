import type { StampedSlip } from '../../shared/wire/stamped-slip.ts';
import type { Topic, Transport } from './transport.ts';

/** Who hears of the slips of some streams. */
export interface Watcher {
  readonly streams: readonly string[];
  readonly onSlips: (slips: readonly StampedSlip[]) => void;
  /** The last version of each stream, told each time the channel opens, so that a gap is seen. */
  readonly onVersions: (versions: Readonly<Record<string, number>>) => void;
}

/** Which streams this kiosk watches, over every break of the channel. */
export class LiveWatches {
  readonly #transport: Transport;
  readonly #watchers = new Set<Watcher>();
  readonly #listeners = new Set<{ readonly topics: readonly Topic[]; readonly onChanged: () => void }>();

  constructor(transport: Transport) {
    this.#transport = transport;
    transport.onSlips((slips) => this.spread(slips));
    transport.onChanged((topics) => this.#tellChanged((topic) => topics.includes(topic)));
  }

  /** Begins to watch; the answer ends it. */
  watch(watcher: Watcher): () => void {
    this.#watchers.add(watcher);
    if (this.#transport.live.value) void this.#ask(watcher);
    return () => {
      this.#watchers.delete(watcher);
      const alone = watcher.streams.filter((stream) => ![...this.#watchers].some(({ streams }) => streams.includes(stream)));
      if (alone.length > 0 && this.#transport.live.value) void this.#transport.say('unwatch', alone).catch(() => undefined);
    };
  }

  listen(topics: readonly Topic[], onChanged: () => void): () => void {
    const listener = { topics, onChanged };
    this.#listeners.add(listener);
    return () => void this.#listeners.delete(listener);
  }

  /** After the channel has come back: watch again, and read lists again, for nobody knows what was missed. */
  resume(): void {
    for (const watcher of this.#watchers) void this.#ask(watcher);
    this.#tellChanged(() => true);
  }

  /** Gives slips to all who watch their streams. */
  spread(slips: readonly StampedSlip[]): void {
    for (const { streams, onSlips } of [...this.#watchers]) {
      const own = slips.filter(({ stream }) => streams.includes(stream));
      if (own.length > 0) onSlips(own);
    }
  }

  async #ask(watcher: Watcher): Promise<void> {
    // A break just now needs no word here: `resume` asks again when the channel is back.
    const answer = await this.#transport.say('watch', watcher.streams).catch(() => null);
    if (isVersions(answer) && this.#watchers.has(watcher)) watcher.onVersions(answer.versions);
  }

  #tellChanged(wanted: (topic: Topic) => boolean): void {
    for (const { topics, onChanged } of [...this.#listeners]) if (topics.some(wanted)) onChanged();
  }
}

function isVersions(answer: unknown): answer is { readonly versions: Readonly<Record<string, number>> } {
  return typeof answer === 'object' && answer !== null && 'versions' in answer && typeof answer.versions === 'object';
}
