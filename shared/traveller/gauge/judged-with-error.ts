import { judgedLimits, within } from '../gate/judge.ts';
import type { Measured } from '../plan/characteristic.ts';

/**
 * Would this reading have been accepted by itself if the gauge showed too much by the error found? The error is taken to have been the same
 * all the time and over the whole range, which a check at one point cannot know: it sorts what to look at first and decides nothing.
 * @param error shown less true, in the value's unit
 * @returns null for a value that is worked out from what was read, where the error of a length is not that of the value
 */
export function judgedWithError(characteristic: Pick<Measured, 'lower' | 'upper' | 'decisionRule' | 'guardFactor' | 'entry'>, uncertainty: number, value: number, error: number): { readonly asRead: boolean; readonly withError: boolean } | null {
  if (characteristic.entry.how !== 'direct') return null;
  const limits = judgedLimits(characteristic, uncertainty);
  return { asRead: within(value, limits), withError: within(Number((value - error).toPrecision(12)), limits) };
}
