import { requireFinite } from '../../ground/outside-domain.ts';
import { betaTails } from './beta.ts';
import { logRoot } from './log-root.ts';

/**
 * The x with betaBelow(x, a, b) = probability; Clopper–Pearson limits are such values.
 * @param probability 0 … 1
 * @param a ½ … 1e9
 * @param b ½ … 1e9
 * @throws OutsideDomain naming the argument, its range and the value
 */
export function betaAt(probability: number, a: number, b: number): number {
  requireFinite('probability', probability, 0, 1);
  requireFinite('a', a, 0.5, 1e9);
  requireFinite('b', b, 0.5, 1e9);
  if (probability === 0 || probability === 1) return probability;
  return 1 / (1 + Math.exp(-betaLogOddsAt(probability, a, b)));
}

/** ln(x / (1 − x)) at the x of betaAt, sharp near x = 1 too; 0 < probability < 1. */
export function betaLogOddsAt(probability: number, a: number, b: number): number {
  return logRoot(probability, Math.log(a / b), (at) => {
    const [x, y] = [1 / (1 + Math.exp(-at)), 1 / (1 + Math.exp(at))];
    const { below, above, front } = betaTails(a, b, { x, y, lead: a * y - b * x });
    return { below, above, density: front };
  });
}
