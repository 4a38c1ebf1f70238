import { expect, someone, test } from './plant.ts';
import type { Kiosk, Plant } from './plant.ts';
import { lotsWaitingFor, threadOf } from './lot-stories.ts';
import { fillIn } from './keypad.ts';
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

test('the engineer registers a press, and changes it with a reason when it gets another balance', async ({ startPlant }) => {
  const plant = await startPlant();
  const engineer = await plant.openKiosk('Q-401', 'Quality desk');
  const { page } = engineer;
  await page.goto('/presses');
  await engineer.tap(page.getByRole('button', { name: 'Register a press' }));
  await engineer.tap(page.getByRole('button', { name: 'Register', exact: true }));
  await expect(page.getByText('This must be filled in.').first()).toBeVisible();
  await engineer.accessible();
  await fillIn(engineer, 'Number of the press', 'press-9');
  await fillIn(engineer, 'Name', 'Press 9');
  await engineer.tap(page.locator('gh-press-form').getByText('BAL-21'));
  await engineer.tap(page.getByRole('button', { name: 'Register', exact: true }));
  const nine = page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: /^Press 9/ }) });
  await expect(nine).toContainText('BAL-21');

  await engineer.tap(nine.getByRole('button', { name: 'Change the press' }));
  const form = page.locator('gh-press-form');
  await engineer.tap(page.getByRole('button', { name: 'Change', exact: true }));
  await expect(form.getByText('This must be filled in.')).toBeVisible();
  await fillIn(engineer, 'Reason', 'checked');
  await engineer.tap(page.getByRole('button', { name: 'Change', exact: true }));
  await expect(form.getByRole('alert'), 'nothing is different').toBeVisible();
  await engineer.tap(form.getByText('Begins anew'));
  await engineer.accessibleInEveryTheme();
  await engineer.picture('inspector-press-feed-6');
  await engineer.tap(page.getByRole('button', { name: 'Change', exact: true }));
  await expect(form).toHaveCount(0);
  const { slips } = (await (await page.request.get('/api/slips?stream=press%3APRESS-9')).json()) as { slips: readonly { readonly body: Record<string, unknown> }[] };
  expect(slips.at(-1)?.body).toMatchObject({ type: 'pressChanged', reason: 'checked', count: 2 });

  const inspector = await plant.openKiosk('I-301', 'Press 2');
  await inspector.page.goto('/presses');
  await expect(inspector.page.getByRole('heading', { name: /Press 9/ })).toBeVisible();
  await expect(inspector.page.getByRole('button', { name: 'Change the press' }), 'no right of an inspector').toHaveCount(0);
});

test('a press that sends nothing is said to be silent; without the network nobody claims it, and what was read stays', async ({ startPlant }) => {
  const plant = await startPlant((story) => {
    lotsWaitingFor(story, 'press', [{ id: 'L26-0910', pieces: 1000 }]);
    // Days ago: the press is set on the lot, and its balance says nothing.
    story.floor.give(someone('I-301'), 'Press 2', { type: 'openGate', subject: 'lot:L26-0910', gate: 'pressing' });
    story.floor.give(someone('I-301'), 'Press 2', { type: 'setPress', press: 'PRESS-2', lot: 'L26-0910' });
  });
  const engineer = await plant.openKiosk('Q-401', 'Quality desk', { portrait: true });
  const { page } = engineer;
  await page.goto('/presses');
  await expect(page.getByText(/^No piece for [\d,]+ h$/)).toBeVisible();
  await noSidewaysScrolling(page);
  await engineer.accessibleInEveryTheme();
  await engineer.picture('inspector-press-feed-7');
  await engineer.offline(true);
  await expect(page.getByText(/No piece for/)).toHaveCount(0, { timeout: 60_000 });
  await expect(page.locator('gh-notice[kind=offline]').first()).toBeVisible();
  await expect(page.getByText('0 of 1,000')).toBeVisible();
  await noSidewaysScrolling(page);
  await engineer.accessible();
  await engineer.picture('inspector-press-feed-8');
  await engineer.offline(false);
  await expect(page.getByText(/No piece for/)).toBeVisible({ timeout: 60_000 });

  // One weight, and it is silent no longer.
  const balance = await PressBalance.from(plant, engineer, 'PRESS-2');
  const inspector = await plant.openKiosk('I-301', 'Press 2');
  await balance.send([9.9]);
  await expect(page.getByText(/No piece for/)).toHaveCount(0);

  // The press is said to stand: its row says so, and is silent no longer.
  await inspector.page.goto('/presses');
  await inspector.tap(inspector.page.getByRole('button', { name: 'Set on another lot' }));
  await inspector.tap(inspector.page.getByRole('button', { name: 'The press stands' }));
  await expect(inspector.page.getByRole('listitem').filter({ hasText: 'Press 2' }).getByText('Stands', { exact: true })).toBeVisible();
  await expect(inspector.page.getByText(/No piece for/)).toHaveCount(0);
  await noSidewaysScrolling(inspector.page);
  await inspector.picture('inspector-press-feed-9');
});

test('the sound is off until somebody switches it on; what sounds is written on the screen', async ({ startPlant }) => {
  const plant = await startPlant((story) => lotsWaitingFor(story, 'press', [{ id: 'L26-0910', pieces: 1000 }]));
  const { inspector, target, balance } = await atThePress(plant);
  const { page } = inspector;
  const made = pressing(target, {});
  await page.addInitScript(() => {
    const tones = Object.assign(globalThis, { tones: [] as number[] }).tones;
    const start = OscillatorNode.prototype.start;
    OscillatorNode.prototype.start = function (this: OscillatorNode, when?: number) { tones.push(this.frequency.value); start.call(this, when); };
  });
  const tones = (): Promise<number> => page.evaluate(() => (globalThis as unknown as { tones: number[] }).tones.length);
  await page.goto('/bench');
  await balance.send(made(250));
  await expect(page.getByRole('listitem').filter({ hasText: 'L26-0910' })).toContainText('Look 1 due since');
  expect(await tones(), 'off').toBe(0);
  await inspector.tap(page.getByRole('button', { name: /Change person, look, bench/ }));
  await inspector.tap(page.getByRole('group', { name: /^Sound when/ }).getByText('On', { exact: true }));
  await expect.poll(tones, 'heard once when it is switched on').toBeGreaterThan(0);
  await inspector.accessible();
  await page.reload();
  await expect(page.getByRole('listitem').filter({ hasText: 'L26-0910' })).toContainText('Look 1 due since');
  await inspector.tap(page.getByRole('heading', { name: /Press 2/ }).first());
  const before = await tones();
  await balance.send(made(250));
  await expect(page.getByRole('alert').filter({ hasText: 'Look 2 of lot L26-0910 is due now' })).toBeVisible();
  await expect.poll(tones).toBeGreaterThan(before);
  await inspector.accessible();
  await inspector.picture('inspector-press-feed-10');
});

/** Nothing of the page lies beyond its right edge. */
async function noSidewaysScrolling(page: Kiosk['page']): Promise<void> {
  expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBeLessThanOrEqual(0);
}
