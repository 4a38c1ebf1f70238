import { readdirSync, readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Command } from '../../../shared/traveller/index.ts';
import { FixturePlant, people, type Somebody } from '../fixture-plant.ts';
import { HttpCaller, refusalIn } from '../http-caller.ts';

/** The example files, in the order in which the page beside them sends them. */
function filesOf(folder: 'plans' | 'catalogue'): readonly string[] {
  return readdirSync(`docs/first-plant/${folder}`).sort().map((name) => readFileSync(`docs/first-plant/${folder}/${name}`, 'utf8'));
}
const json = { 'content-type': 'application/json' };

let plant: FixturePlant;
beforeAll(async () => {
  plant = await FixturePlant.empty();
  const { badge, name, pin } = people.keeper;
  await new HttpCaller(plant.server.url).mustGive({ type: 'openPlant', plant: { name: 'New plant', address: '1 Invented Way', country: 'XX', demo: true }, keeper: { badge, name, pin } });
  for (const who of ['engineer', 'otherEngineer', 'lab', 'inspector'] as const satisfies readonly Somebody[]) await plant.give('keeper', { type: 'enrolPerson', ...people[who] });
}, 60_000);
afterAll(() => plant.close());

describe('an empty plant, led by docs/first-plant', () => {
  it('drafts the four plans, which two engineers approve', async () => {
    const engineer = await plant.as('engineer');
    for (const text of filesOf('plans')) expect(await engineer.send('POST', '/api/commands', text, json)).toMatchObject({ status: 200, body: { ok: true, slips: [{ body: { type: 'planDrafted' } }] } });
    for (const plan of ['POWDER-A', 'FURNACE-A', 'COATING-A', 'ROUTE-A']) for (const by of ['engineer', 'otherEngineer'] as const) await plant.give(by, { type: 'approvePlan', plan, planVersion: 1 }, { signed: true });
  });

  it('then takes grade, coating and product, and offers them', async () => {
    const engineer = await plant.as('engineer');
    for (const text of filesOf('catalogue')) expect(await engineer.send('POST', '/api/commands', text, json)).toMatchObject({ status: 200, body: { ok: true } });
    expect((await engineer.get('/api/catalogue')).body).toMatchObject({ products: [{ id: 'INSERT-A', grade: 'GRADE-A', layer: 'COATING-A', plan: 'ROUTE-A' }], grades: [{ id: 'GRADE-A' }], layers: [{ id: 'COATING-A' }] });
  });

  it('refuses a changed file under the client id of the one before', async () => {
    const [first = ''] = filesOf('catalogue');
    const answered = await (await plant.as('engineer')).send('POST', '/api/commands', first.replace('Grade A', 'Grade B'), json);
    expect({ status: answered.status, code: refusalIn(answered).code }).toEqual({ status: 409, code: 'clientIdReused' });
  });

  it('opens a batch by these plans, tests it, releases it, and opens the first lot', async () => {
    await plant.give('lab', { type: 'openBatch', batch: 'B1', grade: 'GRADE-A', barrels: 12, kgPerBarrel: 100, rawLots: [] });
    await registerGauges();
    const lab = await plant.as('lab');
    const at = { subject: 'batch:B1', gate: 'powder-lab' };
    await plant.give('lab', { type: 'openGate', ...at });
    for (const command of await goodResults(lab, at)) await plant.give('lab', command);
    await plant.give('lab', { type: 'releaseBatch', batch: 'B1' }, { signed: true });
    await plant.give('inspector', { type: 'openLot', lot: 'L1', product: 'INSERT-A', batch: 'B1', quantity: 480, trayCapacity: 60 });
    const { state } = (await lab.get('/api/travellers/lot/L1')).body as { readonly state: { readonly gates: readonly { readonly id: string; readonly status: string }[] } };
    expect(state.gates.map(({ id, status }) => `${id} ${status}`)).toEqual(['powder accepted', ...['pressing', 'sintered', 'dimensions', 'edge', 'coating', 'final-visual', 'marking'].map((gate) => `${gate} waiting`)]);
  });
});

/** One gauge of each kind that the powder plan asks for. */
async function registerGauges(): Promise<void> {
  const gauges = [['MIC', 'micrometer', 'mm', 0.001], ['DEN', 'density balance', 'g/cm³', 0.01], ['COE', 'coercivity meter', 'kA/m', 0.1], ['HAR', 'hardness tester', 'HV30', 1]] as const;
  for (const [id, gaugeKind, unit, resolution] of gauges) await plant.give('lab', { type: 'registerGauge', gauge: { id, name: gaugeKind, gaugeKind, unit, resolution, expandedUncertainty: resolution, least: 0, most: 5000, calibrationDue: '2999-12-31', bench: 'Lab' } });
}

interface Work { readonly demand: { readonly n: number; readonly characteristic: { readonly id: string; readonly kind: string; readonly gaugeKind?: string | null; readonly target?: number | null; readonly worstAccepted?: string; readonly entry?: { readonly how: string; readonly dieMm?: number } } } }

/** An entry on target for every place of every characteristic that the open gate asks for. */
async function goodResults(caller: HttpCaller, at: { readonly subject: string; readonly gate: string }): Promise<readonly Command[]> {
  const { state } = (await caller.get(`/api/travellers/${at.subject.replace(':', '/')}`)).body as { readonly state: { readonly gates: readonly { readonly work: readonly Work[] }[] } };
  const gaugeOf: Readonly<Record<string, string>> = { micrometer: 'MIC', 'density balance': 'DEN', 'coercivity meter': 'COE', 'hardness tester': 'HAR' };
  return (state.gates[0]?.work ?? []).flatMap(({ demand: { n, characteristic } }) => Array.from({ length: n }, (_, index): Command => {
    const { id, kind, entry, target, worstAccepted = '', gaugeKind } = characteristic;
    const gauge = typeof gaugeKind === 'string' ? { gauge: gaugeOf[gaugeKind] ?? '' } : {};
    const reading = { type: 'takeReading', ...at, characteristic: id, ordinal: index + 1, ...gauge } as const;
    if (kind === 'confirmed') return { ...reading, value: true };
    if (kind === 'graded') return { ...reading, value: worstAccepted };
    return entry?.how === 'shrinkage' ? { ...reading, value: null, inputs: { sinteredMm: 20.5 } } : { ...reading, value: target ?? 0 };
  }));
}
