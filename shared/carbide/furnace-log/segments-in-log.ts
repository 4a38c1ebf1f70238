import type { ProgrammeSegment, RampSegment, SoakSegment } from './furnace-log.ts';
import type { LogRow } from './rows-in-order.ts';

/** Where a segment lies in the rows, both ends included; `reached` is false for a ramp that never came to its temperature. */
export interface LogPart { readonly from: number; readonly to: number; readonly reached: boolean }

/**
 * Finds each segment of a programme in the rows of a log. A ramp ends at the first row that has come to its temperature. A soak begins there and
 * ends with the last row within its window before the next ramp has come to its own: what leaves the window and comes back lies inside
 * the soak, and so is an excursion and no end. After a ramp that never came to its temperature nothing more is looked for (null).
 * Derived, our own choice; it asks that soaks stand between ramps that lead out of their window (`programmeFault`).
 */
export function partsOf(rows: readonly LogRow[], segments: readonly ProgrammeSegment[]): readonly (LogPart | null)[] {
  const parts: (LogPart | null)[] = [];
  let from = 0;
  let lost = rows.length === 0;
  segments.forEach((segment, at) => {
    if (lost) {
      parts.push(null);
      return;
    }
    const part = segment.kind === 'soak' ? soakFrom(rows, from, segment, segments[at + 1]) : rampFrom(rows, from, segment);
    parts.push(part);
    from = part.to;
    lost = !part.reached;
  });
  return parts;
}

function rampFrom(rows: readonly LogRow[], from: number, ramp: RampSegment): LogPart {
  const end = reachedFrom(rows, from, ramp);
  return end === null ? { from, to: rows.length - 1, reached: false } : { from, to: end, reached: true };
}

function soakFrom(rows: readonly LogRow[], from: number, { lowerC, upperC }: SoakSegment, next: ProgrammeSegment | undefined): LogPart {
  const until = next === undefined || next.kind === 'soak' ? rows.length : reachedFrom(rows, from, next) ?? rows.length;
  let to = from;
  for (let at = from; at < until; at += 1) {
    const { temperatureC } = rows[at] ?? { temperatureC: Number.NaN };
    if (temperatureC >= lowerC && temperatureC <= upperC) to = at;
  }
  return { from, to, reached: true };
}

function reachedFrom(rows: readonly LogRow[], from: number, { kind, toC }: RampSegment): number | null {
  const at = rows.findIndex(({ temperatureC }, index) => index >= from && (kind === 'heat' ? temperatureC >= toC : temperatureC <= toC));
  return at < 0 ? null : at;
}
