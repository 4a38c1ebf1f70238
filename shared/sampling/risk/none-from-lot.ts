import { hypergeometricExactly } from '../chance/index.ts';

/** So many steps of two roundings each are 4.4e-14 at most; then the chance is formed afresh, and where a leap is as long as that costs. */
const MOST_STEPS = 200;
const LONGEST_LEAP = 16;

/**
 * The chance that nothing is found in a sample from a lot, for lots of one size and like numbers nonconforming asked for one after another: stepped from the one before,
 * P(D + 1) = P(D)·(N − D − n)/(N − D).
 * @param n pieces of the sample
 */
export function noneFromLot(n: number): (lotSize: number, nonconforming: number) => number {
  let [size, at, chance, steps] = [-1, 0, 0, 0];
  return (lotSize, nonconforming) => {
    const leap = Math.abs(nonconforming - at);
    steps += leap;
    if (size !== lotSize || leap > LONGEST_LEAP || steps > MOST_STEPS || chance === 0) {
      chance = hypergeometricExactly(0, n, lotSize, nonconforming);
      [size, at, steps] = [lotSize, nonconforming, 0];
      return chance;
    }
    for (; at < nonconforming; at += 1) chance *= (lotSize - at - n) / (lotSize - at);
    for (; at > nonconforming; at -= 1) chance *= (lotSize - at + 1) / (lotSize - at + 1 - n);
    return chance;
  };
}
