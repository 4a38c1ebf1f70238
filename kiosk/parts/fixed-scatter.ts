/**
 * Numbers 0 ≤ x < 1 that look scattered and are always the same for the same seed: for drawings that must not change from day to day.
 * A linear congruential generator (common practice): good for looks, not for statistics.
 */
export function fixedScatter(seed: number): () => number {
  let state = (seed * 2_654_435_761 + 1_013_904_223) >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 4_294_967_296;
  };
}
