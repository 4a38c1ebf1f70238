import { afterAll, beforeAll, expect, it, vi } from 'vitest';
import { EQUIPMENT, PROGRAMMES } from '../../../demo-data/charge-records.ts';
import { Floor } from '../../../demo-data/floor.ts';
import { KEEPER, PEOPLE } from '../../../demo-data/people.ts';
import { gaugesOn, GRADES, LAYERS, PLANT, PRODUCTS } from '../../../demo-data/plant-records.ts';
import { PLANS } from '../../../demo-data/plans.ts';
import { cardCommand, cardFault, CARD_FIELDS, readLayers, textsOf } from '../../../kiosk/plans/card-fields.ts';
import { recordsFileOf, standingsOf, type RecordsHere } from '../../../kiosk/plans/record-standing.ts';
import { commandSchema } from '../../../shared/wire/command-schema.ts';
import { commandsOf, readRecordsFile, RECORDS_FORM, type RecordsFile } from '../../../shared/wire/records-file.ts';

// The desk reads and writes figures in the page's language.
beforeAll(() => void vi.stubGlobal('document', { documentElement: { lang: 'en' } }));
afterAll(() => void vi.unstubAllGlobals());

const file: RecordsFile = { form: RECORDS_FORM, plans: PLANS, grades: GRADES, layers: LAYERS, products: PRODUCTS, gauges: gaugesOn('2026-11-25'), equipment: EQUIPMENT, programmes: PROGRAMMES };
const nothing: RecordsHere = { plans: [], grades: [], layers: [], products: [], gauges: [], equipment: [], programmes: [] };
const demo: RecordsHere = {
  plans: PLANS.map((plan) => ({ id: plan.id, inForce: plan, waiting: [] })), grades: GRADES, layers: LAYERS, products: PRODUCTS, gauges: file.gauges.map((gauge) => ({ ...gauge, withdrawn: null })), equipment: EQUIPMENT, programmes: PROGRAMMES,
};
const standings = (filed: RecordsFile, here: RecordsHere) => standingsOf(commandsOf(filed, 'test'), here).map(({ kind, id, standing }) => [`${kind}:${id}`, standing] as const);
const only = (part: Partial<RecordsFile>): RecordsFile => ({ form: RECORDS_FORM, plans: [], grades: [], layers: [], products: [], gauges: [], ...part });

it('enters plans first, then grades, coatings, products and gauges, so that each finds what it names', () => {
  const commands = commandsOf(file, 'First plans');
  expect([...new Set(commands.map(({ type }) => type))]).toEqual(['draftPlan', 'defineGrade', 'defineLayer', 'defineProduct', 'registerGauge', 'defineEquipment', 'defineProgramme']);
  expect(commands).toHaveLength(PLANS.length + GRADES.length + LAYERS.length + PRODUCTS.length + file.gauges.length + EQUIPMENT.length + PROGRAMMES.length);
  for (const command of commands) expect(commandSchema.safeParse(command).success, JSON.stringify(command)).toBe(true);
});

it('is taken whole by the rules of a plant that has people and nothing else', () => {
  const floor = new Floor('2026-11-25T06:00:00.000Z');
  floor.give(KEEPER, 'Office', { type: 'openPlant', plant: PLANT, keeper: KEEPER });
  for (const person of PEOPLE) floor.give(KEEPER, 'Office', { type: 'enrolPerson', ...person });
  const engineer = PEOPLE.find(({ roles }) => roles.includes('engineer'));
  if (engineer === undefined) throw new Error('an engineer is needed');
  for (const command of commandsOf(file, 'First plans')) floor.give(engineer, 'Quality desk', command);
  expect(floor.state('product:CNMG-D1')?.version).toBe(1);
});

it('leaves out what is the same here, in whatever order its fields stand', () => {
  const turned: RecordsFile = JSON.parse(JSON.stringify(file), (_, value: unknown) => (typeof value === 'object' && value !== null && !Array.isArray(value) ? Object.fromEntries(Object.entries(value).reverse()) : value));
  expect(new Set(standings(turned, demo).map(([, { is }]) => is))).toEqual(new Set(['same']));
  expect(new Set(standings(file, nothing).map(([, { is }]) => is))).toEqual(new Set(['new']));
});

