import { lotsWaitingFor } from './lot-stories.ts';
import { expect, test } from './plant.ts';
import type { Kiosk, Story } from './plant.ts';

const button = ({ page }: Kiosk, name: string | RegExp) => page.getByRole('button', { name });
const lot = (serial: number): string => `L26-05${serial}`;
const lots = (from: number, to: number) => Array.from({ length: to - from + 1 }, (_, at) => ({ id: lot(from + at) }));

/** Final visual of one lot finds three chips: one major too many. */
const reject = ({ gate }: Story, id: string): boolean | null => gate('I-303', `lot:${id}`, 'final-visual', { found: [{ code: 'CH', pieces: 3 }] });

test('a lot on tightened says so before work starts, with the lots that caused it', async ({ startPlant }) => {
  const plant = await startPlant((story) => {
    lotsWaitingFor(story, 'final-visual', lots(31, 34));
    for (const serial of [31, 33]) expect(reject(story, lot(serial))).toBe(false);
    expect(story.gate('I-303', `lot:${lot(32)}`, 'final-visual')).toBe(true);
  });
  const inspector = await plant.openKiosk('I-303', 'Final visual 1');
  const engineer = await plant.openKiosk('Q-401', 'Office');
  const row = inspector.page.getByRole('link', { name: new RegExp(`${lot(34)}.*Start Final visual.*Tightened`) });
  await expect(row).toBeVisible();
  await expect(row).toContainText(`${lot(31)} and ${lot(33)}`);
  await inspector.accessible();
  await inspector.picture('bench-tightened');
  await engineer.page.goto(`/traveller/lot/${lot(34)}`);
  await expect(engineer.page.getByRole('listitem').filter({ hasText: 'two of five or fewer lots in a row were not accepted' })).toContainText(`${lot(31)} and ${lot(33)}`);
  await engineer.accessible();
  await engineer.picture('before-work');
  await inspector.tap(row);
  await expect(button(inspector, 'All 125 are good')).toBeVisible();
  await expect(inspector.page.getByText('Tightened', { exact: true }).first()).toBeVisible();
  await expect(inspector.page.getByRole('row', { name: 'major 0 125 1 2' })).toBeVisible();
  await inspector.accessible();
  await inspector.picture('tightened');

  await engineer.page.goto('/plans/switching');
  const states = engineer.page.getByRole('row', { name: /CNMG-D1.*final-visual.*major.*tightened/ });
  await expect(states).toBeVisible();
  await expect(states).toContainText(`${lot(31)} and ${lot(33)}`);
  await engineer.accessible();
  await engineer.picture('switching-states');
  await engineer.reach(states.getByRole('link').first());
  await engineer.press('Enter');
  await expect(engineer.page.getByRole('heading', { name: 'The lots it rests on' })).toBeVisible();
  for (const serial of [31, 33]) await expect(engineer.page.getByRole('link', { name: lot(serial) }).first()).toBeVisible();
  await engineer.accessible();
});

test('discontinued inspection opens no gate until an engineer resumes it, with a reason and a PIN', async ({ startPlant }) => {
  const plant = await startPlant((story) => {
    lotsWaitingFor(story, 'final-visual', lots(31, 38));
    for (const serial of [31, 32, 33, 34, 35, 36, 37]) expect(reject(story, lot(serial))).toBe(false);
  });
  const inspector = await plant.openKiosk('I-303', 'Final visual 1');
  const engineer = await plant.openKiosk('Q-401', 'Office');
  const row = inspector.page.getByRole('link', { name: new RegExp(`${lot(38)}.*Inspection discontinued`) });
  await expect(row).toBeVisible();
  await inspector.tap(row);
  await expect(inspector.page.getByText(/discontinued/i).first()).toBeVisible();
  await expect(inspector.page.getByRole('button', { name: /are good/ })).toHaveCount(0);
  await inspector.accessible();
  await inspector.picture('discontinued');

  await engineer.page.goto('/plans/switching');
  const states = engineer.page.getByRole('row', { name: /CNMG-D1.*final-visual.*major.*discontinued/ });
  await engineer.tap(states.getByRole('link').first());
  await expect(engineer.page.getByText('Inspection is discontinued.')).toBeVisible();
  await engineer.accessible();
  engineer.countFromHere();
  await engineer.reach(button(engineer, 'Let inspection go on'));
  await engineer.press('Enter');
  await expect(engineer.page.getByRole('dialog', { name: 'Resume discontinued inspection' })).toBeVisible();
  await engineer.type('Wheel dressed, fixture 3 replaced');
  await engineer.accessible();
  await engineer.picture('switching-resume');
  await engineer.reach(engineer.page.getByRole('group', { name: 'PIN' }).getByRole('button', { name: '1', exact: true }));
  await engineer.type('4010');
  await engineer.press('Enter');
  await expect(engineer.page.getByText('Inspection goes on, on tightened.').first()).toBeVisible();
  expect(engineer.touches).toBe(0);

  await inspector.tap(inspector.page.getByRole('link', { name: 'To the list' }));
  await inspector.tap(inspector.page.getByRole('link', { name: new RegExp(`${lot(38)}.*Tightened`) }));
  await expect(button(inspector, 'All 125 are good')).toBeVisible();
  const told = await (await engineer.page.request.get('/api/switching')).json() as { rows: readonly { product: string; class: string | null; severity: string; stream: string }[] };
  const state = told.rows.find((each) => each.product === 'CNMG-D1' && each.class === 'major' && each.stream.includes('final-visual'));
  expect(state?.severity).toBe('tightened');
});
