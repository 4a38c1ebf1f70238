import { requireWhole } from '../../ground/outside-domain.ts';
import { blocksOf } from './blocks.ts';
import { requireFits, sourceOf } from './model.ts';
import type { RiskModel } from './model.ts';
import { acceptedOf, outcomesFrom } from './outcomes.ts';
import type { Outcomes } from './outcomes.ts';
import { lotFor, outgoingOf } from './outgoing.ts';
import { runOnNormal } from './road-to-reduced.ts';
import type { Run } from './road-to-reduced.ts';
import { judgingOn } from './scheme.ts';
import type { Scheme } from './scheme.ts';
import { walk } from './walk.ts';

/** Shares of lots in the long run, fractions that add up to 1. */
export interface SchemeShares {
  readonly normal: number;
  readonly tightened: number;
  readonly reduced: number;
  readonly discontinued: number;
}

/** How a stream of lots of one quality fares under plans and switching rules together, in the long run. */
export interface SchemeBehaviour {
  /** Share accepted of the lots that are inspected. */
  readonly acceptance: number;
  /** Of all lots; those that pass while inspection is discontinued among them. */
  readonly shares: SchemeShares;
  /** Pieces per inspected lot; every sample begun is finished. */
  readonly averageSampleNumber: number;
  /** In inspected lots, rejected ones looked at piece by piece; as averageOutgoingQuality. */
  readonly averageOutgoingQuality: number;
  /** Expected number of lots from the start on normal inspection to the first discontinuation, that lot counted; null: it cannot come, or not within 1e300. */
  readonly lotsToDiscontinuation: number | null;
  /** False where the road to reduced inspection by limit numbers is approximated (MIL-STD-105E, larger Ac or several samples). */
  readonly exact: boolean;
}

/**
 * The long run of a scheme, as a Markov chain. All lots have the same quality and are independent. Each severity begins anew whenever it is
 * entered, so the chain is reckoned severity by severity: how long a stay lasts, and where it leads. Discontinuation absorbs by the
 * letter of the rules; here inspection is resumed on tightened after `resumeAfter` lots, so that a long run exists, and the time to the
 * first discontinuation is given beside it.
 * @param model one lot (p is round(p·N) of N), a process, or nonconformities counted
 * @throws OutsideDomain for a quality outside the model, plans larger than the lot, resumeAfter not 0 … 1e9
 * @see ISO 2859-1:1999 9.3, 9.4 (from memory); MIL-STD-105E 4.7, 4.8 (seen); the chain is derived in docs/methods/switching.md
 */
export function schemeBehaviour(scheme: Scheme, model: RiskModel, p: number): SchemeBehaviour {
  const resumeAfter = scheme.resumeAfter ?? 0;
  requireWhole('resumeAfter', resumeAfter, 0, 1e9);
  const source = sourceOf(model, p);
  const lotSize = lotFor(scheme.lotSize, model);
  const on = (severity: 'normal' | 'tightened' | 'reduced'): Fared => {
    const blocks = blocksOf(judgingOn(scheme, severity));
    if (lotSize !== null) requireFits(scheme.plans[severity].sampleSize, lotSize);
    const walked = walk(blocks, source);
    return { outcomes: outcomesFrom(walked), outgoing: outgoingOf(blocks, lotSize, source, walked) };
  };
  const fared = { normal: on('normal'), tightened: on('tightened'), reduced: on('reduced') };
  const run = runOnNormal(scheme, source, fared.normal.outcomes.rejected);
  const stays = staysOf(run, fared.normal.outcomes, fared.tightened.outcomes, fared.reduced.outcomes);
  const shares = sharesOf(stays, resumeAfter);
  const inspected = shares.normal + shares.tightened + shares.reduced;
  const mean = (of: (each: Fared) => number): number =>
    (shares.normal * of(fared.normal) + shares.tightened * of(fared.tightened) + shares.reduced * of(fared.reduced)) / inspected;
  return {
    acceptance: mean(({ outcomes }) => acceptedOf(outcomes)),
    shares,
    averageSampleNumber: mean(({ outcomes }) => outcomes.averageSampleNumber),
    averageOutgoingQuality: mean(({ outgoing }) => outgoing),
    lotsToDiscontinuation: lotsToDiscontinuation(stays),
    exact: run.exact,
  };
}

