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
    return newton(wanted * Math.sqrt(2 * Math.PI), (z) => fromMiddle(z) - wanted, normalDensity);
  }
  // The logarithm of the tail is concave: Newton steps come from one side. The start is the leading term of the tail.
  const wanted = Math.log(probability);
  return newton(-Math.sqrt(-2 * wanted), (z) => logNormalBelow(z) - wanted, normalSlope);
}

function newton(start: number, miss: (z: number) => number, slope: (z: number) => number): number {
  let z = start;
  for (let round = 0; round < 20; round += 1) {
    const missed = miss(z);
    z -= missed / slope(z);
    // Newton doubles the digits: what is 1e-9 away before this step is at the last digit after it.
    if (Math.abs(missed) <= 1e-9) break;
  }
  return z;
}
