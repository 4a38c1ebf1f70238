import { afterAll, beforeAll, expect, it } from 'vitest';
import { blindOrder } from '../../../shared/traveller/index.ts';
import type { Study } from '../../../shared/traveller/index.ts';
import type { StudyRow } from '../../../shared/wire/studies-view.ts';
import { FixturePlant, people } from '../fixture-plant.ts';
import { refusalIn } from '../http-caller.ts';

let plant: FixturePlant;
beforeAll(async () => {
  plant = await FixturePlant.open();
  await plant.give('lab', { type: 'registerGauge', gauge: { id: 'M-1', name: 'Micrometer 1', gaugeKind: 'micrometer', unit: 'mm', resolution: 0.001, expandedUncertainty: 0.002, least: 0, most: 25, calibrationDue: '2099-01-01', bench: null } });
  await plant.give('engineer', {
    type: 'openStudy', study: 'S26-0001', studyKind: 'crossed', gauge: 'M-1', characteristic: 'Thickness, centre', tolerance: 0.1, plausible: { least: 4, most: 6 },
    parts: ['=A', 'B', 'C'].map((label) => ({ label, reference: null })), people: [people.inspector.badge, people.second.badge], trials: 2,
  });
}, 60_000);
afterAll(() => plant.close());

const rows = async (): Promise<readonly StudyRow[]> => ((await (await plant.as('engineer')).get('/api/studies')).body as { rows: StudyRow[] }).rows;
async function study(): Promise<Study> {
  return ((await (await plant.as('engineer')).get('/api/states?stream=study:S26-0001')).body as { state: Study }).state;
}
async function paper(path: string, who: 'engineer' | 'inspector' = 'engineer'): Promise<{ status: number; bytes: Buffer; type: string }> {
  const { token } = await plant.as(who);
  const answer = await fetch(`${plant.server.url}${path}`, { headers: { authorization: `Bearer ${token}` } });
  return { status: answer.status, bytes: Buffer.from(await answer.arrayBuffer()), type: answer.headers.get('content-type') ?? '' };
}

it('lists a study as it goes, keeps its readings from those who measure, and gives both papers at its end', async () => {
  expect(await rows()).toMatchObject([{ id: 'S26-0001', standing: 'open', taken: 0, wanted: 12, percentOfStudy: null }]);
  expect((await paper('/api/studies/S26-0001/readings.csv', 'inspector')).status).toBe(403);
  for (const [at, who] of (['inspector', 'second'] as const).entries()) {
    for (const { part, trial } of blindOrder(await study(), people[who].badge)) await plant.give(who, { type: 'takeStudyReading', study: 'S26-0001', part, value: Number((4.7 + 0.02 * part + 0.001 * at + 0.001 * ((part + trial) % 2)).toFixed(3)) });
  }
  expect(await rows()).toMatchObject([{ taken: 12 }]);
  expect(refusalIn(await (await plant.as('engineer')).get('/api/studies/S26-0001/study.pdf')).code).toBe('studyNotWhole');
  await plant.give('engineer', { type: 'closeStudy', study: 'S26-0001', poolAbove: 0.25, confidence: 0.95 }, { signed: true });
  const [closed] = await rows();
  expect(closed).toMatchObject({ standing: 'closed', categories: expect.any(Number) });
  expect(closed?.percentOfStudy).toBeGreaterThan(0);

  const csv = await paper('/api/studies/S26-0001/readings.csv', 'inspector');
  const lines = csv.bytes.toString('utf8').replace('\uFEFF', '').split('\r\n');
  expect([csv.status, lines.length, lines[0]]).toEqual([200, 13, 'study,reading,part,reference,person,badge,trial,value,unit,corrected,at,bench']);
  // A label that a spreadsheet would run as a formula stays text.
  expect(lines.filter((line) => line.includes(",'=A,"))).toHaveLength(4);
  const pdf = await paper('/api/studies/S26-0001/study.pdf');
  expect([pdf.status, pdf.type, pdf.bytes.subarray(0, 5).toString()]).toEqual([200, 'application/pdf', '%PDF-']);
});

it('takes the spread into the gauge’s uncertainty, and the catalogue shows it', async () => {
  await plant.give('engineer', { type: 'setGaugeUncertainty', gauge: 'M-1', study: 'S26-0001' }, { signed: true });
  const found = (await study()).closed?.found;
  const s = found?.by === 'crossed' ? found.gaugeS : NaN;
  const { gauges } = (await (await plant.as('engineer')).get('/api/catalogue')).body as { gauges: { id: string; expandedUncertainty: number }[] };
  expect(gauges.find(({ id }) => id === 'M-1')?.expandedUncertainty).toBeCloseTo(2 * Math.sqrt(0.001 ** 2 + s ** 2), 12);
});

it('answers for a study that is not there with a refusal', async () => {
  for (const path of ['/api/studies/S26-9999/readings.csv', '/api/studies/S26-9999/study.pdf']) expect(refusalIn(await (await plant.as('engineer')).get(path))).toMatchObject({ code: 'notFound', what: 'study' });
});
