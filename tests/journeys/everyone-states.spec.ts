import { boxesOf, lotsWaitingFor } from './lot-stories.ts';
import { expect, someone, test } from './plant.ts';
import type { Kiosk, Story } from './plant.ts';

const button = ({ page }: Kiosk, name: string | RegExp) => page.getByRole('button', { name });
const foot = ({ page }: Kiosk) => page.locator('gh-outbox-bar');

interface Desk { readonly name: string; readonly badge: string; readonly bench: string; readonly path: string; readonly reads: string; readonly loading: string; readonly filled: string }
/** Each desk where nothing waits, with what it reads first. */
const DESKS: readonly Desk[] = [
  { name: 'bench', badge: 'I-303', bench: 'Final visual 1', path: '/bench', reads: '**/api/bench?*', loading: 'Reading what waits here', filled: 'Nothing waits at this bench.' },
  { name: 'lab', badge: 'L-201', bench: 'Lab', path: '/lab', reads: '**/api/bench?*', loading: 'Reading what waits in the lab', filled: 'No test waits at this bench.' },
  { name: 'release', badge: 'R-501', bench: 'Office', path: '/release', reads: '**/api/release', loading: 'Reading from the server.', filled: 'No lot waits for release.' },
  { name: 'packing', badge: 'P-601', bench: 'Packing', path: '/packing', reads: '**/api/packing', loading: 'Reading from the server.', filled: 'No released lot waits to be packed or shipped.' },
  { name: 'plans', badge: 'Q-401', bench: 'Office', path: '/plans/switching', reads: '**/api/switching', loading: 'Reading from the server.', filled: 'No lot has been judged yet.' },
  { name: 'trace', badge: 'Q-401', bench: 'Office', path: '/trace?q=L26', reads: '**/api/search?*', loading: 'Reading from the server.', filled: 'Nothing here is called “L26”.' },
  { name: 'keeper', badge: 'K-100', bench: 'Office', path: '/keeper/people', reads: '**/api/people', loading: 'Reading from the server.', filled: 'People of the plant' },
];

for (const { name, badge, bench, path, reads, loading, filled } of DESKS) {
  test(`the ${name} desk says that it reads, that nothing is there, that reading failed, and that the network is gone`, async ({ startPlant }) => {
    const plant = await startPlant(() => undefined);
    const kiosk = await plant.openKiosk(badge, bench);
    const { page } = kiosk;
    await expect(foot(kiosk)).toContainText('Connected');
    // Without the live channel the desk reads by plain requests, which can be held back here.
    await page.route('**/socket.io/**', (route) => route.abort());
    let letGo = (): void => undefined;
    const held = new Promise<void>((resolve) => (letGo = resolve));
    await page.route(reads, async (route) => { await held; await route.continue(); });
    await page.goto(path);
    await expect(page.getByText(loading)).toBeVisible();
    await kiosk.accessible();
    if (name === 'packing') await kiosk.picture('state-loading');
    letGo();
    await expect(page.getByText(filled).first()).toBeVisible();
    await page.unroute(reads);

    const words = { happened: 'The plant’s store does not take entries at the moment.', kept: 'Nothing was lost.', next: 'If this stays for minutes, tell the keeper.' };
    await page.route(reads, (route) => route.fulfill({ status: 503, contentType: 'application/json', body: JSON.stringify({ ok: false, refusal: { code: 'storageFault' }, words }) }));
    await page.reload();
    await expect(page.getByText(words.happened)).toBeVisible();
    await kiosk.accessible();
    if (name === 'packing') await kiosk.picture('state-fault');
    await page.unroute(reads);
    await kiosk.tap(button(kiosk, 'Try again').first());
    await expect(page.getByText(filled).first()).toBeVisible();
    await expect(page.getByText(words.happened)).toBeHidden();
    await page.unroute('**/socket.io/**');

    await expect(foot(kiosk)).toContainText('Connected');
    await kiosk.accessibleInEveryTheme();
    await kiosk.offline(true);
    await expect(foot(kiosk)).toContainText('No network');
    await kiosk.accessible();
    if (name === 'packing') await kiosk.picture('state-disconnected');
    await kiosk.offline(false);
    await expect(foot(kiosk)).toContainText('Connected');
    await expect(page.getByText(filled).first()).toBeVisible();
  });
}

test('a kiosk that finds no server says so and goes on by itself when there is one', async ({ startPlant }) => {
  const plant = await startPlant(() => undefined);
  const kiosk = await plant.openKiosk('I-303', 'Final visual 1');
  await kiosk.page.route('**/api/plant', (route) => route.abort());
  await kiosk.page.reload();
  await expect(kiosk.page.getByText('The server is out of reach.')).toBeVisible();
  await kiosk.accessible();
  await kiosk.picture('state-no-server');
  await kiosk.page.unroute('**/api/plant');
  await expect(kiosk.page.getByText('Nothing waits at this bench.')).toBeVisible();
});

