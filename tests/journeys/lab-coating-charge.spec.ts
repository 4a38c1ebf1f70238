import { expect, test } from './plant.ts';
import type { Kiosk, Plant, Story } from './plant.ts';
import { fillIn, pressFigure, tabTo } from './keypad.ts';
import { lotsWaitingFor } from './lot-stories.ts';

const LOTS = ['L26-0931', 'L26-0932', 'L26-0933'] as const;
const LEVELS = ['Level 1', 'Level 4', 'Level 8'] as const;
/**
 * Diameters of one crater through TiN, Al2O3 and TiCN at each of the three levels, mm, from the surface to the substrate. With a ball of 30 mm the
 * first gives √(15² − 0.35²) − √(15² − 0.695²) = 0.0120256 mm in all, which is 12.03 µm, and by (D² − d²)/(8R) 1.00, 4.02 and 7.00 µm for the
 * layers (worked out by hand from the ball's geometry).
 */
const CRATERS: readonly (readonly [string, string, string, string])[] = [['1.390', '1.346', '1.153', '0.700'], ['1.385', '1.342', '1.147', '0.690'], ['1.400', '1.357', '1.160', '0.710']];
const RINGS = ['Diameter at surface', 'Diameter under TiN', 'Diameter under Al2O3', 'Diameter at substrate'] as const;
const keypad = (kiosk: Kiosk) => kiosk.page.locator('gh-asked gh-keypad');
const demand = (kiosk: Kiosk) => kiosk.page.locator('gh-demand');
const verdict = (kiosk: Kiosk) => kiosk.page.locator('gh-verdict').getByRole('status');
const toBeCoated = (story: Story): void => lotsWaitingFor(story, 'coating', LOTS.map((id) => ({ id, pieces: 480 })));

async function chargeAtTheLab(plant: Plant, charge: string): Promise<Kiosk> {
  const kiosk = await plant.openKiosk('L-201', 'Lab');
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Open a coating charge' }));
  await kiosk.tap(kiosk.page.getByRole('radio', { name: /^Demo layer A/ }));
  await fillIn(kiosk, 'Number', charge);
  await fillIn(kiosk, 'Programme', 'COAT-03');
  await kiosk.tap(kiosk.page.getByRole('radio', { name: 'No map: places in words' }));
  await fillIn(kiosk, 'Coating plant', 'Coater 2');
  for (const lot of LOTS) await kiosk.tap(kiosk.page.getByRole('checkbox', { name: new RegExp(`^${lot}`) }));
  for (const [at, lot] of LOTS.entries()) await fillIn(kiosk, `Places of ${lot}`, LEVELS[at] ?? '');
  await kiosk.accessible();
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Open the charge' }));
  await expect(demand(kiosk)).toContainText(/Diameter at surface\s+Level 1, test piece 1/);
  return kiosk;
}
async function enterCraters(kiosk: Kiosk, enter: (figure: string) => Promise<void>): Promise<void> {
  for (const [at, diameters] of CRATERS.entries()) for (const [ring, figure] of diameters.entries()) {
    await expect(keypad(kiosk)).toContainText(`${RINGS[ring]}, place ${at + 1}`);
    await enter(figure);
  }
}

