import { readCode } from '../server/documents/read-code.ts';
import { boxesOf, lotsWaitingFor, threadOf } from './lot-stories.ts';
import { expect, someone, test } from './plant.ts';
import type { Kiosk } from './plant.ts';

const button = ({ page }: Kiosk, name: string | RegExp) => page.getByRole('button', { name });
const sheet = ({ page }: Kiosk) => page.locator('gh-sheet[open]');

/** A printer stands at this kiosk: what the browser would print is counted, for a headless one has no paper. */
async function withPrinter(kiosk: Kiosk): Promise<() => Promise<number>> {
  await kiosk.page.addInitScript(() => {
    const printed = { labels: 0 };
    Object.assign(window.top ?? window, { printed: (window.top as unknown as { printed?: unknown } | null)?.printed ?? printed });
    window.print = () => {
      (window.top as unknown as { printed: { labels: number } }).printed.labels += 1;
      window.dispatchEvent(new Event('afterprint'));
    };
  });
  await kiosk.page.reload();
  return () => kiosk.page.evaluate(() => (window as unknown as { printed: { labels: number } }).printed.labels);
}

/** The text of a box's label as the picture for the printer shows it, read by a decoder that shares no code with ours. */
async function labelCode({ page }: Kiosk, lot: string, box: string): Promise<string> {
  const reply = await page.request.get(`/api/lots/${lot}/boxes/${box}/label.png?size=100x50`);
  expect([reply.status(), reply.headers()['content-type']]).toEqual([200, 'image/png']);
  return readCode(await reply.body(), 'DataMatrix');
}

test('a box of ten is packed, its label previewed, printed, read back from the picture, and scanned out', async ({ startPlant }) => {
  const plant = await startPlant((story) => lotsWaitingFor(story, 'packing', [{ id: 'L26-0551' }]));
  const packer = await plant.openKiosk('P-601', 'Packing');
  const second = await plant.openKiosk('I-303', 'Packing', { portrait: true });
  const labelsPrinted = await withPrinter(packer);
  await second.page.goto('/packing/L26-0551');
  const row = packer.page.getByRole('link', { name: /L26-0551/ });
  await expect(row).toBeVisible();
  await packer.accessible();
  await packer.picture('packing-list');
  packer.countFromHere();
  await packer.tap(row);
  await packer.tap(button(packer, 'Pack a box of 10'));
  await expect(packer.page.getByRole('heading', { name: /^Box L26-0551-001, 10 pieces/ })).toBeVisible();
  await expect(packer.page.getByRole('img', { name: /^Preview of the label of box L26-0551-001/ })).toBeVisible();
  await expect.poll(() => packer.page.getByRole('img', { name: /^Preview/ }).evaluate((picture: HTMLImageElement) => picture.complete && picture.naturalWidth > 0)).toBe(true);
  await expect(second.page.getByRole('heading', { name: /^Box L26-0551-001, 10 pieces/ })).toBeVisible();
  await packer.accessible();
  await packer.picture('packing');
  await packer.tap(button(packer, 'Print the label'));
  expect(packer.touches).toBe(3);
  await expect(packer.page.getByText('Stick it on and scan it')).toBeVisible();
  await expect.poll(labelsPrinted).toBe(1);
  await expect(packer.page.getByRole('img', { name: 'Label of box L26-0551-001, copy 1' })).toBeVisible();
  const code = await labelCode(packer, 'L26-0551', 'L26-0551-001');
  expect(code.startsWith('[)>\x1e06\x1d')).toBe(true);
  await packer.scan(code);
  await expect(packer.page.getByText('Box L26-0551-001: the label says what is in the journal.')).toBeVisible();
  await expect(packer.page.getByText('Label read back. This box is ready to ship.')).toBeVisible();
  expect(packer.touches).toBe(3);
  await packer.accessible();
  await packer.picture('packing-read-back');

  await packer.tap(packer.page.getByRole('link', { name: 'Ship boxes' }));
  for (const [field, text] of [['Shipment', 'S26-900'], ['Order', 'D-0551'], ['Consignee', 'Invented Valve Works']] as const) {
    await packer.tap(packer.page.getByRole('combobox', { name: field }).or(packer.page.getByRole('textbox', { name: field })));
    await packer.type(text);
  }
  await packer.page.getByRole('heading', { name: 'Ship boxes' }).click();
  await packer.scan(code);
  await expect(packer.page.getByText('Box L26-0551-001 is out with shipment S26-900.')).toBeVisible();
  await packer.accessible();
  await packer.picture('shipping');
  const thread = (await threadOf(packer, 'L26-0551')).map(({ body }) => body.type);
  expect(thread.slice(-4)).toEqual(['boxPacked', 'labelPrinted', 'labelRead', 'boxShipped']);
});

test('a box is packed, printed and read back with the keyboard and the scanner alone', async ({ startPlant }) => {
  const plant = await startPlant((story) => lotsWaitingFor(story, 'packing', [{ id: 'L26-0551' }]));
  const packer = await plant.openKiosk('P-601', 'Packing', { portrait: true });
  await withPrinter(packer);
  const row = packer.page.getByRole('link', { name: /L26-0551/ });
  await expect(row).toBeVisible();
  packer.countFromHere();
  await packer.reach(row);
  await packer.press('Enter');
  await expect(button(packer, 'Pack a box of 10')).toBeVisible();
  await packer.reach(button(packer, 'Pack a box of 10'));
  await packer.press('Enter');
  await expect(button(packer, 'Print the label')).toBeVisible();
  await packer.reach(button(packer, 'Print the label'));
  await packer.press('Enter');
  await expect(packer.page.getByText('Stick it on and scan it')).toBeVisible();
  await packer.scan(await labelCode(packer, 'L26-0551', 'L26-0551-001'));
  await expect(packer.page.getByText('Box L26-0551-001: the label says what is in the journal.')).toBeVisible();
  expect(packer.touches).toBe(0);
  expect(packer.keystrokes).toBeLessThanOrEqual(13);
  await packer.accessible();
  await packer.picture('packing-portrait');
});

