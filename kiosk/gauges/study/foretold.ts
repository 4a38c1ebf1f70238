import { decide, evolve, NotAtHand, type AnyState, type Command, type Study } from '../../../shared/traveller/index.ts';
import type { KeptEntry } from '../../link/index.ts';

/** A study with this kiosk's own entries folded in, as far as the rules take them here: `waiting` of them are not confirmed yet. */
export interface Foretold { readonly study: Study; readonly waiting: number }

/**
 * What a study becomes by the entries that wait on this kiosk: the same `decide` and `evolve` as on the server. A refused entry adds nothing.
 * @param gauge the study's gauge, where it is at hand
 */
export function foretold(study: Study, gauge: AnyState | null, entries: readonly KeptEntry[]): Foretold {
  let [now, waiting] = [study, 0];
  for (const { command, by, name, bench, keptAt, refused } of entries) {
    if (refused !== null || !isOf(command, study.id)) continue;
    const known = { state: (stream: string): AnyState | null => {
      if (stream === study.stream) return now;
      if (gauge !== null && stream === gauge.stream) return gauge;
      throw new NotAtHand(stream);
    } };
    const decision = tried(() => decide(known, command, { at: keptAt, by: { badge: by, name, roles: [] }, bench, seed: '', signed: false, coSigner: null }));
    if (decision === null || 'refusal' in decision) continue;
    for (const { stream, body } of decision.slips) {
      const after = evolve(now, { stream, version: now.version + 1, at: keptAt, by, bench, body });
      if (after.kind === 'study') now = after;
    }
    waiting += 1;
  }
  return { study: now, waiting };
}

function isOf(command: Command, study: string): boolean {
  return 'study' in command && command.study === study;
}

function tried<T>(work: () => T): T | null {
  try {
    return work();
  } catch (error) {
    if (error instanceof NotAtHand) return null;
    throw error;
  }
}
