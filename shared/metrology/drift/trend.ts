/** A straight line through the newest values by least squares, older ones counting for less. Constant memory. */
export interface Trend {
  /** Weight of all values together: their number while few. */
  readonly weight: number;
  /** Mean place and mean distance from the target. */
  readonly place: number;
  readonly off: number;
  /** Weighted sums of squares and products around these means. */
  readonly places: number;
  readonly products: number;
}

/** A value so many back counts for 1/e of the newest. */
const memoryValues = 2_000;
const keeps = 1 - 1 / memoryValues;

/** No values yet. */
export function emptyTrend(): Trend {
  return { weight: 0, place: 0, off: 0, places: 0, products: 0 };
}

/** Takes one value in. @param place its number in the stream @param off its distance from the target */
export function takeIntoTrend({ weight, place: meanPlace, off: meanOff, places, products }: Trend, place: number, off: number): Trend {
  const kept = weight * keeps;
  const now = kept + 1;
  const [awayPlace, awayOff] = [place - meanPlace, off - meanOff];
  const share = kept / now;
  return { weight: now, place: meanPlace + awayPlace / now, off: meanOff + awayOff / now, places: places * keeps + share * awayPlace * awayPlace, products: products * keeps + share * awayPlace * awayOff };
}