test('a neighbour’s label is refused with words, and a reprint asks why and is marked as one', async ({ startPlant }) => {
  const plant = await startPlant((story) => {
    lotsWaitingFor(story, 'packing', [{ id: 'L26-0551' }, { id: 'L26-0552' }]);
    boxesOf(story, 'L26-0552', 1);
    const { floor } = story;
    floor.give(someone('P-601'), 'Packing', { type: 'packBox', lot: 'L26-0551', pieces: 10 });
    floor.give(someone('P-601'), 'Packing', { type: 'printLabel', lot: 'L26-0551', box: 'L26-0551-001' });
  });
  const packer = await plant.openKiosk('P-601', 'Packing');
  const labelsPrinted = await withPrinter(packer);
  await packer.page.goto('/packing/L26-0551');
  await expect(packer.page.getByText('Stick it on and scan it')).toBeVisible();
  await packer.scan(await labelCode(packer, 'L26-0552', 'L26-0552-001'));
  await expect(packer.page.getByText(/The label on this box is not that of L26-0551-001/)).toBeVisible();
  await packer.accessible();
  await packer.picture('packing-wrong-label');
  await packer.tap(button(packer, 'Print again'));
  await expect(sheet(packer)).toContainText('This will be copy 2. It is marked as a reprint; destroy the one before.');
  await packer.accessible();
  await packer.picture('packing-reprint');
  await packer.tap(sheet(packer).getByRole('button', { name: 'Print again' }));
  await expect(sheet(packer).getByText('Say why first.')).toBeVisible();
  await packer.tap(sheet(packer).getByRole('radio', { name: 'Label smudged or torn' }));
  await packer.tap(sheet(packer).getByRole('button', { name: 'Print again' }));
  await expect(packer.page.getByText('Printed, copy 2.')).toBeVisible();
  await expect.poll(labelsPrinted).toBe(1);
  const svg = await (await packer.page.request.get('/api/lots/L26-0551/boxes/L26-0551-001/label.svg?size=100x50')).text();
  expect(svg).toMatch(/reprint/i);
  const printed = (await threadOf(packer, 'L26-0551')).filter(({ body }) => body.type === 'labelPrinted');
  expect(printed.map(({ body }) => [body['copy'], body['reason']])).toEqual([[1, null], [2, 'Label smudged or torn']]);
});

test('the label of a held lot will not print and its box will not scan out', async ({ startPlant }) => {
  const plant = await startPlant((story) => {
    lotsWaitingFor(story, 'packing', [{ id: 'L26-0551' }]);
    boxesOf(story, 'L26-0551', 1);
    story.floor.give(someone('P-601'), 'Packing', { type: 'packBox', lot: 'L26-0551', pieces: 10 });
  });
  const packer = await plant.openKiosk('P-601', 'Packing');
  const engineer = await plant.openKiosk('Q-401', 'Office');
  const code = await labelCode(packer, 'L26-0551', 'L26-0551-001');
  await packer.page.goto('/packing/L26-0551');
  await expect(button(packer, 'Print the label')).toBeVisible();
  await engineer.page.goto('/traveller/lot/L26-0551');
  await engineer.tap(button(engineer, 'Hold'));
  await engineer.tap(engineer.page.getByRole('textbox', { name: 'Why' }));
  await engineer.type('Purchaser reports a mixed tray');
  await engineer.tap(button(engineer, 'Put on hold'));
  await expect(packer.page.getByText('Do not pack')).toBeVisible();
  await expect(packer.page.getByText(/The lot is on hold: Purchaser reports a mixed tray\./)).toBeVisible();
  await packer.accessible();
  await packer.picture('packing-held');
  if (await button(packer, 'Print the label').isVisible()) {
    await packer.tap(button(packer, 'Print the label'));
    await expect(packer.page.getByText(/L26-0551 was released but is on hold/)).toBeVisible();
  }
  expect((await packer.page.request.get('/api/lots/L26-0551/boxes/L26-0551-001/label.png?size=100x50')).status()).toBe(409);
  await packer.page.goto('/packing?ship');
  for (const [field, text] of [['Shipment', 'S26-901'], ['Order', 'D-0551'], ['Consignee', 'Invented Valve Works']] as const) await packer.page.getByRole('combobox', { name: field }).or(packer.page.getByRole('textbox', { name: field })).fill(text);
  await packer.page.getByRole('heading', { name: 'Ship boxes' }).click();
  await packer.scan(code);
  await expect(packer.page.getByText('Keep this box here')).toBeVisible();
  await expect(packer.page.getByText(/L26-0551 was released but is on hold/)).toBeVisible();
  await packer.accessible();
  await packer.picture('shipping-held');
  const thread = (await threadOf(packer, 'L26-0551')).map(({ body }) => body.type);
  expect(thread).not.toContain('boxShipped');
  expect(thread.filter((type) => type === 'labelPrinted')).toHaveLength(1);
});
