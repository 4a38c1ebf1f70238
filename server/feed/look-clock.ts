import { randomUUID } from 'node:crypto';
import { isDueByMinutes, missedBecause, nextLook } from '../../shared/traveller/index.ts';
import type { Door } from '../door/door.ts';
import type { BenchLists } from '../readmodels/bench-lists.ts';

/** The server's clock: every few seconds it looks whether minutes have made a look due, or a look is missed by now. */
export class LookClock {
  readonly #door: Door;
  readonly #lists: BenchLists;
  readonly #now: () => Date;
  readonly #everyMs: number;
  #timer: NodeJS.Timeout | null = null;

  constructor(door: Door, lists: BenchLists, { now = () => new Date(), everyMs = 5_000 }: { readonly now?: () => Date; readonly everyMs?: number } = {}) {
    this.#door = door;
    this.#lists = lists;
    this.#now = now;
    this.#everyMs = everyMs;
  }

  start(onFault: (fault: unknown) => void): void {
    this.#timer = setInterval(() => void this.look().catch(onFault), this.#everyMs);
    this.#timer.unref();
  }

  stop(): void {
    if (this.#timer !== null) clearInterval(this.#timer);
  }

  /** Looks once, at every open gate whose plan counts minutes. */
  async look(): Promise<void> {
    const at = this.#now().toISOString();
    for (const stream of this.#lists.withMinutes()) {
      const { state } = await this.#door.states.get(stream);
      if (state?.kind !== 'lot') continue;
      for (const gate of state.gates) {
        if (gate.status !== 'open') continue;
        const called = gate.work.some((work) => {
          const next = nextLook(work, gate.lotSize);
          return next !== null && (isDueByMinutes(work, next, at) || missedBecause(work, gate.lotSize, at) !== null);
        });
        if (called) await this.#door.own({ type: 'callLooks', subject: stream, gate: gate.id }, `clock-${randomUUID()}`, gate.bench);
      }
    }
  }
}
