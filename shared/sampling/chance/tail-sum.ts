const freshEvery = 512;

/**
 * Sum of the weights start, start + step, … away from the likeliest count. All terms are positive and fall ever faster, so nothing cancels and the
 * rest is known from the last ratio: the sum ends when that rest is below 1e-17 of it, after about nine standard deviations at most.
 * Every 512 terms the weight is formed afresh, so that the rounding of the ratios does not pile up.
 * @param ratio weight(count + step) / weight(count), below 1 on this side and falling; 0 at the end of what is possible
 */
export function tailSum(start: number, step: 1 | -1, weight: (count: number) => number, ratio: (count: number) => number): number {
  let [count, term] = [start, weight(start)];
  let sum = term;
  for (let terms = 1; term > 0; terms += 1) {
    const falls = ratio(count);
    if (term * falls <= 1e-17 * (1 - falls) * sum) break;
    count += step;
    term = terms % freshEvery === 0 ? weight(count) : term * falls;
    sum += term;
  }
  return sum;
}
