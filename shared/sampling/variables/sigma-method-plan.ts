import { noncentralTAbove, normalAt } from '../chance/index.ts';
import { sigmaPercentNonconforming } from './quality-at-percent.ts';
import { sMethodPlan } from './s-method-plan.ts';
import type { SMethodRequest } from './s-method-plan.ts';
import type { VariablesLetter } from './variables-letter.ts';
import type { VariablesPlan } from './variables-plan-types.ts';

/**
 * Probability of acceptance at the AQL that every cell of a row of Table B-1 is built on: found by computation, as each of the 195 cells
 * has it to the rounding of its k.
 */
const ACCEPTED_AT_AQL: Readonly<Record<VariablesLetter, number>> = {
  B: 0.89, C: 0.9, D: 0.9, E: 0.9, F: 0.9, G: 0.91, H: 0.92, I: 0.93, J: 0.94, K: 0.94, L: 0.95, M: 0.95, N: 0.96, O: 0.97, P: 0.98, Q: 0.99,
};
const CONSUMER_RISK = 0.1;
/** The one remembered cell of Table D-1 whose k is not the computed one, by a unit of its last decimal (computed 0.583): the table is the rule. */
const PRINTED_K: Readonly<Partial<Record<string, number>>> = { 'F 15': 0.584 };

/**
 * The plan of a lot where σ is known: worked out, as most of MIL-STD-414 Table D-1 could not be gathered. It has the operating
 * characteristic of the s-method plan of the same letter and AQL at two points: n is the whole number nearest to the one that accepts
 * with the row's probability at the AQL and one time in ten where the s-plan does; k then gives the row's probability exactly and is
 * rounded as the tables are (2 decimals, 3 below 1). M is the estimate at the unrounded k.
 * @param request as for sMethodPlan
 * @remarks agrees with all 33 cells of Table D-1 that are remembered in n, and in k but for one unit of the last decimal in one, which is kept as
 * remembered; and with M in the one cell whose M is. Held by tests/reference
 * @throws OutsideDomain as sMethodPlan
 * @example sigmaMethodPlan({ lotSize: 500, level: 'IV', aqlPercent: 1.5, severity: 'normal' }) // I, n 10, k 1.70, M 3.63 %
 */
export function sigmaMethodPlan(request: SMethodRequest): VariablesPlan {
  const plan = sMethodPlan(request);
  const { n, k, mPercent } = knownSigma(plan);
  const everyPiece = n >= plan.lotSize;
  return { ...plan, tableSampleSize: n, sampleSize: everyPiece ? plan.lotSize : n, k, mPercent, everyPiece, method: 'sigma', tables: 'derived from MIL-STD-414 B-1' };
}

/** n, k and M of one cell; k and M for another n where one is asked for. */
export function knownSigma({ letter, tableSampleSize, k: unknownK, columnAqlPercent }: Pick<VariablesPlan, 'letter' | 'tableSampleSize' | 'k' | 'columnAqlPercent'>, asked?: number): { readonly n: number; readonly k: number; readonly mPercent: number } {
  const zAql = -normalAt(columnAqlPercent / 100);
  const zAccepted = normalAt(ACCEPTED_AT_AQL[letter]);
  const n = asked ?? Math.max(2, Math.round(((zAccepted - normalAt(CONSUMER_RISK)) / (zAql - consumerQuality(tableSampleSize, unknownK))) ** 2));
  const k = zAql - zAccepted / Math.sqrt(n);
  return { n, k: (asked === undefined ? PRINTED_K[`${letter} ${columnAqlPercent}`] : undefined) ?? asPrinted(k), mPercent: asPrinted(sigmaPercentNonconforming(k, n)) };
}

/** Decimals of the printed tables: 2 from 1 on, 3 below. */
function asPrinted(value: number): number {
  return Number(value.toFixed(Math.abs(value) < 1 ? 3 : 2));
}

/** Distance of the limit, in σ, at which the s-plan accepts with the consumer's risk. */
function consumerQuality(n: number, k: number): number {
  const root = Math.sqrt(n);
  let [low, high] = [k - 10, k];
  for (let middle = (low + high) / 2; middle > low && middle < high; middle = (low + high) / 2) {
    if (noncentralTAbove(k * root, n - 1, middle * root) < CONSUMER_RISK) low = middle;
    else high = middle;
  }
  return low;
}
