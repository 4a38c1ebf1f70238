import { stagesOf } from '../attributes/index.ts';
import type { AttributesPlan } from '../attributes/index.ts';
import { judgedPlan, startSwitching, switchingAfter } from '../switching/index.ts';
import type { LotJudged, SwitchingState } from '../switching/index.ts';
import { acceptedKinds } from './accepted-kinds.ts';
import type { AcceptedKind } from './accepted-kinds.ts';
import { limitWindow } from './limit-window.ts';
import type { Source } from './model.ts';
import type { Scheme } from './scheme.ts';

/** One run of accepted lots on normal inspection: it ends at a lot not accepted or in reduced inspection. */
export interface Run {
  /** The chance that it ends in reduced inspection. */
  readonly reached: number;
  /** Expected number of lots in it, the one not accepted counted; Infinity where it never ends. */
  readonly lots: number;
  /** False where the road is approximated: see limitWindow. */
  readonly exact: boolean;
}

/**
 * A run of accepted lots on normal inspection, from its first lot on. Lots are independent and alike. A lot not accepted puts the score to 0
 * and breaks the row of ten, so each run begins the road to reduced inspection anew.
 * @param rejected the chance that a lot is not accepted on normal inspection
 */
export function runOnNormal(scheme: Scheme, source: Source, rejected: number): Run {
  const never: Run = { reached: 0, lots: rejected === 0 ? Infinity : 1 / rejected, exact: true };
  if (!scheme.steady || !scheme.reducedAllowed) return never;
  const plan = scheme.plans.normal;
  const kinds = acceptedKinds(stagesOf(plan), source);
  if (scheme.rule === 'MIL-STD-105E') return limitWindow(plan, kinds, rejected) ?? never;
  return byScore(plan, kinds, rejected) ?? never;
}

/**
 * The score of ISO 2859-1: k lots in a row that score reach it, s the chance of one, r of a lot not accepted, u of an accepted one that
 * puts the score back to 0 (1 = s + u + r). Reached s^k·(1−s)/(r + u·s^k), lots (1−s^k)/(r + u·s^k). Which lots score, and how many it
 * takes, is asked of the switching rules themselves.
 */
function byScore(plan: AttributesPlan, kinds: readonly AcceptedKind[], rejected: number): Run | null {
  let [scoring, unscored] = [0, 0];
  let needed: number | null = null;
  for (const kind of kinds) {
    const lots = lotsToReduced(plan, kind);
    if (lots === null) unscored += kind.share;
    else {
      scoring += kind.share;
      needed ??= lots;
    }
  }
  if (needed === null) return null;
  const all = scoring ** needed;
  const ends = rejected + unscored * all;
  const notScoring = rejected + unscored;
  if (notScoring === 0) return { reached: 1, lots: needed, exact: true };
  // (1 − s^k)/(1 − s) as a sum: nothing is lost when s is nearly 1.
  let block = 0;
  for (let power = 0; power < needed; power += 1) block += scoring ** power;
  return { reached: ends === 0 ? 0 : Math.min(1, (all * notScoring) / ends), lots: ends === 0 ? Infinity : (block * notScoring) / ends, exact: true };
}

function lotJudged(plan: AttributesPlan, { stage, pieces, found }: AcceptedKind): LotJudged {
  return { type: 'lotJudged', lot: '', original: true, accepted: true, plan: judgedPlan(plan, stage, found), sampleSize: pieces, found };
}

function approved(): SwitchingState {
  return { ...startSwitching('ISO 2859-1'), steady: true, reducedAllowed: true };
}

/** What the rules said of a plan's lots before, by the sample that decided and the number found: it does not depend on the quality. */
const asked = new WeakMap<AttributesPlan, Map<string, number | null>>();

/** How many lots like this one, in a row from the start, lead to reduced inspection; null where such a lot does not score. */
function lotsToReduced(plan: AttributesPlan, kind: AcceptedKind): number | null {
  const answers = asked.get(plan) ?? new Map<string, number | null>();
  asked.set(plan, answers);
  const which = `${kind.stage}/${kind.found}`;
  const known = answers.get(which);
  if (known !== undefined) return known;
  const event = lotJudged(plan, kind);
  const answer = switchingAfter(approved(), event).score > 0 ? inARow(event) : null;
  answers.set(which, answer);
  return answer;
}

function inARow(event: LotJudged): number {
  let [state, lots] = [approved(), 0];
  while (state.severity === 'normal') {
    state = switchingAfter(state, event);
    lots += 1;
  }
  return lots;
}
