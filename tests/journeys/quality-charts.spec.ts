import type { Lot } from '../../shared/traveller/index.ts';
import { fillIn, pressPin } from './keypad.ts';
import { lotsWaitingFor, threadOf } from './lot-stories.ts';
import { expect, test } from './plant.ts';
import type { Kiosk } from './plant.ts';

const button = ({ page }: Kiosk, name: string | RegExp) => page.getByRole('button', { name });
const LAST = 'L26-0593';
const PAGE = '/charts/lot/CNMG-D1/dimensions/circle';

/** Takes the last readings of the lot's thickness at the public door, as a gauge that types would. */
async function finishThickness({ page }: Kiosk): Promise<void> {
  const read = (await (await page.request.get(`/api/travellers/lot/${LAST}`)).json()) as { state: Lot };
  const work = read.state.gates.find(({ id }) => id === 'dimensions')?.work.find(({ demand }) => demand.characteristic.id === 'thickness');
  if (work === undefined) throw new Error('the thickness is not asked for');
  for (let ordinal = work.readings.length + 1; ordinal <= work.demand.n; ordinal += 1) {
    const command = { type: 'takeReading', subject: `lot:${LAST}`, gate: 'dimensions', characteristic: 'thickness', ordinal, value: 4.76 + (ordinal % 3) / 1000, gauge: 'MIC-11' };
    const reply = await page.request.post('/api/commands', { data: { clientId: `thickness-${ordinal}-of-the-last`, command, bench: 'Gauge room' } });
    expect(reply.status(), await reply.text()).toBe(200);
  }
}

