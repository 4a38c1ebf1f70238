import type { AttributesPlan } from '../attributes/index.ts';
import { limitNumber } from '../switching/index.ts';
import type { AcceptedKind } from './accepted-kinds.ts';
import { exactWindow } from './limit-window-exact.ts';
import { exchangeableWindow } from './limit-window-exchangeable.ts';
import type { Run } from './road-to-reduced.ts';

const FEWEST_LOTS = 10;
const MOST_LOTS = 50; // what the switching state remembers

/**
 * A run of accepted lots under MIL-STD-105E: it ends in reduced inspection as soon as the last ten of its lots (more where ten are too few
 * units for Table VIII) hold no more found than the limit number. Which windows of ten are within it depends on what each lot brought,
 * so an exact chain must remember the last nine counts. It does, for single plans of which the states fit (Ac up to 3, where tables put them).
 * For the others only the total of the ten is remembered, and the lot that drops out is taken to be any of the ten (see
 * exchangeableWindow): an approximation, said so by `exact`.
 * @returns null where no number of lots leads to reduced inspection
 * @see MIL-STD-105E 4.7.3 and Table VIII
 */
export function limitWindow(plan: AttributesPlan, kinds: readonly AcceptedKind[], rejected: number): Run | null {
  if (kinds.length === 0) return null;
  const accepted = kinds.reduce((sum, { share }) => sum + share, 0);
  const unitsPerLot = kinds.reduce((sum, { pieces, share }) => sum + pieces * share, 0) / accepted;
  for (let lots = FEWEST_LOTS; lots <= MOST_LOTS; lots += 1) {
    const limit = limitNumber(plan.aqlPercent, Math.round(lots * unitsPerLot));
    if (limit === null) return null;
    if (limit === 'tooFewUnits') continue;
    const exact = plan.samples === undefined ? exactWindow(lots, limit, kinds, rejected) : null;
    return exact ?? exchangeableWindow(plan, lots, kinds, rejected);
  }
  return null;
}
