import { execFileSync } from 'node:child_process';
import { lotsWaitingFor, threadOf } from './lot-stories.ts';
import { expect, test } from './plant.ts';
import type { Kiosk, Plant } from './plant.ts';

const button = ({ page }: Kiosk, name: string | RegExp) => page.getByRole('button', { name });
const verdict = ({ page }: Kiosk) => page.getByRole('status').filter({ hasText: /Accepted|Rejected/ });
const sheet = ({ page }: Kiosk) => page.locator('gh-sheet[open]');

/** The certificate's text in the order of its lines, as pdftotext (Poppler) reads it. */
async function certificateText({ page }: Kiosk, lot: string): Promise<string> {
  const reply = await page.request.get(`/api/lots/${lot}/certificate.pdf`);
  expect(reply.headers()['content-type']).toContain('application/pdf');
  return execFileSync('pdftotext', ['-raw', '-', '-'], { input: await reply.body() }).toString('utf8').replaceAll(/\s+/g, ' ');
}

/** Two chips too many are found at final visual. */
async function rejectAtFinalVisual(plant: Plant): Promise<Kiosk> {
  const inspector = await plant.openKiosk('I-303', 'Final visual 1');
  await inspector.tap(inspector.page.getByRole('link', { name: /L26-0521.*Start Final visual/ }));
  for (let chip = 0; chip < 3; chip += 1) await inspector.tap(button(inspector, /^Chip on the cutting edge/));
  await inspector.tap(button(inspector, 'Done: 80 looked at'));
  await inspector.tap(button(inspector, 'Confirm'));
  await expect(verdict(inspector)).toContainText('major 3 found in 80, accept to 1 (letter J, normal, AQL 0.65)');
  await expect(verdict(inspector)).toContainText('Rejected');
  return inspector;
}

async function markAndRelease(plant: Plant): Promise<Kiosk> {
  const marking = await plant.openKiosk('I-302', 'Marking');
  await marking.tap(marking.page.getByRole('link', { name: /L26-0521.*Start Marking/ }));
  await marking.tap(button(marking, 'Yes, confirmed'));
  await marking.tap(button(marking, /^All \d+ are good/));
  await marking.tap(button(marking, 'Confirm'));
  await expect(verdict(marking)).toContainText('Accepted');
  const releaser = await plant.openKiosk('R-501', 'Office');
  await releaser.page.goto('/release/L26-0521');
  await releaser.tap(button(releaser, 'Sign the release'));
  await releaser.type('5010');
  await releaser.press('Enter');
  await expect(releaser.page.getByRole('heading', { name: /^The certificate/ })).toBeVisible();
  return releaser;
}