test('each layer from one crater, adhesion beside drawn references, and colour: one verdict for every lot of the charge', async ({ startPlant }) => {
  const plant = await startPlant(toBeCoated);
  const kiosk = await chargeAtTheLab(plant, 'C26-930');
  const other = await plant.openKiosk('I-303', 'Final visual 1', { portrait: true });
  await other.page.goto('/traveller/lot/L26-0931');
  await expect(demand(other)).toContainText('In charge C26-930');
  // Diameters the wrong way round cannot be a crater: said, and nothing written.
  for (const figure of ['1.390', '1.346']) await kiosk.gauge(figure);
  await expect(keypad(kiosk)).toContainText('Diameter under Al2O3, place 1, noted: 1.39 · 1.346');
  await kiosk.picture('lab-coating-charge-1');
  await kiosk.accessibleInEveryTheme();
  for (const figure of ['1.350', '0.700']) await kiosk.gauge(figure);
  await expect(kiosk.page.getByRole('dialog')).toContainText('the diameters must lie as inner < outer < ball: 0.7 < 1.35 < 1.346 < 1.39 < 30');
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Understood' }));
  // What was read at this piece may be read again.
  await kiosk.gauge('1.490');
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'This piece again' }));
  kiosk.countFromHere();
  await enterCraters(kiosk, (figure) => pressFigure(kiosk, figure));
  expect(kiosk.touches, 'three craters by keypad: one touch a character and one for Enter').toBe(CRATERS.flat().join('').length + 12);
  await expect(demand(kiosk)).toContainText('Adhesion class: piece 1');
  // The references stand in a row, four big keys, each with its drawing and words that say the same; the source is said below.
  await expect(kiosk.page.locator('gh-rating-picture')).toHaveCount(4);
  await expect(kiosk.page.getByText(/^Our drawing, after the words of ISO 26443:2023/)).toBeVisible();
  for (const key of await kiosk.page.locator('button.picture').all()) expect((await key.boundingBox())?.height ?? 0).toBeGreaterThan(20 * 5.9);
  await kiosk.picture('lab-coating-charge-2');
  await kiosk.accessibleInEveryTheme();
  const upright = await plant.openKiosk('L-201', 'Lab', { portrait: true });
  await upright.page.goto('/traveller/coating/C26-930?work');
  await expect(upright.page.locator('gh-rating-picture')).toHaveCount(4);
  expect(await upright.page.evaluate(() => document.documentElement.scrollWidth <= document.documentElement.clientWidth)).toBe(true);
  await upright.accessible();
  await upright.picture('lab-coating-adhesion-portrait');
  kiosk.countFromHere();
  for (const [at, rating] of ['0', '1', '0'].entries()) {
    await expect(demand(kiosk)).toContainText(new RegExp(`Adhesion class: piece ${at + 1}\\s+${LEVELS[at] ?? ''}, test piece 1`));
    await kiosk.tap(kiosk.page.getByRole('button', { name: new RegExp(`^${rating} `) }));
  }
  await expect(kiosk.page.getByText('Colour even and like the master piece, no bare spot', { exact: true })).toBeVisible();
  await kiosk.picture('lab-coating-charge-3');
  await kiosk.accessibleInEveryTheme();
  await expect(verdict(kiosk)).toHaveText('');
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Yes, confirmed' }));
  expect(kiosk.touches, 'three ratings and a confirmation').toBe(4);
  await expect(verdict(kiosk)).toHaveText('Accepted: all 6 characteristics');
  await expect(kiosk.page.locator('gh-verdict')).toContainText('worst of 3 is 1, accepted to 1');
  await expect(demand(other)).toContainText('Start Final visual', { timeout: 1000 });
  await kiosk.picture('lab-coating-charge-4');
  await kiosk.accessibleInEveryTheme();
  await kiosk.page.goto('/traveller/coating/C26-930');
  for (const read of ['Coating thickness, 1: 12.03 µm', 'TiN, 1: 1.00 µm', 'Al2O3, 1: 4.02 µm', 'TiCN, 1: 7.00 µm']) await expect(kiosk.page.getByRole('listitem').filter({ hasText: read })).toBeVisible();
  await kiosk.picture('lab-coating-charge-5');
  await kiosk.accessibleInEveryTheme();
  await other.page.goto('/bench');
  for (const lot of LOTS) await expect(other.page.getByRole('link', { name: new RegExp(lot) })).toContainText('Start Final visual');
});

