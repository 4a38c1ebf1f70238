import { afterAll, beforeAll, expect, it } from 'vitest';
import { tableLines, writeTableCsv } from '../../../shared/sampling/attributes/index.ts';
import { FixturePlant } from '../fixture-plant.ts';
import { refusalIn } from '../http-caller.ts';

let plant: FixturePlant;
beforeAll(async () => {
  plant = await FixturePlant.open();
  await plant.releasedBatch('B1');
  await plant.openedLot('L-1', 'B1');
}, 60_000);
afterAll(() => plant.close());

async function paper(path: string): Promise<{ readonly status: number; readonly type: string; readonly name: string; readonly text: string }> {
  const { token } = await plant.as('inspector');
  const answer = await fetch(`${plant.server.url}${path}`, { headers: { authorization: `Bearer ${token}` } });
  return { status: answer.status, type: answer.headers.get('content-type') ?? '', name: answer.headers.get('content-disposition') ?? '', text: Buffer.from(await answer.arrayBuffer()).toString('latin1') };
}
const get = async (path: string) => (await plant.as('inspector')).get(path);

it('gives a version on paper and for a spreadsheet at the lot size asked for', async () => {
  const pdf = await paper('/api/plans/ROUTE/versions/1/plan.pdf?lotSize=200');
  expect([pdf.status, pdf.type, pdf.text.slice(0, 5)]).toEqual([200, 'application/pdf', '%PDF-']);
  expect(pdf.name).toContain('plan-ROUTE-v1-200.pdf');
  const csv = await paper('/api/plans/ROUTE/versions/1/plan.csv?lotSize=200');
  expect([csv.status, csv.type]).toEqual([200, 'text/csv; charset=utf-8']);
  // MIL-STD-105E Tables I and II-A: 200 pieces, level II, letter G, AQL 1: the arrow leads to H, n 50, Ac 1, Re 2.
  expect(csv.text).toMatch(/\r\nROUTE,[^\r]*,1,inForce,200,[^\r]*visual[^\r]*,H,50,50:1\/2,1,2,/);
});

it.each([
  { path: '/api/plans/ROUTE/versions/1/plan.pdf?lotSize=1', code: 'malformed' }, { path: '/api/plans/ROUTE/versions/1/plan.csv?lotSize=2.5', code: 'malformed' },
  { path: '/api/plans/NONE/versions/1/plan.pdf', code: 'notFound' }, { path: '/api/plans/ROUTE/versions/9/plan.csv', code: 'notFound' }, { path: '/api/plans/ROUTE/versions/x/plan.csv', code: 'notFound' },
])('answers $path with a refusal: $code', async ({ path, code }) => {
  expect(refusalIn(await get(path))).toMatchObject({ code });
});

it('lists a lot with the version it was opened with, until it is moved on purpose', async () => {
  const { body } = await get('/api/states?stream=plan:ROUTE');
  const before = body as { readonly state: { readonly versions: readonly { readonly plan: Parameters<typeof redraft>[0] }[] } };
  const first = before.state.versions[0]?.plan;
  if (first === undefined) throw new Error('the route was drafted');
  await redraft(first);
  expect((await get('/api/plans/ROUTE/lots')).body).toMatchObject({ rows: [{ id: 'L-1', planVersion: 1, standing: 'due' }] });
  await plant.give('engineer', { type: 'moveLotToPlan', lot: 'L-1', planVersion: 2, reason: 'asked for' }, { signed: true });
  expect((await get('/api/plans/ROUTE/lots')).body).toMatchObject({ rows: [{ id: 'L-1', planVersion: 2 }] });
  expect((await get('/api/plans/OTHER/lots')).body).toEqual({ rows: [] });
  expect((await paper('/api/plans/ROUTE/versions/1/plan.csv')).text).toContain(',former,');
});

async function redraft(plan: Extract<Parameters<FixturePlant['give']>[1], { type: 'draftPlan' }>['plan']): Promise<void> {
  await plant.give('engineer', { type: 'draftPlan', plan: { ...plan, name: 'Route, again' }, why: 'a second version' });
  for (const by of ['engineer', 'otherEngineer'] as const) await plant.give(by, { type: 'approvePlan', plan: plan.id, planVersion: 2 }, { signed: true });
}

it('lists each table the plant has loaded, with who and why', async () => {
  const csv = writeTableCsv({ samples: 'double', rows: tableLines('double', 'normal') ?? [] });
  expect((await get('/api/tables')).body).toEqual({ tables: [] });
  for (const edition of [1, 2]) await plant.give('engineer', { type: 'loadTable', table: `OURS-${edition}`, name: `Ours, edition ${edition}`, severity: 'normal', csv, reason: 'compared' });
  expect((await get('/api/tables')).body).toMatchObject({ tables: [{ table: { id: 'OURS-1', name: 'Ours, edition 1', samples: 'double' }, reason: 'compared' }, { table: { id: 'OURS-2' } }] });
});
