import { OutsideDomain, requireFinite, requireWhole } from '../../ground/outside-domain.ts';
import { studentAt } from '../chance/index.ts';

/**
 * The confidence interval of a long-run mean from a row of values that depend on their neighbours, such as lots under switching: the mean of
 * means over batches of neighbours, which hardly depend on one another when a batch is much longer than a stay on a severity.
 * @param values in the order they came, at least 10 a batch
 * @param confidence above 0 and below 1
 * @param batches 2 … 1000
 * @throws OutsideDomain outside these ranges
 * @see Law, Simulation Modeling and Analysis, ch. 9 (batch means, from memory)
 */
export function batchInterval(values: readonly number[], confidence: number, batches = 40): { readonly mean: number; readonly low: number; readonly high: number } {
  requireWhole('batches', batches, 2, 1000);
  requireWhole('values.length', values.length, 10 * batches, Number.MAX_SAFE_INTEGER);
  requireFinite('confidence', confidence, 0, 1);
  if (confidence === 0 || confidence === 1) throw new OutsideDomain('confidence', 'above 0 and below 1', confidence);
  const size = Math.floor(values.length / batches);
  const means = Array.from({ length: batches }, (_, at) => meanOf(values.slice(at * size, (at + 1) * size)));
  const mean = meanOf(means);
  const spread = Math.sqrt(means.reduce((sum, each) => sum + (each - mean) ** 2, 0) / (batches - 1));
  const reach = (studentAt((1 + confidence) / 2, batches - 1) * spread) / Math.sqrt(batches);
  return { mean, low: mean - reach, high: mean + reach };
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
