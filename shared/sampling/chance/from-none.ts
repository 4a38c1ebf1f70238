/** ln P(0) down to which, and counts up to which, sums may start from P(0). */
const LEAST_LOG = -40;
const MOST_STEPS = 100;

/** Whether `fromNone` keeps its promise for this count and this ln P(0). */
export function isNearNone(k: number, logNone: number): boolean {
  return k <= MOST_STEPS && logNone >= LEAST_LOG;
}

/**
 * A tail of a count, summed upwards from the chance that nothing is found. Every term is positive. P(0) = e^x carries about 1.5·|x| roundings,
 * 7e-15 at x = −40, each step three more, 3.3e-14 after a hundred, and a complement is only taken of what is at most a half.
 * @param none P(0), where isNearNone
 * @param k 0 or more, below `pieces`
 * @param pieces n of a binomial law, or null for a Poisson law
 * @param odds p/(1 − p), or the mean of a Poisson law: P(j + 1)/P(j) is odds·(n − j)/(j + 1), or odds/(j + 1)
 */
export function fromNone(none: number, k: number, pieces: number | null, odds: number, tail: 'atMost' | 'moreThan'): number {
  const many = pieces ?? 1;
  const less = pieces === null ? 0 : 1;
  let [term, sum] = [none, none];
  for (let found = 0; found < k; found += 1) {
    term *= ((many - less * found) * odds) / (found + 1);
    sum += term;
  }
  if (tail === 'atMost') return Math.min(1, sum);
  if (sum <= 0.5) return 1 - sum;
  term *= ((many - less * k) * odds) / (k + 1);
  let beyond = term;
  for (let found = k + 1; term > 0; found += 1) {
    const falls = ((many - less * found) * odds) / (found + 1);
    if (term * falls <= 1e-17 * (1 - falls) * beyond) break;
    term *= falls;
    beyond += term;
  }
  return beyond;
}
