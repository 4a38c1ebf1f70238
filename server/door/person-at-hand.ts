import type { PersonState } from '../../shared/traveller/index.ts';
import type { StateCache } from './state-cache.ts';

/** A person as their thread says now; null for a badge nobody has, or one that is no longer active. */
export async function activePerson(states: StateCache, badge: string): Promise<PersonState | null> {
  const stream = `person:${badge}`;
  const { state } = states.peek(stream) ?? await states.get(stream);
  return state?.kind === 'person' && state.active ? state : null;
}
