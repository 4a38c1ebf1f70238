import { OutsideDomain, requireWhole } from '../../ground/outside-domain.ts';
import { betaAt } from '../chance/index.ts';

/**
 * The exact confidence interval of a share of which `count` in `of` were seen, each side left out with half of what the confidence leaves.
 * @param count 0 … of
 * @param of 1 … 1e9
 * @param confidence above 0 and below 1
 * @throws OutsideDomain outside these ranges
 * @see Clopper & Pearson, Biometrika 26 (1934)
 * @example clopperPearson(0, 10, 0.95) // { low: 0, high: 0.3085 }
 */
export function clopperPearson(count: number, of: number, confidence: number): { readonly low: number; readonly high: number } {
  requireWhole('of', of, 1, 1e9);
  requireWhole('count', count, 0, of);
  if (!(confidence > 0 && confidence < 1)) throw new OutsideDomain('confidence', 'above 0 and below 1', confidence);
  const side = (1 - confidence) / 2;
  return {
    low: count === 0 ? 0 : betaAt(side, count, of - count + 1),
    high: count === of ? 1 : betaAt(1 - side, count + 1, of - count),
  };
}
