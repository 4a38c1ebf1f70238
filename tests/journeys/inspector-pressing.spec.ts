import { expect, test } from './plant.ts';
import type { Kiosk, Plant, Story } from './plant.ts';
import { tabTo } from './keypad.ts';
import { lotsWaitingFor } from './lot-stories.ts';

/** A lot at the press: every piece is weighed, and each 250 pieces, in a small lot with the last, 5 are looked at under the lens. */
function lotAtPress(pieces: number): (story: Story) => void {
  return (story) => lotsWaitingFor(story, 'press', [{ id: 'L26-0910', pieces }]);
}
const keypad = (kiosk: Kiosk) => kiosk.page.locator('gh-asked gh-keypad');
const verdict = (kiosk: Kiosk) => kiosk.page.locator('gh-verdict').getByRole('status');
const demand = (kiosk: Kiosk) => kiosk.page.locator('gh-demand');

async function atThePress(plant: Plant, badge = 'I-301', portrait = false): Promise<Kiosk> {
  const kiosk = await plant.openKiosk(badge, 'Press 2', { portrait });
  await kiosk.tap(kiosk.page.getByRole('link', { name: /L26-0910/ }));
  await expect(keypad(kiosk)).toContainText('Weight of piece 1');
  return kiosk;
}
/** The target as the kiosk shows it, worked out from this powder's shrinkage and density, g. */
async function targetOf(kiosk: Kiosk): Promise<number> {
  const [, target = ''] = /Target ([\d.]+) g/.exec(await kiosk.page.getByText(/^Target/).innerText()) ?? [];
  expect(Number(target)).toBeGreaterThan(1);
  return Number(target);
}
/** Weights that lie by turns above and below the target, well inside its limits: no drift. */
const steady = (target: number, count: number): string[] => Array.from({ length: count }, (_, at) => (target + (at % 2 === 0 ? 0.004 : -0.004)).toFixed(3));

test('a balance that types weighs every piece without a touch; the look is asked for when it falls due and not before', async ({ startPlant }) => {
  const plant = await startPlant(lotAtPress(500));
  const kiosk = await atThePress(plant);
  const other = await atThePress(plant, 'I-302', true);
  const target = await targetOf(kiosk);
  kiosk.countFromHere();
  await kiosk.accessibleInEveryTheme();
  const weights = steady(target, 500);
  for (const weight of weights.slice(0, 24)) await kiosk.gauge(weight);
  await expect(keypad(kiosk)).toContainText('Weight of piece 25');
  await expect(kiosk.page.getByText(/The next look is due in 226 pieces/)).toBeVisible();
  await expect(kiosk.page.getByText(/^Drift/)).toHaveCount(0);
  await kiosk.picture('inspector-pressing-1');
  await kiosk.gauge(weights[24] ?? '');
  // The block of 25 is entered by itself and stands on the other kiosk at once.
  await expect(other.page.getByText('25 of 500')).toBeVisible({ timeout: 1000 });
  await other.picture('inspector-pressing-2');
  await other.accessible();
  for (const weight of weights.slice(25, 249)) await kiosk.gauge(weight);
  await expect(kiosk.page.getByText(/The next look is due in 1 pieces/)).toBeVisible();
  await kiosk.gauge(weights[249] ?? '');
  await expect(demand(kiosk)).toContainText('Look 1: look at 5 pieces');
  await expect(demand(other)).toContainText('Look 1: look at 5 pieces', { timeout: 1000 });
  expect({ touches: kiosk.touches, keystrokes: kiosk.keystrokes }, '250 weights').toEqual({ touches: 0, keystrokes: 0 });
  await kiosk.picture('inspector-pressing-3');
  await kiosk.accessibleInEveryTheme();
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'All 5 are good' }));
  await expect(keypad(kiosk)).toContainText('Weight of piece 251');
  for (const weight of weights.slice(250)) await kiosk.gauge(weight);
  await expect(demand(kiosk)).toContainText('Look 2: look at 5 pieces');
  await expect(verdict(kiosk)).toHaveText('');
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'All 5 are good' }));
  await expect(verdict(kiosk)).toHaveText('Accepted: all 2 characteristics');
  await expect(kiosk.page.locator('gh-verdict')).toContainText(/0 of 500 pieces outside .* and ejected, at most 2 %/);
  await expect(kiosk.page.locator('gh-verdict')).toContainText('0 found in 10 over 2 looks, accept none');
  expect(kiosk.touches, 'two looks with nothing found, one touch each').toBe(2);
  await expect(verdict(other)).toHaveText('Accepted: all 2 characteristics', { timeout: 1000 });
  await kiosk.picture('inspector-pressing-4');
  await kiosk.accessibleInEveryTheme();
});

