import type { Kiosk } from './plant.ts';
import { expect, test } from './plant.ts';

const button = ({ page }: Kiosk, name: string | RegExp) => page.getByRole('button', { name });
const partNow = async ({ page }: Kiosk): Promise<string> => (await page.getByRole('heading', { name: /^Part / }).textContent())?.replace('Part ', '').trim() ?? '';
/** What the micrometer shows: three parts far apart, the second person a micrometre more, each second trial one more on part A. All invented. */
const reading = (part: string, person: number, trial: number): string => (4.72 + 0.04 * ['A', 'B', 'C'].indexOf(part) + 0.001 * person + (part === 'A' ? 0.001 * (trial - 1) : 0)).toFixed(3);

/** Measures all of one person's parts with a gauge that types; tells how often each part was asked for, and in which order. */
async function measureAll(kiosk: Kiosk, person: number): Promise<string[]> {
  const order: string[] = [];
  for (let taken = 0; taken < 6; taken += 1) {
    await expect(kiosk.page.getByRole('progressbar')).toHaveAttribute('aria-valuenow', String(taken));
    const part = await partNow(kiosk);
    await kiosk.gauge(reading(part, person, 1 + order.filter((each) => each === part).length));
    order.push(part);
  }
  await expect(kiosk.page.getByText('You have measured all')).toBeVisible();
  return order;
}

