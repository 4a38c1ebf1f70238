import type { BenchList, BenchRow } from '../../shared/wire/views.ts';
import { link, LinkFault } from '../link/index.ts';
import { Source, type Watched } from '../link/watched.ts';
import { rememberedSound } from './kiosk-memory.ts';
import { openSound, playCall, type CallKind } from './play-call.ts';

/** One call: what, at which lot, and the number of the look. */
export interface PressCall { readonly kind: CallKind; readonly lot: string; readonly look: number }
const heard = new Source<PressCall | null>(null);
/** The newest call that sounded; null when it was put away. What sounds is always written too. */
export const called: Watched<PressCall | null> = heard;
/** Puts the call's words away. */
export function putCallAway(): void {
  heard.set(null);
}

/** Calls of a bench's list, by what tells one from another. */
export function callsOf(rows: readonly BenchRow[]): ReadonlyMap<string, PressCall> {
  return new Map(rows.filter(({ standing }) => standing === 'open').flatMap(({ stream, id, lookDue, drift }): [string, PressCall][] => [
    ...(drift === null ? [] : [[`${stream} drift ${drift.piece}`, { kind: 'drift', lot: id, look: 0 }] satisfies [string, PressCall]]),
    ...(lookDue === null ? [] : [[`${stream} look ${lookDue.look}`, { kind: 'look', lot: id, look: lookDue.look }] satisfies [string, PressCall]]),
  ]));
}

function sameCall(one: PressCall, other: PressCall | null): boolean {
  return one.kind === other?.kind && one.lot === other.lot && one.look === other.look;
}

/** While the sound is on at this kiosk: sounds once for each look that falls due and each drift that begins at its bench. */
export function listenForCalls(): void {
  let known: ReadonlyMap<string, PressCall> | null = null;
  for (const touch of ['pointerdown', 'keydown']) addEventListener(touch, () => { if (rememberedSound()) openSound(); }, { capture: true });
  const look = async (): Promise<void> => {
    const bench = link.session.value?.bench;
    if (bench === undefined || !rememberedSound()) {
      known = null;
      return;
    }
    try {
      const calls = callsOf((await link.ask<BenchList>(`/api/bench?bench=${encodeURIComponent(bench)}`)).waiting);
      const before = known;
      known = calls;
      if (before !== null && ![...calls.values()].some((call) => sameCall(call, heard.value))) putCallAway();
      // What stood already when the kiosk began to listen is on the screen, and is no news.
      const fresh = before === null ? [] : [...calls].filter(([key]) => !before.has(key));
      // Of several at once the look goes first: it has a time to be kept.
      const next = fresh.find(([, { kind }]) => kind === 'look') ?? fresh[0];
      if (next === undefined) return;
      playCall(next[1].kind);
      heard.set(next[1]);
    } catch (error) {
      if (!(error instanceof LinkFault)) throw error;
    }
  };
  link.onChanged(['bench'], () => void look());
  link.session.follow(() => {
    known = null;
    void look();
  });
}
