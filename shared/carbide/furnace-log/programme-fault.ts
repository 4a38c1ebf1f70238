import type { ProgrammeLimits, ProgrammeSegment } from './furnace-log.ts';

/** Why limits cannot be held against a log. */
export type ProgrammeFault = 'noSegments' | 'beginsWithSoak' | 'soakAfterSoak' | 'limitsCrossed' | 'rampMissesSoak' | 'rampInsideSoak' | 'rampGoesNowhere';
/** Most segments of a programme. */
export const MOST_SEGMENTS = 40;

/**
 * Finds what makes limits unworkable: a programme begins with a ramp, soaks stand apart, a ramp before a soak ends inside its window, and the ramp
 * after it leads out of it. @returns the fault with the name of its segment, or null
 */
export function programmeFault({ segments }: ProgrammeLimits): { readonly fault: ProgrammeFault; readonly segment: string } | null {
  if (segments.length === 0 || segments.length > MOST_SEGMENTS) return { fault: 'noSegments', segment: '' };
  for (const [at, segment] of segments.entries()) {
    const fault = faultAt(segment, segments[at - 1] ?? null);
    if (fault !== null) return { fault, segment: segment.name };
  }
  return null;
}

function faultAt(segment: ProgrammeSegment, before: ProgrammeSegment | null): ProgrammeFault | null {
  if (segment.kind === 'soak') {
    if (before === null) return 'beginsWithSoak';
    if (before.kind === 'soak') return 'soakAfterSoak';
    const { lowerC, upperC, leastMin, mostMin, pressure } = segment;
    if (lowerC >= upperC || (mostMin !== null && leastMin > mostMin) || (pressure !== null && pressure.lowerMbar >= pressure.upperMbar)) return 'limitsCrossed';
    return before.toC < lowerC || before.toC > upperC ? 'rampMissesSoak' : null;
  }
  const { kind, toC, leastRateCPerMin: least, mostRateCPerMin: most } = segment;
  if (least !== null && most !== null && least > most) return 'limitsCrossed';
  if (before === null) return null;
  if (before.kind === 'soak') return (kind === 'heat' ? toC <= before.upperC : toC >= before.lowerC) ? 'rampInsideSoak' : null;
  return (kind === 'heat' ? toC <= before.toC : toC >= before.toC) ? 'rampGoesNowhere' : null;
}
