import { readFileSync } from 'node:fs';
import { tabTo } from './keypad.ts';
import { boxesOf, lotsWaitingFor } from './lot-stories.ts';
import { expect, someone, test } from './plant.ts';
import type { Kiosk, Story } from './plant.ts';

const button = ({ page }: Kiosk, name: string | RegExp) => page.getByRole('button', { name });
const rungs = ({ page }: Kiosk) => page.getByRole('list', { name: 'Trace' }).getByRole('listitem');
const rung = (kiosk: Kiosk, what: string | RegExp) => rungs(kiosk).filter({ hasText: what });
const traceThis = (kiosk: Kiosk, id: string) => kiosk.page.getByRole('link', { name: `Trace this: ${id}`, exact: true });

/** Two lots of one powder batch: eight boxes of the first in one shipment, two of the three boxes of the second in another. */
function shippedPlant(story: Story): void {
  lotsWaitingFor(story, 'packing', [{ id: 'L26-0581' }, { id: 'L26-0582', pieces: 480 }]);
  for (const [lot, boxes, shipped, shipment, consignee] of [['L26-0581', 8, 8, 'S26-771', 'Invented Valve Works'], ['L26-0582', 3, 2, 'S26-772', 'Invented Pump Works']] as const) {
    boxesOf(story, lot, boxes);
    for (const { serial } of story.floor.lot(lot).boxes.slice(0, shipped)) story.floor.give(someone('P-601'), 'Packing', { type: 'shipBox', lot, box: serial, shipment, order: `D-${lot.slice(4)}`, consignee });
  }
}

/** What stands on the whole line, as the desk counts it. */
async function expectCounts({ page }: Kiosk, counts: Readonly<Record<string, string>>): Promise<void> {
  for (const [what, count] of Object.entries(counts)) await expect(page.locator('dl > div').filter({ has: page.getByText(what, { exact: true }) }).locator('dd')).toHaveText(count);
}
async function put(kiosk: Kiosk, subject: string, why: string): Promise<void> {
  await kiosk.page.goto(`/traveller/${subject}`);
  await kiosk.tap(button(kiosk, 'Hold'));
  await kiosk.tap(kiosk.page.getByRole('textbox', { name: 'Why' }));
  await kiosk.type(why);
  await kiosk.tap(button(kiosk, 'Put on hold'));
  await expect(kiosk.page.getByRole('heading', { name: 'On hold', exact: true })).toBeVisible();
}

test('a lot is traced up to its raw material and down to its shipment, by touch', async ({ startPlant }) => {
  const plant = await startPlant(shippedPlant);
  const engineer = await plant.openKiosk('Q-401', 'Office');
  await engineer.tap(engineer.page.getByRole('link', { name: 'Trace', exact: true }));
  await expect(engineer.page.getByText('Nothing is being traced.')).toBeVisible();
  await engineer.accessibleInEveryTheme();
  await engineer.tap(engineer.page.getByRole('searchbox'));
  await engineer.type('L26-0582');
  await engineer.tap(button(engineer, 'Find'));
  await expect(engineer.page).toHaveURL(/\/trace\/lot\/L26-0582$/);
  await expectCounts(engineer, { 'Raw lots': '2', 'Powder batches': '1', Lots: '1', 'Furnace charges': '1', 'Coating charges': '1', Boxes: '3', Shipments: '1', 'On hold': '0' });
  // Raw material first, shipments last, and the lot between them.
  const line = ['R26-510', 'R26-611', 'P26-180', 'F26-901', 'C26-901', 'L26-0582', 'L26-0582-001', 'S26-772', 'L26-0582-002', 'L26-0582-003'];
  expect((await rungs(engineer).locator('.name > :last-child').allTextContents()).toSorted()).toEqual(line.toSorted());
  const at = async (id: string): Promise<number> => (await rungs(engineer).locator('.name > :last-child').allTextContents()).indexOf(id);
  for (const [before, after] of [['R26-510', 'P26-180'], ['P26-180', 'L26-0582'], ['F26-901', 'L26-0582'], ['C26-901', 'L26-0582'], ['L26-0582', 'L26-0582-001'], ['L26-0582-001', 'S26-772']] as const) expect(await at(before)).toBeLessThan(await at(after));
  await expect(rung(engineer, /R26-510/)).toContainText('Tungsten carbide');
  await expect(rung(engineer, /S26-772/)).toContainText('Invented Pump Works');
  await expect(engineer.page.locator('li[aria-current="true"]')).toContainText('L26-0582');
  await engineer.accessibleInEveryTheme();
  await engineer.picture('trace');
  await engineer.tap(traceThis(engineer, 'P26-180'));
  await expect(engineer.page).toHaveURL(/\/trace\/batch\/P26-180$/);
  await engineer.tap(traceThis(engineer, 'L26-0581'));
  await expect(engineer.page).toHaveURL(/\/trace\/lot\/L26-0581$/);
  await expect(rung(engineer, /S26-771/)).toContainText('Invented Valve Works');
  await engineer.tap(engineer.page.getByRole('link', { name: 'P26-180', exact: true }));
  await expect(engineer.page).toHaveURL(/\/traveller\/batch\/P26-180$/);
});

