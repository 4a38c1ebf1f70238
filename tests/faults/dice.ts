/** Numbers 1 … most that are the same at every run (a linear congruential generator modulo 2³¹, constants from memory). */
export function dice(seed: number): (most: number) => number {
  let state = seed;
  return (most) => 1 + (state = (Math.imul(state, 1_103_515_245) + 12_345) & 0x7fffffff) % most;
}
