import type { Pen } from '../pen.ts';
import { refuse } from '../pen.ts';
import type { InspectionPlan } from '../plan/gate-plan.ts';
import { planInForce } from '../plan/in-force.ts';
import { streamName, streamParts, SUBJECT_KINDS } from '../stream.ts';
import type { SubjectKind } from '../stream.ts';
import type { ChartedThing } from './chart.ts';

/** What a chart's stream names: `chart:<kind of subject>/<owner>/<gate>/<characteristic>`; null where it is none. */
export function chartParts(stream: string): { readonly subjectKind: SubjectKind; readonly owner: string; readonly gate: string; readonly characteristic: string } | null {
  const parts = streamParts(stream);
  const [kind = '', owner = '', gate = '', characteristic = '', ...more] = parts?.kind === 'chart' ? parts.id.split('/') : [];
  const subjectKind = SUBJECT_KINDS.find((known) => known === kind);
  return subjectKind === undefined || owner === '' || gate === '' || characteristic === '' || more.length > 0 ? null : { subjectKind, owner, gate, characteristic };
}

/** The characteristic as the plan in force has it, or the refusal that there is none that can be charted. */
export function chartedThing(pen: Pen, stream: string): ChartedThing {
  const parts = chartParts(stream) ?? refuse({ code: 'notFound', what: 'chart', id: stream });
  const { name, plan } = ownerOf(pen, parts.subjectKind, parts.owner);
  const gate = plan.gates.find(({ id }) => id === parts.gate) ?? refuse({ code: 'notFound', what: 'gate', id: parts.gate });
  const found = gate.characteristics.find(({ id }) => id === parts.characteristic) ?? refuse({ code: 'notFound', what: 'characteristic', id: parts.characteristic });
  if (found.kind !== 'measured' && found.kind !== 'counted') return refuse({ code: 'chartUnfit', characteristic: found.name, why: 'kind' });
  const measured = found.kind === 'measured' ? found : null;
  return { ...parts, ownerName: name, gateName: gate.name, characteristicName: found.name, unit: measured?.unit ?? null, decimals: measured?.decimals ?? 0 };
}

function ownerOf(pen: Pen, kind: SubjectKind, owner: string): { readonly name: string; readonly plan: InspectionPlan } {
  switch (kind) {
    case 'lot': {
      const { card } = pen.find(streamName('product', owner), 'product', 'product');
      return { name: card.designation, plan: planInForce(pen, card.plan, kind).plan };
    }
    case 'batch': case 'furnace': {
      const { card } = pen.find(streamName('grade', owner), 'grade', 'grade');
      return { name: card.name, plan: planInForce(pen, kind === 'batch' ? card.powderPlan : card.furnacePlan, kind).plan };
    }
    case 'coating': {
      const { card } = pen.find(streamName('layer', owner), 'layer', 'layer');
      return { name: card.name, plan: planInForce(pen, card.coatingPlan, kind).plan };
    }
  }
}
