/** One lot further: what left for reduced inspection, what goes on in the same run. The rest was not accepted. */
export interface Step {
  readonly reached: number;
  readonly goesOn: number;
}

const MOST_STEPS = 100_000;

/**
 * Follows a run lot by lot until next to nothing is left of it, or until it loses the same share with each lot, when the rest is a
 * geometric series.
 * @param step moves the run on by one lot
 * @param rejected the chance that a lot is not accepted
 * @param settledAfter lots before which no steady loss is looked for
 * @param closeness how little the loss may still change to count as steady
 */
export function passOn(step: () => Step, rejected: number, settledAfter: number, closeness: number): { readonly reached: number; readonly lots: number } {
  let [reached, lots, running, lossBefore] = [0, 0, 1, -1];
  for (let passed = 1; passed <= MOST_STEPS; passed += 1) {
    lots += running;
    const after = step();
    reached += after.reached;
    const loss = rejected + after.reached / running;
    const steady = passed > settledAfter && (Math.abs(loss - lossBefore) <= closeness * loss || passed === MOST_STEPS);
    if (after.goesOn <= 1e-18 * lots) break;
    if (steady && loss > 0) return { reached: reached + (after.goesOn * (after.reached / running)) / loss, lots: lots + after.goesOn / loss };
    if (steady) return { reached, lots: Infinity };
    [running, lossBefore] = [after.goesOn, loss];
  }
  return { reached, lots };
}
