import { isPassed } from './gate/work.ts';
import type { Pen } from './pen.ts';
import { refuse } from './pen.ts';
import type { Lot, SubjectCommon } from './lot/lot.ts';
import { standingHolds } from './lot/lot.ts';
import type { Batch } from './powder-batch/batch.ts';
import { ancestorsOf } from './powder-batch/lineage.ts';

/** Refuses work on a subject that has left the route or stands on hold. */
export function requireFree(subject: SubjectCommon): void {
  if (subject.ended !== null) refuse({ code: 'subjectHasEnded', subject: subject.id, how: subject.ended.how });
  const [hold] = standingHolds(subject);
  if (hold !== undefined) refuse({ code: 'subjectIsHeld', subject: subject.id, hold: hold.id, reason: hold.reason });
}

/**
 * Refuses a blend one of whose parts, near or far, stands on hold or is under test again. Of a part that was scrapped or returned the blend and
 * its lots were put on hold themselves.
 */
export function requirePowderFree(pen: Pen, batch: Batch): void {
  for (const part of ancestorsOf(pen, batch)) {
    const [hold] = standingHolds(part);
    if (hold !== undefined) refuse({ code: 'upstreamIsHeld', upstream: part.id, reason: hold.reason });
    if (part.ended === null && !part.gates.every(isPassed)) refuse({ code: 'batchNotReleased', batch: part.id });
  }
}

/** Refuses a lot whose powder, the parts of a blend included, or present charges stand on hold: what happens upstream stops what was made of it. */
export function requireUpstreamFree(pen: Pen, lot: Lot): void {
  const powder = pen.batch(lot.batch);
  requirePowderFree(pen, powder);
  const streams = [powder.stream, ...lot.charges.filter(({ current }) => current).map(({ charge }) => charge)];
  for (const stream of streams) {
    const upstream = pen.subject(stream);
    const [hold] = standingHolds(upstream);
    if (hold !== undefined) refuse({ code: 'upstreamIsHeld', upstream: upstream.id, reason: hold.reason });
  }
}
