import { readFileSync } from 'node:fs';
import { lotsWaitingFor } from './lot-stories.ts';
import { fillIn, pressPin } from './keypad.ts';
import { expect, test } from './plant.ts';
import type { Kiosk } from './plant.ts';

const button = ({ page }: Kiosk, name: string | RegExp) => page.getByRole('button', { name });
const link = ({ page }: Kiosk, name: string | RegExp) => page.getByRole('link', { name });

/** Touches a link to a file and gives what was saved. */
async function saved(kiosk: Kiosk, name: string): Promise<{ readonly name: string; readonly bytes: Buffer }> {
  const [download] = await Promise.all([kiosk.page.waitForEvent('download'), kiosk.tap(link(kiosk, name))]);
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}

test('a version with a double plan is written, signed by two engineers and exported; a lot opened before stays until it is moved', async ({ startPlant }) => {
  const plant = await startPlant((story) => lotsWaitingFor(story, 'press', [{ id: 'L26-0901' }]));
  const first = await plant.openKiosk('Q-401', 'Office');
  await first.page.goto('/plans/plan/ROUTE-CNMG');
  await expect(first.page.getByText('Version 1: In force')).toBeVisible();
  await expect(first.page.getByText('Every open lot of this plan is on the version in force.')).toBeVisible();
  await first.accessibleInEveryTheme();
  await first.picture('plan');

  await first.tap(link(first, 'Write a new version'));
  await first.tap(link(first, 'Looks'));
  await expect(first.page.getByRole('heading', { name: 'Final visual: Looks' })).toBeVisible();
  await first.accessible();
  await first.tap(first.page.getByText('double', { exact: true }));
  await expect(first.page.getByText(/^1 change$/)).toBeVisible();
  // MIL-STD-105E Tables I and III-A (from memory): 1000 pieces, level II, letter J; AQL 2.5 takes 50 and 50, Ac 2 and 6, Re 5 and 7.
  await expect(first.page.getByText(/^n\s50\s+Ac\s2\s+Re\s5$/).first()).toBeVisible();
  await expect(first.page.getByText(/^n\s50\s+Ac\s6\s+Re\s7$/).first()).toBeVisible();
  await expect(first.page.getByText('double tables written from memory, checked by computation only')).toBeVisible();
  await first.page.getByRole('combobox', { name: 'AQL major' }).selectOption('0.4');
  await expect(first.page.getByText(/^2 changes$/)).toBeVisible();
  await first.page.getByRole('combobox', { name: 'AQL critical' }).selectOption('');
  await expect(first.page.getByText('every nonconformity belongs to a class that the rule judges').first()).toBeVisible();
  await first.tap(button(first, 'Undo the last change'));
  await expect(first.page.getByText('every nonconformity belongs to a class that the rule judges')).toHaveCount(0);
  await expect(first.page.getByText(/^2 changes$/)).toBeVisible();
  await first.page.reload();
  await expect(first.page.getByText(/^2 changes$/), 'what was written outlives a reload').toBeVisible();
  await expect(first.page.getByRole('combobox', { name: 'AQL major' })).toHaveValue('0.4');
  await first.accessibleInEveryTheme();
  await first.picture('plan-writing');

  await first.tap(button(first, 'Review and draft'));
  await expect(first.page.getByText('2 changes against version 1').first()).toBeVisible();
  await expect(first.page.getByText('Final visual, Looks, Samples')).toBeVisible();
  await first.tap(button(first, 'Draft this version'));
  await expect(first.page.getByText('Say why.')).toBeVisible();
  await fillIn(first, 'Why it is changed', 'Fewer pieces to look at while the lots are good');
  await first.accessibleInEveryTheme();
  await first.picture('plan-changes');
  await first.tap(button(first, 'Draft this version'));
  await expect(first.page.getByText('Version 2: Draft')).toBeVisible();
  await first.tap(button(first, 'Approve this version'));
  await pressPin(first, '4010');
  await expect(first.page.getByText('You have approved this version; a second engineer is needed.')).toBeVisible();

  const second = await plant.openKiosk('Q-402', 'Office');
  await second.page.goto('/plans/plan/ROUTE-CNMG/2');
  await expect(second.page.getByText(/one of two approvals: Ida Marlow/)).toBeVisible();
  await second.tap(button(second, 'Approve this version'));
  const sheet = second.page.locator('gh-plan-approval');
  await expect(sheet.getByText('Plan approved by')).toBeVisible();
  await expect(sheet.getByText('Final visual, Looks, Samples')).toBeVisible();
  await second.accessibleInEveryTheme();
  await second.picture('plan-approval');
  await pressPin(second, '4020');
  for (const kiosk of [first, second]) await expect(kiosk.page.getByText('Version 2: In force')).toBeVisible();

  await expect(second.page.getByRole('row', { name: /L26-0901.*version 1/ }), 'the lot opened before stays on its version').toBeVisible();
  await second.page.getByText('Nothing else moves it').scrollIntoViewIfNeeded();
  await second.picture('plan-lots');
  await second.tap(button(second, 'Move L26-0901 to version 2'));
  await fillIn(second, 'Why it is moved', 'The customer asks for the new final check');
  await second.accessibleInEveryTheme();
  await pressPin(second, '4020');
  await expect(second.page.getByText('L26-0901 is on version 2 now.')).toBeVisible();
  await expect(second.page.getByText('Every open lot of this plan is on the version in force.')).toBeVisible();

  const pdf = await saved(second, 'This version as PDF');
  expect(pdf.name).toBe('plan-ROUTE-CNMG-v2-1000.pdf');
  expect(pdf.bytes.subarray(0, 5).toString('latin1')).toBe('%PDF-');
  const csv = await saved(second, 'This version as CSV');
  expect(csv.name).toBe('plan-ROUTE-CNMG-v2-1000.csv');
  expect(csv.bytes.toString('utf8')).toMatch(/ROUTE-CNMG,[^\r]*,2,inForce,1000,7,final-visual,[^\r]*minor[^\r]*50:2\/5;50:6\/7/);

  await second.page.goto('/traveller/lot/L26-0901');
  await expect(second.page.getByText('The customer asks for the new final check').first()).toBeVisible();
});

