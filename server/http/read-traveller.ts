import type { Subject } from '../../shared/traveller/index.ts';
import { streamName, SUBJECT_KINDS } from '../../shared/traveller/index.ts';
import type { StampedSlip } from '../../shared/wire/stamped-slip.ts';
import { stamped } from '../door/stamped.ts';
import { malformed, notFound, type Answer } from './answer.ts';
import type { Plant } from './plant.ts';

export interface TravellerRead { readonly state: Subject; readonly slips: readonly StampedSlip[] }

/** A subject and the last `tail` slips of its thread, both of one moment and durable; or the answer that there is none. */
export async function readTraveller({ door, journal }: Plant, kind: string, id: string, tail: number): Promise<TravellerRead | Answer> {
  const known = SUBJECT_KINDS.find((each) => each === kind);
  if (known === undefined) return malformed('kind', `must be one of: ${SUBJECT_KINDS.join(', ')}`);
  const stream = streamName(known, id);
  for (;;) {
    const { state, version } = await door.states.fresh(stream);
    if (state === null || !('gates' in state)) return notFound(known === 'lot' || known === 'batch' ? known : 'charge', id);
    const slips = await journal.read(stream, Math.max(0, version - tail));
    // Something may have been written while the slips were read: then both are read again.
    if (slips.at(-1)?.version === version) return { state, slips: slips.map(stamped) };
  }
}

/** True where the question was answered with a refusal in place of a traveller. */
export function isAnswer(read: TravellerRead | Answer): read is Answer {
  return 'status' in read;
}
