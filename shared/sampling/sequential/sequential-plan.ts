import { OutsideDomain, requireFinite, requireWhole } from '../../ground/outside-domain.ts';
import { LARGEST_LOT } from '../attributes/index.ts';
import type { AttributesPlan, IsolatedPlan } from '../attributes/index.ts';

/** Piece by piece between two lines until one is crossed or the plan is cut off. Plain data, fit for a slip. */
export interface SequentialPlan {
  readonly kind: 'sequential';
  readonly lotSize: number;
  readonly p1Percent: number;
  readonly producerRisk: number;
  readonly p2Percent: number;
  readonly consumerRisk: number;
  /** Acceptance line: slope · n − h1. */
  readonly h1: number;
  /** Rejection line: slope · n + h2. */
  readonly h2: number;
  /** Pieces found per piece looked at along which neither line comes nearer, a fraction. */
  readonly slope: number;
  /** The piece at which a verdict falls in any case: where the rule cuts the plan off, or the last of the lot. */
  readonly truncateAt: number;
  /** Acceptance number there; one more rejects, there or earlier. */
  readonly truncateAc: number;
  /** The most pieces the plan may ask for: `truncateAt`. */
  readonly sampleSize: number;
}

/** Any plan that counts what is found in a lot's sample. */
export type LotPlan = AttributesPlan | IsolatedPlan | SequentialPlan;

/** What a sequential plan is asked for. Percents 0 … 100, risks fractions. */
export type SequentialRequest = Pick<SequentialPlan, 'lotSize' | 'p1Percent' | 'producerRisk' | 'p2Percent' | 'consumerRisk'>;

/**
 * Wald's sequential plan through two points of an operating characteristic, cut off so that it ends.
 *
 * With G = ln(p2 (1 − p1) / (p1 (1 − p2))): h1 = ln((1 − α)/β)/G, h2 = ln((1 − β)/α)/G, slope = ln((1 − p1)/(1 − p2))/G.
 *
 * The cut-off is our own rule, derived: Ac = slope · n, rounded down, at n = 3 h1 h2 / (slope (1 − slope)), rounded up; then on to the last
 * piece for which slope · n still gives that Ac. In a smaller lot it is the last piece. (ISO 28591 cuts off at one and a half times the
 * equivalent single plan, from memory; 2 h1 h2 / (slope (1 − slope)) is the usual estimate of that plan.) Over the range tried by
 * tests/reference the producer's risk then stays below the one asked for, and the consumer's within Wald's own bound, but for 2 percent of it.
 * What both exactly are is for shared/sampling/risk to say.
 * @param request lot size 1 … 1e9; 0 < p1Percent < p2Percent < 100; risks above 0, together below 1
 * @throws OutsideDomain outside these ranges
 * @see Wald, Sequential Analysis (1947), ch. 5: the lines; NIST/SEMATECH e-Handbook 6.2.6: the same with an example
 * @example sequentialPlan({ lotSize: 10_000, p1Percent: 1, producerRisk: 0.05, p2Percent: 10, consumerRisk: 0.1 }) // h1 0.939, h2 1.205, slope 0.0397
 */
export function sequentialPlan({ lotSize, p1Percent, producerRisk, p2Percent, consumerRisk }: SequentialRequest): SequentialPlan {
  requireWhole('lotSize', lotSize, 1, LARGEST_LOT);
  requireFinite('p1Percent', p1Percent, Number.MIN_VALUE, 100);
  requireFinite('p2Percent', p2Percent, Number.MIN_VALUE, 100);
  if (p1Percent >= p2Percent) throw new OutsideDomain('p1Percent', 'less than p2Percent', p1Percent);
  if (p2Percent === 100) throw new OutsideDomain('p2Percent', 'below 100', p2Percent);
  requireFinite('producerRisk', producerRisk, Number.MIN_VALUE, 1);
  requireFinite('consumerRisk', consumerRisk, Number.MIN_VALUE, 1);
  if (producerRisk + consumerRisk >= 1) throw new OutsideDomain('consumerRisk', 'less than 1 together with producerRisk', consumerRisk);
  const [p1, p2] = [p1Percent / 100, p2Percent / 100];
  const passedOver = Math.log1p(-p1) - Math.log1p(-p2);
  const found = Math.log(p2Percent / p1Percent) + passedOver;
  const h1 = Math.log((1 - producerRisk) / consumerRisk) / found;
  const h2 = Math.log((1 - consumerRisk) / producerRisk) / found;
  const slope = passedOver / found;
  if (!(found > 0 && slope > 0)) throw new OutsideDomain('p2Percent', 'far enough above p1Percent to be told apart', p2Percent);
  const truncateAt = Math.min(lotSize, cutOff(h1, h2, slope));
  const truncateAc = Math.floor(slope * truncateAt);
  return { kind: 'sequential', lotSize, p1Percent, producerRisk, p2Percent, consumerRisk, h1, h2, slope, truncateAt, truncateAc, sampleSize: truncateAt };
}

function cutOff(h1: number, h2: number, slope: number): number {
  const least = Math.max(1, Math.ceil((3 * h1 * h2) / (slope * (1 - slope))));
  return Math.max(least, Math.ceil((Math.floor(slope * least) + 1) / slope) - 1);
}
