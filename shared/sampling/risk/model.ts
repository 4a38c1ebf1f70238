import { OutsideDomain, requireFinite, requireWhole } from '../../ground/outside-domain.ts';

/** Which chance law the number found follows: one lot of known size, a process of conforming pieces or not, or nonconformities counted. */
export type RiskModel =
  | { readonly kind: 'hypergeometric'; readonly lotSize: number }
  | { readonly kind: 'binomial' }
  | { readonly kind: 'poisson' };

/** Where the pieces come from, with its quality filled in. */
export type Source =
  | { readonly kind: 'hypergeometric'; readonly lotSize: number; readonly nonconforming: number }
  | { readonly kind: 'binomial'; readonly p: number }
  | { readonly kind: 'poisson'; readonly p: number };

/** Lots are countable up to here, as in the tables of code letters. */
export const LARGEST_LOT = 1_000_000_000;
const LARGEST_RATE = 1_000_000; // nonconformities a piece

/**
 * A model at a quality. For a lot, p means round(p·N) nonconforming pieces.
 * @param p a fraction 0 … 1; with the Poisson model nonconformities per piece, 0 … 1 000 000
 * @throws OutsideDomain for a quality or lot size outside these
 */
export function sourceOf(model: RiskModel, p: number): Source {
  requireFinite('p', p, 0, model.kind === 'poisson' ? LARGEST_RATE : 1);
  if (model.kind === 'hypergeometric') return lotOf(model.lotSize, Math.round(p * model.lotSize));
  return { kind: model.kind, p };
}

/** One lot with so many nonconforming pieces in it. @throws OutsideDomain unless 0 ≤ nonconforming ≤ lotSize, lotSize 1 … 1e9 */
export function lotOf(lotSize: number, nonconforming: number): Source {
  requireWhole('lotSize', lotSize, 1, LARGEST_LOT);
  requireWhole('nonconforming', nonconforming, 0, lotSize);
  return { kind: 'hypergeometric', lotSize, nonconforming };
}

/** The fraction nonconforming, or the nonconformities per piece, of a source. */
export function qualityOf(source: Source): number {
  return source.kind === 'hypergeometric' ? source.nonconforming / source.lotSize : source.p;
}

/** @throws OutsideDomain when a plan may look at more pieces than the lot has */
export function requireFits(pieces: number, lotSize: number): void {
  if (pieces > lotSize) throw new OutsideDomain('lotSize', `at least the ${pieces} pieces of all samples`, lotSize);
}