test('drift is announced before a limit is reached', async ({ startPlant }) => {
  const plant = await startPlant(lotAtPress(60));
  const kiosk = await atThePress(plant);
  const target = await targetOf(kiosk);
  for (const weight of steady(target, 4)) await kiosk.gauge(weight);
  for (let nth = 0; nth < 8; nth += 1) await kiosk.gauge((target + 0.012 + nth / 1000).toFixed(3));
  await expect(keypad(kiosk)).toContainText('Weight of piece 13');
  const drift = kiosk.page.getByRole('status').filter({ hasText: 'Drift' });
  await expect(drift).toHaveCount(0);
  await kiosk.gauge((target + 0.02).toFixed(3));
  await expect(drift).toContainText('the last 9 lie above the target');
  await expect(kiosk.page.getByRole('row', { name: /outside limits/ })).toHaveCount(0);
  await kiosk.picture('inspector-pressing-5');
  await kiosk.accessibleInEveryTheme();
});

test('more than two in a hundred outside, or anything found under the lens, rejects the lot and holds it', async ({ startPlant }) => {
  const plant = await startPlant(lotAtPress(60));
  const kiosk = await atThePress(plant);
  const other = await plant.openKiosk('Q-401', 'Quality desk');
  const target = await targetOf(kiosk);
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Paste a block' }));
  const light = (target * 0.99).toFixed(3);
  await kiosk.page.getByRole('textbox', { name: 'Weights of a block, in the order made' }).fill([...steady(target, 57), light, light, 'x'].join('\n'));
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Take these weights' }));
  await expect(kiosk.page.getByText('“x” is no weight. Nothing was taken.')).toBeVisible();
  await kiosk.accessibleInEveryTheme();
  await kiosk.page.getByRole('textbox', { name: 'Weights of a block, in the order made' }).fill([...steady(target, 58), light, light].join('\n'));
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Take these weights' }));
  await expect(demand(kiosk)).toContainText('Look 1: look at 5 pieces');
  kiosk.countFromHere();
  await kiosk.tap(kiosk.page.getByRole('button', { name: /Chipped edge/ }));
  await kiosk.accessibleInEveryTheme();
  await kiosk.picture('inspector-pressing-7');
  await kiosk.tap(kiosk.page.locator('gh-sheet[open]').getByRole('button', { name: '2', exact: true }));
  expect(kiosk.touches, 'a defect: what, how many').toBe(2);
  await expect(verdict(kiosk)).toHaveText('Rejected: at 2 of 2 characteristics: Weight of every piece and Look under the lens');
  await expect(kiosk.page.locator('gh-verdict')).toContainText('2 of 60 pieces outside');
  await expect(kiosk.page.locator('gh-verdict')).toContainText('2 found in 5 over 1 look, accept none');
  await kiosk.picture('inspector-pressing-6');
  await kiosk.accessibleInEveryTheme();
  await other.page.goto('/traveller/lot/L26-0910');
  await expect(other.page.getByRole('heading', { name: /On hold/ }).first()).toBeVisible();
});

test('the whole block by keyboard, and what is gathered is entered when its person leaves', async ({ startPlant }) => {
  const plant = await startPlant(lotAtPress(60));
  const kiosk = await plant.openKiosk('I-301', 'Press 2');
  await expect(kiosk.page.getByRole('link', { name: /L26-0910/ })).toBeVisible();
  await tabTo(kiosk, /L26-0910/);
  await kiosk.press('Enter');
  await expect(keypad(kiosk)).toContainText('Weight of piece 1');
  const weights = steady(await targetOf(kiosk), 60);
  for (const weight of weights.slice(0, 3)) {
    kiosk.countFromHere();
    await kiosk.type(weight);
    await kiosk.press('Enter');
    expect(kiosk.keystrokes).toBe(weight.length + 1);
  }
  await tabTo(kiosk, 'To the list', 80);
  await kiosk.press('Enter');
  await expect(kiosk.page.getByRole('heading', { name: 'Press 2' })).toBeVisible();
  await expect(kiosk.page.getByRole('link', { name: /L26-0910/ })).toBeVisible();
  await tabTo(kiosk, /L26-0910/);
  await kiosk.press('Enter');
  await expect(kiosk.page.getByText('3 of 60')).toBeVisible();
  for (const weight of weights.slice(3)) {
    await kiosk.type(weight);
    await kiosk.press('Enter');
  }
  await expect(demand(kiosk)).toContainText('Look 1: look at 5 pieces');
  await tabTo(kiosk, 'All 5 are good');
  await kiosk.press('Enter');
  await expect(verdict(kiosk)).toHaveText('Accepted: all 2 characteristics');
});
