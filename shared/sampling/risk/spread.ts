/** Each share may lose so much of itself in one sample: after 10,000 samples 1e-13. */
const LEAST = 1e-17;

/**
 * What a sample of a process makes of the shares of the counts before it: after[c] = Σ shares[f]·run[c + shift − f]. Long reaches of the
 * run are left out where that is proven to take less than 1e-17 of each result: from its likeliest count on a run falls, so what lies beyond a
 * reach adds to any of them at most the sum of the shares times the first chance left out. Where that is not so small beside the smallest result, all is added up.
 * @param run the chances of 0, 1, … found, at least as many as the last result asks for
 * @param after zeros to begin with
 * @param shift how much higher the first count of `after` is than that of `shares`, 0 or more
 */
export function spread(shares: Float64Array, run: readonly number[], after: Float64Array, shift: number): void {
  const longest = after.length + shift;
  let [all, smallest] = [0, Infinity];
  for (const share of shares) {
    all += share;
    if (share < smallest) smallest = share;
  }
  let reach = 1;
  while (reach < longest && !((run[reach] ?? 0) < (run[reach - 1] ?? 0) && (run[reach] ?? 0) * all <= LEAST * 1e-3 * smallest)) reach += 1;
  addUp(shares, run, after, shift, reach);
  if (reach >= longest) return;
  const neglected = (run[reach] ?? 0) * all;
  let worst = Infinity;
  for (const share of after) if (share < worst) worst = share;
  if (neglected <= LEAST * worst) return;
  after.fill(0);
  addUp(shares, run, after, shift, longest);
}

function addUp(shares: Float64Array, run: readonly number[], after: Float64Array, shift: number, reach: number): void {
  for (let from = 0; from < shares.length; from += 1) {
    const share = shares[from] ?? 0;
    if (share === 0) continue;
    const end = Math.min(after.length, from - shift + reach);
    for (let to = Math.max(0, from - shift); to < end; to += 1) after[to] = (after[to] ?? 0) + share * (run[to + shift - from] ?? 0);
  }
}
