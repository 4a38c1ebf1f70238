import { expect, someone, test } from './plant.ts';
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

/** A charge whose test piece at Bottom is soft, with the lots where `fillChargeForm` puts them. */
function failedAtBottom({ floor, gate }: Story, charge: string): void {
  const at = (level: number, ...positions: readonly number[]) => positions.map((position) => ({ level, position }));
  const cells = [at(1, 2, 3), at(2, 2, 3), at(3, 6)];
  floor.give(someone('L-201'), 'Lab', { type: 'openCharge', charge, kind: 'furnace', specification: 'DEMO-F8', programme: 'SINTER-07', equipment: 'Furnace 1', equipmentId: 'FURNACE-1', members: LOTS.map((lot, index) => ({ lot, places: [], cells: cells[index] ?? [] })) });
  gate('L-201', `furnace:${charge}`, 'sinter-check', { shift: { 'hardness@Bottom': -20 } });
}

/** Where each lot is put: over, beside and away from the test pieces at Top 2, Middle 5 and Bottom 2. */
const CELLS = [['Top 2', 'Top 3'], ['Middle 2', 'Middle 3'], ['Bottom 6']] as const;
const cell = (kiosk: Kiosk, name: string) => kiosk.page.getByRole('button', { name: new RegExp(`^${name}, `) });

async function fillChargeForm(kiosk: Kiosk, charge: string): Promise<void> {
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Open a furnace charge' }));
  await kiosk.tap(kiosk.page.getByRole('radio', { name: /^Demo fine 8/ }));
  await fillIn(kiosk, 'Number', charge);
  await fillIn(kiosk, 'Programme', 'SINTER-07');
  for (const lot of LOTS) await kiosk.tap(kiosk.page.getByRole('checkbox', { name: new RegExp(`^${lot}`) }));
  for (const [at, lot] of LOTS.entries()) {
    await kiosk.tap(kiosk.page.getByRole('radio', { name: new RegExp(lot) }));
    for (const name of CELLS[at] ?? []) await kiosk.tap(cell(kiosk, name));
  }
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
  // A cell that a lot lies on is not given to another: said, and the map stays as it is.
  await kiosk.tap(cell(kiosk, 'Top 2'));
  await expect(kiosk.page.getByText('Top 2 holds lot L26-0921. Take it off there first.')).toBeVisible();
  await expect(cell(kiosk, 'Top 2')).toHaveAttribute('aria-label', 'Top 2, lot L26-0921, test piece Top');
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
  const lay = ['The lot lay near no failed position.', 'The lot lay near a failed position: Bottom (straight above).', 'The lot lay near a failed position: Bottom (beside it on the same level).'];
  for (const [at, lot] of LOTS.entries()) {
    await engineer.page.goto(`/traveller/lot/${lot}`);
    await expect(demand(engineer)).toContainText('On hold');
    await expect(demand(engineer)).toContainText('The charge it belongs to was rejected.');
    await expect(engineer.page.getByRole('region', { name: 'What was found' })).toContainText(lay[at] ?? '');
  }
});

test('a log outside its programme’s limits is drawn, and a yes to it asks for a reason', async ({ startPlant }) => {
  const plant = await startPlant(sintered);
  const kiosk = await chargeAtTheLab(plant, 'F26-923');
  await kiosk.page.getByLabel(/^Attach a log/).setInputFiles({ name: 'notes.csv', mimeType: 'text/csv', buffer: Buffer.from('time,temperature\n0,20\n1,n/a', 'utf8') });
  await expect(kiosk.page.getByText('This file is no furnace log: line 3, column 2: “n/a” is no number.')).toBeVisible();
  await attachLog(kiosk, 'F26-923', true);
  await expect(kiosk.page.getByText(/^too cold: Sintering, minute 615 to 622: down to 1,390\.\d °C, at least 1,402 °C, for 7 min/)).toBeVisible();
  await kiosk.page.locator('gh-log-chart').scrollIntoViewIfNeeded();
  await kiosk.picture('lab-furnace-charge-7');
  await kiosk.accessibleInEveryTheme();
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Yes, confirmed' }));
  await expect(kiosk.page.getByRole('dialog')).toContainText('the log attached shows 2 things outside its programme’s limits');
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Understood' }));
  await fillIn(kiosk, 'Why it may be confirmed all the same; it stands on the traveller and the certificate', 'Thermocouple 2 slipped; thermocouple 1 within');
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Yes, confirmed' }));
  await expect(demand(kiosk)).toContainText('Sintered density');
  await kiosk.page.goto('/traveller/furnace/F26-923');
  await expect(kiosk.page.getByRole('heading', { name: 'Furnace log' })).toBeVisible();
  await kiosk.page.locator('gh-log-chart').scrollIntoViewIfNeeded();
  await kiosk.picture('lab-furnace-charge-8');
  await kiosk.accessibleInEveryTheme();
});

test('without the network a log waits, and it is said', async ({ startPlant }) => {
  const plant = await startPlant(sintered);
  const kiosk = await chargeAtTheLab(plant, 'F26-924');
  await kiosk.offline(true);
  await expect(kiosk.page.getByText('The network is gone: a log cannot be attached now.')).toBeVisible();
  await kiosk.offline(false);
  await expect(kiosk.page.getByLabel(/^Attach a log/)).toBeVisible();
});

