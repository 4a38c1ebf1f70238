import { craterLayersUm } from '../../carbide/index.ts';
import type { Characteristic } from '../plan/characteristic.ts';
import { requirePlausible } from './read-value.ts';
import type { ReadingInputs } from './slips.ts';
import { roundTo } from './work-out.ts';
import type { GateRecord } from './work.ts';

/** A layer's thickness at one piece. */
export interface LayerRead { readonly characteristic: string; readonly value: number }

/**
 * What one crater says of every layer that the gate asks for by itself: one entry at the bench, one reading a layer.
 * Empty for a characteristic without layers. Refuses an unlikely thickness unless the person is sure.
 */
export function layersRead(gate: GateRecord, { id, ...lead }: Characteristic, inputs: ReadingInputs | undefined, sure: boolean | undefined): readonly LayerRead[] {
  if (lead.kind !== 'measured' || lead.entry.how !== 'crater' || inputs === undefined || !('diametersMm' in inputs)) return [];
  const thicknesses = craterLayersUm({ ballDiameterMm: lead.entry.ballDiameterMm, diametersMm: inputs.diametersMm });
  return gate.work.flatMap(({ demand: { characteristic } }) => {
    if (characteristic.kind !== 'measured' || characteristic.entry.how !== 'craterLayer' || characteristic.entry.of !== id) return [];
    const exactUm = thicknesses[characteristic.entry.layer - 1]?.exactUm;
    if (exactUm === undefined) return [];
    const value = roundTo(exactUm, characteristic.decimals);
    requirePlausible(characteristic, value, sure);
    return [{ characteristic: characteristic.id, value }];
  });
}
