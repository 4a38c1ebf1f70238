import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { expect, it } from 'vitest';
import { PLANS } from '../../../demo-data/plans.ts';
import { planCsv, PLAN_CSV_COLUMNS, planSheetPdf, standingOf, type PlanSheetData } from '../../../server/documents/plan-sheet/index.ts';
import type { Characteristic, InspectionPlan } from '../../../shared/traveller/index.ts';

const route = PLANS.find(({ id }) => id === 'ROUTE-CNMG');
if (route === undefined) throw new Error('the invented plant has this route');

const points = { p1Percent: 1, producerRisk: 0.05, p2Percent: 6, consumerRisk: 0.1 };
const chip = [{ code: 'CH', name: 'Chip', class: 'major' as const }];
const counted = (id: string, sampling: Extract<Characteristic, { kind: 'counted' }>['sampling']): Characteristic => ({ kind: 'counted', id, name: id, method: 'eye', destructive: false, kinds: chip, sampling });
const everyRule: InspectionPlan = { ...route, gates: route.gates.map((gate) => (gate.id !== 'final-visual' ? gate : { ...gate, characteristics: [
  counted('double', { rule: 'attributes', switching: 'MIL-STD-105E', level: 'II', aqlPercent: { major: 1.5 }, samples: 'double', skipLot: { clearance: 10, oneIn: 4 } }),
  counted('multiple', { rule: 'attributes', switching: 'ISO 2859-1', level: 'II', aqlPercent: { major: 1.5 }, samples: 'multiple' }), counted('limiting', { rule: 'limitingQuality', lqPercent: { major: 5 }, consumerRisk: 0.1 }),
  counted('zero', { rule: 'zeroAcceptance', lqPercent: { major: 5 }, consumerRisk: 0.1 }), counted('points', { rule: 'twoPoint', samples: 'double', points: { major: points } }), counted('sequential', { rule: 'sequential', points: { major: points } }),
] })) };

const data = (more: Partial<PlanSheetData> = {}): PlanSheetData => ({
  plant: 'Invented plant', demo: true, language: 'en', plan: everyRule, planVersion: 2, standing: 'draft', why: '=cmd|x, a reason', draftedBy: 'Ida Marlow', draftedAt: '2026-11-12T08:00:00Z',
  approvals: [{ name: 'Ida Marlow', badge: 'Q-401', at: '2026-11-12T09:00:00Z' }], lotSize: 1000, tables: [], cautions: [], printedAt: '2026-11-12T10:00:00Z', ...more,
});

async function pagesOf(bytes: Buffer): Promise<readonly string[]> {
  const document = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const pages = await Promise.all(Array.from({ length: document.numPages }, async (_, at) => (await (await document.getPage(at + 1)).getTextContent()).items.map((item) => ('str' in item ? item.str : '')).join(' ')));
  await document.destroy();
  return pages.map((page) => page.replaceAll(/\s+/g, ' '));
}

it('prints every gate and characteristic of a version with its plans, its signatures and the page of pages', async () => {
  const pages = await pagesOf(await planSheetPdf(data()));
  const text = pages.join(' ');
  for (const gate of everyRule.gates) {
    expect(text).toContain(gate.name);
    for (const { name } of gate.characteristics) expect(text).toContain(name);
  }
  // J, AQL 1.5, double, normal: MIL-STD-105E Table III-A (from memory), as docs/methods/attributes.md states it.
  expect(text).toContain('n 50 Ac 1 Re 4');
  expect(text).toContain('Ida Marlow (Q-401)');
  pages.forEach((page, at) => expect(page).toContain(`Page ${at + 1} of ${pages.length}`));
});

it('marks a version that is not in force on every page, and one in force on none', async () => {
  for (const page of await pagesOf(await planSheetPdf(data()))) expect(page).toContain('NOT IN FORCE');
  for (const page of await pagesOf(await planSheetPdf(data({ standing: 'inForce' })))) expect(page).not.toContain('NOT IN FORCE');
});

it.each([
  { inForce: true, approvals: 2, standing: 'inForce' }, { inForce: false, approvals: 0, standing: 'draft' }, { inForce: false, approvals: 1, standing: 'draft' }, { inForce: false, approvals: 2, standing: 'former' },
])('a version signed by $approvals, in force $inForce, stands as $standing', ({ inForce, approvals, standing }) => {
  const signature = { badge: 'Q-401', role: 'engineer' as const, name: 'Ida Marlow', at: '2026-11-12T09:00:00Z', meaning: 'planApprovedBy' as const };
  expect(standingOf({ inForce, approvals: Array.from({ length: approvals }, () => signature) })).toBe(standing);
});

it('makes the same file of the same data', async () => {
  expect((await planSheetPdf(data())).equals(await planSheetPdf(data()))).toBe(true);
});

it('writes one row a characteristic and class, every row as wide as the head', () => {
  const rows = readCsv(planCsv(data()));
  const [head = [], ...lines] = rows;
  expect(head).toEqual(PLAN_CSV_COLUMNS);
  for (const line of lines) expect(line).toHaveLength(head.length);
  const column = (name: string) => head.indexOf(name);
  const found = lines.map((line) => `${line[column('gate')]}/${line[column('characteristic')]}/${line[column('class')]}`);
  expect(new Set(found).size).toBe(found.length);
  const double = lines.find((line) => line[column('characteristic')] === 'double');
  // MIL-STD-105E Table I: 1000 pieces, level II, letter J. Table III-A, J, AQL 1.5 (from memory): 50, 1/4; 50, 4/5.
  expect([double?.[column('normal_letter')], double?.[column('normal_samples')], double?.[column('normal_n')]]).toEqual(['J', '50:1/4;50:4/5', '100']);
  const sequential = lines.find((line) => line[column('characteristic')] === 'sequential');
  expect([sequential?.[column('p1_percent')], sequential?.[column('consumer_risk')], sequential?.[column('tightened_n')]]).toEqual(['1', '0.1', '']);
});

it('keeps a text that a spreadsheet would run as a formula a text', () => {
  const csv = planCsv(data({ plan: { ...everyRule, name: '=HYPERLINK("x"),1' } }));
  expect(csv.split('\r\n')[1]).toContain(`"'=HYPERLINK(""x""),1"`);
});

/** RFC 4180: fields in quotation marks hold commas, line ends and doubled quotation marks. */
function readCsv(text: string): string[][] {
  const rows: string[][] = [[]];
  for (const [, quoted, bare = '', end] of text.matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/g)) {
    rows.at(-1)?.push(quoted === undefined ? bare : quoted.replaceAll('""', '"'));
    if (end !== ',') rows.push([]);
  }
  return rows.slice(0, -1);
}
