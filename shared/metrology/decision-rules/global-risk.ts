import { requireFinite } from '../../ground/outside-domain.ts';
import { normalWithin, normalOutside, requireLimits, requireNormal } from './conformance-probability.ts';
import type { Limits, Normal } from './conformance-probability.ts';
import { integrate } from './quadrature.ts';
import { normalDensity } from '../../sampling/chance/normal.ts';

/** A process, a gauge, and what is done with its readings; all in one unit. */
export interface RiskRequest {
  readonly tolerance: Limits;
  /** Limits the reading is compared with; one side where the tolerance has one. */
  readonly acceptance: Limits;
  /** The true values of the pieces: mean and standard deviation, the gauge's own spread taken out. */
  readonly process: Normal;
  /** Standard uncertainty of one reading, u = U / k, above 0. */
  readonly standardUncertainty: number;
}

/** Shares of all pieces measured, fractions 0 … 1. */
export interface GlobalRisk {
  /** Global consumer's risk RC: does not conform and is accepted. */
  readonly consumer: number;
  /** Global producer's risk RP: conforms and is rejected. */
  readonly producer: number;
  readonly accepted: number;
  readonly rejected: number;
  readonly conforming: number;
  /** Of the accepted, the share that does not conform; null where nothing is ever accepted. */
  readonly consumerOfAccepted: number | null;
  /** Of the rejected, the share that does conform; null where nothing is ever rejected. */
  readonly producerOfRejected: number | null;
}

/** Standard deviations after which a normal density has fallen below the last digit of its peak: e^(−45) = 3e-20. */
const reach = 9.5;

/**
 * Risks of a wrong decision over all pieces of a normal process measured with a normal error:
 * RC = ∫ outside the tolerance g(y) · P(accepted | y) dy and RP = ∫ within it g(y) · P(rejected | y) dy, with g the density of the true
 * values. Joint probabilities, not conditional ones; those stand beside them.
 * @throws OutsideDomain without limits, with crossed ones, or where a deviation is not above 0
 * @remarks relative error ≤ 1e-12 for risks above 1e-12, held by tests/reference against 30-digit integrals
 * @see JCGM 106:2012 clause 9.5 (from memory; the guide's printed figures were not seen)
 */
export function globalRisk({ tolerance, acceptance, process: made, standardUncertainty }: RiskRequest): GlobalRisk {
  requireLimits(tolerance);
  requireNormal('process', made);
  requireFinite('standardUncertainty', standardUncertainty, Number.MIN_VALUE);
  const conforming = normalWithin(tolerance, made);
  // Guard bands that meet leave nothing to accept.
  if ((acceptance.lower ?? -Infinity) > (acceptance.upper ?? Infinity)) return { consumer: 0, producer: conforming, accepted: 0, rejected: 1, conforming, consumerOfAccepted: null, producerOfRejected: conforming };
  const at: Parts = { acceptance, made, u: standardUncertainty };
  const accepts = (y: number): number => normalWithin(acceptance, { mean: y, deviation: standardUncertainty });
  const rejects = (y: number): number => normalOutside(acceptance, { mean: y, deviation: standardUncertainty });
  const { lower, upper } = tolerance;
  const consumer = (lower === undefined ? 0 : weighed(at, accepts, -Infinity, lower)) + (upper === undefined ? 0 : weighed(at, accepts, upper, Infinity));
  const producer = weighed(at, rejects, lower ?? -Infinity, upper ?? Infinity);
  const readings = { mean: made.mean, deviation: Math.hypot(made.deviation, standardUncertainty) };
  const [accepted, rejected] = [normalWithin(acceptance, readings), normalOutside(acceptance, readings)];
  return { consumer, producer, accepted, rejected, conforming, consumerOfAccepted: accepted === 0 ? null : consumer / accepted, producerOfRejected: rejected === 0 ? null : producer / rejected };
}

interface Parts { readonly acceptance: Limits; readonly made: Normal; readonly u: number }

/**
 * ∫ g(y) · decides(y) dy over from … to. The product of the density and either tail of the decision is largest near the piece that a reading
 * on a limit of acceptance speaks of, or at the mean; beyond these by `reach` deviations it no longer counts.
 */
function weighed({ acceptance, made: { mean, deviation: s }, u }: Parts, decides: (y: number) => number, from: number, to: number): number {
  const limits = [acceptance.lower, acceptance.upper].flatMap((limit) => limit ?? []);
  const pull = (s * s) / (s * s + u * u);
  const centres = [mean, ...limits.map((limit) => mean + (limit - mean) * pull)];
  const low = Math.max(from, Math.min(to, ...centres) - reach * s);
  const high = Math.min(to, Math.max(from, ...centres) + reach * s);
  if (!(low < high)) return 0;
  const near = limits.flatMap((limit) => [limit - reach * u, limit, limit + reach * u]);
  const edges = [low, ...[...centres, ...near].filter((edge) => edge > low && edge < high).sort((a, b) => a - b), high];
  const scaleAt = (y: number): number => (limits.some((limit) => Math.abs(y - limit) < reach * u) ? Math.min(s, u) : s);
  return integrate((y) => (normalDensity((y - mean) / s) / s) * decides(y), edges, scaleAt);
}

/**
 * How wide the tolerance is against the gauge: Cm = (TU − TL) / (4 u) = T / (2 U) for k = 2.
 * @throws OutsideDomain where upper is not above lower or u not above 0
 * @see JCGM 106:2012 7.6.3 (from memory)
 */
export function measurementCapability(lower: number, upper: number, standardUncertainty: number): number {
  requireLimits({ lower, upper });
  requireFinite('standardUncertainty', standardUncertainty, Number.MIN_VALUE);
  return (upper - lower) / (4 * standardUncertainty);
}

/**
 * Standard deviation of the true values behind readings that scatter by `observedS`: s² = observed² − u².
 * @returns null where the gauge alone explains the scatter, so that the two cannot be told apart
 * @throws OutsideDomain for a negative deviation
 */
export function processDeviation(observedS: number, standardUncertainty: number): number | null {
  requireFinite('observedS', observedS, 0);
  requireFinite('standardUncertainty', standardUncertainty, 0);
  const squared = (observedS - standardUncertainty) * (observedS + standardUncertainty);
  return squared > 0 ? Math.sqrt(squared) : null;
}
