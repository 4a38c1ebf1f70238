/** Standard normal values, the same for the same seed: Marsaglia's 32-bit xorshift (Journal of Statistical Software 8 (2003) 14) through Box and Muller. Apart from the program's own dice, and quick. */
export function normalValues(seed: number): () => number {
  let state = Math.imul(seed + 1, 0x9e3779b1) | 1;
  const fraction = (): number => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 0x1_0000_0000;
  };
  for (let warm = 0; warm < 8; warm += 1) fraction();
  return () => Math.sqrt(-2 * Math.log(1 - fraction())) * Math.cos(2 * Math.PI * fraction());
}
