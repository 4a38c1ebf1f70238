import { readFileSync } from 'node:fs';
import { expect, test } from './plant.ts';
import type { Kiosk } from './plant.ts';
import { fillIn } from './keypad.ts';

const button = (kiosk: Kiosk, name: string | RegExp) => kiosk.page.getByRole('button', { name });
const noSidewaysScroll = async (kiosk: Kiosk) => expect(await kiosk.page.evaluate(() => document.documentElement.scrollWidth <= document.documentElement.clientWidth)).toBe(true);

for (const portrait of [false, true]) test(`an engineer defines a grade from its composition and drafts its sintered check from the limits, ${portrait ? 'upright' : 'across'}`, async ({ startPlant }) => {
  const plant = await startPlant();
  const engineer = await plant.openKiosk('Q-401', 'Quality desk', { portrait });
  const name = (of: string) => (portrait ? `${of}-portrait` : of);
  await engineer.page.goto('/plans/catalogue');
  await engineer.tap(engineer.page.getByRole('link', { name: 'Define a grade' }));
  await expect(engineer.page.getByText('The composition is not whole yet.')).toBeVisible();
  await engineer.tap(button(engineer, 'Save it'));
  await expect(engineer.page.getByText('This must be filled in.').first()).toBeVisible();
  await engineer.accessible();

  await fillIn(engineer, 'Number', 'new-6');
  await fillIn(engineer, 'Name', 'New 6');
  const share = async (component: number, text: string) => {
    const field = engineer.page.getByRole('group', { name: `Component ${component}` }).getByRole('textbox', { name: 'Share' });
    await field.fill('');
    await engineer.tap(field);
    await engineer.type(text);
  };
  await share(1, '93');
  await share(2, '6');
  await engineer.tap(button(engineer, 'Save it'));
  await expect(engineer.page.getByText('The shares add up to 99 %, not to 100 within 0.1.')).toBeVisible();
  await share(1, '94');
  // WC-6Co of WC 15.63 and Co 8.90 g/cm³: 14.95 (rule of mixtures, by hand 1/(0.94/15.63 + 0.06/8.90)); VB-06 10.080 vol%; 5.765 wt% carbon; 12.10 µT·m³/kg (derived).
  for (const shown of ['14.95 g/cm³', '10.1 vol%', '5.765 wt%', '5.67 … 5.76 wt%', '12.10 µT·m³/kg']) await expect(engineer.page.getByText(shown, { exact: true })).toBeVisible();
  await fillIn(engineer, 'Mean linear intercept of WC', '1');
  // HC-6-1 of material-checks.csv: 11.93 kA/m.
  await expect(engineer.page.getByText('11.9 kA/m', { exact: true })).toBeVisible();
  await engineer.tap(button(engineer, /^How\? Theoretical density/));
  await expect(engineer.page.locator('gh-why-sheet')).toContainText('1/ρ = Σ wᵢ/ρᵢ');
  await expect(engineer.page.locator('gh-why-sheet')).toContainText('WC 94.00 %, 15.63 g/cm³');
  await engineer.accessible();
  await engineer.picture(name('grade-how'));
  await engineer.tap(engineer.page.getByRole('dialog').getByRole('button', { name: 'Close' }));
  await expect(engineer.page.getByRole('textbox', { name: 'Density, least' })).toHaveValue('14.9');
  await expect(engineer.page.getByRole('textbox', { name: 'Coercivity, least' })).toHaveValue('');
  await fillIn(engineer, 'Coercivity, least', '10');
  await fillIn(engineer, 'Coercivity, most', '14');
  await engineer.page.getByLabel('Powder plan').selectOption('POWDER-F8');
  await engineer.page.getByLabel('Furnace plan').selectOption('FURNACE-F8');
  await expect(engineer.page.getByRole('row', { name: /rejected: towards η phase/ })).toContainText('9.07');
  await noSidewaysScroll(engineer);
  await engineer.accessibleInEveryTheme();
  await engineer.page.evaluate(() => scrollTo(0, 0));
  await engineer.picture(name('grade'));
  await engineer.page.locator('gh-saturation-window').scrollIntoViewIfNeeded();
  await engineer.picture(name('grade-limits'));
  await engineer.tap(button(engineer, 'Save it'));
  await expect(engineer.page.getByText('NEW-6 is saved.')).toBeVisible();
  await expect(engineer.page).toHaveURL(/\/plans\/grade\/NEW-6$/);
  const { state } = await (await engineer.page.request.get('/api/states?stream=grade:NEW-6')).json();
  expect(state.card.limits).toMatchObject({ densityGPerCm3: { lower: 14.9, upper: 15 }, coercivityKAPerM: { lower: 10, upper: 14 }, saturation: { lowPercent: 75, highPercent: 95, unit: 'µT·m³/kg' }, porosity: { A: 'A02', B: 'B00', C: 'C00' } });

  const file = engineer.page.waitForEvent('download');
  await engineer.tap(button(engineer, 'Save as CSV'));
  expect(readFileSync(await (await file).path(), 'utf8')).toContain('Theoretical density,14.95,g/cm³');

  await fillIn(engineer, 'Batch', '500');
  await fillIn(engineer, 'Carbon now', '5.60');
  await fillIn(engineer, 'Carbon wanted', '5.64');
  // C-CORR of material-checks.csv: 0.212 kg.
  await expect(engineer.page.getByText('Add 0.212 kg of carbon')).toBeVisible();
  await engineer.accessible();

  await engineer.tap(button(engineer, 'Draft the sintered check in FURNACE-F8'));
  await expect(engineer.page).toHaveURL(/\/plans\/plan\/FURNACE-F8\/1\?draft/);
  await expect(engineer.page.getByText(/^\d+ changes/)).toBeVisible();
  await engineer.tap(engineer.page.getByRole('link', { name: /Relative magnetic saturation/ }));
  await expect(engineer.page.getByRole('radio', { name: 'saturation, as percent' })).toBeChecked();
  await expect(engineer.page.getByRole('textbox', { name: 'Cobalt of the grade' })).toHaveValue('6');
  await engineer.accessible();
  await engineer.picture(name('grade-draft'));
});
