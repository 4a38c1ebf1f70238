import { evolve } from '../../shared/traveller/index.ts';
import type { Subject } from '../../shared/traveller/index.ts';
import type { StampedSlip } from '../../shared/wire/stamped-slip.ts';

/**
 * Folds slips that came in over the channel. Those already there are passed over; a missing one in between is a gap, and the traveller
 * must be fetched anew.
 */
export function foldNew(state: Subject, slips: readonly StampedSlip[], arrived: readonly StampedSlip[]): { readonly state: Subject; readonly slips: readonly StampedSlip[] } | 'gap' {
  const fresh = [...arrived].filter(({ version }) => version > state.version).sort((a, b) => a.version - b.version);
  let next = state;
  const added: StampedSlip[] = [];
  for (const slip of fresh) {
    if (slip.version === next.version) continue;
    if (slip.version !== next.version + 1) return 'gap';
    next = evolve(next, slip) as Subject;
    added.push(slip);
  }
  return { state: next, slips: added.length === 0 ? slips : [...slips, ...added] };
}
