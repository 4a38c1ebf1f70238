import type { Slip } from '../../shared/traveller/index.ts';
import type { StoredSlip } from '../journal/journal.ts';

/** A stored slip with its body's type, which the journal does not look into. */
export function typed(stored: StoredSlip): Slip {
  return stored as unknown as Slip;
}
