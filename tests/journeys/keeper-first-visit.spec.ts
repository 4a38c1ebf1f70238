import { expect, test } from './plant.ts';
import type { Kiosk } from './plant.ts';

const button = ({ page }: Kiosk, name: string | RegExp) => page.getByRole('button', { name });
const field = ({ page }: Kiosk, name: string) => page.getByRole('textbox', { name, exact: true });
const pad = ({ page }: Kiosk, name: string) => page.getByRole('group', { name });

async function fill(kiosk: Kiosk, name: string, text: string): Promise<void> {
  await kiosk.tap(field(kiosk, name));
  await kiosk.type(text);
}
async function pressPin(kiosk: Kiosk, name: string, pin: string, enter: string): Promise<void> {
  for (const digit of pin) await kiosk.tap(pad(kiosk, name).getByRole('button', { name: digit, exact: true }));
  await kiosk.tap(pad(kiosk, name).getByRole('button', { name: enter, exact: true }));
}
async function signOn(kiosk: Kiosk, badge: string, pin: string): Promise<void> {
  await expect(field(kiosk, 'Badge')).toBeFocused();
  await kiosk.type(badge);
  await kiosk.press('Enter');
  await expect(pad(kiosk, `PIN of ${badge}`)).toBeVisible();
  await kiosk.type(pin);
  await kiosk.press('Enter');
}

/** The keeper opens the plant, signs on at the office and enrols an inspector. */
async function openPlantAndEnrol(kiosk: Kiosk): Promise<void> {
  await fill(kiosk, 'Name of the plant', 'Invented plant of a test');
  await fill(kiosk, 'Country, two letters', 'xx');
  await fill(kiosk, 'Address, as it stands on certificates', '2 Invented Way');
  await fill(kiosk, 'Name', 'Kest Arden');
  await fill(kiosk, 'Badge', 'k-1');
  await fill(kiosk, 'PIN, 4 to 8 digits', '4711');
  await fill(kiosk, 'The same PIN again', '4711');
  await kiosk.tap(button(kiosk, 'Open the plant'));
  await kiosk.tap(button(kiosk, 'Office'));
  await signOn(kiosk, 'K-1', '4711');
  await kiosk.tap(kiosk.page.getByRole('link', { name: 'Enrol a person' }));
  await fill(kiosk, 'Badge', 'I-7');
  await fill(kiosk, 'Name', 'Wren Aldo');
  await kiosk.tap(kiosk.page.getByRole('checkbox', { name: 'Inspector' }));
  await pressPin(kiosk, 'New PIN', '1234', 'Next');
  await pressPin(kiosk, 'New PIN once more', '1234', 'Set it');
  await expect(kiosk.page.getByText('Wren Aldo is enrolled and can sign on.')).toBeVisible();
}

test('the first visit to an empty server makes the plant and its keeper, who enrols a person, who changes the PIN', async ({ startPlant }) => {
  const plant = await startPlant(null);
  const kiosk = await plant.openKiosk('', '', { signOn: false });
  await expect(kiosk.page.getByRole('heading', { name: 'Set up this plant' })).toBeVisible();
  await kiosk.accessible();
  await kiosk.picture('first-visit');
  await kiosk.tap(button(kiosk, 'Open the plant'));
  await expect(kiosk.page.getByText('This must be filled in.').first()).toBeVisible();
  await kiosk.accessible();
  await openPlantAndEnrol(kiosk);
  await kiosk.accessible();
  await kiosk.picture('keeper-enrol');
  await kiosk.tap(kiosk.page.getByRole('link', { name: 'All people' }));
  await expect(kiosk.page.getByRole('row', { name: /I-7 Wren Aldo Inspector active/ })).toBeVisible();
  await kiosk.accessible();

  const bench = await plant.openKiosk('', '', { signOn: false, portrait: true });
  await bench.tap(button(bench, 'Office'));
  await bench.accessible();
  await signOn(bench, 'I-7', '1234');
  await bench.tap(button(bench, /Change person, look, bench/));
  await bench.accessible();
  await bench.tap(button(bench, 'My PIN'));
  await expect(bench.page.getByRole('heading', { name: 'Change my PIN' })).toBeVisible();
  await bench.accessible();
  await pressPin(bench, 'PIN so far', '1234', 'Next');
  await pressPin(bench, 'New PIN', '8899', 'Next');
  await pressPin(bench, 'New PIN once more', '8890', 'Set it');
  await expect(bench.page.getByText('The two were not the same. Choose the new PIN again.')).toBeVisible();
  await pressPin(bench, 'New PIN', '8899', 'Next');
  await pressPin(bench, 'New PIN once more', '8899', 'Set it');
  await expect(bench.page.getByText('Your PIN is changed.')).toBeVisible();
  await bench.picture('my-pin-portrait');
  const tryPin = async (pin: string) => (await bench.page.request.post('/api/session', { data: { badge: 'I-7', pin, bench: 'Office' } })).status();
  expect(await tryPin('1234')).toBe(401);
  expect(await tryPin('8899')).toBe(200);
  const slips = JSON.stringify(await (await bench.page.request.get('/api/states?stream=person:I-7')).json());
  for (const pin of ['1234', '8899', '8890']) expect(slips).not.toContain(pin);
});

test('the plant is set up with the keyboard alone', async ({ startPlant }) => {
  const plant = await startPlant(null);
  const kiosk = await plant.openKiosk('', '', { signOn: false });
  for (const [name, text] of [['Name of the plant', 'Invented plant'], ['Country, two letters', 'XX'], ['Address, as it stands on certificates', '2 Invented Way'], ['Name', 'Kest Arden'], ['Badge', 'K-1'], ['PIN, 4 to 8 digits', '4711'], ['The same PIN again', '4711']] as const) {
    await kiosk.reach(field(kiosk, name));
    await kiosk.type(text);
  }
  await kiosk.press('Enter');
  await expect(kiosk.page.getByRole('heading', { name: 'Where does this kiosk stand?' })).toBeVisible();
  await kiosk.accessible();
  await kiosk.reach(button(kiosk, 'Office'));
  await kiosk.press('Enter');
  await signOn(kiosk, 'K-1', '4711');
  await expect(kiosk.page.getByRole('heading', { name: 'Keeper' })).toBeVisible();
  expect(kiosk.touches).toBe(0);
});

test('wrong PINs are counted aloud and lock the badge for a while', async ({ startPlant }) => {
  const plant = await startPlant();
  const kiosk = await plant.openKiosk('', '', { signOn: false });
  await kiosk.tap(button(kiosk, 'Final visual 1'));
  await kiosk.accessible();
  await kiosk.type('I-303');
  await kiosk.press('Enter');
  const alert = kiosk.page.getByRole('alert');
  for (const left of ['4 tries are', '3 tries are', '2 tries are', 'One try is']) {
    await kiosk.type('9999');
    await kiosk.press('Enter');
    await expect(alert).toContainText(`${left} left.`);
  }
  await kiosk.accessible();
  await kiosk.type('9999');
  await kiosk.press('Enter');
  await expect(alert).toContainText('Too many wrong PINs for this badge. Try again after');
  await kiosk.picture('sign-on-locked');
  await kiosk.type('3030');
  await kiosk.press('Enter');
  await expect(alert).toContainText('Too many wrong PINs for this badge. Try again after');
  await expect(kiosk.page.getByRole('heading', { name: 'Final visual 1' })).toBeHidden();
  await kiosk.accessible();
});
