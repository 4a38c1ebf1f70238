import { expect, test } from './plant.ts';
import type { Kiosk, Plant, Story } from './plant.ts';
import { demoFurnaceLog } from '../../demo-data/furnace-log.ts';
import { fillIn, pressFigure, tabTo } from './keypad.ts';
import { lotsWaitingFor } from './lot-stories.ts';

const LOTS = ['L26-0921', 'L26-0922', 'L26-0923'] as const;
const PLACES = ['Top', 'Middle', 'Bottom'] as const;
/** Results at the three named positions, in the order the gate asks for them; each within its limits. */
const RESULTS: readonly (readonly [name: string, values: readonly [string, string, string]])[] = [
  ['Sintered density', ['14.65', '14.66', '14.64']], ['Coercivity', ['15.5', '15.6', '15.4']], ['Relative magnetic saturation', ['86.0', '86.5', '85.5']], ['Hardness', ['1600', '1605', '1595']],
];
const demand = (kiosk: Kiosk) => kiosk.page.locator('gh-demand');
const verdict = (kiosk: Kiosk) => kiosk.page.locator('gh-verdict').getByRole('status');
const sintered = (story: Story): void => lotsWaitingFor(story, 'furnace', LOTS.map((id) => ({ id, pieces: 480 })));

async function fillChargeForm(kiosk: Kiosk, charge: string): Promise<void> {
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Open a furnace charge' }));
  await kiosk.tap(kiosk.page.getByRole('radio', { name: /^Demo fine 8/ }));
  await fillIn(kiosk, 'Number', charge);
  await fillIn(kiosk, 'Programme', 'SINTER-07');
  await fillIn(kiosk, 'Furnace', 'Furnace 1');
  for (const lot of LOTS) await kiosk.tap(kiosk.page.getByRole('checkbox', { name: new RegExp(`^${lot}`) }));
  for (const [at, lot] of LOTS.entries()) await fillIn(kiosk, `Places of ${lot}`, PLACES[at] ?? '');
}
async function chargeAtTheLab(plant: Plant, charge: string): Promise<Kiosk> {
  const kiosk = await plant.openKiosk('L-201', 'Lab');
  await fillChargeForm(kiosk, charge);
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Open the charge' }));
  await expect(demand(kiosk)).toContainText('Furnace log');
  return kiosk;
}
/** Chooses the recorder's file, as the file dialog would hand it over, and waits until it stands attached. */
async function attachLog(kiosk: Kiosk, charge: string, dip = false): Promise<void> {
  await kiosk.page.getByLabel(/^Attach (a|another) log/).setInputFiles({ name: `${charge}.csv`, mimeType: 'text/csv', buffer: Buffer.from(demoFurnaceLog(charge, { dip }), 'utf8') });
  await expect(kiosk.page.getByText(dip ? 'Outside limits' : 'Within limits', { exact: true }).first()).toBeVisible();
}
async function enterResults(kiosk: Kiosk, enter: (figure: string) => Promise<void>, instead: Readonly<Record<string, string>> = {}): Promise<void> {
  for (const [name, values] of RESULTS) {
    for (const [at, value] of values.entries()) {
      await expect(demand(kiosk)).toContainText(new RegExp(`${name}: piece ${at + 1}\\s+${PLACES[at] ?? ''}, test piece 1`));
      await enter(instead[`${name} ${PLACES[at] ?? ''}`] ?? value);
    }
  }
}
async function rateAndConfirm(kiosk: Kiosk): Promise<void> {
  for (const [at, rating] of ['A00', 'A02', 'A02'].entries()) {
    await expect(demand(kiosk)).toContainText(`Porosity, type A: piece ${at + 1}`);
    await kiosk.tap(kiosk.page.getByRole('button', { name: rating }));
  }
  await expect(kiosk.page.getByText('C00 and no eta phase seen on the polished sections', { exact: true })).toBeVisible();
}

