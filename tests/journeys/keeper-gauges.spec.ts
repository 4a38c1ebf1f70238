import { fillIn, pressPin } from './keypad.ts';
import { boxesOf, lotsWaitingFor } from './lot-stories.ts';
import { expect, someone, test } from './plant.ts';
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
  await fillIn(keeper, 'Expanded uncertainty U', '0.003');
  await fillIn(keeper, 'Calibration certificate', 'CAL-0815');
  await keeper.tap(button(keeper, 'Enter it'));
  await expect(keeper.page.getByText('The calibration of MIC-12 is entered.')).toBeVisible();
  await keeper.tap(keeper.page.getByRole('link', { name: 'All gauges' }));
  await expect(keeper.page.getByRole('row', { name: /^MIC-12 fit/ })).toBeVisible();
  await expect(keeper.page.getByText(/overdue\. Its readings/)).toBeHidden();
});

test('a micrometer found out of tolerance is stopped, what it read is listed, and all that is still here is held by one signature', async ({ startPlant }) => {
  const plant = await startPlant((story) => {
    lotsWaitingFor(story, 'packing', [{ id: 'L26-0910', pieces: 200 }, { id: 'L26-0911', pieces: 200 }]);
    boxesOf(story, 'L26-0910', 2);
    for (const box of story.floor.lot('L26-0910').boxes) story.floor.give(someone('P-601'), 'Packing', { type: 'shipBox', lot: 'L26-0910', box: box.serial, shipment: 'S26-077', order: 'D-0910', consignee: 'Invented Tools Ltd' });
    lotsWaitingFor(story, 'edge', [{ id: 'L26-0912', pieces: 200 }]);
  });
  const engineer = await plant.openKiosk('Q-401', 'Quality desk');
  const portrait = await plant.openKiosk('L-201', 'Lab', { portrait: true });
  await engineer.page.goto('/gauges/MIC-11');
  await expect(engineer.page.getByRole('row', { name: /^L26-0912/ })).toBeVisible();
  await fillIn(engineer, 'Master', 'Gauge block 10 mm');
  await fillIn(engineer, 'True value', '10');
  await fillIn(engineer, 'Shown by the gauge', '10.007');
  await fillIn(engineer, 'Allowed error ±', '0.002');
  await engineer.accessibleInEveryTheme();
  await engineer.picture('gauge-check');
  await engineer.tap(button(engineer, 'Enter the check'));
  await expect(engineer.page.getByText('MIC-11 is out of tolerance: it counts nowhere any more, and a recall is open.')).toBeVisible();
  await expect(engineer.page.getByRole('row', { name: /check .*10\.007 .*bad/ })).toBeVisible();

  // The lab sees it on the register and on the bench's own list of recalls, on a tablet held upright.
  await portrait.page.goto('/gauges/recall');
  await expect(portrait.page.getByRole('row', { name: /^MIC-11/ })).toContainText('out of tolerance');
  await portrait.accessibleInEveryTheme();
  await portrait.page.goto('/gauges/MIC-11');
  await expect(portrait.page.getByRole('heading', { name: /^MIC-11/ })).toBeVisible();
  await portrait.accessible();
  await portrait.picture('gauge-page-portrait');

  await engineer.tap(engineer.page.getByRole('link', { name: 'Go to the recall' }));
  await expect(engineer.page.getByRole('heading', { name: /^Recall MIC-11-R1/ })).toBeVisible();
  for (const [lot, where] of [['L26-0910', 'still here'], ['L26-0911', 'still here'], ['L26-0912', 'still here'], ['P26-180', 'still here']] as const) await expect(engineer.page.getByRole('row', { name: new RegExp(`^${lot}`) }).first()).toContainText(where);
  await expect(engineer.page.getByRole('row', { name: /Invented Tools Ltd/ }).last()).toContainText('S26-077');
  await expect(engineer.page.getByText(/^Readings 1 to \d+ of \d+/)).toBeVisible();
  await engineer.accessibleInEveryTheme();
  await engineer.picture('gauge-recall');
  await engineer.tap(button(engineer, 'Hold all 4 still here'));
  await pressPin(engineer, '4010');
  await expect(engineer.page.getByText('Say why.')).toBeVisible();
  await engineer.accessible();
  await fillIn(engineer, 'Reason', 'Micrometer 11 showed 0.007 mm too much');
  await engineer.picture('gauge-recall-sign');
  await pressPin(engineer, '4010');
  await expect(engineer.page.getByText('4 are on hold.')).toBeVisible();
  for (const lot of ['L26-0910', 'L26-0911', 'L26-0912', 'P26-180']) await expect(engineer.page.getByRole('row', { name: new RegExp(`^${lot}`) }).first()).toContainText('held for this');
  await expect(engineer.page.getByText('Nothing that is still here is left to hold.')).toBeVisible();
  await engineer.tap(engineer.page.getByRole('link', { name: 'L26-0912' }).first());
  await expect(engineer.page.getByText(/Micrometer 11 showed 0\.007 mm too much/).first()).toBeVisible();
  await portrait.page.goto('/gauges/MIC-11/recall');
  await expect(portrait.page.getByRole('heading', { name: /^Recall MIC-11-R1/ })).toBeVisible();
  await portrait.accessible();
  await portrait.picture('gauge-recall-portrait');
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
