import { requireFinite } from '../../ground/outside-domain.ts';
import { fromMiddle, logNormalBelow, normalDensity, normalSlope } from './normal.ts';

/**
 * The z with normalBelow(z) = probability, 0 < probability < 1.
 * @throws OutsideDomain naming the argument, its range and the value
 * @remarks relative error about 1e-15; for an upper tail give the tail and turn the sign, for 1 − tail has lost its digits
 */
export function normalAt(probability: number): number {
  requireFinite('probability', probability, Number.MIN_VALUE, 1 - 2 ** -53);
  if (probability > 0.5) return -normalAt(1 - probability);
  if (probability > 0.15) {
    // Counted from the middle: near ½ the logarithm would lose the digits of z.
    const wanted = probability - 0.5;
    let z = wanted * Math.sqrt(2 * Math.PI);
    for (let round = 0; round < 7; round += 1) z -= (fromMiddle(z) - wanted) / normalDensity(z);
    return z;
  }
  // The logarithm of the tail is concave: Newton steps come from one side. The start is the leading term of the tail.
  const wanted = Math.log(probability);
  let z = -Math.sqrt(-2 * wanted);
  for (let round = 0; round < 8; round += 1) z -= (logNormalBelow(z) - wanted) / normalSlope(z);
  return z;
}