test('three lots in one charge: test pieces at named positions, and one verdict that stands on three travellers', async ({ startPlant }) => {
  const plant = await startPlant(sintered);
  const kiosk = await plant.openKiosk('L-201', 'Lab');
  const grinder = await plant.openKiosk('I-302', 'Gauge room', { portrait: true });
  await fillChargeForm(kiosk, 'F26-920');
  await kiosk.picture('lab-furnace-charge-1');
  await kiosk.accessibleInEveryTheme();
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Open the charge' }));
  await expect(demand(kiosk)).toContainText('Furnace log');
  await kiosk.accessibleInEveryTheme();
  await grinder.page.goto('/traveller/lot/L26-0922');
  await expect(demand(grinder)).toContainText('In charge F26-920');
  await attachLog(kiosk, 'F26-920');
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Yes, confirmed' }));
  kiosk.countFromHere();
  await enterResults(kiosk, (figure) => pressFigure(kiosk, figure));
  expect(kiosk.touches, '12 figures by keypad: one touch a character and one for Enter').toBe(RESULTS.flatMap(([, values]) => values).join('').length + 12);
  await expect(demand(kiosk)).toContainText(/Porosity, type A: piece 1\s+Top, test piece 1/);
  await kiosk.picture('lab-furnace-charge-2');
  await kiosk.accessibleInEveryTheme();
  await rateAndConfirm(kiosk);
  await expect(verdict(kiosk)).toHaveText('');
  await expect(demand(grinder)).toContainText('In charge F26-920');
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Yes, confirmed' }));
  await expect(verdict(kiosk)).toHaveText('Accepted: all 7 characteristics');
  // Live on the traveller of a lot at another kiosk, and at once.
  await expect(grinder.page.getByRole('listitem').filter({ hasText: 'Sintered check, from furnace charge F26-920' })).toContainText('Accepted', { timeout: 1000 });
  await expect(demand(grinder)).toContainText('Start Ground dimensions', { timeout: 1000 });
  await kiosk.picture('lab-furnace-charge-3');
  await kiosk.accessibleInEveryTheme();
  await grinder.picture('lab-furnace-charge-4');
  await grinder.accessibleInEveryTheme();
  await grinder.page.goto('/bench');
  for (const lot of LOTS) await expect(grinder.page.getByRole('link', { name: new RegExp(lot) })).toContainText('Start Ground dimensions');
});

test('one failing position holds all three lots', async ({ startPlant }) => {
  const plant = await startPlant(sintered);
  const kiosk = await chargeAtTheLab(plant, 'F26-921');
  const engineer = await plant.openKiosk('Q-401', 'Quality desk', { portrait: true });
  await engineer.page.goto('/traveller/lot/L26-0923');
  await expect(demand(engineer)).toContainText('In charge F26-921');
  await attachLog(kiosk, 'F26-921');
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Yes, confirmed' }));
  await enterResults(kiosk, (figure) => kiosk.gauge(figure), { 'Hardness Bottom': '1540' });
  await rateAndConfirm(kiosk);
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Yes, confirmed' }));
  await expect(verdict(kiosk)).toHaveText(/^Rejected: Hardness: 1 of 3 outside 1,550 … 1,650 HV30/);
  await kiosk.picture('lab-furnace-charge-5');
  await kiosk.accessibleInEveryTheme();
  await expect(demand(engineer)).toContainText('On hold', { timeout: 1000 });
  await engineer.picture('lab-furnace-charge-6');
  await engineer.accessibleInEveryTheme();
  for (const lot of LOTS) {
    await engineer.page.goto(`/traveller/lot/${lot}`);
    await expect(demand(engineer)).toContainText('On hold');
    await expect(demand(engineer)).toContainText('The charge it belongs to was rejected.');
  }
});

test('the charge by keyboard', async ({ startPlant }) => {
  const plant = await startPlant(sintered);
  const kiosk = await plant.openKiosk('L-202', 'Lab');
  await expect(kiosk.page.getByRole('button', { name: 'Open a furnace charge' })).toBeVisible();
  await tabTo(kiosk, 'Open a furnace charge');
  await kiosk.press('Enter');
  await tabTo(kiosk, /Demo fine 8/);
  await kiosk.press('Space');
  for (const [label, text] of [[/^Number/, 'F26-922'], ['Programme', 'SINTER-07'], ['Furnace', 'Furnace 1']] as const) {
    await tabTo(kiosk, label);
    await kiosk.type(text);
  }
  for (const lot of LOTS) {
    await tabTo(kiosk, new RegExp(`^${lot}`));
    await kiosk.press('Space');
  }
  for (const [at, lot] of LOTS.entries()) {
    await tabTo(kiosk, `Places of ${lot}`);
    await kiosk.type(PLACES[at] ?? '');
  }
  await kiosk.press('Enter');
  await expect(demand(kiosk)).toContainText('Furnace log');
  await attachLog(kiosk, 'F26-922');
  await tabTo(kiosk, 'Yes, confirmed');
  await kiosk.press('Enter');
  kiosk.countFromHere();
  await enterResults(kiosk, async (figure) => {
    await kiosk.type(figure);
    await kiosk.press('Enter');
  });
  expect(kiosk.keystrokes).toBe(RESULTS.flatMap(([, values]) => values).join('').length + 12);
  for (const at of [1, 2, 3]) {
    await expect(demand(kiosk)).toContainText(`Porosity, type A: piece ${at}`);
    if (at === 1) await tabTo(kiosk, 'A00');
    await kiosk.press('Enter');
  }
  await expect(kiosk.page.getByText('C00 and no eta phase seen on the polished sections', { exact: true })).toBeVisible();
  await tabTo(kiosk, 'Yes, confirmed');
  await kiosk.press('Enter');
  await expect(verdict(kiosk)).toHaveText('Accepted: all 7 characteristics');
});