interface Fared {
  readonly outcomes: Outcomes;
  readonly outgoing: number;
}

/** The stays on each severity. Chances of one stay are kept over a common scale where they may both be tiny. */
interface Stays {
  readonly run: Run;
  /** The chance that a run ends at a lot not accepted. */
  readonly broken: number;
  /** The chance that a run ends so after three accepted lots or fewer. */
  readonly brokenEarly: number;
  readonly lotsTightened: number;
  /** Tightened back to normal, and to discontinued. */
  readonly toNormal: number;
  readonly toDiscontinued: number;
  /** The chance that a lot ends reduced inspection. */
  readonly leavesReduced: number;
}

function staysOf(run: Run, normal: Outcomes, tightened: Outcomes, reduced: Outcomes): Stays {
  const accepted = Math.min(1, acceptedOf(normal));
  const onTightened = Math.min(1, acceptedOf(tightened));
  const fiveInRow = onTightened ** 5;
  const spell = 1 + onTightened + onTightened ** 2 + onTightened ** 3 + onTightened ** 4; // lots in one run of accepted lots, the sixth never comes
  const brokenSpell = Math.min(1, tightened.rejected * spell);
  const spells = 1 + brokenSpell + brokenSpell ** 2 + brokenSpell ** 3 + brokenSpell ** 4;
  return {
    run,
    broken: run.lots === Infinity ? 0 : Math.min(1, normal.rejected * run.lots),
    brokenEarly: normal.rejected * (1 + accepted + accepted ** 2 + accepted ** 3),
    lotsTightened: spell * spells,
    toNormal: fiveInRow * spells,
    toDiscontinued: brokenSpell ** 5,
    leavesReduced: reduced.rejected + reduced.acceptedInGap,
  };
}

/**
 * Lots on each severity, up to a common factor. A visit to normal inspection is a first run and, as long as runs are broken late, further
 * ones: reached + brokenEarly is the chance that such a further run ends the visit.
 */
function sharesOf({ run, broken, brokenEarly, lotsTightened, toNormal, toDiscontinued, leavesReduced }: Stays, resumeAfter: number): SchemeShares {
  if (run.lots === Infinity) return { normal: 1, tightened: 0, reduced: 0, discontinued: 0 };
  const left = run.reached === 0 ? 1 : leavesReduced;
  const ends = run.reached + brokenEarly;
  const toTightened = broken * brokenEarly;
  const toReduced = run.reached * (ends + broken);
  const lots = {
    normal: run.lots * (ends + broken) * toNormal * left,
    tightened: toTightened * lotsTightened * left,
    reduced: toReduced * toNormal,
    discontinued: toTightened * toDiscontinued * resumeAfter * left,
  };
  const all = lots.normal + lots.tightened + lots.reduced + lots.discontinued;
  if (all > 0) return { normal: lots.normal / all, tightened: lots.tightened / all, reduced: lots.reduced / all, discontinued: lots.discontinued / all };
  // Neither tightened nor reduced inspection is ever left: the first one reached is kept.
  const tightenedKept = toTightened / (toTightened + toReduced);
  const onTightened = lotsTightened / (lotsTightened + toDiscontinued * resumeAfter);
  return { normal: 0, tightened: tightenedKept * onTightened, reduced: 1 - tightenedKept, discontinued: tightenedKept * (1 - onTightened) };
}

function lotsToDiscontinuation({ run, broken, brokenEarly, lotsTightened, toDiscontinued, leavesReduced }: Stays): number | null {
  const ends = run.reached + brokenEarly;
  const toTightened = (broken * brokenEarly) / ends;
  const toReduced = (run.reached * (ends + broken)) / ends;
  const lotsReduced = run.reached === 0 ? 0 : toReduced / leavesReduced;
  const lots = (run.lots * ((ends + broken) / ends) + lotsReduced + toTightened * lotsTightened) / (toTightened * toDiscontinued);
  return lots < 1e300 ? lots : null;
}
