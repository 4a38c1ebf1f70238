import { expect, test } from './plant.ts';
import type { Kiosk, Plant } from './plant.ts';
import { lotsWaitingFor, threadOf } from './lot-stories.ts';
import { PressBalance } from './press-balance.ts';
import { normalValues } from '../property/metrology/normal-values.ts';

/** Weights of a press of so much spread, whose mean runs away by so much a piece from piece `from` on, g. */
function pressing(target: number, { s = 0.008, slope = 0, from = 1 }: { readonly s?: number; readonly slope?: number; readonly from?: number }) {
  const next = normalValues(21);
  let piece = 0;
  return (count: number): number[] => Array.from({ length: count }, () => Number((target + s * next() + slope * Math.max(0, (piece += 1) - from)).toFixed(3)));
}

async function atThePress(plant: Plant): Promise<{ readonly inspector: Kiosk; readonly engineer: Kiosk; readonly target: number; readonly balance: PressBalance }> {
  const engineer = await plant.openKiosk('Q-401', 'Quality desk', { portrait: true });
  const balance = await PressBalance.from(plant, engineer, 'PRESS-2');
  const inspector = await plant.openKiosk('I-301', 'Press 2');
  await inspector.tap(inspector.page.getByRole('link', { name: /L26-0910/ }));
  await expect(inspector.page.locator('gh-asked gh-keypad')).toContainText('Weight of piece 1');
  const [, target = ''] = /Target ([\d.]+) g/.exec(await inspector.page.getByText(/^Target/).innerText()) ?? [];
  await inspector.page.goto('/presses');
  await expect(inspector.page.getByRole('heading', { name: /Press 2/ })).toBeVisible();
  await inspector.accessibleInEveryTheme();
  await inspector.tap(inspector.page.getByRole('button', { name: 'Set on a lot' }));
  await inspector.accessible();
  await inspector.tap(inspector.page.locator('gh-set-press').getByText('L26-0910'));
  await expect(inspector.page.getByRole('link', { name: 'Presses L26-0910' })).toBeVisible();
  return { inspector, engineer, target: Number(target), balance };
}

test('a drift is announced before a piece lies outside and names the piece; a look falls due, and one nobody takes is written down', async ({ startPlant }) => {
  const plant = await startPlant((story) => lotsWaitingFor(story, 'press', [{ id: 'L26-0910', pieces: 1000 }]));
  const { inspector, engineer, target, balance } = await atThePress(plant);
  const made = pressing(target, { slope: 0.00006, from: 60 });
  await balance.send(made(240));
  // The desk follows by itself; the engineer sees the same on the tablet.
  await expect(inspector.page.getByText('240 of 1,000')).toBeVisible();
  await engineer.page.goto('/presses');
  await expect(engineer.page.getByText('240 of 1,000')).toBeVisible();
  await engineer.accessibleInEveryTheme();
  await engineer.picture('inspector-press-feed-1');
  await inspector.picture('inspector-press-feed-2');

  await balance.send(made(10));
  await expect(engineer.page.getByText('look 1 is due now')).toBeVisible();
  await inspector.page.goto('/bench');
  await expect(inspector.page.getByRole('listitem').filter({ hasText: 'L26-0910' })).toContainText('Look 1 due since');
  await inspector.picture('inspector-press-feed-3');
  await inspector.accessible();
  await inspector.tap(inspector.page.getByRole('link', { name: /L26-0910/ }));
  await expect(inspector.page.locator('gh-demand')).toContainText('Look 1: look at 5 pieces');
  inspector.countFromHere();
  await inspector.tap(inspector.page.getByRole('button', { name: 'All 5 are good' }));
  expect(inspector.touches, 'a look with nothing found').toBe(1);

  const notice = inspector.page.getByRole('status').filter({ hasText: 'Drifts above the target' });
  for (let sent = 0; sent < 4 && (await notice.count()) === 0; sent += 1) await balance.send(made(60));
  await expect(notice).toContainText(/First pieces outside .* expected at about piece [\d,]+/, { timeout: 3000 });
  const thread = await threadOf(inspector, 'L26-0910');
  const [announced] = thread.filter(({ body }) => body.type === 'driftAnnounced' && body['predicted'] !== null);
  const before = thread.filter(({ body, version }) => body.type === 'weightsTaken' && version < (announced?.version ?? 0));
  expect(before.map(({ body }) => body['outside']), 'no piece outside before').toEqual(before.map(() => 0));
  expect(announced?.by).toBe('press:PRESS-2');
  await expect(inspector.page.locator('gh-drift-chart')).toBeVisible();
  await inspector.page.locator('gh-drift-chart').scrollIntoViewIfNeeded();
  await inspector.picture('inspector-press-feed-4');
  await inspector.accessibleInEveryTheme();
  await expect(engineer.page.getByText(/Drifts above the target/)).toBeVisible();
  await expect(engineer.page.getByText(/limit expected at piece/)).toBeVisible();
  await engineer.picture('inspector-press-feed-5');

  // Look 2 fell due at piece 500; nobody comes until look 3 does.
  const weighed = (thread.filter(({ body }) => body.type === 'weightsTaken').length - 5) * 60 + 250;
  await balance.send(made(760 - weighed));
  const later = await threadOf(inspector, 'L26-0910');
  expect(later.filter(({ body }) => body.type === 'lookMissed').map(({ body, by }) => ({ look: body['look'], why: body['why'], by }))).toEqual([{ look: 2, why: 'nextDue', by: 'press:PRESS-2' }]);
  await expect(inspector.page.locator('gh-demand')).toContainText('Look 3: look at 5 pieces');
  await expect(engineer.page.getByText('Looks missed')).toBeVisible();
});
