import { pressPin } from './keypad.ts';
import { expect, test } from './plant.ts';
import type { Kiosk } from './plant.ts';

const button = ({ page }: Kiosk, name: string | RegExp) => page.getByRole('button', { name });

test('a new version of a plan is drafted with a reason and comes into force with the second engineer’s approval', async ({ startPlant }) => {
  const plant = await startPlant();
  const first = await plant.openKiosk('Q-401', 'Office');
  await first.page.goto('/plans/plan/ROUTE-CNMG');
  await expect(first.page.getByText('Version 1: In force')).toBeVisible();
  await expect(first.page.getByText('Ground dimensions').first()).toBeVisible();
  await first.accessibleInEveryTheme();
  await first.picture('plan');
  await first.tap(first.page.getByRole('link', { name: 'Draft a new version' }));
  const aql = first.page.getByRole('region', { name: 'Final visual' }).getByRole('combobox', { name: /AQL major/ }).or(first.page.getByRole('region', { name: 'Final visual' }).getByRole('textbox', { name: /AQL major/ }));
  await expect(aql).toHaveValue('0.65');
  await aql.fill('0.7');
  await expect(first.page.getByText(/^One of 0\.01/)).toBeVisible();
  await first.accessible();
  await aql.fill('0.4');
  await expect(first.page.getByText('was 0.65')).toBeVisible();
  await first.tap(button(first, 'Draft it'));
  await expect(first.page.getByText('Say why.')).toBeVisible();
  await first.tap(first.page.getByRole('textbox', { name: 'Why it is changed' }));
  await first.type('Fewer chips since the new brushes');
  await expect(first.page.getByText('Changed: 1')).toBeVisible();
  await first.accessibleInEveryTheme();
  await aql.scrollIntoViewIfNeeded();
  await first.picture('plan-draft');
  await first.tap(button(first, 'Draft it'));
  await expect(first.page.getByText('Version 2: Draft')).toBeVisible();
  await expect(first.page.getByText(/Final visual.*AQL major, %: 0\.65 → 0\.4/)).toBeVisible();
  await first.tap(button(first, 'Approve this version'));
  await pressPin(first, '4010');
  await expect(first.page.getByText('You have approved this version; a second engineer is needed.')).toBeVisible();

  const second = await plant.openKiosk('Q-402', 'Office');
  await second.page.goto('/plans/plan/ROUTE-CNMG/2');
  await expect(second.page.getByText(/one of two approvals: Ida Marlow/)).toBeVisible();
  await second.tap(button(second, 'Approve this version'));
  await expect(second.page.getByText('Plan approved by')).toBeVisible();
  await second.accessibleInEveryTheme();
  await second.picture('plan-approval');
  await pressPin(second, '4020');
  for (const kiosk of [first, second]) await expect(kiosk.page.getByText('Version 2: In force')).toBeVisible();
});
