import type { GaugeCard, PlanState } from '../../shared/traveller/index.ts';
import { link } from '../link/index.ts';
import type { CatalogueView } from './catalogue-view.ts';
import type { PlanHere, RecordsHere } from './record-standing.ts';

/** Reads the plant's records with the whole text of every plan. @throws LinkFault */
export async function readRecordsHere(): Promise<RecordsHere> {
  const { plans, grades, layers, products, gauges, equipment, programmes } = await link.ask<CatalogueView & Pick<RecordsHere, 'equipment' | 'programmes'> & { readonly gauges: readonly (GaugeCard & { readonly withdrawn: string | null })[] }>('/api/catalogue');
  return { plans: await Promise.all(plans.map(({ id }) => readPlan(id))), grades, layers, products, gauges, equipment, programmes };
}

async function readPlan(id: string): Promise<PlanHere> {
  const { state } = await link.ask<{ readonly state: PlanState | null }>(`/api/states?stream=${encodeURIComponent(`plan:${id}`)}`);
  const versions = state?.versions ?? [];
  return {
    id, inForce: versions.find(({ inForce }) => inForce)?.plan ?? null,
    waiting: versions.filter(({ inForce, approvals }) => !inForce && approvals.length < 2).map(({ plan }) => plan),
  };
}
