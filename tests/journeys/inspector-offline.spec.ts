import { lotsWaitingFor, threadOf } from './lot-stories.ts';
import { expect, test } from './plant.ts';
import type { Kiosk } from './plant.ts';

const button = ({ page }: Kiosk, name: string | RegExp) => page.getByRole('button', { name });
const demand = ({ page }: Kiosk, text: string) => page.getByRole('heading', { name: text });
const foot = ({ page }: Kiosk) => page.locator('gh-outbox-bar');
const sheet = ({ page }: Kiosk) => page.locator('gh-sheet[open]');
const FIGURES = ['12.701', '12.699', '12.702', '12.698', '12.703', '12.697', '12.704'];

async function atDimensions(kiosk: Kiosk): Promise<void> {
  await kiosk.tap(kiosk.page.getByRole('link', { name: /L26-0511.*Start Ground dimensions/ }));
  await expect(demand(kiosk, 'Inscribed circle d: piece 1')).toBeVisible();
}
async function enter(kiosk: Kiosk, figure: string): Promise<void> {
  await kiosk.type(figure);
  await kiosk.press('Enter');
}

test('readings entered without a network are counted, outlive a reload, and are sent once and in order', async ({ startPlant }) => {
  const plant = await startPlant((story) => lotsWaitingFor(story, 'dimensions', [{ id: 'L26-0511' }]));
  const kiosk = await plant.openKiosk('I-302', 'Gauge room');
  const other = await plant.openKiosk('I-301', 'Gauge room', { portrait: true });
  await atDimensions(kiosk);
  await enter(kiosk, FIGURES[0] ?? '');
  await expect(demand(kiosk, 'Inscribed circle d: piece 2')).toBeVisible();
  // The strip shows an entry at once; the network goes only after the server has answered it.
  await expect.poll(async () => (await threadOf(other, 'L26-0511')).filter(({ body }) => body.type === 'readingTaken').length).toBe(1);
  await expect(foot(kiosk)).not.toContainText('entr');

  await kiosk.offline(true);
  await expect(foot(kiosk)).toContainText('No network');
  for (const [at, figure] of FIGURES.slice(1).entries()) {
    kiosk.countFromHere();
    await enter(kiosk, figure);
    expect([kiosk.touches, kiosk.keystrokes]).toEqual([0, figure.length + 1]);
    await expect(foot(kiosk)).toContainText(at === 0 ? '1 entry kept here' : `${at + 1} entries kept here`);
    await expect(demand(kiosk, `Inscribed circle d: piece ${at + 3}`)).toBeVisible();
  }
  await kiosk.accessible();
  await kiosk.picture('offline');
  await kiosk.tap(foot(kiosk).getByRole('button', { name: 'Show' }));
  await expect(kiosk.page.getByRole('dialog', { name: 'What is kept on this kiosk' })).toBeVisible();
  await expect(sheet(kiosk)).toContainText('12.704');
  await kiosk.accessible();
  await kiosk.picture('offline-outbox');
  await kiosk.press('Escape');

  // The page itself cannot be loaded without a network; what was entered lies in the kiosk's own store, and the server has none of it.
  expect((await threadOf(other, 'L26-0511')).filter(({ body }) => body.type === 'readingTaken')).toHaveLength(1);
  await kiosk.page.goto('about:blank');
  await kiosk.offline(false);
  await kiosk.page.goto('/traveller/lot/L26-0511?work');
  await expect(demand(kiosk, 'Inscribed circle d: piece 8')).toBeVisible();
  await expect(foot(kiosk)).toContainText('Connected');
  await expect(foot(kiosk)).not.toContainText('entr');
  const readings = (await threadOf(kiosk, 'L26-0511')).filter(({ body }) => body.type === 'readingTaken');
  expect(readings.map(({ body }) => [body['ordinal'], body['value']])).toEqual(FIGURES.map((figure, at) => [at + 1, Number(figure)]));
  expect(new Set(readings.map(({ by }) => by))).toEqual(new Set(['I-302']));
});

