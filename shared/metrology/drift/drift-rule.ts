/** How a stream is watched for drift. */
export interface DriftRule {
  /** λ, the weight of the newest value in the average. */
  readonly lambda: number;
  /** L, half the width of the control limits in standard deviations of the average. */
  readonly limitFactor: number;
  /** What the mean is to be; the centre of the chart. Unit of the values. */
  readonly target: number;
  /** Standard deviation of single values where it is known; otherwise learned from the stream itself. */
  readonly sigma: number | null;
  /** Smallest step the values come in; σ is never taken for less than rounding alone leaves, step / √12. */
  readonly resolution: number;
}

/** The statement that the limit factors below keep: so many in a hundred steady streams of so many pieces give one false alarm or more, at most. */
export const DRIFT_PROMISE = { falseAlarmShare: 0.01, pieces: 60_000 } as const;

/**
 * L by λ, so that at most 1 % of steady streams of 60,000 pieces (a shift of 8 h at 2 pieces a second is 57,600) give a false alarm. Worked out
 * by `limitFactorFor` (run-length.ts), held to it by tests/reference/drift.test.ts, and proved by simulation in tests/property/metrology.
 */
export const LIMIT_FACTORS = { 0.05: 5.12, 0.1: 5.18, 0.2: 5.22 } as const;
export const DRIFT_LAMBDAS = [0.05, 0.1, 0.2] as const;
export type DriftLambda = (typeof DRIFT_LAMBDAS)[number];

/** λ where a plan names none: small, since a press drifts slowly. An average offset of 0.82 σ is found (derived: L·√(λ/(2 − λ))). */
export const USUAL_LAMBDA: DriftLambda = 0.05;

/** Values before anything is announced while σ is learned from the stream. */
export const LEARNING_VALUES = 50;

/** A value further from the average than so many σ counts as if it lay there. Of normal values two in a thousand million lie so far off, so the promise above stands (derived). */
export const OUTLIER_SIGMAS = 6;
/** Values before the first that is held so: earlier σ is not known well enough. */
export const OUTLIER_FROM = 25;