it('leaves out a plan that waits for approval here as it stands in the file', () => {
  const [plan] = PLANS;
  if (plan === undefined) throw new Error('a plan is needed');
  const waits: RecordsHere = { ...nothing, plans: [{ id: plan.id, inForce: { ...plan, name: 'Former' }, waiting: [plan] }] };
  expect(standings(only({ plans: [plan] }), waits)).toEqual([[`plan:${plan.id}`, { is: 'same' }]]);
  expect(standings(only({ plans: [{ ...plan, name: 'Another' }] }), waits)).toEqual([[`plan:${plan.id}`, { is: 'newVersion' }]]);
});

it('bars what the rules would refuse: a gauge that is here, a record that stands twice, a product whose grade is nowhere', () => {
  const [gauge, other] = file.gauges;
  const [grade] = GRADES;
  const [product] = PRODUCTS;
  if (gauge === undefined || other === undefined || grade === undefined || product === undefined) throw new Error('records are needed');
  const withdrawn: RecordsHere = { ...demo, gauges: [{ ...gauge, withdrawn: 'dropped' }, { ...other, withdrawn: null }] };
  expect(standings(only({ gauges: [gauge, { ...other, calibrationDue: '2030-01-01' }] }), withdrawn).map(([, standing]) => standing)).toEqual([{ is: 'barred', why: 'gaugeIsHere' }, { is: 'barred', why: 'gaugeIsHere' }]);
  expect(standings(only({ grades: [grade, grade] }), nothing).map(([, standing]) => standing)).toEqual([{ is: 'new' }, { is: 'barred', why: 'twice' }]);
  expect(standings(only({ products: [product] }), { ...demo, grades: [] }).map(([, standing]) => standing)).toEqual([{ is: 'barred', why: 'lacks', what: 'grade', id: product.grade }]);
  expect(standings(only({ products: [{ ...product, layer: null }] }), { ...demo, layers: [] }).map(([, standing]) => standing)).toEqual([{ is: 'newVersion' }]);
});

it('saves what is in force and in use, and reads it back the same', () => {
  const [gauge, ...gauges] = demo.gauges;
  if (gauge === undefined) throw new Error('a gauge is needed');
  const here: RecordsHere = { ...demo, plans: [...demo.plans, { id: 'DRAFT', inForce: null, waiting: PLANS.slice(0, 1) }], gauges: [{ ...gauge, withdrawn: 'dropped' }, ...gauges] };
  expect(readRecordsFile(`\ufeff${JSON.stringify(recordsFileOf(here))}`)).toEqual({ ...file, gauges: file.gauges.slice(1) });
});

it.each([
  { text: '{', fault: { fault: 'notJson' } }, { text: 'null', fault: { fault: 'otherForm' } }, { text: '{"form":"gatehand-records-2"}', fault: { fault: 'otherForm' } },
  { text: JSON.stringify({ ...file, gauges: undefined }), fault: { fault: 'missingList', list: 'gauges' } }, { text: JSON.stringify({ ...file, people: [] }), fault: { fault: 'unknownList', list: 'people' } },
  { text: JSON.stringify(only({})).replace('"grades":[]', '"grades":[{"id":"A1","name":"A"},{"name":"B"}]'), fault: { fault: 'nameless', list: 'grades', place: 2 } },
])('says what is wrong with a file: $fault', ({ text, fault }) => {
  expect(readRecordsFile(text)).toEqual(fault);
});

it('defines by hand exactly the cards that are here', () => {
  for (const [kind, cards] of [['layer', LAYERS], ['product', PRODUCTS]] as const) for (const { id } of cards) {
    const texts = textsOf(kind, id, demo) ?? {};
    expect(CARD_FIELDS[kind].map((field) => cardFault(field, texts[field.name] ?? ''))).toEqual(CARD_FIELDS[kind].map(() => ''));
    expect(standingsOf([cardCommand(kind, texts)], demo).map(({ standing }) => standing), `${kind} ${id}`).toEqual([{ is: 'same' }]);
  }
});

it.each([
  { text: 'TiN 0.5 1.5\nTi(C,N) 5 -', read: [{ name: 'TiN', lowerUm: 0.5, upperUm: 1.5 }, { name: 'Ti(C,N)', lowerUm: 5, upperUm: null }] }, { text: ' Top layer 0,5 1,5 µm \n', read: [{ name: 'Top layer', lowerUm: 0.5, upperUm: 1.5 }] },
  { text: '', read: [] }, { text: 'TiN', read: null }, { text: 'TiN 1', read: null }, { text: 'TiN 0 1', read: null }, { text: 'TiN one two', read: null },
])('reads the layers "$text"', ({ text, read }) => {
  expect(readLayers(text)).toEqual(read);
});
