/**
 * Numbers 0 ≤ x < 1 that look scattered and are always the same for the same seed: for drawings that must not change from day to day.
 * Xorshift with 32 bits: good for looks, not for statistics.
 * @param seed a whole number @see Marsaglia, Journal of Statistical Software 8 (2003) 14; shifts 13, 17, 5 from memory
 */
export function fixedScatter(seed: number): () => number {
  let state = (Math.imul(seed + 1, 0x9e3779b1) >>> 0) || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 4_294_967_296;
  };
}
