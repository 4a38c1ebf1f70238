import type { SequentialPlan } from '../../../shared/sampling/sequential/index.ts';

/** The probability of rejection and the pieces looked at, by carrying the chance of each count from one piece to the next. */
export function pieceByPiece({ h1, h2, slope, truncateAt, truncateAc }: SequentialPlan, p: number): { readonly rejected: number; readonly average: number } {
  let open = [1];
  let [rejected, average] = [0, 0];
  for (let n = 1; n <= truncateAt && open.length > 0; n += 1) {
    average += open.reduce((sum, chance) => sum + chance, 0);
    const next = Array.from({ length: open.length + 1 }, (_, found) => (open[found] ?? 0) * (1 - p) + (open[found - 1] ?? 0) * p);
    const last = n === truncateAt;
    open = next.map((chance, found) => {
      const rejects = last ? found > truncateAc : found >= slope * n + h2 || found > truncateAc;
      const accepts = last ? found <= truncateAc : found <= slope * n - h1;
      if (rejects) rejected += chance;
      return rejects || accepts ? 0 : chance;
    });
  }
  return { rejected, average };
}
