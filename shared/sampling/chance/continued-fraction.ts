/**
 * b₀ + a₁/(b₁ + a₂/(b₂ + …)) to the last digit, for fractions known to converge.
 * @see Thompson & Barnett, Journal of Computational Physics 64 (1986) 490 (the modified Lentz way)
 */
export function continuedFraction(first: number, numerator: (step: number) => number, denominator: (step: number) => number): number {
  let [value, front, back] = [first, first, 0];
  for (let step = 1; ; step += 1) {
    const [above, below] = [numerator(step), denominator(step)];
    back = 1 / apart(below + above * back);
    front = apart(below + above / front);
    const factor = front * back;
    value *= factor;
    if (Math.abs(factor - 1) <= 2e-16) return value;
  }
}

function apart(value: number): number {
  return value === 0 ? 1e-300 : value;
}
