const table = smallFactors();

/**
 * x! / (x/e)^x with x! = Γ(x + 1): what remains of a factorial when its steep part is taken out; 1 at x = 0, about √(2πx) from there on.
 * Ratios of these and a deviance make every probability of this room, so that no large logarithms are ever subtracted.
 * @param x 0 or from ½ on
 * @remarks relative error about 1e-15
 * @see Abramowitz & Stegun, Handbook of Mathematical Functions, 6.1.41 (Stirling's series)
 */
export function stirlingFactor(x: number): number {
  const known = table[x];
  return known ?? Math.sqrt(2 * Math.PI * x) * Math.exp(stirlingRemainder(x));
}

/** ln Γ(x + 1) − (x + ½)·ln x + x − ½·ln 2π, for x from ½ on. */
export function stirlingRemainder(x: number): number {
  // Steps up to where eight terms of the series are good for 1e-17.
  let [shifted, steps] = [x, 0];
  for (; shifted < 12; shifted += 1) steps += (shifted + 0.5) * Math.log1p(1 / shifted) - 1;
  const s = 1 / (shifted * shifted);
  const series = 1 / 12 - s * (1 / 360 - s * (1 / 1260 - s * (1 / 1680 - s * (1 / 1188 - s * (691 / 360360 - s * (1 / 156 - (s * 3617) / 122400))))));
  return steps + series / shifted;
}

function smallFactors(): readonly number[] {
  const factors = [1];
  let factorial = 1;
  for (let m = 1; m <= 18; m += 1) {
    factorial *= m;
    factors.push((factorial * Math.exp(m)) / m ** m);
  }
  return factors;
}
