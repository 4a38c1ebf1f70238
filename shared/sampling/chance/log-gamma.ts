import { requireFinite, requireWhole } from '../../ground/outside-domain.ts';
import { stirlingFactor, stirlingRemainder } from './stirling-factor.ts';

const oneLessEuler = 0.42278433509846713939;
/** ζ(k) − 1 for k = 2, 3, …: the series about 2 (Abramowitz & Stegun, table 23.3). */
const zetaLessOne = [
  0.644934066848226436, 0.202056903159594285, 0.0823232337111381915, 0.0369277551433699263, 0.0173430619844491397, 0.00834927738192282684,
  0.00407735619794433938, 0.00200839282608221442, 0.000994575127818085337, 0.000494188604119464559, 0.000246086553308048299, 0.000122713347578489147,
  0.0000612481350587048293, 0.0000305882363070204936, 0.0000152822594086518717, 7.63719763789976227e-6, 3.81729326499983986e-6, 1.90821271655393893e-6,
  9.53962033872796113e-7, 4.76932986787806463e-7, 2.3845050272773299e-7, 1.19219925965311073e-7, 5.96081890512594796e-8, 2.98035035146522802e-8,
  1.49015548283650412e-8, 7.45071178983542949e-9,
];

/**
 * ln Γ(x), sharp near its zeros 1 and 2 too.
 * @param x above 0, to 1e300
 * @throws OutsideDomain naming the argument, its range and the value
 * @see Abramowitz & Stegun 6.1.33 (series), 6.1.41 (Stirling)
 */
export function logGamma(x: number): number {
  requireFinite('x', x, Number.MIN_VALUE, 1e300);
  if (x < 0.5) return aboutTwo(x) - Math.log1p(x) - Math.log(x);
  if (x < 1.5) return aboutTwo(x - 1) - Math.log1p(x - 1);
  if (x < 2.5) return aboutTwo(x - 2);
  return (x - 0.5) * Math.log(x) - x + 0.91893853320467274178 + stirlingRemainder(x);
}

/** ln C(n, k): the logarithm of the number of ways to take k pieces out of n. 0 ≤ k ≤ n ≤ 1e9. */
export function logChoose(n: number, k: number): number {
  requireWhole('n', n, 0, 1e9);
  requireWhole('k', k, 0, n);
  if (k === 0 || k === n) return 0;
  const few = Math.min(k, n - k);
  const steep = few * Math.log(n / few) - (n - few) * Math.log1p(-few / n);
  return steep + Math.log(stirlingFactor(n) / (stirlingFactor(few) * stirlingFactor(n - few)));
}

/** ln Γ(2 + z), |z| ≤ ½. */
function aboutTwo(z: number): number {
  let sum = 0;
  for (const [at, zeta] of [...zetaLessOne.entries()].reverse()) sum = zeta / (at + 2) - z * sum;
  return z * (oneLessEuler + z * sum);
}
