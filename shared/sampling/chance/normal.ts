import { requireFinite } from '../../ground/outside-domain.ts';

const logRootTwoPi = 0.91893853320467274178;
const turn = 2;

/**
 * Probability that a standard normal variable is z or less.
 * @throws OutsideDomain unless z is finite
 * @remarks relative error ≤ 1e-13 where the value is above 1e-300
 * @see Abramowitz & Stegun 26.2.11 (series), 26.2.14 (continued fraction)
 */
export function normalBelow(z: number): number {
  requireFinite('z', z);
  if (z > turn) return 1 - tail(z);
  return z < -turn ? tail(-z) : 0.5 + fromMiddle(z);
}

/** Probability that a standard normal variable is above z, without cancellation. */
export function normalAbove(z: number): number {
  requireFinite('z', z);
  return normalBelow(-z);
}

/** ln normalBelow(z), down to where the probability itself is no double any more. Unchecked: a finite z. */
export function logNormalBelow(z: number): number {
  if (z > turn) return Math.log1p(-tail(z));
  return z < -turn ? -Math.log(inverseMills(-z)) - 0.5 * z * z - logRootTwoPi : Math.log(0.5 + fromMiddle(z));
}

/** Density over normalBelow at z: the slope of logNormalBelow. */
export function normalSlope(z: number): number {
  return z < -turn ? inverseMills(-z) : normalDensity(z) / normalBelow(z);
}

/** Density of the standard normal; z is split so that the rounding of z² does not count. */
export function normalDensity(z: number): number {
  if (Math.abs(z) > 39) return 0;
  const coarse = Math.trunc(z * 16) / 16;
  return Math.exp(-0.5 * coarse * coarse) * Math.exp(-0.5 * (z - coarse) * (z + coarse) - logRootTwoPi);
}

/** normalBelow(z) − ½, sharp near 0. */
export function fromMiddle(z: number): number {
  let [term, sum] = [z, z];
  for (let odd = 3; ; odd += 2) {
    term *= (z * z) / odd;
    if (sum + term === sum) return sum * normalDensity(z);
    sum += term;
  }
}

function tail(z: number): number {
  return normalDensity(z) / inverseMills(z);
}

/** Density over tail, z + 1/(z + 2/(z + 3/(z + …))), for z from 2 on; worked from the back with as many steps as that z needs. */
function inverseMills(z: number): number {
  let fraction = z;
  for (let step = Math.ceil(16 + 320 / (z * z)); step > 0; step -= 1) fraction = z + step / fraction;
  return fraction;
}