test('a layer too thin and a coating that flakes reject the charge and hold every lot in it', async ({ startPlant }) => {
  const plant = await startPlant(toBeCoated);
  const kiosk = await chargeAtTheLab(plant, 'C26-933');
  // TiN of (1.390² − 1.380²)/(8·15) = 0.23 µm where 0.5 is asked for; the whole is as thick as it should be.
  for (const figure of ['1.390', '1.380', '1.153', '0.700']) await kiosk.gauge(figure);
  await expect(kiosk.page.getByRole('row', { name: /^TiN/ })).toContainText('outside limits');
  for (const crater of CRATERS.slice(1)) for (const figure of crater) await kiosk.gauge(figure);
  await kiosk.picture('lab-coating-layers');
  for (const at of [1, 2, 3]) {
    await expect(demand(kiosk)).toContainText(`Adhesion class: piece ${at}`);
    await kiosk.tap(kiosk.page.getByRole('button', { name: at === 2 ? /^2 flaked here and there at the rim beyond what is accepted/ : /^0 no cracks/ }));
  }
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Yes, confirmed' }));
  await expect(verdict(kiosk)).toHaveText(/^Rejected: /);
  await expect(verdict(kiosk)).toContainText('TiN');
  await expect(verdict(kiosk)).toContainText('Adhesion class');
  const other = await plant.openKiosk('I-303', 'Final visual 1');
  for (const lot of LOTS) {
    await other.page.goto(`/traveller/lot/${lot}`);
    await expect(demand(other)).toContainText('On hold');
  }
});

test('a bare spot is asked about twice, and then holds every lot of the charge', async ({ startPlant }) => {
  const plant = await startPlant(toBeCoated);
  const kiosk = await chargeAtTheLab(plant, 'C26-931');
  const other = await plant.openKiosk('I-303', 'Final visual 1');
  await enterCraters(kiosk, (figure) => kiosk.gauge(figure));
  for (const at of [1, 2, 3]) {
    await expect(demand(kiosk)).toContainText(`Adhesion class: piece ${at}`);
    await kiosk.tap(kiosk.page.getByRole('button', { name: /^1 cracks, nothing flaked/ }));
  }
  await kiosk.tap(kiosk.page.getByRole('button', { name: /^No rejects this gate/ }));
  await kiosk.accessibleInEveryTheme();
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Not confirmed' }));
  await expect(verdict(kiosk)).toHaveText(/^Rejected: Colour and coverage: not confirmed/);
  for (const lot of LOTS) {
    await other.page.goto(`/traveller/lot/${lot}`);
    await expect(demand(other)).toContainText('On hold');
  }
});

test('the coating check by keyboard', async ({ startPlant }) => {
  const plant = await startPlant((story) => {
    toBeCoated(story);
    story.floor.give({ badge: 'L-201', pin: '', name: 'Tamsin Vire', roles: ['lab'] }, 'Lab', { type: 'openCharge', charge: 'C26-932', kind: 'coating', specification: 'DEMO-CVD', programme: 'COAT-03', equipment: 'Coater 2', members: LOTS.map((lot, at) => ({ lot, places: [LEVELS[at] ?? ''] })) });
  });
  const kiosk = await plant.openKiosk('L-201', 'Lab');
  const row = kiosk.page.getByRole('link', { name: /C26-932/ }).first();
  await expect(row).toContainText('Start Coating check');
  await kiosk.accessibleInEveryTheme();
  await kiosk.picture('lab-coating-charge-6');
  await tabTo(kiosk, /C26-932/);
  await kiosk.press('Enter');
  kiosk.countFromHere();
  await enterCraters(kiosk, async (figure) => {
    await kiosk.type(figure);
    await kiosk.press('Enter');
  });
  expect(kiosk.keystrokes).toBe(CRATERS.flat().join('').length + 12);
  for (const at of [1, 2, 3]) {
    await expect(demand(kiosk)).toContainText(`Adhesion class: piece ${at}`);
    if (at === 1) await tabTo(kiosk, /^0 no cracks/);
    await kiosk.press('Enter');
  }
  await expect(kiosk.page.getByText('Colour even and like the master piece, no bare spot', { exact: true })).toBeVisible();
  await tabTo(kiosk, 'Yes, confirmed');
  await kiosk.press('Enter');
  await expect(verdict(kiosk)).toHaveText('Accepted: all 6 characteristics');
});
