import type { OwnTable } from '../../shared/sampling/attributes/index.ts';
import type { InspectionPlan } from '../../shared/traveller/index.ts';
import { planCsv, standingOf, type PlanSheetData } from '../documents/plan-sheet/index.ts';
import { malformed, notFound, type Answer, type Paper } from './answer.ts';
import type { PaintTask } from './paint-task.ts';
import type { Plant } from './plant.ts';
import { wholeOf, type PaperReader, type Question } from './route.ts';

const lotSizeQuery = { lotSize: 'pieces of the lot that samples are stated for, 2 … 999999999; default 1000' };

/** A version of a plan as a document: on paper and for a spreadsheet. */
export function planPapers(paint: (task: PaintTask, name: string) => Promise<Answer | Paper>): readonly PaperReader[] {
  return [
    { path: '/api/plans/:id/versions/:planVersion/plan.pdf', type: 'application/pdf', query: lotSizeQuery, summary: 'A version of an inspection plan on paper', paint: async (question) => {
      const data = await planData(question);
      return 'status' in data ? data : paint({ what: 'plan', data }, `${nameOf(data)}.pdf`);
    } },
    { path: '/api/plans/:id/versions/:planVersion/plan.csv', type: 'text/csv; charset=utf-8', query: lotSizeQuery, summary: 'A version of an inspection plan for a spreadsheet', paint: async (question) => {
      const data = await planData(question);
      if ('status' in data) return data;
      return { status: 200, bytes: Buffer.from(`\uFEFF${planCsv(data)}`, 'utf8'), type: 'text/csv; charset=utf-8', name: `${nameOf(data)}.csv` };
    } },
  ];
}

async function planData({ plant, params: { id = '', planVersion = '' }, query }: Question): Promise<PlanSheetData | Answer> {
  const lotSize = wholeOf(query, 'lotSize', 1000, 2, 999_999_999);
  if (lotSize === null) return malformed('lotSize', 'must be a whole number, 2 … 999999999');
  const { state } = await plant.door.states.fresh(`plan:${id}`);
  if (state?.kind !== 'plan') return notFound('plan', id);
  const version = state.versions.find((each) => String(each.planVersion) === planVersion);
  if (version === undefined) return notFound('planVersion', planVersion);
  const card = plant.records.plant();
  return {
    plant: card?.name ?? '', demo: card?.demo ?? false, language: 'en', plan: version.plan, planVersion: version.planVersion, standing: standingOf(version), why: version.why,
    draftedBy: plant.records.names()[version.draftedBy] ?? version.draftedBy, draftedAt: version.at, approvals: version.approvals.map(({ name, badge, at }) => ({ name, badge, at })),
    lotSize, tables: await tablesNamed(plant, version.plan), cautions: plant.records.cautions(), printedAt: new Date().toISOString(),
  };
}

/** The plant's own tables that the rules of a plan name. */
async function tablesNamed(plant: Plant, plan: InspectionPlan): Promise<readonly OwnTable[]> {
  const ids = plan.gates.flatMap(({ characteristics }) => characteristics.flatMap(({ sampling }) => (sampling.rule === 'attributes' ? Object.values(sampling.ownTables ?? {}) : [])));
  const states = await Promise.all([...new Set(ids)].map((id) => plant.door.states.fresh(`table:${id}`)));
  return states.flatMap(({ state }) => (state?.kind === 'table' ? [state.table] : []));
}

function nameOf({ plan, planVersion, lotSize }: PlanSheetData): string {
  return `plan-${plan.id}-v${planVersion}-${lotSize}`;
}
