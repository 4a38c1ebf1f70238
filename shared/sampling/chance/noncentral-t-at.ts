import { OutsideDomain, requireFinite } from '../../ground/outside-domain.ts';
import { bracketedRoot } from './bracketed-root.ts';
import { noncentralTAbove, noncentralTBelow, requireDelta } from './noncentral-t.ts';
import { normalAt } from './normal-at.ts';

const most = 1e12;

/**
 * The t with noncentralTBelow(t, df, delta) = probability: k·√n of a variables plan, and tolerance factors.
 * @param probability 0 < probability < 1; the t must lie in −1e12 … 1e12
 * @param df degrees of freedom, 1 … 1e9
 * @param delta noncentrality, −1e6 … 1e6 and at most 100·√df in size
 * @throws OutsideDomain naming the argument, its range and the value
 * @remarks about a dozen evaluations of the distribution
 */
export function noncentralTAt(probability: number, df: number, delta: number): number {
  requireFinite('probability', probability, Number.MIN_VALUE, 1 - 2 ** -53);
  requireFinite('df', df, 1, 1e9);
  requireDelta(delta, df);
  const isLower = probability <= 0.5;
  const wanted = Math.log(isLower ? probability : 1 - probability);
  const missAt = (t: number): number => (isLower ? Math.log(noncentralTBelow(t, df, delta)) - wanted : wanted - Math.log(noncentralTAbove(t, df, delta)));
  // The ends of the bracket are asked for more than once, and each answer is an integral.
  const known = new Map<number, number>();
  const miss = (t: number): number => {
    const value = known.get(t) ?? missAt(t);
    known.set(t, value);
    return value;
  };
  const z = normalAt(probability);
  // As if s varied like a normal variable beside the mean: near enough to start from.
  let [near, far] = [0, delta + z];
  let reach = 0.25 * Math.sqrt(1 + (delta * delta) / (2 * df));
  const side = miss(far) < 0 ? 1 : -1;
  do {
    [near, far] = [far, Math.max(-most, Math.min(most, far + side * reach))];
    reach *= 2.5;
  } while (miss(far) * side < 0 && Math.abs(far) < most);
  if (miss(far) * side < 0) throw new OutsideDomain('probability', `one whose t lies in −1e12 … 1e12 at df ${df}, delta ${delta}`, probability);
  return bracketedRoot(miss, Math.min(near, far), Math.max(near, far));
}
