import type { PersonState } from '../../shared/traveller/index.ts';
import type { StateCache } from './state-cache.ts';

/** A person as their thread says now; null for a badge nobody has, or one that is no longer active. */
export async function activePerson(states: StateCache, badge: string): Promise<PersonState | null> {
  const stream = `person:${badge}`;
  const known = states.peek(stream)?.state ?? null;
  if (known?.kind === 'person' && known.active) return known;
  // Nobody is turned away on what may be an old state.
  const { state } = await states.fresh(stream);
  return state?.kind === 'person' && state.active ? state : null;
}
