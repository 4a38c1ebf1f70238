import { readFileSync } from 'node:fs';
import { fillIn } from './keypad.ts';
import { expect, test } from './plant.ts';
import type { Kiosk } from './plant.ts';

const button = ({ page }: Kiosk, name: string | RegExp) => page.getByRole('button', { name });

test('a table saved from here is refused with a fault in it, by line and column, and loaded when it is right; a plan then names it', async ({ startPlant }) => {
  const plant = await startPlant();
  const kiosk = await plant.openKiosk('Q-401', 'Office');
  await kiosk.page.goto('/plans/tables');
  await expect(kiosk.page.getByRole('row', { name: /III-A.*from memory/ })).toBeVisible();
  await expect(kiosk.page.getByRole('row', { name: /IV-C.*missing/ })).toBeVisible();
  await kiosk.accessibleInEveryTheme();
  await kiosk.picture('plan-tables');
  const [download] = await Promise.all([kiosk.page.waitForEvent('download'), kiosk.tap(kiosk.page.getByRole('row', { name: /III-A/ }).getByRole('button', { name: /CSV/ }))]);
  const ours = readFileSync(await download.path(), 'utf8');
  expect(download.suggestedFilename()).toBe('table-III-A.csv');
  const lines = ours.split('\n');
  const at = lines.findIndex((line) => line.startsWith('J,'));

  await fillIn(kiosk, 'Number', 'OUR-DOUBLE');
  await fillIn(kiosk, 'Name', 'Our copy, second edition');
  const wrong = lines.with(at, (lines[at] ?? '').replace('1/4;4/5', '4/1;4/5'));
  await kiosk.page.locator('input[type=file]').setInputFiles({ name: 'ours.csv', mimeType: 'text/csv', buffer: Buffer.from(wrong.join('\n')) });
  await kiosk.tap(button(kiosk, 'Check it'));
  await expect(kiosk.page.getByText('One thing is wrong with this table.')).toBeVisible();
  await expect(kiosk.page.getByText('Nothing was loaded. Your text stays above.')).toBeVisible();
  await expect(kiosk.page.getByRole('row', { name: new RegExp(`^${at + 1} .*4/1`) })).toContainText('Re must lie above Ac.');
  await kiosk.accessibleInEveryTheme();
  await kiosk.page.getByText('Re must lie above Ac.').scrollIntoViewIfNeeded();
  await kiosk.picture('plan-table-fault');

  await kiosk.page.getByRole('textbox', { name: 'Or paste the table here' }).fill(ours);
  await kiosk.tap(button(kiosk, 'Check it'));
  await expect(kiosk.page.getByText(/The structure is sound: double sampling, normal/)).toBeVisible();
  await kiosk.tap(button(kiosk, 'Load this table'));
  await expect(kiosk.page.getByText('Say why.')).toBeVisible();
  await fillIn(kiosk, 'Why it is loaded', 'Compared with our copy of the standard');
  await kiosk.tap(button(kiosk, 'Load this table'));
  await expect(kiosk.page.getByText('Our copy, second edition is loaded.')).toBeVisible();
  await expect(kiosk.page.getByRole('row', { name: /OUR-DOUBLE.*Ida Marlow.*no plan/ })).toBeVisible();
  await kiosk.accessible();

  await kiosk.page.goto('/plans/plan/ROUTE-CNMG/1?draft=final-visual%2Flooks');
  await kiosk.tap(kiosk.page.getByText('double', { exact: true }));
  await kiosk.page.getByRole('combobox', { name: 'Table on normal' }).selectOption('OUR-DOUBLE');
  await expect(kiosk.page.getByText('from our own copy of the table')).toBeVisible();
  await kiosk.tap(button(kiosk, 'Review and draft'));
  await fillIn(kiosk, 'Why it is changed', 'Our own copy of the double table');
  await kiosk.tap(button(kiosk, 'Draft this version'));
  await expect(kiosk.page.getByText('Version 2: Draft')).toBeVisible();
  await kiosk.page.goto('/plans/tables');
  await expect(kiosk.page.getByRole('row', { name: /OUR-DOUBLE.*ROUTE-CNMG, version 2/ })).toBeVisible();
});
