/**
 * o·ln(o/e) + e − o, how far a count lies from what was expected, in nats: never negative, and without cancellation near o = e.
 * @param observed o ≥ 0
 * @param expected e ≥ 0; Infinity comes back where something was seen that could not be
 * @param excess o − e, formed by the caller as sharply as he can: every digit of the result hangs on it
 * @see Loader, Fast and Accurate Computation of Binomial Probabilities (2000), section 2 (the saddle-point form)
 */
export function deviance(observed: number, expected: number, excess: number): number {
  if (observed === 0) return expected;
  if (expected === 0) return Infinity;
  const v = excess / (observed + expected);
  if (Math.abs(v) > 0.3) return observed * Math.log(observed / expected) - excess;
  // ln(o/e) = 2·artanh(v); the first term of its series is taken together with e − o, where the cancellation would be.
  let [power, series] = [1, 0];
  for (let odd = 3; ; odd += 2) {
    power *= v * v;
    const next = series + power / odd;
    if (next === series) return v * (excess + 2 * observed * series);
    series = next;
  }
}
