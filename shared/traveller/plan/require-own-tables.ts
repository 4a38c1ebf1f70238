import type { Pen } from '../pen.ts';
import { refuse } from '../pen.ts';
import { streamName } from '../stream.ts';
import type { GatePlan, InspectionPlan } from './gate-plan.ts';

const SEVERITIES = ['normal', 'tightened', 'reduced'] as const;

/** Refuses a plan that names an own table which was never loaded, or one that stands for another severity or number of samples. */
export function requireOwnTables(pen: Pen, plan: InspectionPlan): void {
  for (const gate of plan.gates) for (const { id, sampling } of gate.characteristics) {
    if (sampling.rule === 'attributes') requireTablesOf(pen, `${gate.id} / ${id}`, sampling);
  }
}

type Attributes = Extract<GatePlan['characteristics'][number]['sampling'], { rule: 'attributes' }>;

function requireTablesOf(pen: Pen, where: string, { samples = 'single', ownTables = {} }: Attributes): void {
  for (const severity of SEVERITIES) {
    const own = ownTables[severity];
    if (own === undefined) continue;
    const { table } = pen.find(streamName('table', own), 'table', 'table');
    // There is no table of reduced multiple plans here: the double one stands in for it, and so may an own copy of that.
    const standsIn = samples === 'multiple' && severity === 'reduced' && table.samples === 'double';
    if (table.severity !== severity || (table.samples !== samples && !standsIn)) refuse({ code: 'planUnsound', where, why: 'ownTable' });
  }
}