test('two people measure three parts twice in blind order at the kiosk, and an engineer reads the result, signs it and takes it into the uncertainty', async ({ startPlant }) => {
  const plant = await startPlant();
  const engineer = await plant.openKiosk('Q-401', 'Office');
  await engineer.page.goto('/gauges/studies');
  await expect(engineer.page.getByText('No study was made yet')).toBeVisible();
  await engineer.accessible();
  await engineer.tap(button(engineer, 'Open a study'));
  await engineer.page.getByLabel('Number').fill('S26-0007');
  await engineer.page.getByLabel('What is measured').fill('Thickness');
  await engineer.tap(engineer.page.getByText('MIC-11', { exact: false }).first());
  await engineer.page.getByLabel('Tolerance, upper less lower limit (may stay empty)').fill('0.1');
  await engineer.page.getByLabel('A reading is at least').fill('4.6');
  await engineer.page.getByLabel('A reading is at most').fill('4.9');
  await engineer.page.getByLabel('Times each part is measured by each').fill('2');
  await engineer.tap(button(engineer, 'Open it'));
  await expect(engineer.page.getByText('Choose who measures.')).toBeVisible();
  await engineer.accessible();
  for (const name of ['Nell Harrow', 'Jory Pell']) await engineer.tap(engineer.page.getByText(name));
  await engineer.page.getByLabel('Parts, one a line').fill('A\nB\nC');
  await expect(engineer.page.getByText('12 readings in all')).toBeVisible();
  await engineer.picture('study-open');
  await engineer.tap(button(engineer, 'Open it'));
  await expect(engineer.page.getByRole('heading', { name: 'Crossed gauge study S26-0007' })).toBeVisible();
  await expect(engineer.page.getByText('12 readings are still to be taken.', { exact: false })).toBeVisible();
  await engineer.accessible();

  const first = await plant.openKiosk('I-301', 'Gauge room', { portrait: true });
  await first.page.goto('/gauges/studies');
  await first.accessible();
  await first.tap(first.page.getByRole('button', { name: 'Measure', exact: true }));
  await expect(first.page.getByRole('heading', { name: /^Part [ABC]$/ })).toBeVisible();
  await first.accessibleInEveryTheme();
  await first.picture('study-measure-upright');
  // A slipped decimal is questioned, and the question tells nothing of earlier readings.
  await first.gauge('0.476');
  await expect(first.page.getByRole('dialog', { name: '0.476 mm? Did you mean 4.76 mm?' })).toBeVisible();
  await first.accessible();
  await first.tap(button(first, 'Enter it again'));
  first.countFromHere();
  const orderOfFirst = await measureAll(first, 0);
  // A gauge that types needs no touch at all.
  expect(first.touches).toBe(0);
  for (const trial of [orderOfFirst.slice(0, 3), orderOfFirst.slice(3)]) expect([...trial].sort()).toEqual(['A', 'B', 'C']);
  expect(orderOfFirst[3]).not.toBe(orderOfFirst[2]);
  await first.accessible();

  const second = await plant.openKiosk('I-302', 'Gauge room');
  await second.page.goto('/gauges/studies/S26-0007/measure');
  await expect(second.page.getByRole('heading', { name: /^Part [ABC]$/ })).toBeVisible();
  await second.accessible();
  await second.picture('study-measure');
  await expect(second.page.getByText('4.7', { exact: false })).toHaveCount(0);
  // A wrong reading is put right by its own person.
  const firstPart = await partNow(second);
  await second.gauge('4.799');
  await expect(second.page.getByRole('progressbar')).toHaveAttribute('aria-valuenow', '1');
  await second.tap(button(second, 'Correct the last'));
  await expect(second.page.getByRole('dialog', { name: `What did the gauge show for part ${firstPart}?` })).toBeVisible();
  await second.accessible();
  await second.gauge(reading(firstPart, 1, 1));
  await expect(second.page.getByRole('dialog')).toHaveCount(0);
  const seen = [firstPart];
  for (let taken = 1; taken < 6; taken += 1) {
    await expect(second.page.getByRole('progressbar')).toHaveAttribute('aria-valuenow', String(taken));
    const part = await partNow(second);
    await second.gauge(reading(part, 1, 1 + seen.filter((each) => each === part).length));
    seen.push(part);
  }
  await expect(second.page.getByText('Every reading of the study is there.', { exact: false })).toBeVisible();

  // Somebody who is not of the study measures nothing.
  const stranger = await plant.openKiosk('I-303', 'Gauge room');
  await stranger.page.goto('/gauges/studies/S26-0007/measure');
  await expect(stranger.page.getByText('You do not measure in this study')).toBeVisible();
  await stranger.accessible();

  await expect(engineer.page.getByText('Every reading is there.')).toBeVisible();
  // By hand from the twelve readings: part means 4.721, 4.7605, 4.8005; squares of parts 4·Σ(mean − grand mean)², of people 12·0.0005².
  const table = engineer.page.getByRole('table', { name: 'Analysis of variance' });
  await expect(table.getByRole('row', { name: /^Part 2 0\.01264/ })).toBeVisible();
  await expect(table.getByRole('row', { name: /^Person 1 0\.000003 / })).toBeVisible();
  await engineer.accessibleInEveryTheme();
  await engineer.tap(engineer.page.getByRole('button', { name: /^Gauge: .*Why this number\?$/ }));
  await expect(engineer.page.getByRole('dialog', { name: 'Why this number? Gauge' })).toBeVisible();
  await expect(engineer.page.getByText('s² = s² repeatability + s² reproducibility')).toBeVisible();
  await engineer.accessible();
  await engineer.press('Escape');
  await engineer.tap(button(engineer, 'Close the study and sign'));
  await engineer.reach(engineer.page.getByRole('group', { name: 'PIN' }).getByRole('button', { name: '1', exact: true }));
  await engineer.type('4010');
  await engineer.press('Enter');
  await expect(engineer.page.getByText('Study closed by Ida Marlow', { exact: false })).toBeVisible();
  await engineer.accessible();
  await engineer.page.getByRole('heading', { name: 'Result', exact: true }).evaluate((heading) => heading.scrollIntoView());
  await engineer.picture('study-result');

  await engineer.tap(button(engineer, 'Take it into the uncertainty'));
  await engineer.reach(engineer.page.getByRole('group', { name: 'PIN' }).getByRole('button', { name: '1', exact: true }));
  await engineer.type('4010');
  await engineer.press('Enter');
  await expect(engineer.page.getByText('This study stands in the gauge’s uncertainty.')).toBeVisible();

  const pdf = await engineer.page.request.get('/api/studies/S26-0007/study.pdf');
  expect((await pdf.body()).subarray(0, 5).toString()).toBe('%PDF-');
  await engineer.page.setViewportSize({ width: 800, height: 1280 });
  expect(await engineer.page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth)).toBe(true);
  await engineer.accessible();
});
