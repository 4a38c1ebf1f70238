import { lotsWaitingFor } from './lot-stories.ts';
import { expect, someone, test } from './plant.ts';
import type { Kiosk, Story } from './plant.ts';

const button = ({ page }: Kiosk, name: string | RegExp) => page.getByRole('button', { name });
const rows = ({ page }: Kiosk, head: string) => page.getByRole('list', { name: head }).getByRole('listitem');

/** The edge bench late in a shift: one lot half measured, one on hold, two not begun; a gauge is nearly due. */
function lateInTheShift(story: Story): void {
  lotsWaitingFor(story, 'edge', ['L26-0591', 'L26-0592', 'L26-0593', 'L26-0594'].map((id) => ({ id })));
  story.gate('I-302', 'lot:L26-0591', 'edge', { leaveOpen: true });
  story.floor.give(someone('Q-401'), 'Office', { type: 'hold', subject: 'lot:L26-0592', reason: 'Trays mixed on the way from grinding' });
}

test('the hand-over says what is in work, on hold, due and not begun, keeps itself up to date, and prints', async ({ startPlant }) => {
  const plant = await startPlant(lateInTheShift);
  const leaving = await plant.openKiosk('I-302', 'Edge bench');
  await leaving.tap(button(leaving, 'Hand over'));
  await expect(leaving.page.getByRole('heading', { name: 'Hand-over at Edge bench' })).toBeVisible();
  await expect(rows(leaving, 'In work')).toHaveCount(1);
  await expect(rows(leaving, 'In work')).toContainText(/L26-0591[\s\S]*Go on with Edge preparation/);
  await expect(rows(leaving, 'On hold')).toHaveCount(1);
  await expect(rows(leaving, 'On hold')).toContainText(/L26-0592[\s\S]*Trays mixed on the way from grinding/);
  await expect(rows(leaving, 'Not begun')).toHaveCount(2);
  await expect(leaving.page.getByRole('listitem').filter({ hasText: 'OPT-31' })).toContainText('calibration due');
  await leaving.accessibleInEveryTheme();
  await leaving.picture('hand-over');

  // The next shift reads it at the same bench; what an engineer does meanwhile comes in by itself.
  const coming = await plant.openKiosk('I-301', 'Edge bench', { portrait: true });
  await coming.page.goto('/bench/hand-over');
  await expect(rows(coming, 'Not begun')).toHaveCount(2);
  await coming.accessible();
  const engineer = await plant.openKiosk('Q-401', 'Office');
  await engineer.page.goto('/traveller/lot/L26-0593');
  await engineer.tap(button(engineer, 'Hold'));
  await engineer.tap(engineer.page.getByRole('textbox', { name: 'Why' }));
  await engineer.type('Same trays as L26-0592');
  await engineer.tap(button(engineer, 'Put on hold'));
  for (const kiosk of [leaving, coming]) {
    await expect(rows(kiosk, 'On hold')).toHaveCount(2);
    await expect(rows(kiosk, 'Not begun')).toHaveCount(1);
  }
  await leaving.page.evaluate(() => {
    window.print = () => { document.documentElement.dataset['printed'] = 'yes'; };
  });
  await leaving.tap(button(leaving, 'Print'));
  await expect(leaving.page.locator('html')).toHaveAttribute('data-printed', 'yes');
  await coming.tap(coming.page.getByRole('link', { name: /L26-0591/ }));
  await expect(coming.page).toHaveURL(/\/traveller\/lot\/L26-0591\?work$/);
});

test('a bench with nothing to hand over says so', async ({ startPlant }) => {
  const plant = await startPlant();
  const kiosk = await plant.openKiosk('I-302', 'Marking');
  await kiosk.page.goto('/bench/hand-over');
  for (const none of ['Nothing is in work.', 'Nothing is on hold here.', 'Nothing waits at this bench.']) await expect(kiosk.page.getByText(none)).toBeVisible();
  await kiosk.accessible();
  await kiosk.tap(button(kiosk, 'Back to the list'));
  await expect(kiosk.page).toHaveURL(/\/bench$/);
});
