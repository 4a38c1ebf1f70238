import { requireFinite } from '../../ground/outside-domain.ts';
import { noncentralTAbove, noncentralTBelow } from './noncentral-t.ts';
import { normalAt } from './normal-at.ts';

const most = 1e6;

/**
 * The t with noncentralTBelow(t, df, delta) = probability: k·√n of a variables plan, and tolerance factors.
 * @param probability 0 < probability < 1; the t must lie in −1e6 … 1e6
 * @param df degrees of freedom, 1 … 1e9
 * @param delta noncentrality, −1e6 … 1e6
 * @throws OutsideDomain naming the argument, its range and the value
 */
export function noncentralTAt(probability: number, df: number, delta: number): number {
  requireFinite('probability', probability, Number.MIN_VALUE, 1 - 2 ** -53);
  requireFinite('df', df, 1, 1e9);
  requireFinite('delta', delta, -most, most);
  const isLower = probability <= 0.5;
  const wanted = Math.log(isLower ? probability : 1 - probability);
  /** Rises through 0 at the t sought. */
  const miss = (t: number): number => (isLower ? Math.log(noncentralTBelow(t, df, delta)) - wanted : wanted - Math.log(noncentralTAbove(t, df, delta)));
  const start = Math.max(-most, Math.min(most, delta + normalAt(probability)));
  let [low, high, reach] = [start, start, 0.5];
  while (miss(low) > 0 && low > -most) [low, reach] = [Math.max(-most, low - reach), reach * 2];
  reach = 0.5;
  while (miss(high) < 0 && high < most) [high, reach] = [Math.min(most, high + reach), reach * 2];
  requireFinite('noncentralTAt', miss(low) > 0 || miss(high) < 0 ? Infinity : start);
  return bisect(miss, low, high);
}

function bisect(miss: (t: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let round = 0; round < 200; round += 1) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (miss(middle) < 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
