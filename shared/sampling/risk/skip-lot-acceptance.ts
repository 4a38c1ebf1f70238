import { requireFinite, requireWhole } from '../../ground/outside-domain.ts';
import type { Judging } from './blocks.ts';
import type { RiskModel } from './model.ts';
import { acceptedOf, outcomes } from './outcomes.ts';

/** Skip-lot inspection: after `clearance` lots accepted in a row one lot in `oneIn` is looked at, until one is not accepted. */
export interface SkipLot {
  readonly clearance: number;
  readonly oneIn: number;
}

export interface SkipLotBehaviour {
  /** Share of all lots accepted, skipped lots among them. */
  readonly acceptance: number;
  /** Share of all lots that are looked at. */
  readonly inspected: number;
  /** Pieces per lot, skipped lots among them. */
  readonly averageSampleNumber: number;
}

/**
 * The long run of a skip-lot plan SkSP-2 over a plan for the lots that are looked at. With f = 1/oneIn, i = clearance, P the plan's
 * acceptance: looked at F = f / ((1 − f)·Pⁱ + f), accepted (f·P + (1 − f)·Pⁱ) / (f + (1 − f)·Pⁱ), pieces F · ASN.
 * @throws OutsideDomain unless clearance is 1 … 1000 and oneIn 1 … 1000, or as `outcomes`
 * @see Perry, Journal of Quality Technology 5 (1973); NIST/SEMATECH e-Handbook 6.2.7 (formulas from memory)
 */
export function skipLotAcceptance(skip: SkipLot, plan: Judging, model: RiskModel, p: number): SkipLotBehaviour {
  const reached = outcomes(plan, model, p);
  const { acceptance, inspected } = skipLotFrom(skip, acceptedOf(reached));
  return { acceptance, inspected, averageSampleNumber: inspected * reached.averageSampleNumber };
}

/** The same from the probability that an inspected lot is accepted. */
export function skipLotFrom({ clearance, oneIn }: SkipLot, accepted: number): Omit<SkipLotBehaviour, 'averageSampleNumber'> {
  requireWhole('clearance', clearance, 1, 1000);
  requireWhole('oneIn', oneIn, 1, 1000);
  requireFinite('accepted', accepted, 0, 1 + 1e-9); // a sum of shares may pass 1 by its rounding
  const fraction = 1 / oneIn;
  const skipping = (1 - fraction) * accepted ** clearance;
  return { acceptance: (fraction * accepted + skipping) / (fraction + skipping), inspected: fraction / (fraction + skipping) };
}
