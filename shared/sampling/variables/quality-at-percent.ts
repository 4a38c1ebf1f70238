import { betaAt, normalAbove, normalAt } from '../chance/index.ts';
import { OutsideDomain, requireFinite, requireWhole } from '../../ground/outside-domain.ts';

/**
 * Estimated percent beyond one limit where σ is known, from Q = (limit − mean) / σ: the minimum-variance unbiased estimate,
 * P(Z > Q·√(n/(n − 1))).
 * @param quality Q, any finite number
 * @param sampleSize n, 2 … 10 000
 * @throws OutsideDomain outside those ranges
 * @see Lieberman & Resnikoff, JASA 50 (1955) 457; MIL-STD-414 (1957) D, factor v
 * @example sigmaPercentNonconforming(1.76, 10) // 3.920390…, the 3.92 of Example D-2
 */
export function sigmaPercentNonconforming(quality: number, sampleSize: number): number {
  requireFinite('quality', quality);
  requireWhole('sampleSize', sampleSize, 2, 10_000);
  return 100 * normalAbove(quality * Math.sqrt(sampleSize / (sampleSize - 1)));
}

/**
 * The Q whose estimated percent beyond the limit is the one given: what M means as a distance. Inverse of percentNonconforming and, for
 * known σ, of sigmaPercentNonconforming.
 * @param percent 0 < percent < 100
 * @param sampleSize n, 3 … 10 000 (2 … with known σ)
 * @throws OutsideDomain outside those ranges
 */
export function qualityAtPercent(percent: number, sampleSize: number, method: 's' | 'sigma'): number {
  requireFinite('percent', percent, 0, 100);
  if (percent === 0 || percent === 100) throw new OutsideDomain('percent', 'between 0 and 100', percent);
  requireWhole('sampleSize', sampleSize, method === 's' ? 3 : 2, 10_000);
  if (method === 'sigma') return -normalAt(percent / 100) / Math.sqrt(sampleSize / (sampleSize - 1));
  const a = sampleSize / 2 - 1;
  return ((sampleSize - 1) * (1 - 2 * betaAt(percent / 100, a, a))) / Math.sqrt(sampleSize);
}