test('the lots near the failed position are sintered again, the other is conceded; the new charge’s verdict is their re-inspection', async ({ startPlant }) => {
  const plant = await startPlant((story) => {
    sintered(story);
    failedAtBottom(story, 'F26-925');
  });
  const engineer = await plant.openKiosk('Q-401', 'Quality desk');
  await engineer.page.goto('/traveller/furnace/F26-925?work');
  await engineer.tap(engineer.page.getByRole('radio', { name: /^Sinter again/ }));
  await engineer.tap(engineer.page.getByRole('radio', { name: /^Only 2 lots near the failed position/ }));
  await engineer.tap(engineer.page.getByRole('radio', { name: /^Concession accepted as they are/ }));
  await fillIn(engineer, 'Concession, as it will stand on the certificate', 'Top level only; hardness at Bottom 1,400 HV30');
  await fillIn(engineer, 'Reason, as it will stand on the traveller', 'Bottom level was cold');
  await engineer.picture('lab-furnace-charge-9');
  await engineer.accessibleInEveryTheme();
  await engineer.tap(engineer.page.getByRole('button', { name: 'Go on to sign' }));
  for (const digit of '4010') await engineer.tap(engineer.page.getByRole('group', { name: 'PIN' }).getByRole('button', { name: digit }));
  await engineer.tap(engineer.page.getByRole('button', { name: 'Sign', exact: true }));
  await engineer.page.goto(`/traveller/lot/${LOTS[0]}`);
  await expect(demand(engineer)).toContainText('Start Ground dimensions');
  const kiosk = await plant.openKiosk('L-201', 'Lab', { portrait: true });
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Open a furnace charge' }));
  await kiosk.tap(kiosk.page.getByRole('radio', { name: /^Demo fine 8/ }));
  await fillIn(kiosk, 'Number', 'F26-926');
  await fillIn(kiosk, 'Programme', 'SINTER-07');
  for (const lot of LOTS.slice(1)) await kiosk.tap(kiosk.page.getByRole('checkbox', { name: new RegExp(`^${lot}`) }));
  for (const [at, name] of ['Top 1', 'Top 3'].entries()) {
    await kiosk.tap(kiosk.page.getByRole('radio', { name: new RegExp(LOTS[at + 1] ?? '') }));
    await kiosk.tap(cell(kiosk, name));
  }
  await kiosk.picture('lab-furnace-charge-10');
  await kiosk.accessibleInEveryTheme();
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Open the charge' }));
  await expect(demand(kiosk)).toContainText('re-inspection');
  await attachLog(kiosk, 'F26-926');
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Yes, confirmed' }));
  await enterResults(kiosk, (figure) => kiosk.gauge(figure));
  await rateAndConfirm(kiosk);
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Yes, confirmed' }));
  await expect(verdict(kiosk)).toHaveText('Accepted: all 7 characteristics');
  for (const lot of LOTS.slice(1)) {
    await engineer.page.goto(`/traveller/lot/${lot}`);
    await expect(demand(engineer)).toContainText('Start Ground dimensions');
    await expect(engineer.page.getByRole('listitem').filter({ hasText: 'Sintered check, from furnace charge F26-926' })).toContainText('Accepted');
  }
  await kiosk.page.goto('/traveller/furnace/F26-926');
  await expect(kiosk.page.getByText('L26-0922: Top: 1 (sintered again)')).toBeVisible();
});

test('the charge by keyboard', async ({ startPlant }) => {
  const plant = await startPlant(sintered);
  const kiosk = await plant.openKiosk('L-202', 'Lab');
  await expect(kiosk.page.getByRole('button', { name: 'Open a furnace charge' })).toBeVisible();
  await tabTo(kiosk, 'Open a furnace charge');
  await kiosk.press('Enter');
  await tabTo(kiosk, /Demo fine 8/);
  await kiosk.press('Space');
  for (const [label, text] of [[/^Number/, 'F26-922'], ['Programme', 'SINTER-07']] as const) {
    await tabTo(kiosk, label);
    await kiosk.type(text);
  }
  for (const lot of LOTS) {
    await tabTo(kiosk, new RegExp(`^${lot}`));
    await kiosk.press('Space');
  }
  // The first lot is in hand; Tab goes from level to level, the arrows from cell to cell and from lot to lot.
  await kiosk.reach(cell(kiosk, 'Top 1'));
  await kiosk.press('ArrowRight');
  await kiosk.press('Space');
  await expect(kiosk.page.getByText('Lot L26-0921 lies on Top 2.')).toBeVisible();
  for (const [at, from, keys] of [[1, 'Middle 1', ['ArrowRight', 'ArrowDown']], [2, 'Bottom 1', ['ArrowDown', 'ArrowRight', 'ArrowRight']]] as const) {
    await kiosk.reach(kiosk.page.getByRole('radio', { name: new RegExp(LOTS[at - 1] ?? '') }));
    await kiosk.press('ArrowDown');
    await kiosk.reach(cell(kiosk, from));
    for (const key of keys) await kiosk.press(key);
    await kiosk.press('Enter');
  }
  await expect(cell(kiosk, 'Middle 5')).toHaveAttribute('aria-pressed', 'true');
  await expect(cell(kiosk, 'Bottom 6')).toHaveAttribute('aria-pressed', 'true');
  await kiosk.reach(kiosk.page.getByRole('button', { name: /^Open the charge/ }));
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