test('a rejected lot locks itself; an engineer has it sorted; the re-inspection passes and stands on the certificate', async ({ startPlant }) => {
  const plant = await startPlant((story) => lotsWaitingFor(story, 'final-visual', [{ id: 'L26-0521' }]));
  const packer = await plant.openKiosk('P-601', 'Packing', { portrait: true });
  await packer.page.goto('/traveller/lot/L26-0521');
  const engineer = await plant.openKiosk('Q-401', 'Final visual 1');
  const inspector = await rejectAtFinalVisual(plant);
  await expect(inspector.page.getByText(/until a quality engineer decides|Decided by: Quality engineer/).first()).toBeVisible();
  await inspector.accessible();
  await inspector.picture('verdict-rejected');
  await expect(packer.page.getByRole('heading', { name: 'On hold' })).toBeVisible();
  await packer.accessible();
  await packer.picture('hold-portrait');

  const row = engineer.page.getByRole('link', { name: /L26-0521.*Waits for a decision/ });
  await expect(row).toBeVisible();
  await engineer.accessible();
  engineer.countFromHere();
  await engineer.tap(row);
  await expect(engineer.page.getByRole('region', { name: 'What was found' })).toContainText('major 3 found in 80, accept to 1');
  await expect(engineer.page.getByRole('radio', { name: /^Scrap/ })).toBeVisible();
  await engineer.accessible();
  await engineer.picture('hold-decide');
  await engineer.tap(engineer.page.getByRole('radio', { name: /^Sort every piece/ }));
  await engineer.tap(button(engineer, 'Go on to sign'));
  await expect(engineer.page.getByText('This must be filled in.')).toBeVisible();
  await engineer.tap(engineer.page.getByRole('textbox', { name: 'Reason, as it will stand on the traveller' }));
  await engineer.type('Chips come from one tray');
  await engineer.tap(button(engineer, 'Go on to sign'));
  await expect(engineer.page.getByText('Sort every piece: decided by')).toBeVisible();
  await engineer.accessible();
  await engineer.picture('hold-sign');
  for (const digit of '4010') await engineer.tap(engineer.page.getByRole('group', { name: 'PIN' }).getByRole('button', { name: digit }));
  await engineer.tap(button(engineer, 'Sign'));
  await expect(engineer.page.getByRole('heading', { name: /^Sort all/ })).toBeVisible();

  await expect(inspector.page.getByRole('heading', { name: /^Sort all/ })).toBeVisible();
  await inspector.accessible();
  await inspector.picture('sort');
  await inspector.tap(button(inspector, /^Chip on the cutting edge/));
  await expect(inspector.page.locator('gh-keypad')).toBeVisible();
  await inspector.type('21');
  await inspector.press('Enter');
  await inspector.tap(button(inspector, /^Sorted: .*21 taken out/));
  await expect(sheet(inspector)).toContainText('21 pieces taken out and scrapped');
  await inspector.accessible();
  await inspector.tap(button(inspector, 'Confirm'));
  const again = button(inspector, 'Start Final visual').or(button(inspector, /^All 80 are good/));
  await expect(again).toBeVisible();
  if (await button(inspector, 'Start Final visual').isVisible()) await inspector.tap(button(inspector, 'Start Final visual'));
  await inspector.tap(button(inspector, 'All 80 are good'));
  await inspector.tap(button(inspector, 'Confirm'));
  await expect(verdict(inspector)).toContainText('major 0 found in 80, accept to 1 (letter J, normal, AQL 0.65)');

  const releaser = await markAndRelease(plant);
  await expect(releaser.page.getByText('re-inspection').first()).toBeVisible();
  const text = await certificateText(releaser, 'L26-0521');
  expect(text).toMatch(/re-inspection/i);
  const disposed = (await threadOf(releaser, 'L26-0521')).filter(({ body }) => body.type === 'disposed');
  expect(disposed.map(({ by, body }) => [by, body['reason']])).toEqual([['Q-401', 'Chips come from one tray']]);
});

test('a concession is decided with the keyboard alone and stands on the certificate in plain sight', async ({ startPlant }) => {
  const plant = await startPlant((story) => lotsWaitingFor(story, 'final-visual', [{ id: 'L26-0521' }]));
  await rejectAtFinalVisual(plant);
  const engineer = await plant.openKiosk('Q-402', 'Final visual 1');
  const row = engineer.page.getByRole('link', { name: /L26-0521.*Waits for a decision/ });
  await expect(row).toBeVisible();
  engineer.countFromHere();
  await engineer.reach(row);
  await engineer.press('Enter');
  const choices = engineer.page.getByRole('radio');
  await expect(choices.first()).toBeVisible();
  await engineer.reach(choices.first());
  while (!(await engineer.page.getByRole('radio', { name: /^Concession/ }).isChecked())) await engineer.press('ArrowDown');
  const statement = engineer.page.getByRole('textbox', { name: 'Concession, as it will stand on the certificate' });
  await engineer.reach(statement);
  await engineer.type('Chips below 0.05 mm off the nose; accepted for roughing only');
  await engineer.reach(engineer.page.getByRole('textbox', { name: 'Reason, as it will stand on the traveller' }));
  await engineer.type('Agreed with the purchaser');
  await engineer.reach(button(engineer, 'Go on to sign'));
  await engineer.press('Enter');
  await engineer.reach(engineer.page.getByRole('group', { name: 'PIN' }).getByRole('button', { name: '1', exact: true }));
  await engineer.type('4020');
  await engineer.press('Enter');
  await expect(engineer.page.getByRole('heading', { name: 'On hold' })).toBeHidden();
  expect(engineer.touches).toBe(0);
  const releaser = await markAndRelease(plant);
  await expect(releaser.page.getByText('Chips below 0.05 mm off the nose; accepted for roughing only').first()).toBeVisible();
  await releaser.accessible();
  await releaser.picture('release-concession');
  const text = await certificateText(releaser, 'L26-0521');
  expect(text).toContain('Chips below 0.05 mm off the nose; accepted for roughing only');
  expect(text).toMatch(/concession/i);
});