test('when the network returns while the page is open, what was kept goes by itself and another bench sees it', async ({ startPlant }) => {
  const plant = await startPlant((story) => lotsWaitingFor(story, 'dimensions', [{ id: 'L26-0511' }]));
  const kiosk = await plant.openKiosk('I-302', 'Gauge room');
  const office = await plant.openKiosk('Q-401', 'Office');
  await atDimensions(kiosk);
  await office.page.goto('/traveller/lot/L26-0511?work');
  await expect(demand(office, 'Inscribed circle d: piece 1')).toBeVisible();
  await kiosk.offline(true);
  await expect(foot(kiosk)).toContainText('No network');
  for (const figure of FIGURES.slice(0, 3)) await enter(kiosk, figure);
  await expect(foot(kiosk)).toContainText('3 entries kept here');
  await expect(demand(office, 'Inscribed circle d: piece 1')).toBeVisible();
  await kiosk.offline(false);
  await expect(demand(office, 'Inscribed circle d: piece 4')).toBeVisible();
  await expect(foot(kiosk)).not.toContainText('entr');
  const readings = (await threadOf(office, 'L26-0511')).filter(({ body }) => body.type === 'readingTaken');
  expect(readings.map(({ body }) => body['value'])).toEqual([12.701, 12.699, 12.702]);
});

test('an entry the server refuses afterwards stays in sight, says why, and waits until somebody sets it aside', async ({ startPlant }) => {
  const plant = await startPlant((story) => lotsWaitingFor(story, 'dimensions', [{ id: 'L26-0511' }]));
  const kiosk = await plant.openKiosk('I-302', 'Gauge room');
  const other = await plant.openKiosk('I-301', 'Gauge room');
  await atDimensions(kiosk);
  await other.page.goto('/traveller/lot/L26-0511?work');
  await expect(demand(other, 'Inscribed circle d: piece 1')).toBeVisible();
  await kiosk.offline(true);
  await expect(foot(kiosk)).toContainText('No network');
  await enter(kiosk, '12.701');
  await expect(foot(kiosk)).toContainText('1 entry kept here');
  await enter(other, '12.705');
  await expect(demand(other, 'Inscribed circle d: piece 2')).toBeVisible();
  await expect.poll(async () => (await threadOf(other, 'L26-0511')).filter(({ body }) => body.type === 'readingTaken').length).toBe(1);
  await kiosk.offline(false);
  await expect(foot(kiosk)).toContainText('1 entry refused');
  await kiosk.accessible();
  await kiosk.tap(foot(kiosk).getByRole('button', { name: 'Show' }));
  await expect(kiosk.page.getByRole('dialog', { name: 'What is kept on this kiosk' })).toBeVisible();
  await expect(sheet(kiosk)).toContainText('12.701');
  await expect(sheet(kiosk)).toContainText(/reading/i);
  await kiosk.accessible();
  await kiosk.picture('offline-refused');
  await kiosk.tap(sheet(kiosk).getByRole('button', { name: 'Set aside' }));
  await expect(sheet(kiosk)).toContainText('Nothing waits here. Every entry has arrived.');
  const readings = (await threadOf(other, 'L26-0511')).filter(({ body }) => body.type === 'readingTaken');
  expect(readings.map(({ body }) => body['value'])).toEqual([12.705]);
});

test('what must be signed says that it needs the network, and keeps no PIN', async ({ startPlant }) => {
  const plant = await startPlant((story) => lotsWaitingFor(story, 'release', [{ id: 'L26-0511' }]));
  const releaser = await plant.openKiosk('R-501', 'Office');
  await releaser.page.goto('/release/L26-0511');
  await releaser.tap(button(releaser, 'Sign the release'));
  await expect(releaser.page.getByRole('dialog', { name: 'Release lot L26-0511' })).toBeVisible();
  await releaser.offline(true);
  await expect(foot(releaser)).toContainText('No network');
  await releaser.type('5010');
  await releaser.press('Enter');
  await expect(sheet(releaser)).toContainText('A signature needs the network.');
  await expect(sheet(releaser)).toContainText('Nothing was signed and no PIN was kept.');
  await releaser.accessible();
  await releaser.picture('offline-signature');
  await releaser.offline(false);
  await expect(foot(releaser)).toContainText('Connected');
  expect((await threadOf(releaser, 'L26-0511')).filter(({ body }) => body.type === 'lotReleased')).toEqual([]);
});