test('a plan that is new is written from the gates of another, on a tablet, and thrown away again', async ({ startPlant }) => {
  const plant = await startPlant();
  const kiosk = await plant.openKiosk('Q-401', 'Office', { portrait: true });
  await kiosk.page.goto('/plans');
  await kiosk.tap(link(kiosk, 'Write a new plan'));
  await kiosk.tap(button(kiosk, 'Begin writing'));
  await expect(kiosk.page.getByText('This must be filled in.')).toBeVisible();
  await fillIn(kiosk, 'Number', 'ROUTE-NEW');
  await fillIn(kiosk, 'Name', 'Route of square inserts');
  await kiosk.page.getByRole('combobox', { name: 'Begin with' }).selectOption('ROUTE-TNMG');
  await kiosk.accessibleInEveryTheme();
  await kiosk.tap(button(kiosk, 'Begin writing'));
  await expect(kiosk.page.getByRole('heading', { name: 'New plan: Route of square inserts' })).toBeVisible();
  await kiosk.tap(button(kiosk, 'Add a gate'));
  await fillIn(kiosk, 'Name of the new gate', 'Magnetic check');
  await kiosk.tap(button(kiosk, 'Add a gate'));
  await expect(kiosk.page.getByText('a gate has at least one characteristic').first()).toBeVisible();
  await kiosk.tap(button(kiosk, 'Add a characteristic'));
  await fillIn(kiosk, 'Name of the new characteristic', 'Pitting');
  await kiosk.page.getByRole('combobox', { name: 'What kind it is' }).selectOption({ label: 'What may be found' });
  await kiosk.tap(button(kiosk, 'Add a characteristic'));
  await kiosk.tap(kiosk.page.getByText('Sequential', { exact: true }));
  await expect(kiosk.page.getByText(/accept to .* reject from/).first()).toBeVisible();
  await kiosk.accessibleInEveryTheme();
  await kiosk.picture('plan-new');
  await kiosk.page.goto('/plans');
  await expect(kiosk.page.getByText('Begun here and not yet drafted')).toBeVisible();
  await kiosk.tap(link(kiosk, 'Route of square inserts, a new plan'));
  await kiosk.tap(button(kiosk, 'Throw this draft away'));
  await kiosk.tap(button(kiosk, 'Throw it away'));
  await expect(link(kiosk, 'Write a new plan')).toBeVisible();
  await expect(kiosk.page.getByText('Begun here and not yet drafted')).toHaveCount(0);
});
