import { readFileSync } from 'node:fs';
import { fillIn } from './keypad.ts';
import { expect, test } from './plant.ts';
import type { Kiosk } from './plant.ts';

const button = ({ page }: Kiosk, name: string | RegExp) => page.getByRole('button', { name });
const link = ({ page }: Kiosk, name: string | RegExp) => page.getByRole('link', { name });
const field = ({ page }: Kiosk) => page.getByRole('textbox', { name: 'Designation', exact: true });
const row = ({ page }: Kiosk, name: RegExp) => page.getByRole('row', { name });
async function retype(kiosk: Kiosk, text: string): Promise<void> {
  await kiosk.tap(field(kiosk));
  await field(kiosk).fill('');
  await kiosk.type(text);
}
const noSidewaysScrolling = async ({ page }: Kiosk) => expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(0);

test('an engineer types a designation, sees drawing and limits, and writes the plan, whose samples are seen at once', async ({ startPlant }) => {
  const plant = await startPlant();
  const engineer = await plant.openKiosk('Q-401', 'Office');
  const { page } = engineer;
  await page.goto('/plans');
  await engineer.tap(link(engineer, 'Designation'));
  await expect(page.getByText('Nothing is typed yet.')).toBeVisible();

  // What cannot be stands under its own position; what can is explained all the same.
  await retype(engineer, 'CNIG 13');
  const positions = page.getByRole('list', { name: 'Positions of the designation' }).getByRole('listitem');
  await expect(positions.nth(0)).toContainText('Rhombus, corner of 80°');
  await expect(positions.nth(2)).toContainText('Possible: A, F, C, H, E, G, J, K, L, M, N or U.');
  await expect(positions.nth(4)).toContainText('No standard inscribed circle of this shape has such an edge.');
  await expect(page.getByText('2 positions cannot be.')).toBeVisible();
  await engineer.accessibleInEveryTheme();
  await engineer.picture('designation-refused');

  await retype(engineer, 'cnmg 12 04 08');
  await expect(page.getByText('CNMG120408 can be read.')).toBeVisible();
  await expect(positions.nth(4)).toContainText('Edge 12.9 mm, inscribed circle 12.7 mm (1/2 in)');
  // ISO 1832, class M at d 12.7 (memory, agrees with reproductions read); m 3.088 as printed in GOST 19057-80 (seen).
  await expect(row(engineer, /^Inscribed circle d 12\.700 0\.08 .*12\.620.* .*12\.780/)).toBeVisible();
  await expect(row(engineer, /^Control dimension m .*3\.088.* 0\.13 .*2\.958.* .*3\.218/)).toBeVisible();
  await expect(row(engineer, /^Thickness s 4\.760 0\.13 .*4\.630.* .*4\.890/)).toBeVisible();
  await expect(page.getByRole('img', { name: /^Plan and section of CNMG120408\. .*d 12\.7.*m 3\.088/ })).toBeVisible();
  expect(new URL(page.url()).pathname).toBe('/plans/designation/cnmg%2012%2004%2008');
  await engineer.accessibleInEveryTheme();
  await engineer.picture('designation');

  await engineer.tap(button(engineer, 'Control dimension m, Target: 3.088. How?'));
  await expect(page.getByText('m = (d/2 − r) · k,  k = 1/sin(ε/2) − 1')).toBeVisible();
  await expect(page.getByText('d 12.7 mm, r 0.79375 mm, ε 80°: k = 0.555724, m = 3.0877 mm')).toBeVisible();
  await engineer.accessible();
  await engineer.picture('designation-how');
  await engineer.tap(button(engineer, 'Close'));
  const [download] = await Promise.all([page.waitForEvent('download'), engineer.tap(button(engineer, 'Save as CSV'))]);
  expect(readFileSync(await download.path(), 'utf8')).toMatch(/Inscribed circle d,12\.700,0\.08,12\.620,12\.780/);

  // Measured after a coating of 8 µm: twice that on d and s, nothing on m (common practice).
  await engineer.tap(page.getByText('after coating', { exact: true }));
  await expect(row(engineer, /^Inscribed circle d 12\.716 .*12\.636.* .*12\.796/)).toBeVisible();
  await expect(row(engineer, /^Control dimension m .*3\.088/)).toBeVisible();
  await engineer.tap(page.getByText('before coating', { exact: true }));

  await page.getByRole('combobox', { name: 'AQL major' }).selectOption('1');
  await engineer.tap(button(engineer, 'Write the plan'));
  await expect(page.getByRole('heading', { name: 'New plan: Route CNMG120408' })).toBeVisible();
  await engineer.tap(link(engineer, /^Control dimension m/));
  // MIL-STD-414 Tables A-2 and B-3 (from memory): 1,000 pieces, level II; AQL 1 takes 15, M 3.05 %.
  await expect(row(engineer, /normal .*\b15\b.*3\.05/)).toBeVisible();
  await engineer.tap(link(engineer, /^Looks$/).last());
  // MIL-STD-105E Tables I and II-A (columns 0.65 to 15 seen): 1,000 pieces, level II, letter J, 80 pieces; AQL 1 has Ac 2, Re 3, AQL 2.5 has Ac 5, Re 6.
  await expect(page.getByText(/^n\s80\s+Ac\s2\s+Re\s3$/).first()).toBeVisible();
  await expect(page.getByText(/^n\s80\s+Ac\s5\s+Re\s6$/).first()).toBeVisible();
  await engineer.accessible();
  await page.getByText(/^n\s80\s+Ac\s5\s+Re\s6$/).first().evaluate((line) => line.scrollIntoView({ block: 'center' }));
  await engineer.picture('designation-plan');
  await engineer.tap(link(engineer, /^Compare the risks/).first());
  await expect(page.getByRole('heading', { name: 'Compare sampling plans' }).or(page.locator('gh-risk-chart').first()).first()).toBeVisible();

  await page.goto('/plans/plan/ROUTE-CNMG120408?draft=review');
  await fillIn(engineer, 'Why it is changed', 'New product');
  await engineer.tap(button(engineer, 'Draft this version'));
  await expect(page.getByText('Version 1: Draft')).toBeVisible();
  await expect(row(engineer, /Inscribed circle d.*micrometer with nest; before coating.*12\.62/)).toBeVisible();
});