test('the same line is gone along without touching, and on an upright tablet', async ({ startPlant }) => {
  const plant = await startPlant(shippedPlant);
  const engineer = await plant.openKiosk('Q-401', 'Office', { portrait: true });
  await engineer.page.goto('/trace');
  await expect(engineer.page.getByText('Nothing is being traced.')).toBeVisible();
  await tabTo(engineer, /Lot, powder batch, charge/);
  await engineer.page.keyboard.type('l26-0582', { delay: 90 });
  await engineer.page.keyboard.press('Enter', { delay: 90 });
  await expect(engineer.page).toHaveURL(/\/trace\/lot\/L26-0582$/);
  await expect(rung(engineer, /S26-772/)).toBeVisible();
  await tabTo(engineer, 'Trace this: S26-772');
  await engineer.press('Enter');
  await expect(engineer.page).toHaveURL(/\/trace\/shipment\/S26-772$/);
  await expect(rung(engineer, 'traced from here')).toContainText(/shipped[\s\S]*Invented Pump Works/);
  await expectCounts(engineer, { Boxes: '2', Lots: '1', 'Powder batches': '1', 'Raw lots': '2' });
  await expect(engineer.page.getByText('Nothing has been made of it yet.')).toBeVisible();
  await tabTo(engineer, 'Trace this: R26-611');
  await engineer.press('Enter');
  await expect(engineer.page).toHaveURL(/\/trace\/raw\/R26-611$/);
  await expect(rung(engineer, 'traced from here')).toContainText('Cobalt');
  await expectCounts(engineer, { Lots: '2', Boxes: '11', Shipments: '2' });
  await expect(engineer.page.getByText('Nothing is recorded above it.')).toBeVisible();
  await tabTo(engineer, 'Show 8 boxes');
  await engineer.press('Enter');
  await expect(rung(engineer, /L26-0581-008/)).toBeVisible();
  await engineer.accessibleInEveryTheme();
  await engineer.picture('trace-portrait');
  expect(engineer.touches).toBe(0);
});

test('a scanned box leads to its powder batch, and the batch to every box and shipment', async ({ startPlant }) => {
  const plant = await startPlant(shippedPlant);
  const engineer = await plant.openKiosk('Q-401', 'Office');
  const { state } = (await (await engineer.page.request.get('/api/states?stream=lot:L26-0582')).json()) as { state: { boxes: readonly { payload: string }[] } };
  await engineer.page.goto('/trace');
  await expect(engineer.page.locator('gh-outbox-bar')).toContainText('Connected');
  await engineer.scan(state.boxes[1]?.payload ?? '');
  await engineer.tap(engineer.page.getByRole('link', { name: 'L26-0582-002', exact: true }));
  await expect(engineer.page).toHaveURL(/\/trace\/box\/L26-0582-002$/);
  await expectCounts(engineer, { 'Raw lots': '2', 'Powder batches': '1', Lots: '1', 'Furnace charges': '1', 'Coating charges': '1', Boxes: '1', Shipments: '1' });
  await expect(rung(engineer, 'traced from here')).toContainText('shipped');
  await engineer.accessible();
  await engineer.tap(traceThis(engineer, 'P26-180'));
  await expectCounts(engineer, { 'Raw lots': '2', 'Powder batches': '1', Lots: '2', Boxes: '11', Shipments: '2', 'On hold': '0' });
  await expect(rung(engineer, '8 boxes with 80 pieces of L26-0581')).toBeVisible();
  await engineer.accessible();
  await engineer.tap(button(engineer, 'Show 8 boxes'));
  for (const [lot, boxes] of [['L26-0581', 8], ['L26-0582', 3]] as const) {
    for (let box = 1; box <= boxes; box += 1) await expect(rung(engineer, `${lot}-00${box}`)).toContainText('10 pieces');
  }
  for (const shipment of ['S26-771', 'S26-772']) await expect(rung(engineer, shipment)).toHaveCount(1);
  await expect(rung(engineer, 'L26-0582-003')).toContainText('label read back');
  await expect(rung(engineer, 'L26-0582-002')).toContainText('shipped');
});

