type Tails = { readonly below: number; readonly above: number; /** of the variable searched in */ readonly density: number };

/**
 * The place where `below` is the probability asked for, 0 < probability < 1, for a density whose logarithm is concave. Then the logarithms of both tails are
 * concave too, so that Newton steps on the smaller one come to the root from one side and never leave it.
 */
export function logRoot(probability: number, start: number, tailsAt: (at: number) => Tails): number {
  const isLower = probability <= 0.5;
  const wanted = Math.log(isLower ? probability : 1 - probability);
  let [at, seen, underflows] = [start, start, 0];
  for (let round = 0; round < 200; round += 1) {
    const { below, above, density } = tailsAt(at);
    const tail = isLower ? below : above;
    if (tail === 0) {
      // Beyond the smallest double: halfway back to where something was seen last. Where every step leads here again, the place itself lies beyond.
      underflows += 1;
      if (underflows > 20) return at;
      at = (at + seen) / 2;
      continue;
    }
    seen = at;
    const miss = wanted - Math.log(tail);
    const step = (miss * tail) / density;
    at += isLower ? step : -step;
    // Newton doubles the digits: what is 1e-9 away before this step is at the last digit after it.
    if (Math.abs(miss) <= 1e-9) return at;
  }
  return at;
}
