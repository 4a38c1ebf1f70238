import { OutsideDomain, requireFinite } from '../../ground/outside-domain.ts';

/**
 * How the uncertainty of a reading is taken into account. simple: not at all, accepted within the tolerance. guardedAcceptance: accepted
 * only within the tolerance less the guard band. guardedRejection: rejected only beyond the tolerance plus the guard band.
 */
export type DecisionRule = 'simple' | 'guardedAcceptance' | 'guardedRejection';

/** Tolerance limits, the expanded uncertainty of one reading in the same unit, and the rule. */
export type DecisionRequest = {
  readonly lower?: number | undefined;
  readonly upper?: number | undefined;
  /** Expanded uncertainty U, coverage factor 2 unless the gauge says otherwise; 0 or more. */
  readonly uncertainty: number;
  readonly rule: DecisionRule;
  /** Guard band as a multiple of U, 0 … 3; 1 when left out. */
  readonly guardFactor?: number | undefined;
};

/** The limits a reading is compared with; a reading on a limit is accepted. */
export type AcceptanceLimits = {
  readonly lower?: number;
  readonly upper?: number;
  /** Width moved on each side, 0 or more. */
  readonly guardBand: number;
  /** The guard bands leave no room: no reading at all can be accepted. Never so under the other two rules. */
  readonly nothingAcceptable: boolean;
};

/**
 * The limits of acceptance for one reading.
 * @throws OutsideDomain with no limit at all, with lower above upper, or with a negative uncertainty
 * @see JCGM 106:2012 clause 8 (from memory); ISO 14253-1 (from secondary texts); ILAC-G8:09/2019 (seen): guard band U. The 2017 edition of
 *   ISO 14253-1 asks 95 %, which for a wide tolerance is 1.65 standard uncertainties: guardFactor 0.825 where U has coverage factor 2
 * @example acceptanceLimits({ lower: 12.6, upper: 12.8, uncertainty: 0.01, rule: 'guardedAcceptance' }) // 12.61 … 12.79
 */
export function acceptanceLimits(request: DecisionRequest): AcceptanceLimits {
  const { lower, upper, uncertainty, rule, guardFactor = 1 } = request;
  if (lower === undefined && upper === undefined) throw new OutsideDomain('limits', 'given on one side at least', 'none');
  if (lower !== undefined) requireFinite('lower', lower, -Infinity, upper ?? Infinity);
  if (upper !== undefined) requireFinite('upper', upper);
  requireFinite('uncertainty', uncertainty, 0);
  requireFinite('guardFactor', guardFactor, 0, 3);
  const guardBand = rule === 'simple' ? 0 : guardFactor * uncertainty;
  const inward = rule === 'guardedRejection' ? -guardBand : guardBand;
  const limits = {
    ...(lower === undefined ? {} : { lower: lower + inward }),
    ...(upper === undefined ? {} : { upper: upper - inward }),
  };
  const nothingAcceptable = (limits.lower ?? -Infinity) > (limits.upper ?? Infinity);
  return { ...limits, guardBand, nothingAcceptable };
}

/** Does a reading stand within the limits? A reading on a limit does. */
export function isWithin(limits: { readonly lower?: number | undefined; readonly upper?: number | undefined }, reading: number): boolean {
  requireFinite('reading', reading);
  return reading >= (limits.lower ?? -Infinity) && reading <= (limits.upper ?? Infinity);
}
