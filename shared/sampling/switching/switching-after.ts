import { neverReached } from '../../ground/never-reached.ts';
import { requireWhole } from '../../ground/outside-domain.ts';
import type { Severity } from '../attributes/index.ts';
import { limitNumber } from './limit-numbers.ts';
import { startSwitching } from './switching-state.ts';
import type { JudgedPlan, LotOutcome, MoveReason, SwitchingRule, SwitchingState } from './switching-state.ts';

/** A lot was judged. `original` is false for a lot that came back: it never counts. */
export type LotJudged = {
  readonly type: 'lotJudged';
  readonly lot: string;
  readonly original: boolean;
  readonly accepted: boolean;
  /** Accepted between Ac and Re of a reduced plan. */
  readonly inGap?: boolean;
  /** The severity the lot's plan was opened under; a lot opened before the latest move does not count. Left out = the present one. */
  readonly inspectedOn?: Severity;
  readonly plan: JudgedPlan;
  readonly sampleSize: number;
  readonly found: number;
};

/** What can move a stream of lots. */
export type SwitchingEvent =
  | LotJudged
  | { readonly type: 'steadySet'; readonly steady: boolean }
  | { readonly type: 'reducedAllowedSet'; readonly allowed: boolean }
  | { readonly type: 'resumed' }
  /** The plan now in force asks for other rules or another AQL. */
  | { readonly type: 'ruleSet'; readonly rule: SwitchingRule; readonly aqlPercent: number };

const WINDOW_KEPT = 50; // lots; Table VIII never needs more than about 20 at the table's own sample sizes, and asking for more is a "may"
const REDUCED_FROM_SCORE = 30;

/**
 * The state after an event, for the next lot opened. Both rule sets share: tightened after 2 of 5 or fewer lots in a row not accepted;
 * normal again after 5 accepted in a row; discontinued when 5 lots not accepted have added up in one run on tightened; resumed, by
 * authority only, on tightened; reduced ended by a lot not accepted or one that ended in the gap, by production that is not steady, or
 * by the authority. They differ in how reduced begins: ISO 2859-1 by a score of 30, MIL-STD-105E by ten lots within a limit number.
 * Lots that came back, lots opened under another severity and lots judged while discontinued change nothing; nor does resuming what is not
 * discontinued: a verdict corrected later can leave such a word behind when the stream is counted anew.
 * @throws OutsideDomain when a count is no count
 * @see ISO 2859-1:1999 9.3, 9.4 (from memory); MIL-STD-105E 4.7, 4.8, 4.10.1.4 (seen). Where the texts are silent: docs/methods/switching.md
 */
export function switchingAfter(state: SwitchingState, event: SwitchingEvent): SwitchingState {
  switch (event.type) {
    case 'lotJudged': return afterLot(state, event);
    case 'steadySet': {
      const stated = { ...state, steady: event.steady };
      return !event.steady && state.severity === 'reduced' ? moved(stated, 'normal', 'notSteady', []) : perhapsReduced(stated);
    }
    case 'reducedAllowedSet': {
      const stated = { ...state, reducedAllowed: event.allowed };
      return !event.allowed && state.severity === 'reduced' ? moved(stated, 'normal', 'reducedWithdrawn', []) : perhapsReduced(stated);
    }
    case 'resumed':
      return state.severity === 'discontinued' ? moved(state, 'tightened', 'resumedByAuthority', []) : state;
    case 'ruleSet': {
      // The severity stands, and with it the count that may end in discontinuation; what was earned towards another under the old numbers does not.
      const { severity, steady, reducedAllowed, enteredBy, notAcceptedOnTightened } = state;
      return { ...startSwitching(event.rule, event.aqlPercent), severity, steady, reducedAllowed, enteredBy, notAcceptedOnTightened };
    }
    default: return neverReached(event);
  }
}

