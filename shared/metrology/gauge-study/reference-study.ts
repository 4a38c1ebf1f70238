import { carefulSum } from '../../ground/careful-sum.ts';
import { meanAndS } from '../../ground/mean-and-s.ts';
import { OutsideDomain, requireFinite, requireWhole } from '../../ground/outside-domain.ts';
import { studentAbove, studentAt } from '../../sampling/chance/index.ts';

/** Readings of one part whose value is known by a better gauge: all in one unit. */
export type ReferencePart = { readonly reference: number; readonly readings: readonly number[] };
/** An estimate with its standard error, Student's t against 0, the two-sided p and the limits at the confidence asked for. */
export type Estimate = { readonly value: number; readonly standardError: number; /** Null where the readings show no spread. */ readonly t: number | null; readonly p: number | null; readonly low: number; readonly high: number };
/** How far the mean reading lies from the reference. */
export type Bias = { readonly reference: number; readonly n: number; readonly mean: number; readonly s: number; readonly df: number; readonly bias: Estimate };
/** How the bias changes over the range: bias = intercept + slope · reference. */
export type Linearity = {
  readonly biases: readonly Bias[];
  readonly n: number;
  readonly df: number;
  readonly slope: Estimate;
  readonly intercept: Estimate;
  /** Of the readings about the line. */
  readonly residualS: number;
  /** Share of the spread of biases that the line takes up, a fraction 0 … 1; null where there is none. */
  readonly rSquared: number | null;
  /** The bias all over the range: the mean of every reading's. */
  readonly meanBias: Estimate;
};

/**
 * Bias against one reference value, with its t test.
 * @param part 2 … 10 000 finite readings
 * @param confidence a fraction, 0.5 … 0.999
 * @throws OutsideDomain naming the argument, its range and the value
 * @see NIST/SEMATECH e-Handbook 7.2.2 (t test of a mean; from memory)
 */
export function biasOf(part: ReferencePart, confidence: number): Bias {
  requirePart(part);
  requireFinite('confidence', confidence, 0.5, 0.999);
  const { reference, readings } = part;
  const [first = NaN, ...others] = readings.map((reading) => reading - reference);
  const { mean, s } = meanAndS(first, others);
  const [n, df, spread] = [readings.length, readings.length - 1, s ?? NaN];
  return { reference, n, mean: reference + mean, s: spread, df, bias: estimate(mean, spread / Math.sqrt(n), df, confidence) };
}

/**
 * Straight line through the biases of all readings against their reference values by least squares, with t tests of slope, intercept and mean bias.
 * @param parts 2 … 1000 parts, not all of one reference value, 3 readings or more together
 * @param confidence a fraction, 0.5 … 0.999
 * @throws OutsideDomain naming the argument, its range and the value
 * @remarks sums are of deviations from the means, each carried with its rounding; checked against NIST StRD Norris
 * @see Draper & Smith, Applied Regression Analysis, 3rd ed., ch. 1 (from memory)
 */
export function linearityOf(parts: readonly ReferencePart[], confidence: number): Linearity {
  requireWhole('parts', parts.length, 2, 1000);
  const biases = parts.map((part) => biasOf(part, confidence));
  const points = parts.flatMap(({ reference, readings }) => readings.map((reading) => ({ at: reference, off: reading - reference })));
  const n = points.length;
  const line = leastSquares(points);
  requireWhole('readings', n, 3, 10_000_000);
  const df = n - 2;
  const residualS = Math.sqrt(line.residualSquares / df);
  const meanS = Math.sqrt(line.spreadY / (n - 1));
  return {
    biases, n, df, residualS,
    slope: estimate(line.slope, residualS / Math.sqrt(line.spreadX), df, confidence),
    intercept: estimate(line.intercept, residualS * Math.sqrt(1 / n + line.meanX ** 2 / line.spreadX), df, confidence),
    rSquared: line.spreadY === 0 ? null : 1 - line.residualSquares / line.spreadY,
    meanBias: estimate(line.meanY, meanS / Math.sqrt(n), n - 1, confidence),
  };
}

/** A straight line by least squares with its sums. @throws OutsideDomain where all points stand at one place */
export function leastSquares(points: readonly { readonly at: number; readonly off: number }[]): { readonly slope: number; readonly intercept: number; readonly meanX: number; readonly meanY: number; readonly spreadX: number; readonly spreadY: number; readonly residualSquares: number } {
  const n = points.length;
  const meanX = carefulSum(points.map(({ at }) => at)) / n;
  const meanY = carefulSum(points.map(({ off }) => off)) / n;
  const spreadX = carefulSum(points.map(({ at }) => (at - meanX) ** 2));
  if (!(spreadX > 0)) throw new OutsideDomain('references', 'not all the same', points[0]?.at);
  const slope = carefulSum(points.map(({ at, off }) => (at - meanX) * (off - meanY))) / spreadX;
  const residualSquares = carefulSum(points.map(({ at, off }) => (off - meanY - slope * (at - meanX)) ** 2));
  return { slope, intercept: meanY - slope * meanX, meanX, meanY, spreadX, spreadY: carefulSum(points.map(({ off }) => (off - meanY) ** 2)), residualSquares };
}

function estimate(value: number, standardError: number, df: number, confidence: number): Estimate {
  const reach = standardError * studentAt(0.5 + confidence / 2, df);
  const t = standardError === 0 ? null : value / standardError;
  return { value, standardError, t, p: t === null ? null : 2 * studentAbove(Math.min(Math.abs(t), 1e150), df), low: value - reach, high: value + reach };
}

function requirePart({ reference, readings }: ReferencePart): void {
  requireFinite('reference', reference, -1e150, 1e150);
  requireWhole('readings of one part', readings.length, 2, 10_000);
  for (const reading of readings) requireFinite('reading', reading, -1e150, 1e150);
}
