import { within } from '../gate/judge.ts';
import type { CharacteristicResult } from '../gate/verdict.ts';
import type { GateRecord } from '../gate/work.ts';
import { lotsNear } from '../equipment/near.ts';
import type { Nearness } from '../equipment/near.ts';
import type { Charge } from './charge.ts';

/** A named position of a charge whose test piece failed, and the lots that lay near it, the nearest first. */
export interface FailedPosition {
  readonly position: string;
  /** Names of the characteristics that failed there. */
  readonly characteristics: readonly string[];
  readonly near: readonly { readonly lot: string; readonly how: Nearness }[];
  /** False where the charge has no map, or the map no position of this name: then `near` holds the lots whose places bear the position's name. */
  readonly mapped: boolean;
}

/** The positions of a gate's test pieces that lie outside, of the characteristics that failed. Where only a mean fails no position does. */
export function failedPositions(charge: Charge, gate: GateRecord, results: readonly CharacteristicResult[]): readonly FailedPosition[] {
  const failed = new Map<string, string[]>();
  for (const { demand, readings } of gate.work) {
    const { characteristic, places } = demand;
    const result = results.find((each) => each.characteristic === characteristic.id && !each.accepted);
    if (result === undefined || characteristic.sampling.rule !== 'positions') continue;
    for (const { ordinal, value } of readings) {
      const place = places[ordinal - 1];
      if (place?.at !== 'position' || !isOutside(result, characteristic.kind === 'graded' ? characteristic.scale : [], value)) continue;
      const names = failed.get(place.position) ?? [];
      failed.set(place.position, names.includes(characteristic.name) ? names : [...names, characteristic.name]);
    }
  }
  return [...failed].map(([position, characteristics]) => ({ position, characteristics, ...nearPosition(charge, position) }));
}

function isOutside({ detail }: CharacteristicResult, scale: readonly string[], value: number | string | boolean): boolean {
  switch (detail.by) {
    case 'limits': return typeof value === 'number' && !within(value, detail.limits);
    case 'grade': return scale.indexOf(String(value)) > scale.indexOf(detail.worstAccepted);
    default: return false;
  }
}

function nearPosition({ map, members }: Charge, position: string): Pick<FailedPosition, 'near' | 'mapped'> {
  const here = members.filter(({ left }) => left !== true);
  const at = map?.testPositions.find(({ name }) => name === position);
  if (map !== null && at !== undefined) return { near: lotsNear(map, at, here), mapped: true };
  return { near: here.filter(({ places }) => places.includes(position)).map(({ lot }) => ({ lot, how: 'same' as const })), mapped: false };
}
