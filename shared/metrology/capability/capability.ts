import { OutsideDomain } from '../../ground/outside-domain.ts';
import type { CapabilityIndex, CapabilitySpread } from './capability-index.ts';
import { centredIndex, sideIndex, widthIndex } from './capability-index.ts';
import type { FractionOutside } from './fraction-outside.ts';
import { fractionOutside } from './fraction-outside.ts';
import type { LotSpread } from './pooled-spread.ts';
import { spreadOverall, spreadWithin } from './pooled-spread.ts';

/** Fewest values from which indices are shown at all: our own floor. */
export const LEAST_CAPABILITY_VALUES = 8;
/** From this many values on nothing is said about their number; below, intervals are wide and Bissell's approximation is rough (common practice, from memory). */
export const GOOD_CAPABILITY_VALUES = 30;

/** Indices by one spread. `width` (Cp, Pp) only with two limits, `lowerSide` and `upperSide` only for a limit that is given. */
export type CapabilityBy = { readonly spread: CapabilitySpread; readonly width: CapabilityIndex | null; readonly lowerSide: CapabilityIndex | null; readonly upperSide: CapabilityIndex | null; readonly centred: CapabilityIndex };

/** Capability of a characteristic over lots: `within` gives Cp, CPL, CPU, Cpk; `overall` gives Pp, PPL, PPU, Ppk. */
export type Capability = {
  readonly values: number; readonly lots: number; readonly confidence: number;
  /** null where no lot has spread within it. */
  readonly within: CapabilityBy | null;
  readonly overall: CapabilityBy;
  readonly outside: FractionOutside;
};

/**
 * Capability from lots' summaries. `tooFew` below LEAST_CAPABILITY_VALUES, `noSpread` where all values are equal.
 * @param limits tolerance limits, one at least
 * @param confidence of the two-sided intervals, above 0 and below 1
 * @throws OutsideDomain without a limit, or without lots
 * @see widthIndex, centredIndex, fractionOutside
 * @remarks all intervals take values for normal and lots for steady; the caller says where a test doubts the first and a chart the second
 */
export function capability(limits: { readonly lower?: number | undefined; readonly upper?: number | undefined }, lots: readonly LotSpread[], confidence: number): Capability | 'tooFew' | 'noSpread' {
  if (limits.lower === undefined && limits.upper === undefined) throw new OutsideDomain('limits', 'given on one side at least', 'none');
  const values = lots.reduce((sum, { n }) => sum + n, 0);
  if (values < LEAST_CAPABILITY_VALUES) return 'tooFew';
  const overall = spreadOverall(lots);
  if (overall === null) return 'noSpread';
  const within = spreadWithin(lots);
  return {
    values, lots: lots.length, confidence,
    within: within === null ? null : by(limits, within, confidence), overall: by(limits, overall, confidence),
    outside: fractionOutside(limits, overall, confidence),
  };
}

function by({ lower, upper }: { readonly lower?: number | undefined; readonly upper?: number | undefined }, spread: CapabilitySpread, confidence: number): CapabilityBy {
  return {
    spread,
    width: lower === undefined || upper === undefined ? null : widthIndex({ lower, upper }, spread, confidence),
    lowerSide: lower === undefined ? null : sideIndex('lower', lower, spread, confidence),
    upperSide: upper === undefined ? null : sideIndex('upper', upper, spread, confidence),
    centred: centredIndex({ lower, upper }, spread, confidence),
  };
}
