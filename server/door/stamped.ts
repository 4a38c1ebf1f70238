import type { SlipBody } from '../../shared/traveller/index.ts';
import type { StampedSlip } from '../../shared/wire/stamped-slip.ts';
import type { StoredSlip } from '../journal/journal.ts';

/** A stored slip as it travels to kiosks and programs. */
export function stamped({ position, stream, version, at, by, bench, clientId, body, hash }: StoredSlip): StampedSlip {
  return { position, stream, version, at, by, bench, clientId, body: body as SlipBody, hash };
}
