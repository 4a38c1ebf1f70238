import { requireFinite } from '../../ground/outside-domain.ts';
import { OutsideDomain } from '../../ground/outside-domain.ts';
import type { CapabilitySpread } from './capability-index.ts';

/** One lot's readings, summed up; `s` null for a single one. */
export type LotSpread = { readonly n: number; readonly mean: number; readonly s: number | null };

/**
 * The spread within lots: s² = Σ(nᵢ − 1)sᵢ² / Σ(nᵢ − 1), about the mean of all values. null where no lot has two values, or all are equal within lots.
 * @throws OutsideDomain for a lot without a value
 */
export function spreadWithin(lots: readonly LotSpread[]): CapabilitySpread | null {
  const { values, mean } = totals(lots);
  const df = lots.reduce((sum, { n }) => sum + (n - 1), 0);
  const squares = lots.reduce((sum, { n, s }) => sum + (n - 1) * (s ?? 0) ** 2, 0);
  return df < 1 || squares === 0 ? null : { mean, s: Math.sqrt(squares / df), values, df };
}

/**
 * The overall spread: s of all values as if of one sample, from within and between lots. null for fewer than two values, or all equal.
 * @throws OutsideDomain for a lot without a value
 */
export function spreadOverall(lots: readonly LotSpread[]): CapabilitySpread | null {
  const { values, mean } = totals(lots);
  const squares = lots.reduce((sum, lot) => sum + (lot.n - 1) * (lot.s ?? 0) ** 2 + lot.n * (lot.mean - mean) ** 2, 0);
  return values < 2 || squares === 0 ? null : { mean, s: Math.sqrt(squares / (values - 1)), values, df: values - 1 };
}

function totals(lots: readonly LotSpread[]): { readonly values: number; readonly mean: number } {
  if (lots.length === 0) throw new OutsideDomain('lots', 'one at least', 0);
  lots.forEach(({ n, mean }, at) => {
    requireFinite(`lots[${at}].n`, n, 1, 1e9);
    requireFinite(`lots[${at}].mean`, mean);
  });
  const values = lots.reduce((sum, { n }) => sum + n, 0);
  return { values, mean: lots.reduce((sum, { n, mean }) => sum + (n / values) * mean, 0) };
}
