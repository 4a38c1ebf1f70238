import { emptyDrift, LIMIT_FACTORS, USUAL_LAMBDA, watchDrift } from '../../metrology/drift/index.ts';
import type { DriftState } from '../../metrology/drift/index.ts';
import type { Characteristic, DriftWatch } from '../plan/characteristic.ts';
import type { Demand } from './demand.ts';
import type { Weights } from './work.ts';

/** How a stream of this characteristic is watched: around its target, or the middle of its limits. Without either it is not. */
export function watchOf(characteristic: Characteristic, { lambda = USUAL_LAMBDA, sigma, holds = false }: DriftWatch = {}): Pick<Extract<Demand['basis'], { by: 'everyPiece' }>, 'drift'> {
  if (characteristic.kind !== 'measured') return {};
  const { target, lower, upper, decimals } = characteristic;
  const centre = target ?? (lower === null || upper === null ? null : (lower + upper) / 2);
  if (centre === null) return {};
  return { drift: { lambda, limitFactor: LIMIT_FACTORS[lambda], target: centre, sigma: sigma ?? null, resolution: 10 ** -decimals, holds } };
}

/** The watched stream after more values; null where it is not watched. */
export function driftAfter({ basis }: Demand, before: Weights | null, values: readonly number[]): DriftState | null {
  if (basis.by !== 'everyPiece' || basis.drift === undefined) return null;
  return watchDrift(basis.drift, before?.drift ?? emptyDrift(basis.drift), values);
}
