import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Command } from '../../../shared/traveller/index.ts';
import { commandsOf, readRecordsFile, type RecordCommand } from '../../../shared/wire/records-file.ts';
import { FixturePlant, people, type Somebody } from '../fixture-plant.ts';
import { HttpCaller } from '../http-caller.ts';

/** The commands that enter the example file of the docs. */
function example(): readonly RecordCommand[] {
  const read = readRecordsFile(readFileSync('docs/example-records.json', 'utf8'));
  if ('fault' in read) throw new Error(`the example is no records file: ${read.fault}`);
  return commandsOf(read, 'First version');
}

let plant: FixturePlant;
beforeAll(async () => {
  plant = await FixturePlant.empty();
  const { badge, name, pin } = people.keeper;
  await new HttpCaller(plant.server.url).mustGive({ type: 'openPlant', plant: { name: 'New plant', address: '1 Invented Way', country: 'XX', demo: true }, keeper: { badge, name, pin } });
  for (const who of ['engineer', 'otherEngineer', 'lab', 'inspector'] as const satisfies readonly Somebody[]) await plant.give('keeper', { type: 'enrolPerson', ...people[who] });
}, 60_000);
afterAll(() => plant.close());

describe('an empty plant, given docs/example-records.json', () => {
  it('drafts the four plans, which two engineers approve', async () => {
    for (const command of example()) if (command.type === 'draftPlan') await plant.give('engineer', command);
    for (const plan of ['POWDER-A', 'FURNACE-A', 'COATING-A', 'ROUTE-A']) for (const by of ['engineer', 'otherEngineer'] as const) await plant.give(by, { type: 'approvePlan', plan, planVersion: 1 }, { signed: true });
  });

  it('then takes grade, coating, product and gauges, and offers them', async () => {
    for (const command of example()) if (command.type !== 'draftPlan') await plant.give('engineer', command);
    expect((await (await plant.as('engineer')).get('/api/catalogue')).body).toMatchObject({ products: [{ id: 'INSERT-A', grade: 'GRADE-A', layer: 'COATING-A', plan: 'ROUTE-A' }], grades: [{ id: 'GRADE-A' }], layers: [{ id: 'COATING-A' }] });
  });

  it('tests a batch with its gauges once they are calibrated, releases it, and opens the first lot', async () => {
    await plant.give('lab', { type: 'openBatch', batch: 'B1', grade: 'GRADE-A', barrels: 12, kgPerBarrel: 100, rawLots: [] });
    const lab = await plant.as('lab');
    const at = { subject: 'batch:B1', gate: 'powder-lab' };
    await plant.give('lab', { type: 'openGate', ...at });
    expect((await lab.give({ type: 'takeReading', ...at, characteristic: 'density', ordinal: 1, value: 14.65, gauge: 'DEN-41' })).body).toMatchObject({ refusal: { code: 'gaugeCannotCount', why: 'overdue' } });
    for (const gauge of Object.values(gaugeOf)) await plant.give('lab', { type: 'calibrateGauge', gauge, calibrationDue: '2999-12-31', expandedUncertainty: 0.001, certificate: 'invented' });
    for (const command of await goodResults(lab, at)) await plant.give('lab', command);
    await plant.give('lab', { type: 'releaseBatch', batch: 'B1' }, { signed: true });
    await plant.give('inspector', { type: 'openLot', lot: 'L1', product: 'INSERT-A', batch: 'B1', quantity: 480, trayCapacity: 60 });
    const { state } = (await lab.get('/api/travellers/lot/L1')).body as { readonly state: { readonly gates: readonly { readonly id: string; readonly status: string }[] } };
    expect(state.gates.map(({ id, status }) => `${id} ${status}`)).toEqual(['powder accepted', ...['pressing', 'sintered', 'dimensions', 'edge', 'coating', 'final-visual', 'marking'].map((gate) => `${gate} waiting`)]);
  });
});

/** The gauges of the example that the powder plan asks for, by kind. */
const gaugeOf: Readonly<Record<string, string>> = { micrometer: 'MIC-11', 'density balance': 'DEN-41', 'coercivity meter': 'COE-42', 'hardness tester': 'HAR-43' };

interface Work { readonly demand: { readonly n: number; readonly characteristic: { readonly id: string; readonly kind: string; readonly gaugeKind?: string | null; readonly target?: number | null; readonly worstAccepted?: string; readonly entry?: { readonly how: string; readonly dieMm?: number } } } }

/** An entry on target for every place of every characteristic that the open gate asks for. */
async function goodResults(caller: HttpCaller, at: { readonly subject: string; readonly gate: string }): Promise<readonly Command[]> {
  const { state } = (await caller.get(`/api/travellers/${at.subject.replace(':', '/')}`)).body as { readonly state: { readonly gates: readonly { readonly work: readonly Work[] }[] } };
  return (state.gates[0]?.work ?? []).flatMap(({ demand: { n, characteristic } }) => Array.from({ length: n }, (_, index): Command => {
    const { id, kind, entry, target, worstAccepted = '', gaugeKind } = characteristic;
    const gauge = typeof gaugeKind === 'string' ? { gauge: gaugeOf[gaugeKind] ?? '' } : {};
    const reading = { type: 'takeReading', ...at, characteristic: id, ordinal: index + 1, ...gauge } as const;
    if (kind === 'confirmed') return { ...reading, value: true };
    if (kind === 'graded') return { ...reading, value: worstAccepted };
    return entry?.how === 'shrinkage' ? { ...reading, value: null, inputs: { sinteredMm: 20.5 } } : { ...reading, value: target ?? 0 };
  }));
}
