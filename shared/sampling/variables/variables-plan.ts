import { OutsideDomain, requireFinite, requireWhole } from '../../ground/outside-domain.ts';
import { percentNonconforming } from './percent-nonconforming.ts';
import { smallestVariablesPlan } from './points-plan.ts';
import { sigmaPercentNonconforming } from './quality-at-percent.ts';
import { rowPlan, sMethodPlan } from './s-method-plan.ts';
import type { SMethodRequest } from './s-method-plan.ts';
import { knownSigma, sigmaMethodPlan } from './sigma-method-plan.ts';
import type { PointsVariablesPlan, SideConstants, VariablesPlan } from './variables-plan-types.ts';

/** How a variables plan is judged, whichever way it was found. */
export interface VariablesChoices { readonly method?: 'sigma'; readonly sigma?: number; readonly form?: 'k' | 'M' }

/** What a plan is looked up by. `separate`: each limit with an AQL of its own, and `aqlPercent` the smaller of the two. */
export interface VariablesRequest extends SMethodRequest, VariablesChoices {
  readonly separate?: { readonly lowerAqlPercent: number; readonly upperAqlPercent: number };
}

/**
 * The plan by variables of a lot, by lot size, level and AQL: s-method from the tables, σ-method worked out from them (sigmaMethodPlan).
 * With an AQL for each limit both are read in the row of the larger letter that the two lead to, so that one sample serves both
 * (the larger sample governs: common practice, no source).
 * @throws OutsideDomain for a lot size, level or AQL the tables do not know, a σ not above 0, or an `aqlPercent` that is not the smaller
 * @see MIL-STD-414 (1957) B and D; double limit with two AQLs: Example B-4
 */
export function variablesPlan(request: VariablesRequest): VariablesPlan {
  const { lotSize, level, severity, separate } = request;
  const asked = { lotSize, level, aqlPercent: request.aqlPercent, severity };
  const lookUp = request.method === 'sigma' ? sigmaMethodPlan : sMethodPlan;
  const choices = choicesOf(request);
  if (separate === undefined) return { ...lookUp(asked), ...choices };
  const { lowerAqlPercent, upperAqlPercent } = separate;
  if (asked.aqlPercent !== Math.min(lowerAqlPercent, upperAqlPercent)) throw new OutsideDomain('aqlPercent', `the smaller of the two, ${Math.min(lowerAqlPercent, upperAqlPercent)}`, asked.aqlPercent);
  const found = [lowerAqlPercent, upperAqlPercent].map((aqlPercent) => sMethodPlan({ ...asked, aqlPercent }));
  const letter = found.map((plan) => plan.letter).reduce((a, b) => (a > b ? a : b));
  const [lower, upper] = [lowerAqlPercent, upperAqlPercent].map((aqlPercent) => rowPlan({ ...asked, aqlPercent }, letter));
  if (lower === undefined || upper === undefined) throw new OutsideDomain('separate', 'two AQLs', separate);
  return { ...(request.method === 'sigma' ? separateKnown(lower, upper) : separateUnknown(lower, upper)), ...choices };
}

function separateUnknown(lower: VariablesPlan, upper: VariablesPlan): VariablesPlan {
  return { ...(lower.aqlPercent <= upper.aqlPercent ? lower : upper), ...together(side(lower), side(upper)) };
}

/** Both sides take the larger of their two n; each k is then the one its own n was found with. */
function separateKnown(lower: VariablesPlan, upper: VariablesPlan): VariablesPlan {
  const n = Math.max(knownSigma(lower).n, knownSigma(upper).n);
  const [low, high] = [lower, upper].map((plan) => {
    const { k, mPercent } = knownSigma(plan, n);
    return { aqlPercent: plan.aqlPercent, k, mPercent };
  });
  const base = lower.aqlPercent <= upper.aqlPercent ? lower : upper;
  if (low === undefined || high === undefined) throw new OutsideDomain('separate', 'two AQLs', n);
  const everyPiece = n >= base.lotSize;
  return { ...base, tableSampleSize: n, sampleSize: everyPiece ? base.lotSize : n, everyPiece, method: 'sigma', tables: 'derived from MIL-STD-414 B-1', ...together(low, high) };
}

function side({ aqlPercent, k, mPercent }: VariablesPlan): SideConstants {
  return { aqlPercent, k, mPercent };
}

function together(lower: SideConstants, upper: SideConstants): Pick<VariablesPlan, 'k' | 'mPercent' | 'separate'> {
  return { k: Math.max(lower.k, upper.k), mPercent: Math.max(lower.mPercent, upper.mPercent), separate: { lower, upper } };
}

/** Two points, percent and fractions as a plan states them. */
export interface PointsRequest extends VariablesChoices {
  readonly lotSize: number;
  readonly points: { readonly p1Percent: number; readonly producerRisk: number; readonly p2Percent: number; readonly consumerRisk: number };
}

/**
 * The smallest plan by variables through two risk points, cut down to the lot where it reaches it. M is the estimate at k, so both forms
 * are the same rule for one limit; with two limits the points hold where what is nonconforming lies on one side.
 * @returns null where no plan of LARGEST_DESIGN pieces or fewer passes both points
 * @throws OutsideDomain for a lot below 3 pieces and points that smallestVariablesPlan refuses
 */
export function pointsVariablesPlan(request: PointsRequest): PointsVariablesPlan | null {
  const { lotSize, points, method } = request;
  requireWhole('lotSize', lotSize, 3, 1_000_000_000);
  const { p1Percent, producerRisk, p2Percent, consumerRisk } = points;
  const found = smallestVariablesPlan({ p1: p1Percent / 100, producerRisk, p2: p2Percent / 100, consumerRisk, method: method ?? 's' });
  if ('none' in found) return null;
  const { n, k } = found;
  const everyPiece = n >= lotSize;
  const mPercent = method === 'sigma' ? sigmaPercentNonconforming(k, n) : percentNonconforming(k, n);
  return {
    origin: 'points', lotSize, aqlPercent: p1Percent, severity: 'normal', sampleSize: everyPiece ? lotSize : n, tableSampleSize: n, k, mPercent, everyPiece, ...points, ...choicesOf(request),
  };
}

/** The choices as a plan keeps them. */
function choicesOf({ method, sigma, form }: VariablesChoices): VariablesChoices {
  if (sigma !== undefined) requireFinite('sigma', sigma, Number.MIN_VALUE);
  if ((sigma !== undefined) !== (method === 'sigma')) throw new OutsideDomain('sigma', 'given with the σ-method and not without it', sigma);
  return { ...(method === undefined ? {} : { method }), ...(sigma === undefined ? {} : { sigma }), ...(form === undefined ? {} : { form }) };
}