function afterLot(state: SwitchingState, event: LotJudged): SwitchingState {
  requireWhole('sampleSize', event.sampleSize, 1, Number.MAX_SAFE_INTEGER);
  requireWhole('found', event.found, 0, Number.MAX_SAFE_INTEGER);
  const { severity } = state;
  if (!event.original || severity === 'discontinued' || (event.inspectedOn ?? severity) !== severity) return state;
  const { lot, accepted, sampleSize, found, plan: { kind } } = event;
  const lots = [...state.recent, { lot, accepted, sampleSize, found, kind }];
  const counted: SwitchingState = {
    ...state,
    recent: severity === 'tightened' ? lots : lots.slice(-WINDOW_KEPT),
    acceptedInRow: accepted ? state.acceptedInRow + 1 : 0,
  };
  switch (severity) {
    case 'normal': return afterLotOnNormal(counted, event);
    case 'tightened': return afterLotOnTightened(counted, event);
    case 'reduced':
      if (!accepted) return moved(counted, 'normal', 'notAcceptedOnReduced', [lot]);
      return event.inGap === true ? moved(counted, 'normal', 'endedInGap', [lot]) : counted;
    default: return neverReached(severity);
  }
}

function afterLotOnNormal(counted: SwitchingState, event: LotJudged): SwitchingState {
  const notAccepted = counted.recent.slice(-5).filter(({ accepted }) => !accepted);
  if (notAccepted.length >= 2) return moved(counted, 'tightened', 'twoOfFiveNotAccepted', named(notAccepted));
  return perhapsReduced({ ...counted, score: counted.rule === 'ISO 2859-1' ? scoreAfter(counted.score, event) : 0 });
}

function afterLotOnTightened(counted: SwitchingState, event: LotJudged): SwitchingState {
  if (event.accepted) {
    return counted.acceptedInRow < 5 ? counted : moved(counted, 'normal', 'fiveAcceptedOnTightened', named(counted.recent.slice(-5)));
  }
  const added = { ...counted, notAcceptedOnTightened: counted.notAcceptedOnTightened + 1 };
  if (added.notAcceptedOnTightened < 5) return added;
  return moved(added, 'discontinued', 'fiveNotAcceptedOnTightened', named(added.recent.filter(({ accepted }) => !accepted)));
}

/**
 * ISO 2859-1:1999 9.3.3.2 (from memory). Its multiple plans have five samples; the third is taken as written for the seven of Tables IV too.
 * A variables lot has no score there, so such a stream never comes to reduced inspection.
 */
function scoreAfter(score: number, { accepted, plan }: LotJudged): number {
  if (!accepted || plan.kind === 'variables') return 0;
  if (plan.kind === 'double') return plan.onFirstSample ? score + 3 : 0;
  if (plan.kind === 'multiple') return plan.byThirdSample ? score + 3 : 0;
  if (plan.ac <= 1) return score + 2;
  return plan.tighterAccepted ? score + 3 : 0;
}

function perhapsReduced(state: SwitchingState): SwitchingState {
  if (state.severity !== 'normal' || !state.steady || !state.reducedAllowed) return state;
  if (state.rule === 'ISO 2859-1') {
    if (state.score < REDUCED_FROM_SCORE) return state;
    return moved(state, 'reduced', 'scoreReached30', named(state.recent.slice(-state.acceptedInRow)));
  }
  const within = lotsWithinLimitNumber(state);
  return within === null ? state : moved(state, 'reduced', 'withinLimitNumber', named(within));
}

/** The fewest latest lots, ten or more, all accepted, for which Table VIII has a number, if their total keeps to it; else null. */
function lotsWithinLimitNumber({ recent, acceptedInRow, aqlPercent }: SwitchingState): readonly LotOutcome[] | null {
  if (aqlPercent === null) return null;
  for (let lots = 10; lots <= Math.min(acceptedInRow, recent.length); lots += 1) {
    const taken = recent.slice(-lots);
    const limit = limitNumber(aqlPercent, total(taken, 'sampleSize'));
    if (taken.some(({ kind }) => kind === 'variables')) return null;
    if (limit === 'tooFewUnits') continue;
    return limit !== null && total(taken, 'found') <= limit ? taken : null;
  }
  return null;
}

function moved(state: SwitchingState, to: SwitchingState['severity'], why: MoveReason, lots: readonly string[]): SwitchingState {
  const enteredBy = { from: state.severity, to, why, lots };
  const score = to === 'reduced' ? state.score : 0;
  return { ...state, severity: to, score, recent: [], acceptedInRow: 0, notAcceptedOnTightened: 0, enteredBy };
}

function named(lots: readonly LotOutcome[]): readonly string[] {
  return lots.map(({ lot }) => lot);
}

function total(lots: readonly LotOutcome[], what: 'sampleSize' | 'found'): number {
  return lots.reduce((sum, lot) => sum + lot[what], 0);
}
