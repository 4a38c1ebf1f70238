/**
 * Round numbers along an axis: steps of 1, 2 or 5 times a power of ten.
 * @param from least value drawn @param to largest value drawn, above `from` @param most how many ticks there is room for, 2 or more
 * @returns rising, all within the range; where the range is no range, the one value
 */
export function axisTicks(from: number, to: number, most: number): readonly number[] {
  const span = to - from;
  if (!(span > 0) || !Number.isFinite(span)) return [from];
  const step = roundStep(span / Math.max(most - 1, 1));
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  // Counted in steps and not added up, so that 0.3 stays 0.3.
  return Array.from({ length: last - first + 1 }, (_, at) => Number(((first + at) * step).toPrecision(12)));
}

/** The least of 1, 2, 5 times a power of ten that is no smaller. @param wanted above 0 */
export function roundStep(wanted: number): number {
  const power = 10 ** Math.floor(Math.log10(wanted));
  const factor = [1, 2, 5, 10].find((each) => each * power >= wanted * (1 - 1e-9)) ?? 10;
  return Number((factor * power).toPrecision(12));
}
