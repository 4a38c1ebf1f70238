/** Values in a row on one side of the target before it counts as drift (common practice in run rules: eight or nine; from memory). */
export const driftRun = 9;

/**
 * Tells of drift before a limit is broken: the side of the target on which the last `driftRun` values all lie; null otherwise.
 * A value on the target ends the run.
 * @param values in the order made, any unit
 * @param target in the same unit
 * @remarks On a steady process whose median is the target, nine given values lie on one side with probability 2 · ½⁹ = 1/256 (derived).
 */
export function driftSide(values: readonly number[], target: number): 'above' | 'below' | null {
  const last = values.slice(-driftRun);
  if (last.length < driftRun) return null;
  if (last.every((value) => value > target)) return 'above';
  return last.every((value) => value < target) ? 'below' : null;
}