test('a desk whose code did not arrive can be tried again, and a traveller nobody knows says so', async ({ startPlant }) => {
  const plant = await startPlant(() => undefined);
  const kiosk = await plant.openKiosk('P-601', 'Packing');
  await expect(kiosk.page.getByText('No released lot waits to be packed or shipped.')).toBeVisible();
  await kiosk.page.route('**/assets/gh-trace-desk*.js', (route) => route.abort());
  await kiosk.tap(kiosk.page.getByRole('link', { name: 'Trace' }));
  await expect(kiosk.page.getByText('This desk could not be fetched.')).toBeVisible();
  await kiosk.accessible();
  await kiosk.page.unroute('**/assets/gh-trace-desk*.js');
  await kiosk.tap(button(kiosk, 'Try again'));
  await expect(kiosk.page.getByText('Nothing is being traced.')).toBeVisible();
  await kiosk.page.goto('/traveller/lot/L26-9999');
  await expect(kiosk.page.getByText(/L26-9999/).first()).toBeVisible();
  await expect(button(kiosk, 'Try again')).toBeVisible();
  await kiosk.accessible();
  await kiosk.page.goto('/nowhere');
  await expect(kiosk.page.getByText('There is no desk at /nowhere.')).toBeVisible();
  await kiosk.accessible();
});

/** Work at every desk: a lot in hand, one held, one on tightened, one to release, one half packed. */
function busyPlant(story: Story): void {
  lotsWaitingFor(story, 'final-visual', [{ id: 'L26-0561' }, { id: 'L26-0562', pieces: 480 }, { id: 'L26-0563' }, { id: 'L26-0564' }, { id: 'L26-0565' }]);
  story.gate('I-303', 'lot:L26-0563', 'final-visual', { found: [{ code: 'CH', pieces: 3 }, { code: 'ST', pieces: 2 }] });
  story.gate('I-303', 'lot:L26-0561', 'final-visual', { found: [{ code: 'ST', pieces: 2 }, { code: 'HM', pieces: 1 }], leaveOpen: true });
  lotsWaitingFor(story, 'release', [{ id: 'L26-0571', product: 'TNMG-D2' }]);
  lotsWaitingFor(story, 'packing', [{ id: 'L26-0572', product: 'TNMG-D2' }]);
  boxesOf(story, 'L26-0572', 3);
}

test('a scan anywhere opens what was scanned', async ({ startPlant }) => {
  const plant = await startPlant(busyPlant);
  const engineer = await plant.openKiosk('Q-402', 'Office');
  const box = (await (await engineer.page.request.get('/api/states?stream=lot:L26-0572')).json() as { state: { boxes: readonly { payload: string }[] } }).state.boxes[0]?.payload ?? '';
  const at = async (path: string, scanned: string, leads: RegExp): Promise<void> => {
    await engineer.page.goto(path);
    await expect(foot(engineer)).toContainText('Connected');
    await engineer.scan(scanned);
    await expect(engineer.page).toHaveURL(leads);
  };
  await at('/bench', 'L26-0561', /\/traveller\/lot\/L26-0561\?work$/);
  await at('/release', 'P26-180', /\/traveller\/batch\/P26-180\?work$/);
  await at('/plans', 'F26-901', /\/traveller\/furnace\/F26-901\?work$/);
  await at('/traveller/lot/L26-0561?work', 'L26-0562', /\/traveller\/lot\/L26-0562\?work$/);
  await at('/bench', box, /\/traveller\/lot\/L26-0572\?work$/);
  await at('/trace', 'L26-0572', /\/trace\/lot\/L26-0572$/);
  await engineer.page.goto('/bench');
  await expect(foot(engineer)).toContainText('Connected');
  await engineer.scan('Z99-NOTHING');
  await expect(engineer.page.getByText('Nothing is known by “Z99-NOTHING”.')).toBeVisible();
  await engineer.accessible();
  await engineer.scan('I-301');
  await expect(engineer.page.getByRole('group', { name: 'PIN of I-301' })).toBeVisible();
  const packer = await plant.openKiosk('P-601', 'Packing');
  await expect(foot(packer)).toContainText('Connected');
  await packer.scan(box);
  await expect(packer.page).toHaveURL(/\/packing\/L26-0572\?box=L26-0572-001$/);
});

