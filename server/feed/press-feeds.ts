import { randomUUID } from 'node:crypto';
import type { Command, Lot, PressState, ServerCommand } from '../../shared/traveller/index.ts';
import { lastSeqOf, streamName } from '../../shared/traveller/index.ts';
import type { FeedAnswer, FeedBatch } from '../../shared/wire/feed-schema.ts';
import type { Door } from '../door/door.ts';
import { told, type No } from '../door/told.ts';
import { Turns } from '../people/turns.ts';
import { blockEnd, blockPieces } from './block-end.ts';

/** Longest time a weight waits in memory for its block to fill, ms. */
const blockMs = 30_000;
const lookEveryMs = 1_000;

/** Weights taken from one press and not yet written. */
interface Waiting { readonly lot: string; readonly fromSeq: number; readonly missing: number; readonly values: readonly number[]; readonly since: number }
/** How the feed of one press stands, beside what is written. */
export interface FeedStanding { readonly waiting: number; /** Newest weight, written or not; null since the server started. */ readonly lastAt: string | null; readonly lastValues: readonly number[]; /** Why nothing was taken last time. */ readonly no: No | null }
/** A refusal with how far the feed has come. */
export type FeedReply = FeedAnswer | (No & Pick<FeedAnswer, 'stored' | 'next'>);

const nothing: FeedStanding = { waiting: 0, lastAt: null, lastValues: [], no: null };

/**
 * The feeds of all presses. Weights are gathered into blocks and written to the lot a press is set on. What is answered as stored is durable; what
 * is held is not, and its sender keeps it: a crash loses nothing that was said to be stored, and nothing comes in twice.
 */
export class PressFeeds {
  readonly #door: Door;
  readonly #now: () => number;
  readonly #turns = new Turns();
  readonly #waiting = new Map<string, Waiting>();
  readonly #standing = new Map<string, FeedStanding>();
  #timer: NodeJS.Timeout | null = null;

