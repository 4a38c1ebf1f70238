/** The chances of 0, 1, … found in one sample: exactly so many, so many or fewer, and more. */
export interface ShortTable {
  readonly exactly: Float64Array;
  readonly upTo: Float64Array;
  readonly beyond: Float64Array;
}

export function tableTo(most: number): ShortTable {
  return { exactly: new Float64Array(most + 1), upTo: new Float64Array(most + 1), beyond: new Float64Array(most + 1) };
}

/** e^−40: down to here e^x is good for 40·1.5 roundings, 7e-15. */
const LEAST = 4e-18;

/** Whether a table may be filled from this chance that nothing is found. */
export function isNearNone(none: number): boolean {
  return none >= LEAST;
}

/**
 * Fills a table for a process upwards from the chance that nothing is found: P(k + 1)/P(k) = odds·(n − k)/(k + 1), or mean/(k + 1) where
 * nonconformities are counted. All terms are positive; a step brings three roundings, 2e-14 after 64 of them, and a complement is only taken
 * of what is at most a half.
 * @param none P(0), where isNearNone
 * @param pieces n, or null where nonconformities are counted
 * @param odds p/(1 − p), or the mean
 */
export function fillFromOdds({ exactly, upTo, beyond }: ShortTable, none: number, pieces: number | null, odds: number): void {
  const [many, less] = pieces === null ? [1, 0] : [pieces, 1];
  const most = exactly.length - 1;
  let [term, sum] = [none, none];
  exactly[0] = upTo[0] = none;
  for (let k = 0; k < most; k += 1) {
    term = term > 0 ? term * (((many - less * k) * odds) / (k + 1)) : 0;
    sum += term;
    exactly[k + 1] = term;
    upTo[k + 1] = sum;
  }
  let more = 1 - sum;
  if (sum > 0.5) {
    term = term > 0 ? term * (((many - less * most) * odds) / (most + 1)) : 0;
    more = term;
    for (let k = most + 1; term > 0; k += 1) {
      const falls = ((many - less * k) * odds) / (k + 1);
      if (term * falls <= 1e-17 * (1 - falls) * more) break;
      term *= falls;
      more += term;
    }
  }
  fillBeyond(beyond, exactly, more);
}

/**
 * The same for a sample from a lot: P(k + 1)/P(k) = (n − k)·(D − k) / ((k + 1)·(rest + k + 1)), D nonconforming in it and rest = N − D − n.
 */
export function fillFromLot({ exactly, upTo, beyond }: ShortTable, none: number, n: number, D: number, rest: number): void {
  const most = exactly.length - 1;
  let [term, sum] = [none, none];
  exactly[0] = upTo[0] = none;
  for (let k = 0; k < most; k += 1) {
    term = term > 0 ? term * (((n - k) * (D - k)) / ((k + 1) * (rest + k + 1))) : 0;
    sum += term;
    exactly[k + 1] = term;
    upTo[k + 1] = sum;
  }
  let more = 1 - sum;
  if (sum > 0.5) {
    term = term > 0 ? term * (((n - most) * (D - most)) / ((most + 1) * (rest + most + 1))) : 0;
    more = term;
    for (let k = most + 1; term > 0; k += 1) {
      const falls = ((n - k) * (D - k)) / ((k + 1) * (rest + k + 1));
      if (term * falls <= 1e-17 * (1 - falls) * more) break;
      term *= falls;
      more += term;
    }
  }
  fillBeyond(beyond, exactly, more);
}

function fillBeyond(beyond: Float64Array, exactly: Float64Array, last: number): void {
  let more = last;
  for (let k = exactly.length - 1; k > 0; k -= 1) {
    beyond[k] = more;
    more += exactly[k] ?? 0;
  }
  beyond[0] = more;
}
