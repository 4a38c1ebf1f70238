/**
 * The place between `from` and `to` where a rising function passes 0, to the last digit: inverse quadratic steps where they can be trusted, halving where not.
 * Infinite values only cost a halving.
 * @see Chandrupatla, Advances in Engineering Software 28 (1997) 145
 */
export function bracketedRoot(rising: (at: number) => number, from: number, to: number): number {
  let [a, b, valueA, valueB] = [to, from, rising(to), rising(from)];
  let share = 0.5;
  for (let round = 0; round < 200; round += 1) {
    const at = a + share * (b - a);
    const value = rising(at);
    let [c, valueC] = [a, valueA];
    if (value > 0 !== valueA > 0) [c, valueC, b, valueB] = [b, valueB, a, valueA];
    [a, valueA] = [at, value];
    const best = Math.abs(valueA) < Math.abs(valueB) ? a : b;
    const least = (2 ** -52 * Math.abs(best) + Number.MIN_VALUE) / Math.abs(b - a);
    if (least > 0.5 || valueA === 0) return best;
    const [xi, phi] = [(a - b) / (c - b), (valueA - valueB) / (valueC - valueB)];
    const isTrusted = phi * phi < xi && (1 - phi) ** 2 < 1 - xi;
    share = isTrusted
      ? (valueA / (valueB - valueA)) * (valueC / (valueB - valueC)) + ((c - a) / (b - a)) * (valueA / (valueC - valueA)) * (valueB / (valueC - valueB))
      : 0.5;
    share = Math.min(1 - least, Math.max(least, share));
  }
  return a;
}