  constructor(door: Door, now: () => number = Date.now) {
    this.#door = door;
    this.#now = now;
    door.around((command, decide) => this.#writtenBefore(this.#concerned(command), decide));
  }

  start(onFault: (fault: unknown) => void): void {
    this.#timer = setInterval(() => void this.writeOld().catch(onFault), lookEveryMs);
    this.#timer.unref();
  }

  /** Writes what waits, then takes nothing more in by itself. */
  async close(): Promise<void> {
    if (this.#timer !== null) clearInterval(this.#timer);
    await Promise.all([...this.#waiting.keys()].map((press) => this.#turns.take(press, () => this.#write(press, true))));
  }

  standing(press: string): FeedStanding {
    return { ...(this.#standing.get(press) ?? nothing), waiting: this.#waiting.get(press)?.values.length ?? 0 };
  }

  /** Writes the blocks that have waited long enough. */
  async writeOld(): Promise<void> {
    const old = [...this.#waiting].filter(([, { since }]) => this.#now() - since >= blockMs);
    await Promise.all(old.map(([press]) => this.#turns.take(press, () => this.#write(press, true))));
  }

  /** The presses whose weights, made before a command, belong to what stood before it: the lot, the count, the balance as it then was. */
  #concerned(command: Command): readonly string[] {
    switch (command.type) {
      case 'setPress': return [command.press];
      case 'changePress': return [command.press.id];
      case 'hold': return [...this.#waiting].filter(([, { lot }]) => command.subject === streamName('lot', lot)).map(([press]) => press);
      case 'withdrawGauge': case 'checkGauge': case 'calibrateGauge': return [...this.#waiting.keys()];
      default: return [];
    }
  }

  /** Writes what waits of these presses, and decides before they take anything more in. In the order of their names, so that two commands never wait for each other. */
  #writtenBefore<T>(presses: readonly string[], decide: () => Promise<T>): Promise<T> {
    const [first, ...others] = [...presses].sort();
    if (first === undefined) return decide();
    return this.#turns.take(first, async () => {
      await this.#write(first, true);
      return this.#writtenBefore(others, decide);
    });
  }

  /** Takes a batch. Repeats are passed over, a gap is refused unless the sender says that those weights are lost. */
  take(press: string, batch: FeedBatch): Promise<FeedReply> {
    return this.#turns.take(press, () => this.#take(press, batch));
  }

  async #take(id: string, { fromSeq, values, lost = false, now = false }: FeedBatch): Promise<FeedReply> {
    const place = await this.#place(id);
    if ('no' in place) return this.#refuse(id, place.no, null);
    const { press, stored } = place;
    let end = this.#end(id) ?? stored;
    const repeated = end === null ? 0 : Math.min(values.length, Math.max(0, end - fromSeq + 1));
    const fresh = values.slice(repeated);
    const from = fromSeq + repeated;
    if (fresh.length > 0) {
      if (end !== null && from > end + 1 && !lost) return this.#refuse(id, told({ code: 'feedGap', press: press.card.name, expected: end + 1, got: from }), stored);
      if (end !== null && from > end + 1) {
        const no = await this.#write(id, true);
        if (no !== null) return this.#refuse(id, no, await this.#stored(id));
        end = await this.#stored(id);
      }
      const block: Waiting = this.#waiting.get(id) ?? { lot: press.running?.lot ?? '', fromSeq: from, missing: end === null ? 0 : from - end - 1, values: [], since: this.#now() };
      // Only a first weight is asked for beforehand: what stands in its way stands in the way of all that follow.
      const refusal = block.values.length > 0 ? null : await this.#door.foretell(commandOf(id, block, fresh.slice(0, 1)), press.card.bench);
      if (refusal !== null) return this.#refuse(id, told(refusal), stored);
      this.#waiting.set(id, { ...block, values: [...block.values, ...fresh] });
      this.#standing.set(id, { waiting: 0, no: null, lastAt: new Date(this.#now()).toISOString(), lastValues: [...(this.#standing.get(id)?.lastValues ?? []), ...fresh].slice(-60) });
    }
    const no = await this.#write(id, now);
    const reached = await this.#stored(id);
    if (no !== null) return this.#refuse(id, no, reached);
    const held = this.#end(id);
    return { ok: true, stored: reached, held, next: (held ?? reached) === null ? null : (held ?? reached ?? 0) + 1 };
  }

  /** Writes full blocks; with `all` also what has not filled one. On a refusal what waits is let go: its sender has it still. */
  async #write(id: string, all: boolean): Promise<No | null> {
    for (let waiting = this.#waiting.get(id); waiting !== undefined; waiting = this.#waiting.get(id)) {
      const place = await this.#place(id);
      if ('no' in place) return this.#letGo(id, place.no);
      const { press, lot } = place;
      if (press.running?.lot !== waiting.lot || lot === null) return this.#letGo(id, told({ code: 'pressStands', press: press.card.name }));
      const { room, wanted } = blockEnd(press, lot);
      if (!all && waiting.values.length < wanted) return null;
      // With no room left the rules say why.
      const values = waiting.values.slice(0, Math.max(1, Math.min(blockPieces, wanted === 0 ? room : wanted)));
      const reply = await this.#door.own(commandOf(id, waiting, values), `feed-${randomUUID()}`, press.card.bench);
      if (!reply.ok) return this.#letGo(id, reply);
      const rest = waiting.values.slice(values.length);
      if (rest.length === 0) this.#waiting.delete(id);
      else this.#waiting.set(id, { ...waiting, fromSeq: waiting.fromSeq + values.length, missing: 0, values: rest, since: this.#now() });
    }
    return null;
  }

  #letGo(id: string, no: No): No {
    this.#waiting.delete(id);
    this.#standing.set(id, { ...(this.#standing.get(id) ?? nothing), no });
    return no;
  }

  #refuse(id: string, no: No, stored: number | null): FeedReply {
    this.#standing.set(id, { ...(this.#standing.get(id) ?? nothing), no });
    const reached = this.#end(id) ?? stored;
    return { ...no, stored, next: reached === null ? null : reached + 1 };
  }

  #end(id: string): number | null {
    const waiting = this.#waiting.get(id);
    return waiting === undefined ? null : waiting.fromSeq + waiting.values.length - 1;
  }

  async #stored(id: string): Promise<number | null> {
    const place = await this.#place(id);
    return 'no' in place ? null : place.stored;
  }

  async #place(id: string): Promise<{ readonly press: PressState; readonly lot: Lot | null; readonly stored: number | null } | { readonly no: No }> {
    const { state: press } = await this.#door.states.get(streamName('press', id));
    if (press?.kind !== 'press') return { no: told({ code: 'notFound', what: 'press', id }) };
    const { state } = press.running === null ? { state: null } : await this.#door.states.get(streamName('lot', press.running.lot));
    const lot = state?.kind === 'lot' ? state : null;
    return { press, lot, stored: lastSeqOf(press, lot) };
  }
}

function commandOf(press: string, { fromSeq, missing }: Waiting, values: readonly number[]): ServerCommand {
  return { type: 'takeFeed', press, fromSeq, missing, values };
}
