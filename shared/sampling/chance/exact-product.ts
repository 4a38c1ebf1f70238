const splitter = 2 ** 27 + 1;

/**
 * a·b as a rounded product and what the rounding left over; their sum is exact for |a|, |b| below 1e150 and a product above 1e-290.
 * @see Dekker, Numerische Mathematik 18 (1971) 224
 */
export function exactProduct(a: number, b: number): readonly [product: number, leftOver: number] {
  const product = a * b;
  const [aHigh, aLow] = halves(a);
  const [bHigh, bLow] = halves(b);
  return [product, aLow * bLow - (product - aHigh * bHigh - aLow * bHigh - aHigh * bLow)];
}

function halves(value: number): readonly [high: number, low: number] {
  const scaled = splitter * value;
  const high = scaled - (scaled - value);
  return [high, value - high];
}