test('an engineer charts a dimension over twelve lots, signs for its limits, and the next lot that strays is signalled and held', async ({ startPlant }) => {
  const plant = await startPlant((story) => {
    const lots = Array.from({ length: 13 }, (_, at) => ({ id: `L26-05${81 + at}`, pieces: 480 }));
    lotsWaitingFor(story, 'dimensions', lots);
    for (const { id } of lots.slice(0, -1)) expect(story.gate('I-302', `lot:${id}`, 'dimensions')).toBe(true);
    story.gate('I-302', `lot:${LAST}`, 'dimensions', { shift: { circle: 2 }, leaveOpen: true });
  });
  const engineer = await plant.openKiosk('Q-401', 'Quality desk');
  const inspector = await plant.openKiosk('I-302', 'Gauge room');
  const { page } = engineer;

  await engineer.tap(page.getByRole('link', { name: 'Charts', exact: true }));
  await expect(page.getByText('No characteristic is charted yet.')).toBeVisible();
  await engineer.accessible();
  await engineer.tap(page.getByRole('link', { name: 'Chart another characteristic' }));
  await page.getByRole('combobox', { name: 'Product, grade or coating' }).selectOption('CNMG-D1');
  await page.getByRole('combobox', { name: 'Gate and characteristic' }).selectOption('dimensions/circle');
  await engineer.accessible();
  await engineer.tap(page.getByRole('link', { name: 'Go to its page' }));
  await expect(page.getByText('is not charted yet')).toBeVisible();

  await engineer.tap(button(engineer, 'Set up a chart'));
  await expect(page.getByText('12 lots judged before are taken along.')).toBeVisible();
  await page.getByRole('combobox', { name: 'A signal puts the lot on hold' }).selectOption('yes');
  await engineer.accessible();
  await engineer.picture('chart-define');
  await engineer.tap(button(engineer, 'Set it up'));
  await expect(page.getByText('The chart is set up.')).toBeVisible();
  const chart = page.getByRole('region', { name: 'mean and s' });
  await expect(chart).toContainText('Limits are provisional');
  await expect(page.getByRole('row', { name: /^Cpk \(within lots\)/ })).toContainText('approximate, Bissell');

  await engineer.tap(chart.getByRole('button', { name: 'Freeze limits' }));
  await expect(page.getByText('Only 12 lots.')).toBeVisible();
  await fillIn(engineer, 'Why these limits', 'Steady since the wheel was changed');
  await engineer.accessible();
  await engineer.picture('chart-freeze');
  await pressPin(engineer, '4010');
  await expect(page.getByText('The limits are frozen.')).toBeVisible();
  await expect(chart).toContainText('Limits frozen from 12 lots by Ida Marlow');
  await expect(chart).toContainText('in control');

  // The desk stays open; the last lot is measured at its bench.
  await finishThickness(inspector);
  await expect(chart).toContainText('signal');
  await expect(chart.getByRole('listitem').filter({ hasText: 'one lot beyond a limit, mean above' })).toContainText('posted');
  const slider = chart.getByRole('slider', { name: 'Lot read out: mean of mean and s' });
  await expect(slider).toHaveAttribute('aria-valuetext', new RegExp(`^${LAST}: 12\\.\\d+ mm, limits .*signal S\\d`));
  await slider.focus();
  await engineer.press('ArrowLeft');
  await expect(slider).toHaveAttribute('aria-valuetext', /^L26-0592: 12\.\d+ mm, limits/);
  await engineer.press('Home');
  await expect(slider).toHaveAttribute('aria-valuetext', /^L26-0581: /);
  await engineer.tap(chart.getByText('Show the table'));
  await expect(chart.getByRole('row', { name: new RegExp(LAST) })).toContainText('S1');
  const saved = page.waitForEvent('download');
  await engineer.tap(chart.getByRole('button', { name: 'Save as CSV' }));
  expect((await saved).suggestedFilename()).toBe('chart-circle-meanAndS.csv');
  await engineer.accessibleInEveryTheme();
  await engineer.picture('chart-signal');
  await engineer.tap(button(engineer, /^Ppk \(overall\) [\d.]+: how\?/));
  await expect(page.getByText('Bissell, Applied Statistics 39 (1990) 331')).toBeVisible();
  await engineer.accessible();
  await engineer.picture('capability-how');
  await engineer.press('Escape');

  // The lot was accepted and is held all the same; its thread and its hold lead back to the chart.
  const thread = (await threadOf(engineer, LAST)).map(({ body }) => body.type);
  expect(thread.slice(-3)).toEqual(['verdictGiven', 'chartSignalled', 'held']);
  await engineer.tap(chart.getByRole('listitem').filter({ hasText: 'one lot beyond a limit, mean above' }).getByRole('link', { name: LAST }));
  await expect(page.getByRole('heading', { name: 'On hold' })).toBeVisible();
  await expect(page.getByText('A control chart signalled with this lot.')).toBeVisible();
  await expect(page.getByRole('link', { name: 'Open its charts' }).first()).toHaveAttribute('href', PAGE);
  await engineer.accessible();
  await engineer.picture('chart-hold');
  await engineer.tap(page.getByRole('radio', { name: /clear/i }));
  await fillIn(engineer, 'Reason, as it will stand on the traveller', 'Wheel dressed, pieces within the drawing');
  await engineer.tap(button(engineer, 'Go on to sign'));
  await pressPin(engineer, '4010');
  await expect(page.getByRole('heading', { name: 'On hold' })).toHaveCount(0);

  await page.goto(PAGE);
  await engineer.tap(chart.getByRole('button', { name: 'Begin anew' }));
  await fillIn(engineer, 'What was found, and what was done', 'Wheel worn; dressed');
  await engineer.tap(page.locator('gh-sheet[open]').getByRole('button', { name: 'Begin anew' }));
  await expect(page.getByText('The chart begins anew with the next lot.')).toBeVisible();

  const lab = await plant.openKiosk('L-201', 'Lab', { portrait: true });
  await lab.page.goto(PAGE);
  await expect(lab.page.getByRole('region', { name: 'mean and s' })).toContainText('Limits frozen from 12 lots');
  await expect(lab.page.getByText('A quality engineer sets charts up')).toBeVisible();
  expect(await lab.page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(0);
  await lab.accessible();
  await lab.picture('chart-portrait');
  await lab.page.goto('/charts');
  await expect(lab.page.getByRole('row', { name: /Inscribed circle d.*mean and s/ })).toBeVisible();
  await lab.accessible();
  await lab.picture('charts-list');
});
