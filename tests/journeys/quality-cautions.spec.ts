import { fillIn } from './keypad.ts';
import { lotsWaitingFor } from './lot-stories.ts';
import { expect, test } from './plant.ts';
import type { Kiosk } from './plant.ts';

const button = ({ page }: Kiosk, name: string | RegExp) => page.getByRole('button', { name });

test('an engineer words a caution as the site does; the next gate shows it, the open one keeps what it showed, and the thread says which version', async ({ startPlant }) => {
  const plant = await startPlant((story) => lotsWaitingFor(story, 'final-visual', [{ id: 'L26-0801' }, { id: 'L26-0802' }]));
  const inspector = await plant.openKiosk('I-303', 'Final visual 1', { portrait: true });
  await inspector.tap(inspector.page.getByRole('link', { name: /L26-0801.*Start Final visual/ }));
  await expect(inspector.page.getByText('Edges are made to cut', { exact: false })).toBeVisible();

  const engineer = await plant.openKiosk('Q-401', 'Office');
  await engineer.page.goto('/plans/cautions');
  await expect(engineer.page.getByRole('row', { name: /sharpEdges.*tool’s words.*ROUTE-CNMG: Final visual/ })).toBeVisible();
  await engineer.accessibleInEveryTheme();
  await engineer.picture('cautions');
  await engineer.tap(button(engineer, 'Change sharpEdges'));
  await fillIn(engineer, 'Words', 'Sharp: tweezers at the visual benches, instruction S-7.');
  await engineer.tap(button(engineer, 'Keep'));
  await expect(engineer.page.getByText('Say why in a few words.')).toBeVisible();
  await engineer.accessible();
  await fillIn(engineer, 'Why', 'New instruction S-7');
  await engineer.tap(button(engineer, 'Keep'));
  await expect(engineer.page.getByText('sharpEdges stands as written.')).toBeVisible();
  await expect(engineer.page.getByRole('row', { name: /sharpEdges.*plant’s words.*Version 1, Ida Marlow.*New instruction S-7/ })).toBeVisible();

  await inspector.page.reload();
  await expect(inspector.page.getByText('Edges are made to cut', { exact: false })).toBeVisible();
  await inspector.page.goto('/traveller/lot/L26-0802?work');
  await expect(inspector.page.getByText('Sharp: tweezers at the visual benches, instruction S-7.')).toBeVisible();
  await expect(inspector.page.getByText('where they differ from this note, they hold', { exact: false }).first()).toBeVisible();
  await inspector.accessibleInEveryTheme();
  await inspector.page.goto('/traveller/lot/L26-0802');
  await expect(inspector.page.getByText('Caution sharpEdges shown in the plant’s words, version 1')).toBeAttached();
});

test('a lot of cautions does not bury the step: two stand open, the rest behind a line', async ({ startPlant }) => {
  const plant = await startPlant();
  const lab = await plant.openKiosk('L-201', 'Lab');
  await lab.page.goto('/lab');
  await lab.tap(button(lab, /Open a powder batch/));
  await expect(lab.page.getByText('harms lungs and skin', { exact: false })).toBeVisible();
  await expect(lab.page.getByText('Ethanol vapour', { exact: false })).toBeHidden();
  await lab.tap(lab.page.getByText('One more caution'));
  await expect(lab.page.getByText('Ethanol vapour', { exact: false })).toBeVisible();
  await lab.accessible();
});
