/** How well values fit between limits, by the s of all of them; null where there is no such limit or no s. */
export interface PpPpk { readonly pp: number | null; readonly ppk: number | null }

/**
 * Pp = (upper − lower) / 6s and Ppk = the lesser of (upper − mean) / 3s and (mean − lower) / 3s, with s of all values: what the stream did, drift
 * included, and not what its press could do.
 * @param s sample standard deviation; null for fewer than two values, 0 where all are alike
 * @see ISO 22514-2 (performance indices; from memory)
 */
export function ppPpkOf({ mean, s }: { readonly mean: number; readonly s: number | null }, { lower, upper }: { readonly lower: number | null; readonly upper: number | null }): PpPpk {
  if (s === null || s === 0) return { pp: null, ppk: null };
  const sides = [...(upper === null ? [] : [(upper - mean) / (3 * s)]), ...(lower === null ? [] : [(mean - lower) / (3 * s)])];
  return { pp: lower === null || upper === null ? null : (upper - lower) / (6 * s), ppk: sides.length === 0 ? null : Math.min(...sides) };
}