test('on a tablet: a limit that is not in hand is asked for, a circle is chosen, and a product begins from its designation', async ({ startPlant }) => {
  const plant = await startPlant();
  const engineer = await plant.openKiosk('Q-401', 'Office', { portrait: true });
  const { page } = engineer;
  await page.goto('/plans/designation/VNMG220408');
  await expect(page.getByText('Remembered: 0.2 mm, of one edition or the other.')).toBeVisible();
  await expect(page.getByText('Limits that are not in hand are given above before the plan is written.')).toBeVisible();
  await engineer.tap(button(engineer, 'Write the plan'));
  expect(new URL(page.url()).pathname).toBe('/plans/designation/VNMG220408');
  await noSidewaysScrolling(engineer);
  await engineer.accessibleInEveryTheme();
  await engineer.picture('designation-portrait');
  await fillIn(engineer, '± of Control dimension m', '0.25');
  await expect(row(engineer, /^Control dimension m .*12\.921.* 0\.25 .*12\.671.* .*13\.171.* given by the plant/)).toBeVisible();

  await retype(engineer, 'CCMT040204');
  await expect(page.getByText('The digits fit several circles: choose one above.').first()).toBeVisible();
  await engineer.tap(page.getByText('4.76 mm (3/16 in)'));
  await expect(row(engineer, /^Inscribed circle d 4\.760 0\.05 .*4\.710.* .*4\.810/)).toBeVisible();
  await engineer.accessible();

  // A scanner types; a designation is taken wherever the focus is.
  await page.getByRole('heading', { name: 'A product from its designation' }).click();
  await engineer.scan('TNMG160404');
  await expect(page.getByText('TNMG160404 can be read.')).toBeVisible();
  await expect(row(engineer, /^Control dimension m .*13\.891.* 0\.08/)).toBeVisible();

  await engineer.tap(link(engineer, 'Define the product'));
  await expect(field(engineer)).toHaveValue('TNMG160404');
  await expect(page.getByRole('textbox', { name: 'Thickness s, sintered', exact: true })).toHaveValue('4.76');
  await retype(engineer, 'TNMG 17');
  await engineer.tap(button(engineer, 'Save it'));
  await expect(page.getByText(/Position 5 \(size\), “17”: No standard inscribed circle of this shape has such an edge\./)).toBeVisible();
  await engineer.accessible();
  await engineer.tap(page.getByText('a drawing', { exact: true }));
  await expect(page.getByText(/Position 5 \(size\)/)).toHaveCount(0);
});
