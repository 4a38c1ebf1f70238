import { lotsWaitingFor, threadOf } from './lot-stories.ts';
import { expect, test } from './plant.ts';
import type { Kiosk } from './plant.ts';

const button = ({ page }: Kiosk, name: string | RegExp) => page.getByRole('button', { name });
const verdict = ({ page }: Kiosk) => page.getByRole('status').filter({ hasText: /Accepted|Rejected/ });
const found = ({ page }: Kiosk, kind: string) => page.getByRole('row').filter({ has: page.getByRole('rowheader', { name: kind }) }).getByRole('cell').first();

test('an inspector accepts a clean sample of 80 in three touches, and two other benches see it at once', async ({ startPlant }) => {
  const plant = await startPlant((story) => lotsWaitingFor(story, 'final-visual', [{ id: 'L26-0501' }, { id: 'L26-0502', pieces: 480 }]));
  const inspector = await plant.openKiosk('I-303', 'Final visual 1');
  const marking = await plant.openKiosk('I-302', 'Marking', { portrait: true });
  const office = await plant.openKiosk('Q-401', 'Office');
  await office.page.goto('/traveller/lot/L26-0501');
  await expect(marking.page.getByText('Nothing waits at this bench.')).toBeVisible();
  await marking.accessible();
  await marking.picture('bench-empty-portrait');
  const row = inspector.page.getByRole('link', { name: /L26-0501.*Start Final visual/ });
  await expect(row).toBeVisible();
  await inspector.accessible();

  inspector.countFromHere();
  await inspector.tap(row);
  await expect(button(inspector, 'All 80 are good')).toBeVisible();
  await inspector.accessible();
  await inspector.picture('final-visual');
  await inspector.tap(button(inspector, 'All 80 are good'));
  await expect(inspector.page.getByText('80 pieces looked at, none found.')).toBeVisible();
  await inspector.accessible();
  await inspector.tap(button(inspector, 'Confirm'));
  await expect(verdict(inspector)).toContainText('critical 0 found in 80, accept to 0 (letter J, normal, AQL 0.15)');
  expect(inspector.touches).toBe(3);
  await expect(verdict(inspector)).toContainText('Accepted');
  await expect(verdict(inspector)).toContainText('major 0 found in 80, accept to 1 (letter J, normal, AQL 0.65)');
  await expect(verdict(inspector)).toContainText('minor 0 found in 80, accept to 5 (letter J, normal, AQL 2.5)');
  await inspector.accessible();
  await inspector.picture('verdict-accepted');

  await expect(marking.page.getByRole('link', { name: /L26-0501.*Start Marking/ })).toBeVisible();
  await expect(office.page.getByText(/0 found in 80, accept to 1/).first()).toBeVisible();
  await office.accessible();
  const judged = (await threadOf(inspector, 'L26-0501')).filter(({ body }) => body.type === 'verdictGiven' && body['gate'] === 'final-visual');
  expect(judged).toHaveLength(1);
});

test('the same is done with the keyboard alone', async ({ startPlant }) => {
  const plant = await startPlant((story) => lotsWaitingFor(story, 'final-visual', [{ id: 'L26-0501' }]));
  const inspector = await plant.openKiosk('I-303', 'Final visual 1');
  const row = inspector.page.getByRole('link', { name: /L26-0501/ });
  await expect(row).toBeVisible();
  inspector.countFromHere();
  await inspector.reach(inspector.page.getByRole('link', { name: 'Go to the work' }));
  await inspector.press('Enter');
  await inspector.reach(row);
  await inspector.press('Enter');
  await expect(button(inspector, 'All 80 are good')).toBeVisible();
  await inspector.reach(button(inspector, 'All 80 are good'));
  await inspector.press('Enter');
  await inspector.reach(button(inspector, 'Confirm'));
  await inspector.press('Enter');
  await expect(verdict(inspector)).toContainText('minor 0 found in 80, accept to 5 (letter J, normal, AQL 2.5)');
  await inspector.reach(inspector.page.getByRole('link', { name: 'Back to the list' }));
  await inspector.press('Enter');
  await expect(inspector.page.getByText('Nothing waits at this bench.')).toBeVisible();
  expect(inspector.touches).toBe(0);
  expect(inspector.keystrokes).toBeLessThanOrEqual(25);
});

