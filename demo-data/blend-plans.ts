import type { InspectionPlan } from '../shared/traveller/index.ts';

/**
 * Plans for blends of released batches: that the mixing went well is looked at again; what test pieces say is weighted from the parts, whose pieces are sintered already.
 * Invented (common practice, no source).
 */
export function blendPlan(id: string, name: string, powder: InspectionPlan): InspectionPlan {
  const asked = ['moisture', 'flow', 'apparent', 'granules', 'carbon'];
  return {
    id, name, appliesTo: 'batch',
    gates: powder.gates.map((gate) => ({
      ...gate, characteristics: [
        { kind: 'confirmed' as const, id: 'mixed', name: 'Mixing', method: 'record', destructive: false, statement: 'Mixed for the full time of the mixing instruction', sampling: { rule: 'once' as const } },
        ...gate.characteristics.filter((each) => asked.includes(each.id)),
      ],
    })),
  };
}
