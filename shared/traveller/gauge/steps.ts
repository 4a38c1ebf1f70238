/**
 * True when a value is a whole number of a gauge's steps: what the gauge could have shown. Decimals are not exact in binary, so a millionth
 * of a step is forgiven.
 * @param resolution above 0, in the value's unit
 */
export function isWholeSteps(value: number, resolution: number): boolean {
  const steps = value / resolution;
  return Math.abs(steps - Math.round(steps)) <= Math.max(1e-6, Math.abs(steps) * 2 ** -50);
}
