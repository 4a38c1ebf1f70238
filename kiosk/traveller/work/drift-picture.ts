import { driftLimits, emptyDrift, predictCrossing, REACHED_SIGMAS, sigmaOf, watchDrift } from '../../../shared/metrology/drift/index.ts';
import type { CharacteristicWork, Measured } from '../../../shared/traveller/index.ts';
import { judgedLimits } from '../../../shared/traveller/index.ts';
import type { StampedSlip } from '../../../shared/wire/stamped-slip.ts';
import type { DriftPicture, DriftPoint } from '../../parts/gh-drift-chart.ts';

/** Blocks drawn: more would not be told apart. */
const mostBlocks = 120;

/** A stream by its blocks, from the slips at hand: older blocks are left out, and the running average is the rules' own. Null where drift is not watched. */
export function driftPicture(work: CharacteristicWork, slips: readonly StampedSlip[], gate: string): DriftPicture | null {
  const { basis, characteristic } = work.demand;
  const state = work.weights?.drift ?? null;
  if (basis.by !== 'everyPiece' || basis.drift === undefined || characteristic.kind !== 'measured' || state === null) return null;
  const blocks = blocksOf(characteristic, slips, gate).slice(-mostBlocks);
  let watched = emptyDrift(basis.drift);
  const points = blocks.map(({ fromPiece, values }): DriftPoint => {
    watched = watchDrift(basis.drift ?? { lambda: 1, limitFactor: 1, target: 0, sigma: 0, resolution: 0 }, watched, values);
    return { piece: fromPiece + values.length - 1, mean: values.reduce((sum, value) => sum + value, 0) / values.length, ewma: watched.ewma };
  });
  const limits = judgedLimits(characteristic, work.weights?.uncertainty ?? 0);
  const above = state.alarm?.side === 'above';
  const limit = above ? limits.acceptUpper : limits.acceptLower;
  const predicted = limit === null ? null : predictCrossing(basis.drift, state, limit);
  const value = (limit ?? 0) + (above ? -1 : 1) * REACHED_SIGMAS * sigmaOf(basis.drift, state);
  return { points, target: basis.drift.target, lower: limits.acceptLower, upper: limits.acceptUpper, control: driftLimits(basis.drift, state), predicted: predicted === null ? null : { ...predicted, value } };
}

interface Block { readonly fromPiece: number; readonly values: readonly number[] }

/** The blocks of the gate's present attempt. */
function blocksOf(characteristic: Measured, slips: readonly StampedSlip[], gate: string): readonly Block[] {
  const blocks: Block[] = [];
  for (const { body } of slips) {
    if (body.type === 'gateOpened' && body.gate.id === gate) blocks.length = 0;
    if (body.type === 'weightsTaken' && body.gate === gate && body.characteristic === characteristic.id) blocks.push(body);
  }
  return blocks;
}