test('every desk at work is free of axe findings in light, dark and high contrast', async ({ startPlant }) => {
  test.slow();
  const plant = await startPlant(busyPlant);
  const engineer = await plant.openKiosk('Q-402', 'Final visual 1');
  const { page } = engineer;
  const pages: readonly (readonly [string, string | RegExp])[] = [
    ['/bench', /L26-0561/], ['/bench/hand-over', 'Hand-over at Final visual 1'], ['/lab', 'Powder batches'], ['/release', 'L26-0571'], ['/release/L26-0571', 'Every gate with what its verdict rests on'],
    ['/plans', 'ROUTE-CNMG'], ['/plans/plan/ROUTE-CNMG', 'Final visual'], ['/plans/switching', 'CNMG-D1'], ['/plans/catalogue', 'TNMG-D2'], ['/trace/lot/L26-0572', 'Raw lots'],
    ['/traveller/lot/L26-0561', 'L26-0561'], ['/traveller/lot/L26-0561?work', 'Look at 80 pieces'], ['/traveller/lot/L26-0563?work', 'On hold'], ['/traveller/batch/P26-180', 'P26-180'], ['/traveller/furnace/F26-901', 'F26-901'], ['/keeper/pin', 'Change my PIN'],
  ];
  for (const [path, there] of pages) {
    await page.goto(path);
    await expect(page.getByText(there).first()).toBeVisible();
    await engineer.accessibleInEveryTheme();
  }
  const keeper = await plant.openKiosk('K-100', 'Office');
  for (const [path, there] of [['/keeper/people', 'Nell Harrow'], ['/keeper/people/I-301', 'Change Nell Harrow'], ['/gauges', 'MIC-12'], ['/keeper/plant', 'The plant'], ['/keeper/journal', 'The journal']] as const) {
    await keeper.page.goto(path);
    await expect(keeper.page.getByText(there).first()).toBeVisible();
    await keeper.accessibleInEveryTheme();
  }
  const packer = await plant.openKiosk('P-601', 'Packing');
  for (const [path, there] of [['/packing', 'L26-0572'], ['/packing/L26-0572', 'Boxes of this lot'], ['/packing/L26-0572?ship', 'Ready to ship from lot L26-0572']] as const) {
    await packer.page.goto(path);
    await expect(packer.page.getByText(there).first()).toBeVisible();
    await packer.accessibleInEveryTheme();
  }
  const nobody = await plant.openKiosk('', '', { signOn: false });
  await expect(nobody.page.getByText('Where does this kiosk stand?')).toBeVisible();
  await nobody.accessibleInEveryTheme();
  await nobody.tap(button(nobody, 'Final visual 1'));
  await expect(nobody.page.getByRole('group', { name: 'PIN' })).toBeVisible();
  await nobody.accessibleInEveryTheme();
});

/** One lot in hand, one due on tightened, one that waits for a decision: a bench in the middle of a shift. */
function benchInShift(story: Story): void {
  lotsWaitingFor(story, 'final-visual', ['L26-0561', 'L26-0562', 'L26-0563', 'L26-0564'].map((id) => ({ id })));
  story.gate('I-303', 'lot:L26-0561', 'final-visual', { found: [{ code: 'ST', pieces: 2 }, { code: 'HM', pieces: 1 }], leaveOpen: true });
  for (const id of ['L26-0562', 'L26-0563']) story.gate('I-303', `lot:${id}`, 'final-visual', { found: [{ code: 'FL', pieces: 4 }] });
  const [hold] = story.floor.lot('L26-0562').holds;
  story.floor.give(someone('Q-401'), 'Office', { type: 'dispose', subject: 'lot:L26-0562', hold: hold?.id ?? '', disposition: { kind: 'scrap' }, reason: 'Coating flaked on the cutting edge' });
}

test('the look chosen on a kiosk stays with it, dark or in high contrast', async ({ startPlant }) => {
  const plant = await startPlant(benchInShift);
  const kiosk = await plant.openKiosk('I-303', 'Final visual 1');
  await expect(kiosk.page.getByRole('link', { name: /L26-0564.*after L26-0562 and L26-0563/ })).toBeVisible();
  await kiosk.picture('kiosk-bench');
  for (const [look, theme] of [['Dark', 'dark'], ['High contrast', 'contrast']] as const) {
    await kiosk.tap(button(kiosk, /Change person, look, bench/));
    await kiosk.tap(kiosk.page.getByRole('radio', { name: look }));
    await expect(kiosk.page.locator('html')).toHaveAttribute('data-theme', theme);
    await kiosk.accessible();
    await kiosk.page.reload();
    await expect(kiosk.page.getByRole('link', { name: /L26-0561/ })).toBeVisible();
    await expect(kiosk.page.locator('html')).toHaveAttribute('data-theme', theme);
    await kiosk.picture(`kiosk-bench-${theme}`);
    await kiosk.page.goto('/traveller/lot/L26-0561?work');
    await expect(kiosk.page.getByRole('heading', { name: 'Look at 80 pieces' })).toBeVisible();
    await kiosk.accessible();
    await kiosk.picture(`kiosk-work-${theme}`);
    await kiosk.page.goto('/bench');
  }
  await kiosk.tap(button(kiosk, /Change person, look, bench/));
  await kiosk.tap(kiosk.page.getByRole('radio', { name: 'As the device' }));
  await expect(kiosk.page.locator('html')).toHaveAttribute('data-theme', 'light');
  await kiosk.page.goto('/traveller/lot/L26-0561');
  await expect(kiosk.page.getByRole('heading', { name: 'Look at 80 pieces' })).toBeVisible();
  await kiosk.picture('kiosk-traveller');
});
