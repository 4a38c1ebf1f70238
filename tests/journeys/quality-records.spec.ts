import { readFileSync } from 'node:fs';
import { EQUIPMENT, PROGRAMMES } from '../../demo-data/charge-records.ts';
import { gaugesOn, GRADES, LAYERS, PRODUCTS } from '../../demo-data/plant-records.ts';
import { PLANS } from '../../demo-data/plans.ts';
import { RECORDS_FORM, type RecordsFile } from '../../shared/wire/records-file.ts';
import { fillIn, pressPin } from './keypad.ts';
import { expect, test } from './plant.ts';
import type { Kiosk } from './plant.ts';

const button = ({ page }: Kiosk, name: string | RegExp) => page.getByRole('button', { name });
const link = ({ page }: Kiosk, name: string | RegExp) => page.getByRole('link', { name });
const records = (): RecordsFile => ({ form: RECORDS_FORM, plans: PLANS, grades: GRADES, layers: LAYERS, products: PRODUCTS, gauges: gaugesOn(new Date().toISOString().slice(0, 10)), equipment: EQUIPMENT, programmes: PROGRAMMES });
const asFile = (file: RecordsFile) => ({ name: 'records.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(file)) });

async function enrol(kiosk: Kiosk, badge: string, name: string, role: string, pin: string): Promise<void> {
  await kiosk.page.goto('/keeper/people?new');
  await fillIn(kiosk, 'Badge', badge);
  await fillIn(kiosk, 'Name', name);
  await kiosk.tap(kiosk.page.getByRole('checkbox', { name: role }));
  for (const [pad, enter] of [['New PIN', 'Next'], ['New PIN once more', 'Set it']] as const) {
    const group = kiosk.page.getByRole('group', { name: pad, exact: true });
    for (const digit of pin) await kiosk.tap(group.getByRole('button', { name: digit, exact: true }));
    await kiosk.tap(group.getByRole('button', { name: enter, exact: true }));
  }
  await expect(kiosk.page.getByText(`${name} is enrolled and can sign on.`)).toBeVisible();
}
async function signOn(kiosk: Kiosk, bench: string, badge: string, pin: string): Promise<void> {
  await kiosk.tap(button(kiosk, bench));
  await kiosk.type(badge);
  await kiosk.press('Enter');
  await expect(kiosk.page.getByRole('group', { name: `PIN of ${badge}` })).toBeVisible();
  await pressPin(kiosk, pin, 'Sign on');
}
async function approve(kiosk: Kiosk, plan: string, pin: string): Promise<void> {
  await kiosk.page.goto(`/plans/plan/${plan}`);
  await kiosk.tap(button(kiosk, 'Approve this version'));
  await pressPin(kiosk, pin);
}

test('a plant that starts empty gets its records from a file, two engineers approve a plan, and the lab opens a batch', async ({ startPlant }) => {
  const plant = await startPlant(null);
  const keeper = await plant.openKiosk('', '', { signOn: false });
  for (const [label, text] of [['Name of the plant', 'Invented plant of a test'], ['Country, two letters', 'XX'], ['Address, as it stands on certificates', '2 Invented Way'], ['Name', 'Kest Arden'], ['Badge', 'K-1'], ['PIN, 4 to 8 digits', '4711'], ['The same PIN again', '4711']] as const) await fillIn(keeper, label, text);
  await keeper.tap(button(keeper, 'Open the plant'));
  await signOn(keeper, 'Office', 'K-1', '4711');
  await expect(keeper.page.getByRole('heading', { name: 'Keeper' })).toBeVisible();
  await enrol(keeper, 'Q-1', 'Ida Marlow', 'Quality engineer', '1111');
  const first = await plant.openKiosk('', '', { signOn: false });
  await signOn(first, 'Quality desk', 'Q-1', '1111');
  const steps = first.page.getByRole('region', { name: 'First steps of a new plant' });
  await expect(steps.getByRole('listitem').first()).toContainText(/next.*two quality engineers among them/);
  await first.accessibleInEveryTheme();
  await first.picture('first-steps-bench');
  await enrol(keeper, 'Q-2', 'Teo Lindqvane', 'Quality engineer', '2222');
  await enrol(keeper, 'L-1', 'Tamsin Vire', 'Lab technician', '3333');

  await first.tap(link(first, 'Plans'));
  await expect(steps.getByRole('listitem').nth(1)).toContainText(/next.*loads plans/);
  await first.accessible();
  await first.picture('first-steps-plans');
  await first.tap(link(first, 'Catalogue'));
  await first.tap(link(first, 'Load records from a file'));
  const file = first.page.getByLabel('Records file');
  await file.setInputFiles({ name: 'other.json', mimeType: 'application/json', buffer: Buffer.from('{"form":"another"}') });
  await expect(first.page.getByRole('alert')).toContainText('This is no records file');
  await first.accessible();
  // A file with one product whose grade is nowhere, and one plan that could not be worked.
  const [route, ...plans] = [...PLANS].reverse();
  const [product, ...products] = PRODUCTS;
  if (route === undefined || product === undefined) throw new Error('records are needed');
  await file.setInputFiles(asFile({ ...records(), plans: [...plans.reverse(), { ...route, gates: [] }], products: [{ ...product, grade: 'NO-GRADE' }, ...products] }));
  await expect(first.page.getByRole('row', { name: /CNMG-D1 .*Not allowed.*grade NO-GRADE, which is neither here nor in the file/ })).toBeVisible();
  await first.tap(button(first, `Load ${PLANS.length + GRADES.length + LAYERS.length + products.length + records().gauges.length + EQUIPMENT.length + PROGRAMMES.length} records`));
  const refused = first.page.getByRole('row', { name: new RegExp(`${route.id} .*Refused.*a route has at least one gate`) });
  await expect(refused).toBeVisible();
  const without = products.find(({ plan }) => plan === route.id);
  await expect(first.page.getByRole('row', { name: new RegExp(`product ${without?.id} .*Refused`) })).toContainText(route.id);
  await expect(first.page.getByText(`Loaded: ${PLANS.length + GRADES.length + LAYERS.length + products.length + records().gauges.length + EQUIPMENT.length + PROGRAMMES.length - 2} records.`)).toBeVisible();
  await expect(first.page.getByText('Refused: 2 records; the table says why.')).toBeVisible();
  await first.accessibleInEveryTheme();
  await first.picture('records-refused');
  await file.setInputFiles(asFile(records()));
  await expect(first.page.getByRole('row', { name: /CNMG-D1 .*New/ })).toBeVisible();
  await expect(first.page.getByRole('row', { name: /DEMO-F8 .*Same as here, left out/ })).toBeVisible();
  await first.picture('records-load');
  await first.offline(true);
  await first.tap(button(first, 'Load 3 records'));
  await expect(first.page.getByText('Loaded: 0 records. Loading has stopped.')).toBeVisible();
  await first.accessible();
  await first.offline(false);
  await expect(first.page.getByText('Connected', { exact: true })).toBeVisible();
  await first.tap(button(first, 'Load 3 records'));
  await expect(first.page.getByText('There is nothing in this file to load.')).toBeVisible();
  await expect(first.page.getByRole('row', { name: /CNMG-D1 .*Loaded/ })).toBeVisible();
  await first.accessible();

  await approve(first, 'POWDER-F8', '1111');
  await expect(first.page.getByText('You have approved this version; a second engineer is needed.')).toBeVisible();
  const second = await plant.openKiosk('', '', { signOn: false });
  await signOn(second, 'Quality desk', 'Q-2', '2222');
  await expect(second.page.getByRole('region', { name: 'First steps of a new plant' }).getByRole('listitem').nth(2)).toContainText(/next.*approve each plan/);
  await approve(second, 'POWDER-F8', '2222');
  await expect(second.page.getByText('Version 1: In force')).toBeVisible();
  await second.page.goto('/bench');
  await expect(second.page.getByText('Nothing waits at this bench.')).toBeVisible();
  await expect(second.page.getByRole('heading', { name: 'First steps of a new plant' })).toBeHidden();

  await second.page.goto('/plans/catalogue');
  const saved = second.page.waitForEvent('download');
  await second.tap(button(second, 'Save these records as a file'));
  const text = readFileSync(await (await saved).path(), 'utf8');
  expect(JSON.parse(text)).toEqual({ ...records(), plans: PLANS.filter(({ id }) => id === 'POWDER-F8'), products: [...records().products].sort((one, other) => one.id.localeCompare(other.id)), gauges: expect.arrayContaining([...records().gauges]), equipment: [...EQUIPMENT].sort((one, other) => one.id.localeCompare(other.id)), programmes: PROGRAMMES });
  await second.accessible();

  const lab = await plant.openKiosk('', '', { signOn: false });
  await signOn(lab, 'Lab', 'L-1', '3333');
  await lab.tap(button(lab, 'Open a powder batch'));
  await lab.tap(lab.page.getByRole('radio', { name: /Demo fine 8/ }));
  for (const [label, typed] of [['Number', 'P26-001'], ['Barrels', '6'], ['kg in each barrel', '250'], ['Raw lot', 'R26-001'], ['Material', 'WC'], ['kg', '1500']] as const) await fillIn(lab, label, typed);
  await lab.tap(button(lab, 'Open the batch'));
  await expect(lab.page.getByRole('heading', { name: /P26-001/ })).toBeVisible();
});

test('an engineer defines a grade, a coating and a product by hand, and changes one', async ({ startPlant }) => {
  const plant = await startPlant();
  const engineer = await plant.openKiosk('Q-401', 'Quality desk');
  const choose = async (group: string, option: RegExp) => engineer.tap(engineer.page.getByRole('group', { name: group }).getByRole('radio', { name: option }));
  await engineer.page.goto('/plans/catalogue');
  await engineer.tap(link(engineer, 'Define a grade'));
  await fillIn(engineer, 'Number', 'hand-9');
  await fillIn(engineer, 'Name', 'By hand 9');
  for (const [at, share] of ['91', '9'].entries()) {
    await engineer.tap(engineer.page.getByRole('group', { name: `Component ${at + 1}` }).getByRole('textbox', { name: 'Share' }));
    await engineer.type(share);
  }
  await engineer.page.getByLabel('Powder plan').selectOption('POWDER-T10');
  await engineer.page.getByLabel('Furnace plan').selectOption('FURNACE-T10');
  await engineer.tap(button(engineer, 'Save it'));
  await expect(engineer.page.getByText('HAND-9 is saved.')).toBeVisible();

  await engineer.page.goto('/plans/catalogue/layer?new');
  await fillIn(engineer, 'Number', 'HAND-L');
  await fillIn(engineer, 'Name', 'By hand, one layer');
  await fillIn(engineer, 'Layers', 'TiAlN 2.3');
  await engineer.tap(button(engineer, 'Save it'));
  await expect(engineer.page.getByText('Each line is a name and two thicknesses in µm, or - for none.')).toBeVisible();
  await engineer.accessibleInEveryTheme();
  await engineer.page.getByRole('textbox', { name: 'Layers', exact: true }).fill('TiAlN 2.3 3.7');
  await choose('Coating plan', /COATING-PVD/);
  await engineer.tap(button(engineer, 'Save it'));
  await expect(engineer.page.getByText('HAND-L is saved.')).toBeVisible();

  await engineer.page.goto('/plans/catalogue/product?new');
  for (const [label, text] of [['Number', 'HAND-P'], ['Designation', 'CNMG 12 04 08'], ['Name', 'By hand insert'], ['Item code', 'CNMG-HAND'], ['Marking', 'CNMG HAND'], ['Pieces a box', '10'], ['Sintered volume', '661'], ['Thickness s, sintered', '4.76']] as const) await fillIn(engineer, label, text);
  await choose('Grade', /HAND-9/);
  await choose('Coating', /HAND-L/);
  await choose('Plan', /ROUTE-CNMG/);
  await engineer.accessible();
  await engineer.picture('define-product');
  await engineer.tap(button(engineer, 'Save it'));
  await expect(engineer.page.getByText('HAND-P is saved.')).toBeVisible();

  await engineer.tap(link(engineer, 'The catalogue'));
  await engineer.tap(link(engineer, 'HAND-P'));
  await expect(engineer.page.getByRole('textbox', { name: 'Number', exact: true })).toHaveValue('HAND-P');
  await choose('Coating', /^uncoated/);
  await engineer.tap(button(engineer, 'Save it'));
  await expect(engineer.page.getByText('HAND-P is saved.')).toBeVisible();
  const { state } = await (await engineer.page.request.get('/api/states?stream=product:HAND-P')).json();
  expect(state.card).toEqual({ id: 'HAND-P', designation: 'CNMG 12 04 08', name: 'By hand insert', itemCode: 'CNMG-HAND', grade: 'HAND-9', layer: null, marking: 'CNMG HAND', piecesPerBox: 10, plan: 'ROUTE-CNMG', sinteredVolumeMm3: 661, thicknessMm: 4.76 });
});
