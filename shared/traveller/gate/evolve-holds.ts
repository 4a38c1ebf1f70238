import type { Slip } from '../slip.ts';
import type { CommonSlip } from './slips.ts';
import type { Hold } from './hold.ts';

/** Folds a hold or its lifting into the list of holds. Holds are never removed from the list. */
export function evolveHolds(holds: readonly Hold[], slip: Slip<CommonSlip>): readonly Hold[] {
  const { body, at, by } = slip;
  switch (body.type) {
    case 'held': return [...holds, { id: body.hold, cause: body.cause, reason: body.reason, at, by, lifted: null }];
    case 'disposed': return holds.map((hold) => (hold.id === body.hold ? { ...hold, lifted: { at, by, disposition: body.disposition, reason: body.reason } } : hold));
    case 'noteAdded': case 'chartSignalled': return holds;
  }
}
