import { OutsideDomain, requireFinite } from '../../ground/outside-domain.ts';
import { normalAbove, normalBelow } from '../../sampling/chance/index.ts';

/** Limits on one side or both, in one unit. */
export interface Limits { readonly lower?: number | undefined; readonly upper?: number | undefined }
/** A normal distribution; `deviation` above 0, in the unit of `mean`. */
export interface Normal { readonly mean: number; readonly deviation: number }

/** One reading: what was measured and its standard uncertainty u = U / k, above 0, in the unit of the value. */
export interface Measurement { readonly value: number; readonly standardUncertainty: number; /** What is known of the pieces before one is measured: the process. */ readonly process?: Normal | undefined }

/** @throws OutsideDomain with no limit at all, or with lower not below upper */
export function requireLimits({ lower, upper }: Limits): void {
  if (lower === undefined && upper === undefined) throw new OutsideDomain('limits', 'given on one side at least', 'none');
  if (lower !== undefined) requireFinite('lower', lower);
  if (upper !== undefined) requireFinite('upper', upper);
  if (lower !== undefined && upper !== undefined && lower >= upper) throw new OutsideDomain('lower', `below upper ${upper}`, lower);
}

/** @throws OutsideDomain unless mean is finite and deviation above 0 */
export function requireNormal(name: string, { mean, deviation }: Normal): void {
  requireFinite(`${name} mean`, mean);
  requireFinite(`${name} deviation`, deviation, Number.MIN_VALUE);
}

/** Probability that a normal variable lies within the limits, without cancellation on either side. Unchecked. */
export function normalWithin({ lower, upper }: Limits, { mean, deviation }: Normal): number {
  const [from, to] = [lower === undefined ? -Infinity : (lower - mean) / deviation, upper === undefined ? Infinity : (upper - mean) / deviation];
  if (from > 0) return tailAbove(from) - tailAbove(to);
  if (to < 0) return tailAbove(-to) - tailAbove(-from);
  return 1 - tailAbove(-from) - tailAbove(to);
}

/** Probability that a normal variable lies outside the limits. Unchecked. */
export function normalOutside({ lower, upper }: Limits, { mean, deviation }: Normal): number {
  return (lower === undefined ? 0 : normalBelow((lower - mean) / deviation)) + (upper === undefined ? 0 : normalAbove((upper - mean) / deviation));
}

function tailAbove(z: number): number {
  if (z === Infinity) return 0;
  return z === -Infinity ? 1 : normalAbove(z);
}

/**
 * What is known of a piece after it was measured: the reading alone, or weighed together with the process it comes from,
 * 1/u² = 1/s² + 1/um², mean = u² (y0/s² + y/um²).
 * @throws OutsideDomain for a standard uncertainty or a process deviation that is not above 0
 * @see JCGM 106:2012 clause 6 and 7 (from memory; figures computed): normal prior, normal measuring error
 */
export function afterMeasuring({ value, standardUncertainty, process: made }: Measurement): Normal {
  requireNormal('measurement', { mean: value, deviation: standardUncertainty });
  if (made === undefined) return { mean: value, deviation: standardUncertainty };
  requireNormal('process', made);
  const [ofProcess, ofReading] = [made.deviation ** -2, standardUncertainty ** -2];
  return { mean: (made.mean * ofProcess + value * ofReading) / (ofProcess + ofReading), deviation: (ofProcess + ofReading) ** -0.5 };
}

/**
 * Probability that the piece measured conforms: that its true value lies within the tolerance.
 * @throws OutsideDomain as `afterMeasuring`, and without limits
 * @see JCGM 106:2012 7.1 to 7.4 (from memory)
 * @example conformanceProbability({ upper: -5.4 }, { value: -5.47, standardUncertainty: 0.05 }) // 0.919, the guide's diode
 */
export function conformanceProbability(tolerance: Limits, measurement: Measurement): number {
  requireLimits(tolerance);
  return normalWithin(tolerance, afterMeasuring(measurement));
}

/**
 * Specific consumer's risk: the probability that the piece does not conform although a reading like this was accepted; 1 − the conformance
 * probability, without cancellation.
 * @throws OutsideDomain as `conformanceProbability`
 * @see JCGM 106:2012 9.3 (from memory)
 */
export function nonconformanceProbability(tolerance: Limits, measurement: Measurement): number {
  requireLimits(tolerance);
  return normalOutside(tolerance, afterMeasuring(measurement));
}