test('a batch put on hold shows at once on every trace that is open, and in the lab', async ({ startPlant }) => {
  const plant = await startPlant(shippedPlant);
  const looking = await plant.openKiosk('R-501', 'Office');
  await looking.page.goto('/trace/lot/L26-0582');
  await expectCounts(looking, { 'On hold': '0' });
  const lab = await plant.openKiosk('L-201', 'Lab');
  await lab.page.goto('/lab');
  const engineer = await plant.openKiosk('Q-401', 'Office');
  await put(engineer, 'batch/P26-180', 'Coercivity of a retained sample is low');
  await expect(rung(looking, 'P26-180')).toContainText('on hold');
  await expectCounts(looking, { 'On hold': '1' });
  await looking.accessibleInEveryTheme();
  await looking.picture('trace-held');
  await expect(lab.page.getByText('On hold').first()).toBeVisible();
  await lab.accessibleInEveryTheme();
  await lab.picture('lab-desk');
  await put(engineer, 'lot/L26-0581', 'Made of a batch on hold');
  await looking.page.goto('/trace/batch/P26-180');
  await expectCounts(looking, { 'On hold': '2', Lots: '2' });
  await expect(rung(looking, 'traced from here')).toContainText('on hold');
  await expect(looking.page.getByRole('listitem').filter({ has: traceThis(looking, 'L26-0581') })).toContainText('on hold');
});

test('the line is saved as CSV, one row a step', async ({ startPlant }) => {
  const plant = await startPlant(shippedPlant);
  const engineer = await plant.openKiosk('Q-401', 'Office');
  await engineer.page.goto('/trace/lot/L26-0582');
  const saved = engineer.page.waitForEvent('download');
  await engineer.tap(button(engineer, 'Save as CSV'));
  const download = await saved;
  expect(download.suggestedFilename()).toBe('trace-L26-0582.csv');
  const text = readFileSync(await download.path(), 'utf8');
  expect(text.startsWith('\ufeff')).toBe(true);
  // CRLF after every line, as RFC 4180 has it.
  expect(text.slice(1).split('\r\n')).toEqual([
    'Direction,Steps away,Kind,Number,Hangs on,Standing,Pieces,Detail',
    'up,1,powder batch,P26-180,L26-0582,done,,"Demo fine 8, 12 barrels"',
    'up,1,furnace charge,F26-901,L26-0582,done,1480,Demo fine 8',
    'up,1,coating charge,C26-901,L26-0582,done,1480,"Demo layer A (TiCN, Al2O3, TiN)"',
    'up,2,raw-material lot,R26-510,P26-180,,,Tungsten carbide',
    'up,2,raw-material lot,R26-611,P26-180,,,Cobalt',
    'here,0,lot,L26-0582,,released,450,',
    'down,1,box,L26-0582-001,L26-0582,shipped,10,',
    'down,1,box,L26-0582-002,L26-0582,shipped,10,',
    'down,1,box,L26-0582-003,L26-0582,label read back,10,',
    'down,2,shipment,S26-772,L26-0582-001,shipped,,Invented Pump Works',
    '',
  ]);
});
