/**
 * The sum of finite values with its rounding carried along: as if added in twice the digits and rounded once.
 * @see Neumaier, ZAMM 54 (1974) 39
 */
export function carefulSum(values: readonly number[]): number {
  let [sum, lost] = [0, 0];
  for (const value of values) {
    const next = sum + value;
    lost += Math.abs(sum) >= Math.abs(value) ? sum - next + value : value - next + sum;
    sum = next;
  }
  return sum + lost;
}
