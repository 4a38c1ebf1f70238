import { lotsWaitingFor, threadOf } from './lot-stories.ts';
import { expect, test } from './plant.ts';
import type { Kiosk } from './plant.ts';

const button = ({ page }: Kiosk, name: string | RegExp) => page.getByRole('button', { name });
const verdict = ({ page }: Kiosk) => page.getByRole('status').filter({ hasText: /Accepted|Rejected/ });
const row = ({ page }: Kiosk, kind: string) => page.getByRole('row').filter({ has: page.getByRole('rowheader', { name: kind }) });

async function sees(kiosk: Kiosk, kind: RegExp, piece: string): Promise<void> {
  await kiosk.tap(button(kiosk, kind));
  for (const figure of piece) await kiosk.tap(kiosk.page.getByRole('button', { name: figure, exact: true }));
  await kiosk.tap(button(kiosk, 'Record'));
}

test('the second sample of a double plan is asked for only because the first did not decide', async ({ startPlant }) => {
  const plant = await startPlant((story) => lotsWaitingFor(story, 'final-visual', [{ id: 'L26-0701', product: 'TNMG-D2' }, { id: 'L26-0702', product: 'TNMG-D2' }]));
  const inspector = await plant.openKiosk('I-303', 'Final visual 1');
  const office = await plant.openKiosk('Q-401', 'Office', { portrait: true });
  await office.page.goto('/traveller/lot/L26-0701?work');

  // MIL-STD-105E, letter J: critical AQL 0.15 has the single plan 80, 0/1; major 0.65 takes 50 and 50, 0/2 and 1/2 (from memory); minor 2.5 50 and 50, 2/5 and 6/7.
  await inspector.tap(inspector.page.getByRole('link', { name: /L26-0701.*Start Final visual/ }));
  await expect(button(inspector, 'These 80 are good')).toBeVisible();
  await expect(row(inspector, 'major').getByRole('cell')).toHaveText(['0', '50', '0', '2']);
  await sees(inspector, /^Chip on the cutting edge/, '17');
  await expect(row(inspector, 'major').getByRole('cell').first()).toHaveText('1');
  await expect(row(office, 'major').getByRole('cell').first()).toHaveText('1');
  await inspector.accessible();
  await inspector.picture('double-first');
  await inspector.tap(button(inspector, 'Done: these 80 looked at'));
  await inspector.tap(button(inspector, 'Confirm'));

  await expect(inspector.page.getByText('The first sample did not decide. Take sample 2')).toBeVisible();
  await expect(button(inspector, 'Done: these 20 looked at')).toBeVisible();
  await expect(row(inspector, 'major').getByRole('cell')).toHaveText(['1', '100', '1', '2']);
  await expect(office.page.getByText('The first sample did not decide. Take sample 2')).toBeVisible();
  await office.accessible();
  await office.picture('double-second-portrait');
  await inspector.tap(button(inspector, 'Which pieces'));
  await expect(inspector.page.getByText('20 pieces to take, in this order')).toBeVisible();
  await inspector.page.keyboard.press('Escape');
  await inspector.accessible();
  await inspector.picture('double-second');
  await inspector.tap(button(inspector, 'Done: these 20 looked at'));
  await inspector.tap(button(inspector, 'Confirm'));
  await expect(verdict(inspector)).toContainText('1 found in 100, decided on sample 2');
  await expect(verdict(inspector)).toContainText('Accepted');
  await inspector.picture('double-verdict');
  const samples = async () => (await threadOf(inspector, 'L26-0701')).filter(({ body }) => body.type === 'sampleCompleted' && body['gate'] === 'final-visual').map(({ body }) => [body['looked'], body['goesOn'] ?? false]);
  await expect.poll(samples).toEqual([[80, true], [100, false]]);

  // Nothing found: the first sample decides and no second is asked for.
  await inspector.tap(inspector.page.getByRole('link', { name: 'Back to the list' }));
  await inspector.tap(inspector.page.getByRole('link', { name: /L26-0702.*Start Final visual/ }));
  await inspector.tap(button(inspector, 'These 80 are good'));
  await inspector.tap(button(inspector, 'Confirm'));
  await expect(verdict(inspector)).toContainText('0 found in 50, decided on sample 1');
});

test('a sequential plan shows its lines, asks for no piece more than needed and stops at once', async ({ startPlant }) => {
  const plant = await startPlant((story) => lotsWaitingFor(story, 'edge', [{ id: 'L26-0711', product: 'TNMG-D2' }, { id: 'L26-0712', product: 'TNMG-D2' }]));
  const inspector = await plant.openKiosk('I-302', 'Edge bench');
  await inspector.tap(inspector.page.getByRole('link', { name: /L26-0711.*Start Edge preparation/ }));
  await inspector.tap(button(inspector, /^Edges at 40 ×/));
  await expect(inspector.page.getByText(/0 looked at, 0 found\. If no more are found, the next decision falls at piece \d+\./)).toBeVisible();
  await inspector.accessible();
  await inspector.picture('sequential');
  await sees(inspector, /^Micro-chip/, '9');
  await expect(inspector.page.getByText(/9 looked at, 1 found/)).toBeVisible();
  await inspector.picture('sequential-found');
  await sees(inspector, /^Micro-chip/, '12');
  await expect(inspector.page.getByRole('heading', { name: /^Edge radius/ })).toBeVisible();
  const looked = async () => (await threadOf(inspector, 'L26-0711')).filter(({ body }) => body.type === 'sampleCompleted' && body['gate'] === 'edge').map(({ body }) => body['looked']);
  await expect.poll(looked).toEqual([12]);
});
