/** Weights read out of a pasted block, or the first text that is none. Nothing is guessed. */
export type ReadBlock = { readonly ok: true; readonly values: readonly number[] } | { readonly ok: false; readonly wrong: string };

/**
 * Reads a block of weights: one a line, or separated by blanks, tabs or semicolons.
 * @param parse reads one figure in the kiosk's notation; null where it is none
 */
export function readBlock(text: string, parse: (text: string) => number | null): ReadBlock {
  const values: number[] = [];
  for (const figure of text.split(/[\s;]+/).filter((part) => part !== '')) {
    const value = parse(figure);
    if (value === null || value <= 0) return { ok: false, wrong: figure };
    values.push(value);
  }
  return { ok: true, values };
}

/** Weights in a row on one side of the target before it counts as drift (common practice in run rules: eight or nine; from memory). */
export const driftRun = 9;

/** Announces drift before a limit is broken: the side on which the last `driftRun` weights all lie; null otherwise. */
export function driftSide(weights: readonly number[], target: number): 'above' | 'below' | null {
  const last = weights.slice(-driftRun);
  if (last.length < driftRun) return null;
  if (last.every((weight) => weight > target)) return 'above';
  return last.every((weight) => weight < target) ? 'below' : null;
}
