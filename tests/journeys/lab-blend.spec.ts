import { expect, someone, test } from './plant.ts';
import type { Story } from './plant.ts';
import { fillIn, pressPin } from './keypad.ts';

/** Two released batches of Demo fine 8, 12 barrels of 100 kg each. */
function twoBatches({ floor, gate }: Story): void {
  for (const [batch, raw] of [['P26-910', 'R26-710'], ['P26-911', 'R26-711']] as const) {
    floor.give(someone('L-201'), 'Lab', { type: 'openBatch', batch, grade: 'DEMO-F8', barrels: 12, kgPerBarrel: 100, rawLots: [{ rawLot: raw, material: 'Tungsten carbide', kg: 1200 }] });
    gate('L-201', `batch:${batch}`, 'powder-lab');
    floor.give(someone('L-201'), 'Lab', { type: 'releaseBatch', batch });
  }
}

test('the lab blends two batches with live weights; the press, the trace and a hold on a part know of it', async ({ startPlant }) => {
  const plant = await startPlant(twoBatches);
  const kiosk = await plant.openKiosk('L-201', 'Lab');
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Blend batches' }));
  await kiosk.tap(kiosk.page.getByRole('radio', { name: /^Demo fine 8/ }));
  await expect(kiosk.page.getByText('Enter what is taken of two batches or more.')).toBeVisible();
  await expect(kiosk.page.getByText('1,200 kg left')).toHaveCount(2);
  await fillIn(kiosk, 'kg of P26-910', '1300');
  await expect(kiosk.page.getByText('More than is left.')).toBeVisible();
  await kiosk.page.getByRole('textbox', { name: 'kg of P26-910' }).fill('300');
  await fillIn(kiosk, 'kg of P26-911', '100');
  const live = kiosk.page.getByRole('status').filter({ hasText: 'What the blend would give pressing' });
  await expect(live).toContainText('400 kg together');
  await expect(live.getByRole('row', { name: /Binder content/ })).toBeVisible();
  await kiosk.picture('lab-blend-1');
  await kiosk.accessibleInEveryTheme();
  const shown = await live.getByRole('row', { name: /Binder content/ }).textContent();
  await fillIn(kiosk, 'Number of the blend', 'P26-912');
  await fillIn(kiosk, 'Barrels it is filled into', '4');
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Blend', exact: true }));

  // Its own lab gate: what the plan for blends asks for.
  const demand = kiosk.page.locator('gh-demand');
  await expect(kiosk.page.getByText('Mixed for the full time of the mixing instruction', { exact: true })).toBeVisible();
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Yes, confirmed' }));
  for (const [name, value] of [['Moisture', '0.10'], ['Flow time', '32.0'], ['Apparent density', '3.05'], ['Granules 63 to 250 µm', '94.0'], ['Total carbon', '5.64']] as const) {
    for (const at of [1, 2, 3]) {
      await expect(kiosk.page.locator('gh-asked gh-keypad')).toContainText(`${name}, sample ${at}`);
      await kiosk.gauge(value);
    }
  }
  await expect(kiosk.page.locator('gh-verdict').getByRole('status')).toHaveText('Accepted: all 6 characteristics');
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Release the powder' }));
  const gives = kiosk.page.locator('gh-powder-gives');
  await expect(gives.getByRole('row', { name: /Binder content/ })).toContainText('weighted from the parts');
  expect(await gives.getByRole('row', { name: /Binder content/ }).textContent()).toBe(shown);
  await pressPin(kiosk, '2010');
  await expect(demand).toContainText('Released to the presses');
  await kiosk.page.goto('/traveller/batch/P26-912');
  await expect(kiosk.page.getByText('P26-910 (300 kg), P26-911 (100 kg)')).toBeVisible();
  await expect(gives.getByRole('row', { name: /CNMG 12 04 08/ })).toBeVisible();
  await kiosk.picture('lab-blend-2');
  await kiosk.accessibleInEveryTheme();

  const press = await plant.openKiosk('I-301', 'Press 2', { portrait: true });
  await press.tap(press.page.getByRole('button', { name: 'Open a lot' }));
  await press.tap(press.page.getByRole('radio', { name: /^CNMG 12 04 08/ }));
  await press.tap(press.page.getByRole('radio', { name: /^P26-912/ }));
  await fillIn(press, 'Number of the lot', 'L26-0912');
  await fillIn(press, 'Pieces to be pressed', '480');
  await press.tap(press.page.getByRole('button', { name: 'Open the lot' }));
  await expect(press.page.locator('gh-demand')).toContainText('P26-912 · green height');
  await press.tap(press.page.getByRole('button', { name: 'How?' }));
  await expect(press.page.locator('gh-why-sheet')).toContainText('P26-910, 300 kg');
  await expect(press.page.locator('gh-why-sheet')).toContainText('weighted by mass from the parts');
  await press.picture('lab-blend-3');
  await press.accessibleInEveryTheme();
  await press.tap(press.page.getByRole('dialog').getByRole('button', { name: 'Close' }));

  // Traced both ways: up from the lot to both raw lots, down from a part to the lot.
  await kiosk.page.goto('/trace/lot/L26-0912');
  for (const id of ['P26-912', 'P26-910', 'P26-911', 'R26-710', 'R26-711']) await expect(kiosk.page.locator('gh-ladder').getByText(id, { exact: true })).toBeVisible();
  await kiosk.picture('lab-blend-4');
  await kiosk.accessibleInEveryTheme();
  await kiosk.page.goto('/trace/raw/R26-711');
  await expect(kiosk.page.locator('gh-ladder').getByText('L26-0912', { exact: true })).toBeVisible();

  // A hold on a part reaches the lot pressed from the blend.
  await kiosk.page.goto('/traveller/batch/P26-911');
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Hold' }));
  await fillIn(kiosk, 'Why', 'Barrel 4 was open overnight');
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Put on hold' }));
  await expect(demand).toContainText('On hold');
  const reply = await press.page.request.post('/api/commands', { data: { clientId: 'journey-held-part', bench: 'Press 2', command: { type: 'openLot', lot: 'L26-0913', product: 'CNMG-D1', batch: 'P26-912', quantity: 480, trayCapacity: 60 } } });
  expect(await reply.json()).toMatchObject({ ok: false, refusal: { code: 'upstreamIsHeld', upstream: 'P26-911' } });
});

test('more than is left and a mass finer than a gram are said at the field and refused at the door', async ({ startPlant }) => {
  const plant = await startPlant(twoBatches);
  const kiosk = await plant.openKiosk('L-201', 'Lab', { portrait: true });
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Blend batches' }));
  await kiosk.tap(kiosk.page.getByRole('radio', { name: /^Demo fine 8/ }));
  await fillIn(kiosk, 'kg of P26-910', '10.0005');
  await expect(kiosk.page.getByText('A mass above 0, to the gram.')).toBeVisible();
  await kiosk.page.getByRole('textbox', { name: 'kg of P26-910' }).fill('1200');
  await fillIn(kiosk, 'kg of P26-911', '1201');
  await fillIn(kiosk, 'Number of the blend', 'P26-913');
  await fillIn(kiosk, 'Barrels it is filled into', '24');
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Blend', exact: true }));
  await expect(kiosk.page.getByText('1,201 kg of P26-911 wanted; 1,200 kg are left.')).toBeVisible();
  await kiosk.picture('lab-blend-5');
  await kiosk.accessibleInEveryTheme();
});