test('a nonconformity is a touch on what was seen, another for one more, and one to take it back', async ({ startPlant }) => {
  const plant = await startPlant((story) => lotsWaitingFor(story, 'final-visual', [{ id: 'L26-0501' }]));
  const inspector = await plant.openKiosk('I-303', 'Final visual 1');
  const second = await plant.openKiosk('I-301', 'Final visual 1');
  for (const kiosk of [inspector, second]) await kiosk.page.goto('/traveller/lot/L26-0501?work');
  await expect(button(inspector, 'All 80 are good')).toBeVisible();
  inspector.countFromHere();
  await inspector.tap(button(inspector, /^Stain/));
  await inspector.tap(button(inspector, /^Stain/));
  expect(inspector.touches).toBe(2);
  await expect(found(inspector, 'minor')).toHaveText('2');
  await expect(found(second, 'minor')).toHaveText('2');
  await second.tap(button(second, /^Chip on the cutting edge/));
  await expect(found(inspector, 'major')).toHaveText('1');
  await inspector.tap(button(inspector, '−1 Stain'));
  await expect(found(second, 'minor')).toHaveText('1');
  await inspector.accessible();
  await inspector.picture('kiosk-tally');
  await inspector.tap(button(inspector, 'Done: 80 looked at'));
  await expect(inspector.page.getByText('80 pieces looked at, 2 found. All the others are good.')).toBeVisible();
  await inspector.accessible();
  await inspector.tap(button(inspector, 'Confirm'));
  await expect(verdict(second)).toContainText('minor 1 found in 80, accept to 5 (letter J, normal, AQL 2.5)');
  await expect(verdict(second)).toContainText('major 1 found in 80, accept to 1 (letter J, normal, AQL 0.65)');
});

test('where a class counts fewer pieces than are drawn, the kiosk asks which piece it was', async ({ startPlant }) => {
  const plant = await startPlant((story) => lotsWaitingFor(story, 'final-visual', [{ id: 'L26-0502', pieces: 480 }]));
  const inspector = await plant.openKiosk('I-303', 'Final visual 1', { portrait: true });
  await inspector.tap(inspector.page.getByRole('link', { name: /L26-0502/ }));
  await expect(button(inspector, 'All 80 are good')).toBeVisible();
  await inspector.accessible();
  await inspector.picture('final-visual-portrait');
  inspector.countFromHere();
  await inspector.tap(button(inspector, /^Stain/));
  await expect(inspector.page.getByRole('heading', { name: 'Which piece shows: Stain?' })).toBeVisible();
  await expect(inspector.page.getByText('The class minor counts the first 50 of the draw, so its pieces are named.')).toBeVisible();
  await inspector.accessible();
  await inspector.tap(button(inspector, '7'));
  await inspector.tap(button(inspector, 'Record'));
  await expect(found(inspector, 'minor')).toHaveText('1');
  expect(inspector.touches).toBe(3);
  // Piece 60 is drawn for the critical and major classes; a stain on it is on record but does not count against the minor class.
  inspector.countFromHere();
  await inspector.tap(button(inspector, /^Stain/));
  await inspector.type('60');
  await inspector.press('Enter');
  await expect(button(inspector, /^Stain/)).toContainText('2');
  await expect(found(inspector, 'minor')).toHaveText('1');
  expect([inspector.touches, inspector.keystrokes]).toEqual([1, 3]);
  await inspector.tap(button(inspector, 'Done: 80 looked at'));
  await inspector.tap(button(inspector, 'Confirm'));
  await expect(verdict(inspector)).toContainText('minor 1 found in 50, accept to 3 (letter H, normal, AQL 2.5)');
});

test('the next person takes over with one scan of the badge and a PIN', async ({ startPlant }) => {
  const plant = await startPlant((story) => lotsWaitingFor(story, 'final-visual', [{ id: 'L26-0501' }]));
  const kiosk = await plant.openKiosk('I-303', 'Final visual 1');
  await kiosk.tap(kiosk.page.getByRole('link', { name: /L26-0501/ }));
  await kiosk.tap(button(kiosk, /^Stain/));
  await expect(found(kiosk, 'minor')).toHaveText('1');
  kiosk.countFromHere();
  await kiosk.scan('I-301');
  await expect(kiosk.page.getByRole('group', { name: 'PIN of I-301' })).toBeVisible();
  await kiosk.accessible();
  await kiosk.picture('sign-on');
  await kiosk.type('3010');
  await kiosk.press('Enter');
  await expect(button(kiosk, 'Nell Harrow: change person')).toBeVisible();
  expect([kiosk.touches, kiosk.keystrokes]).toEqual([0, 5]);
  await kiosk.tap(button(kiosk, /^Small pit/));
  await expect(found(kiosk, 'minor')).toHaveText('2');
  // The kiosk counts a touch at once; the thread has it as soon as the server has written it.
  await expect.poll(async () => (await threadOf(kiosk, 'L26-0501')).filter(({ body }) => body.type === 'findingRecorded').map(({ by }) => by)).toEqual(['I-303', 'I-301']);
});
