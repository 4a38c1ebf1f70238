import { fillIn } from './keypad.ts';
import { expect, test } from './plant.ts';
import type { Kiosk } from './plant.ts';

const button = ({ page }: Kiosk, name: string | RegExp) => page.getByRole('button', { name });

test('an overdue gauge is told, and fit again when its calibration is entered', async ({ startPlant }) => {
  const plant = await startPlant();
  const keeper = await plant.openKiosk('K-100', 'Office');
  await keeper.page.goto('/gauges');
  await expect(keeper.page.getByText('One gauge is overdue. Its readings do not count until it is calibrated.')).toBeVisible();
  await expect(keeper.page.getByRole('row', { name: /^MIC-12 overdue/ })).toBeVisible();
  await expect(keeper.page.getByRole('row', { name: /^OPT-31 due soon/ })).toBeVisible();
  await keeper.accessibleInEveryTheme();
  await keeper.picture('gauges');
  await keeper.tap(keeper.page.getByRole('link', { name: 'MIC-12' }));
  await keeper.tap(button(keeper, 'Enter it'));
  await expect(keeper.page.getByText('Needed.').first()).toBeVisible();
  await keeper.accessibleInEveryTheme();
  await keeper.page.getByLabel('Last day before calibration').fill(`${new Date().getUTCFullYear() + 1}-06-30`);
  await fillIn(keeper, 'Expanded uncertainty U, k = 2', '0.003');
  await fillIn(keeper, 'Calibration certificate', 'CAL-0815');
  await keeper.tap(button(keeper, 'Enter it'));
  await expect(keeper.page.getByText('The calibration of MIC-12 is entered.')).toBeVisible();
  await keeper.tap(keeper.page.getByRole('link', { name: 'All gauges' }));
  await expect(keeper.page.getByRole('row', { name: /^MIC-12 fit/ })).toBeVisible();
  await expect(keeper.page.getByText(/overdue\. Its readings/)).toBeHidden();
});

test('the journal is walked through on demand, and its checkpoint signed', async ({ startPlant }) => {
  const plant = await startPlant();
  const keeper = await plant.openKiosk('K-100', 'Office');
  await keeper.page.goto('/keeper/journal');
  await keeper.tap(button(keeper, 'Verify the whole journal'));
  await expect(keeper.page.getByRole('status').filter({ hasText: /slips/ })).toBeVisible();
  await keeper.tap(button(keeper, 'Sign a checkpoint'));
  await expect(keeper.page.getByText(/^[0-9a-f]{64}$/)).toBeVisible();
  await keeper.accessibleInEveryTheme();
  await keeper.picture('journal-check');
});
