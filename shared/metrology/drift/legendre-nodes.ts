/** Nodes on −1 … 1 and their weights. */
export interface Nodes { readonly nodes: readonly number[]; readonly weights: readonly number[] }

/**
 * Gauss–Legendre nodes and weights: exact for polynomials up to degree 2·count − 1. Newton's method on the Legendre polynomial.
 * @param count 2 or more
 * @see Abramowitz & Stegun, Handbook of Mathematical Functions, 25.4.29 (from memory)
 */
export function legendreNodes(count: number): Nodes {
  const places = Array.from({ length: count }, (_, at) => place(count, Math.cos((Math.PI * (at + 0.75)) / (count + 0.5))));
  return { nodes: places.map(({ node }) => -node), weights: places.map(({ weight }) => weight) };
}

function place(count: number, start: number): { readonly node: number; readonly weight: number } {
  let node = start;
  for (let round = 0; ; round += 1) {
    const { value, slope } = legendre(count, node);
    const step = value / slope;
    node -= step;
    if (Math.abs(step) < 1e-15 || round > 50) return { node, weight: 2 / ((1 - node * node) * legendre(count, node).slope ** 2) };
  }
}

function legendre(count: number, x: number): { readonly value: number; readonly slope: number } {
  let [before, value] = [1, x];
  for (let degree = 2; degree <= count; degree += 1) [before, value] = [value, ((2 * degree - 1) * x * value - (degree - 1) * before) / degree];
  return { value, slope: (count * (before - x * value)) / (1 - x * x) };
}
