import { requireFinite, requireWhole } from '../../ground/outside-domain.ts';

/** SkSP-2: after `clearance` lots accepted in a row only one lot in `oneIn` is inspected, until one is not accepted. */
export interface SkipParameters {
  readonly clearance: number;
  readonly oneIn: number;
}

/** Where a stream of lots stands. Plain data; it applies to the next lot. */
export interface SkipState extends SkipParameters {
  readonly skipping: boolean;
  /** Lots accepted one after another while every lot is inspected; `clearance` once lots are passed over. */
  readonly acceptedInRow: number;
}

/** What became of a lot: judged, or passed over without inspection. A lot that came back (`original` false) never counts. */
export interface SkipEvent {
  readonly accepted: boolean;
  readonly original: boolean;
  /** Passed over: it is counted as nothing. */
  readonly skipped: boolean;
}

/**
 * The start: every lot is inspected, none counted.
 * @param parameters clearance i, 1 … 1000 lots; oneIn 1/f, 2 … 1000
 * @throws OutsideDomain outside these ranges
 * @see Perry, Skip-lot sampling plans, Journal of Quality Technology 5 (1973) 123, plan SkSP-2; Dodge, Industrial Quality Control 11 (1955) 3
 */
export function startSkip({ clearance, oneIn }: SkipParameters): SkipState {
  requireWhole('clearance', clearance, 1, 1000);
  requireWhole('oneIn', oneIn, 2, 1000);
  return { clearance, oneIn, skipping: false, acceptedInRow: 0 };
}

/** The state after a lot. A lot not accepted brings back the inspection of every lot, and the count starts again from 0. */
export function skipAfter(state: SkipState, { accepted, original, skipped }: SkipEvent): SkipState {
  if (!original || skipped) return state;
  if (!accepted) return { ...state, skipping: false, acceptedInRow: 0 };
  if (state.skipping) return state;
  const acceptedInRow = state.acceptedInRow + 1;
  return { ...state, acceptedInRow, skipping: acceptedInRow >= state.clearance };
}

/**
 * Is the next lot passed over? Each is inspected with the probability 1/oneIn, independently of the others, so that nobody can tell
 * beforehand which.
 * @param chance a number from the dice, 0 … 1, drawn and recorded by whoever opens the lot
 * @throws OutsideDomain when it is no fraction
 */
export function shouldSkip(state: SkipState, chance: number): boolean {
  requireFinite('chance', chance, 0, 1);
  return state.skipping && chance * state.oneIn >= 1;
}
