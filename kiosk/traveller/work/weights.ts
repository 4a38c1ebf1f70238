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
