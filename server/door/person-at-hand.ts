import type { PersonState } from '../../shared/traveller/index.ts';
import type { StateCache } from './state-cache.ts';

/** An active person whose state is at hand; null also where it is not. */
export function personAtHand(states: StateCache, badge: string): PersonState | null {
  const state = states.peek(`person:${badge}`)?.state;
  return state?.kind === 'person' && state.active ? state : null;
}

/** A person as their thread says now; null for a badge nobody has, or one that is no longer active. */
export async function activePerson(states: StateCache, badge: string): Promise<PersonState | null> {
  const known = personAtHand(states, badge);
  if (known !== null) return known;
  // Nobody is turned away on what may be an old state.
  const { state } = await states.fresh(`person:${badge}`);
  return state?.kind === 'person' && state.active ? state : null;
}
