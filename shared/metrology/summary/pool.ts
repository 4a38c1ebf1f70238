import { requireFinite, requireWhole } from '../../ground/outside-domain.ts';

/** A summary of some values; `s` null for a single one. */
export interface Summed { readonly n: number; readonly mean: number; readonly s: number | null }

/**
 * Mean and standard deviation of all values together, from summaries of their parts: the scatter within the parts and between them,
 * (N − 1) s² = Σ (nᵢ − 1) sᵢ² + Σ nᵢ (mᵢ − m)².
 * @param parts one or more, each of one value or more
 * @returns null for no part at all
 * @see Chan, Golub & LeVeque, American Statistician 37 (1983) 242
 */
export function poolSummaries(parts: readonly Summed[]): Summed | null {
  if (parts.length === 0) return null;
  for (const [at, { n, mean, s }] of parts.entries()) {
    requireWhole(`parts[${at}].n`, n, 1, Number.MAX_SAFE_INTEGER);
    requireFinite(`parts[${at}].mean`, mean);
    requireFinite(`parts[${at}].s`, s ?? 0, 0);
  }
  const n = parts.reduce((sum, part) => sum + part.n, 0);
  const mean = parts.reduce((sum, part) => sum + (part.n / n) * part.mean, 0);
  const squares = parts.reduce((sum, part) => sum + (part.n - 1) * (part.s ?? 0) ** 2 + part.n * (part.mean - mean) ** 2, 0);
  return { n, mean, s: n < 2 ? null : Math.sqrt(squares / (n - 1)) };
}
