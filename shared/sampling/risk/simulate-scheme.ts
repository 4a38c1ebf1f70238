import { requireFinite, requireWhole } from '../../ground/outside-domain.ts';
import type { Severity } from '../attributes/index.ts';
import { diceFrom } from '../draw/dice.ts';
import type { Dice } from '../draw/dice.ts';
import { judgedPlan, startSwitching, switchingAfter } from '../switching/index.ts';
import type { SwitchingState } from '../switching/index.ts';
import { lookAtLot } from './draw-lot.ts';
import { requireFits, sourceOf } from './model.ts';
import type { RiskModel, Source } from './model.ts';
import { judgingOn } from './scheme.ts';
import type { Scheme } from './scheme.ts';
import type { SchemeShares } from './scheme-behaviour.ts';
import { betaBy } from './spread-quality.ts';

export interface SimulationRequest {
  readonly scheme: Scheme;
  /** 1 … 1 000 000. */
  readonly lots: number;
  /** The mean quality of the lots, as `outcomes` takes it. */
  readonly p: number;
  /** Any text; the same seed gives the same lots on every machine. */
  readonly seed: string;
  /** Standard deviation of the quality from lot to lot, by a beta distribution; 0 unless given, less than √(p(1−p)). Not with Poisson. */
  readonly spread?: number;
  /** A process of conforming pieces or not unless given. */
  readonly model?: RiskModel;
}

export interface SimulatedLot {
  /** Counted from 1. */
  readonly lot: number;
  readonly severity: Severity | 'discontinued';
  readonly found: number;
  /** Pieces looked at; 0 while inspection is discontinued. */
  readonly sampleSize: number;
  /** Never while inspection is discontinued: the lot passes uninspected. */
  readonly accepted: boolean;
}

export interface SimulatedYear {
  readonly lots: readonly SimulatedLot[];
  /** Lots accepted. */
  readonly accepted: number;
  readonly shares: SchemeShares;
  /** Pieces looked at in all lots. */
  readonly pieces: number;
}

/**
 * Lots under a scheme, one after another, from normal inspection: dice say what each sample brings, the plans judge it, and the switching
 * rules of the floor themselves (`switchingAfter`) move the severity. While discontinued, `resumeAfter` lots pass uninspected.
 * @throws OutsideDomain outside the ranges of the request, or as `outcomes`
 */
export function simulateScheme({ scheme, lots, p, seed, spread = 0, model = { kind: 'binomial' } }: SimulationRequest): SimulatedYear {
  requireWhole('lots', lots, 1, 1_000_000);
  requireWhole('resumeAfter', scheme.resumeAfter ?? 0, 0, 1e9);
  const qualityBy = qualities(model, p, spread);
  if (model.kind === 'hypergeometric') for (const plan of Object.values(scheme.plans)) requireFits(plan.sampleSize, model.lotSize);
  const dice = diceFrom(seed);
  const seen: SimulatedLot[] = [];
  let state: SwitchingState = { ...startSwitching(scheme.rule, scheme.plans.normal.aqlPercent), steady: scheme.steady, reducedAllowed: scheme.reducedAllowed };
  let waited = 0;
  for (let lot = 1; lot <= lots; lot += 1) {
    if (state.severity === 'discontinued' && waited >= (scheme.resumeAfter ?? 0)) [state, waited] = [switchingAfter(state, { type: 'resumed' }), 0];
    if (state.severity === 'discontinued') {
      waited += 1;
      seen.push({ lot, severity: 'discontinued', found: 0, sampleSize: 0, accepted: false });
      continue;
    }
    const { severity } = state;
    const plan = scheme.plans[severity];
    const { outcome, stage, found, pieces } = lookAtLot(judgingOn(scheme, severity), qualityBy(dice), dice);
    const accepted = outcome !== 'rejected';
    seen.push({ lot, severity, found, sampleSize: pieces, accepted });
    state = switchingAfter(state, {
      type: 'lotJudged', lot: String(lot), original: true, accepted, inGap: outcome === 'acceptedInGap', inspectedOn: severity,
      plan: judgedPlan(plan, stage, found), sampleSize: pieces, found,
    });
  }
  const shareOf = (severity: SimulatedLot['severity']): number => seen.filter((each) => each.severity === severity).length / lots;
  return {
    lots: seen,
    accepted: seen.filter(({ accepted }) => accepted).length,
    shares: { normal: shareOf('normal'), tightened: shareOf('tightened'), reduced: shareOf('reduced'), discontinued: shareOf('discontinued') },
    pieces: seen.reduce((sum, { sampleSize }) => sum + sampleSize, 0),
  };
}

/** The quality of each next lot: always the same, or by a beta distribution with mean p. */
function qualities(model: RiskModel, p: number, spread: number): (dice: Dice) => Source {
  const same = sourceOf(model, p);
  requireFinite('spread', spread, 0, model.kind === 'poisson' ? 0 : 0.5);
  if (spread === 0) return () => same;
  const together = (p * (1 - p)) / spread ** 2 - 1;
  requireFinite('spread', together, Number.MIN_VALUE, Number.MAX_VALUE);
  return (dice) => sourceOf(model, betaBy(dice, p * together, (1 - p) * together));
}
