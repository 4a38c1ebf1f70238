import type { Pen } from './pen.ts';
import { refuse } from './pen.ts';
import type { Lot, SubjectCommon } from './lot/lot.ts';
import { standingHolds } from './lot/lot.ts';
import { streamName } from './stream.ts';

/** Refuses work on a subject that has left the route or stands on hold. */
export function requireFree(subject: SubjectCommon): void {
  if (subject.ended !== null) refuse({ code: 'subjectHasEnded', subject: subject.id, how: subject.ended.how });
  const [hold] = standingHolds(subject);
  if (hold !== undefined) refuse({ code: 'subjectIsHeld', subject: subject.id, hold: hold.id, reason: hold.reason });
}

/** Refuses a lot whose powder batch or present charges stand on hold: what happens upstream stops what was made of it. */
export function requireUpstreamFree(pen: Pen, lot: Lot): void {
  const streams = [streamName('batch', lot.batch), ...lot.charges.filter(({ current }) => current).map(({ charge }) => charge)];
  for (const stream of streams) {
    const upstream = pen.subject(stream);
    const [hold] = standingHolds(upstream);
    if (hold !== undefined) refuse({ code: 'upstreamIsHeld', upstream: upstream.id, reason: hold.reason });
  }
}
