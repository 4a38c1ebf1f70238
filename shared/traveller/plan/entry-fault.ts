import type { Characteristic, Measured } from './characteristic.ts';
import type { GatePlan } from './gate-plan.ts';
import type { PlanFault } from './plan-fault.ts';

/** What is wrong with the way a value is worked out, seen together with the other characteristics of its gate. */
export function entryFault(characteristic: Characteristic, gate: GatePlan): PlanFault | null {
  if (characteristic.kind !== 'measured') return null;
  const { entry, unit } = characteristic;
  switch (entry.how) {
    case 'direct': case 'shrinkage': case 'archimedes': return null;
    case 'crater': return entry.layers === undefined || (Number.isInteger(entry.layers) && entry.layers >= 2 && entry.layers <= 12) ? null : 'craterLayers';
    case 'craterLayer': {
      const lead = gate.characteristics.find(({ id }) => id === entry.of);
      if (lead === undefined || lead.kind !== 'measured' || lead.entry.how !== 'crater') return 'layerOfCrater';
      return entry.layer >= 1 && entry.layer <= (lead.entry.layers ?? 0) && lead.unit === unit && sampledAlike(lead, characteristic) ? null : 'layerOfCrater';
    }
    case 'saturation': {
      const { cobaltFraction, warnLowPercent = 0, warnHighPercent = Infinity } = entry;
      return unit === '%' && cobaltFraction > 0 && cobaltFraction <= 1 && warnLowPercent < warnHighPercent ? null : 'saturationEntry';
    }
  }
}

/** The layer is read where its crater is: the same pieces, however either is judged. */
function sampledAlike({ sampling: one }: Measured, { sampling: other }: Measured): boolean {
  if (one.rule === 'fixed' && other.rule === 'fixed') return one.n === other.n;
  if (one.rule === 'positions' && other.rule === 'positions') return one.each === other.each && one.positions.length === other.positions.length && one.positions.every((position, at) => position === other.positions[at]);
  return false;
}
