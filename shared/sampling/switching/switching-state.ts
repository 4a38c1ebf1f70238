import { OutsideDomain } from '../../ground/outside-domain.ts';
import { isAql } from '../attributes/index.ts';
import type { Severity } from '../attributes/index.ts';

/** Which published rules move a stream of lots between severities. */
export type SwitchingRule = 'ISO 2859-1' | 'MIL-STD-105E';

/** What the judged lot's plan contributes to the score: Ac and the tighter plan's verdict, the sample that accepted, or that it was judged by variables. */
export type JudgedPlan =
  | { readonly kind: 'single'; readonly ac: number; readonly tighterAccepted: boolean }
  | { readonly kind: 'double'; readonly onFirstSample: boolean }
  | { readonly kind: 'multiple'; readonly byThirdSample: boolean }
  | { readonly kind: 'variables' };

/** One lot that counts, as the rules see it. */
export type LotOutcome = {
  readonly lot: string;
  readonly accepted: boolean;
  readonly sampleSize: number;
  readonly found: number;
  readonly kind: JudgedPlan['kind'];
};

/** Why a stream moved. One reason a rule; the words people read stand elsewhere. */
export type MoveReason =
  | 'twoOfFiveNotAccepted'
  | 'fiveAcceptedOnTightened'
  | 'scoreReached30'
  | 'withinLimitNumber'
  | 'notAcceptedOnReduced'
  | 'endedInGap'
  | 'notSteady'
  | 'reducedWithdrawn'
  | 'fiveNotAcceptedOnTightened'
  | 'resumedByAuthority';

/** A move from one severity to another, with the lots it rests on, oldest first. */
export type Move = {
  readonly from: Severity | 'discontinued';
  readonly to: Severity | 'discontinued';
  readonly why: MoveReason;
  readonly lots: readonly string[];
};

/** Where a stream of lots stands for one class of nonconformities. Plain data; it applies to the next lot opened. */
export type SwitchingState = {
  readonly rule: SwitchingRule;
  readonly severity: Severity | 'discontinued';
  /** ISO 2859-1 switching score, kept on normal inspection; on reduced, the score it was earned with; else 0. */
  readonly score: number;
  /** Original lots judged since this severity began, oldest first; on normal and reduced never more than the last 50. */
  readonly recent: readonly LotOutcome[];
  /** Original lots accepted one after another since this severity began. */
  readonly acceptedInRow: number;
  /** Original lots not accepted in this unbroken run on tightened inspection. */
  readonly notAcceptedOnTightened: number;
  /** Production is steady, as a person has stated it. Nothing is assumed: it starts false. */
  readonly steady: boolean;
  /** The responsible authority wants reduced inspection. It starts false. */
  readonly reducedAllowed: boolean;
  /** The AQL whose column of Table VIII holds the limit numbers; null where the rule needs none. */
  readonly aqlPercent: number | null;
  /** The move that led to the present severity; null while it is the first. */
  readonly enteredBy: Move | null;
};

/**
 * The start of a stream: normal inspection, nothing counted.
 * @param aqlPercent the stream's AQL; needed by MIL-STD-105E, whose limit numbers stand by AQL
 * @throws OutsideDomain when MIL-STD-105E is chosen without one of the 26 AQLs
 * @see MIL-STD-105E 4.7 (from memory); ISO 2859-1:1999 9.1 (from memory)
 */
export function startSwitching(rule: SwitchingRule, aqlPercent?: number): SwitchingState {
  const limitNumbersOf = rule === 'MIL-STD-105E' ? (aqlPercent ?? Number.NaN) : null;
  if (limitNumbersOf !== null && !isAql(limitNumbersOf)) throw new OutsideDomain('aqlPercent', 'one of AQLS for MIL-STD-105E', aqlPercent);
  return {
    rule, severity: 'normal', score: 0, recent: [], acceptedInRow: 0, notAcceptedOnTightened: 0,
    steady: false, reducedAllowed: false, aqlPercent: limitNumbersOf, enteredBy: null,
  };
}

/** The move between two states, or null when the severity stayed. For states one event apart. */
export function lastMove(before: SwitchingState, after: SwitchingState): Move | null {
  return before.severity === after.severity ? null : after.enteredBy;
}
