import { execFileSync } from 'node:child_process';
import { deflateSync, inflateSync } from 'node:zlib';
import { chanceFrom } from '../../demo-data/chance.ts';
import { workGate } from '../../demo-data/work-gate.ts';
import { lotsWaitingFor, threadOf } from './lot-stories.ts';
import { expect, someone, test } from './plant.ts';
import type { Kiosk } from './plant.ts';

const button = ({ page }: Kiosk, name: string | RegExp) => page.getByRole('button', { name });
const sheet = ({ page }: Kiosk) => page.locator('gh-sheet[open]');
const pinPad = ({ page }: Kiosk, name: string) => page.getByRole('group', { name });

/** The same PDF with the data inside it rewritten, as a forger would. */
function withOtherData(pdf: Buffer, rewrite: (json: string) => string): Buffer {
  const text = pdf.toString('latin1');
  const start = text.indexOf('stream', text.search(/\/Type\s*\/EmbeddedFile\b/)) + 'stream\n'.length;
  const end = text.indexOf('endstream', start);
  const before = inflateSync(pdf.subarray(start, end)).toString('utf8');
  const after = rewrite(before);
  expect(after).not.toBe(before);
  return Buffer.concat([pdf.subarray(0, start), deflateSync(Buffer.from(after)), Buffer.from('\n'), pdf.subarray(end)]);
}

async function pressPin(kiosk: Kiosk, pad: string, pin: string): Promise<void> {
  for (const digit of pin) await kiosk.tap(pinPad(kiosk, pad).getByRole('button', { name: digit, exact: true }));
}

test('everything a release rests on is on one screen with its numbers; the signature makes a certificate that anybody can check', async ({ startPlant }) => {
  const plant = await startPlant((story) => lotsWaitingFor(story, 'release', [{ id: 'L26-0541' }]));
  const releaser = await plant.openKiosk('R-501', 'Office');
  const packer = await plant.openKiosk('P-601', 'Packing');
  await expect(packer.page.getByText('No released lot waits to be packed or shipped.')).toBeVisible();
  await expect(releaser.page.getByRole('link', { name: 'L26-0541' })).toBeVisible();
  await releaser.accessible();
  await releaser.picture('release-list');
  releaser.countFromHere();
  await releaser.tap(releaser.page.getByRole('link', { name: 'L26-0541' }));
  await expect(releaser.page.getByRole('table', { name: 'Every gate with what its verdict rests on' })).toBeVisible();
  const gates = releaser.page.getByRole('table', { name: 'Every gate with what its verdict rests on' });
  for (const gate of ['Powder', 'Pressing', 'Sintered check', 'Ground dimensions', 'Edge preparation', 'Coating check', 'Final visual', 'Marking']) await expect(gates.getByRole('rowheader', { name: new RegExp(`^${gate}`) }).first()).toBeVisible();
  await expect(gates).toContainText('Ac 1, Re 2');
  await expect(gates).toContainText('p = 0.000 %');
  await expect(gates).toContainText('M = 3.05 %');
  await expect(gates).toContainText('ISO 2859-1 II-A, level II, letter J, normal, AQL 0.65');
  await expect(releaser.page.getByText('Ready to release')).toBeVisible();
  await releaser.accessible();
  await releaser.picture('release');
  await releaser.tap(button(releaser, 'Sign the release'));
  await expect(releaser.page.getByText('I have seen every gate of lot L26-0541 with its numbers and release 1,000 pieces of CNMG 12 04 08 with a certificate.')).toBeVisible();
  await releaser.accessible();
  await releaser.picture('release-sign');
  await pressPin(releaser, 'PIN', '9999');
  await releaser.tap(releaser.page.getByRole('button', { name: 'Sign', exact: true }));
  await expect(sheet(releaser)).toContainText(/PIN/);
  await expect(releaser.page.getByRole('heading', { name: 'The certificate C-L26-0541-1' })).toBeHidden();
  await pressPin(releaser, 'PIN', '5010');
  await releaser.tap(releaser.page.getByRole('button', { name: 'Sign', exact: true }));
  await expect(releaser.page.getByRole('heading', { name: 'The certificate C-L26-0541-1' })).toBeVisible();
  expect(releaser.touches).toBe(12);
  await expect(packer.page.getByRole('link', { name: /L26-0541/ })).toBeVisible();

  await releaser.tap(button(releaser, 'Verify it now'));
  await expect(releaser.page.getByRole('status').filter({ hasText: 'Genuine' })).toBeVisible();
  await expect(releaser.page.getByText(/Sealed is: certificate C-L26-0541-1, lot L26-0541, CNMG 12 04 08, 1,000 pieces/)).toBeVisible();
  await releaser.accessible();
  await releaser.picture('release-verified');

  const opened = await releaser.page.request.get(await releaser.page.getByRole('link', { name: 'Open the certificate (PDF)' }).getAttribute('href') ?? '');
  expect(opened.headers()['content-type']).toContain('application/pdf');
  const bytes = await opened.body();
  const text = execFileSync('pdftotext', ['-raw', '-', '-'], { input: bytes }).toString('utf8').replaceAll(/\s+/g, ' ');
  for (const said of ['C-L26-0541-1', 'L26-0541', 'CNMG 12 04 08', 'P26-180', 'Vera Stane', 'Quantity 1000 pieces']) expect(text).toContain(said);

  // Whoever holds the file needs no account here: the endpoint answers without a session.
  const withDrawing = await releaser.page.request.get(await releaser.page.getByRole('link', { name: 'With the drawing on its last page (PDF)' }).getAttribute('href') ?? '');
  expect([withDrawing.status(), withDrawing.headers()['content-type'], (await withDrawing.body()).length > (await opened.body()).length]).toEqual([200, 'application/pdf', true]);
  const verify = (file: Buffer) => fetch(`${plant.server.url}/api/certificates/verify`, { method: 'POST', headers: { 'content-type': 'application/pdf' }, body: new Uint8Array(file) });
  expect(await (await verify(bytes)).json()).toMatchObject({ verdict: 'genuine' });
  const altered = withOtherData(bytes, (json) => json.replace('"quantity":1000', '"quantity":9000'));
  expect(await (await verify(altered)).json()).toMatchObject({ verdict: 'altered', why: 'digestDiffers' });
  expect(await (await verify(Buffer.from('%PDF-1.7 not one of ours'))).json()).toMatchObject({ verdict: 'notOurs' });
  await releaser.page.goto('/release');
  await releaser.page.getByLabel('Verify a certificate file').setInputFiles({ name: 'certificate.pdf', mimeType: 'application/pdf', buffer: altered });
  await expect(releaser.page.getByRole('status').filter({ hasText: 'Altered' })).toBeVisible();
  await releaser.accessible();
});

test('the release is signed with the keyboard alone', async ({ startPlant }) => {
  const plant = await startPlant((story) => lotsWaitingFor(story, 'release', [{ id: 'L26-0541' }]));
  const releaser = await plant.openKiosk('R-501', 'Office', { portrait: true });
  const row = releaser.page.getByRole('link', { name: 'L26-0541' });
  await expect(row).toBeVisible();
  releaser.countFromHere();
  await releaser.reach(row);
  await releaser.press('Enter');
  await expect(button(releaser, 'Sign the release')).toBeVisible();
  await releaser.accessible();
  await releaser.picture('release-portrait');
  await releaser.reach(button(releaser, 'Sign the release'));
  await releaser.press('Enter');
  await expect(releaser.page.getByRole('dialog', { name: 'Release lot L26-0541' })).toBeVisible();
  await expect(pinPad(releaser, 'PIN').getByRole('button', { name: '1', exact: true })).toBeFocused();
  await releaser.type('5010');
  await releaser.press('Enter');
  await expect(releaser.page.getByRole('heading', { name: 'The certificate C-L26-0541-1' })).toBeFocused();
  expect(releaser.touches).toBe(0);
  expect(releaser.keystrokes).toBeLessThanOrEqual(26);
});

test('a lot that is not through says what stops it', async ({ startPlant }) => {
  const plant = await startPlant((story) => lotsWaitingFor(story, 'marking', [{ id: 'L26-0541' }]));
  const releaser = await plant.openKiosk('R-501', 'Office');
  await releaser.page.goto('/release/L26-0541');
  await expect(releaser.page.getByText('Gate “Marking” is not passed: not begun.')).toBeVisible();
  await expect(button(releaser, 'Sign the release')).toHaveCount(0);
  await releaser.accessible();
});

test('whoever worked the last gate does not release alone, but with a second releaser', async ({ startPlant }) => {
  const plant = await startPlant((story) => {
    lotsWaitingFor(story, 'marking', [{ id: 'L26-0541' }]);
    const { floor } = story;
    const both = { ...someone('R-501'), roles: ['releaser', 'inspector'] as const };
    floor.give(someone('K-100'), 'Office', { type: 'changePerson', badge: both.badge, name: both.name, roles: both.roles, active: true, reason: 'Stands in at marking this week' });
    expect(workGate(floor, chanceFrom('marking'), both, 'lot:L26-0541', 'marking')).toBe(true);
  });
  const releaser = await plant.openKiosk('R-501', 'Office');
  await releaser.page.goto('/release/L26-0541');
  await releaser.tap(button(releaser, 'Sign the release'));
  await expect(releaser.page.getByText('You worked the last gate (Marking). A second releaser who did not work it signs with you, here, now.')).toBeVisible();
  await releaser.accessible();
  await releaser.picture('release-two-sign');
  const alone = await releaser.page.request.post('/api/commands', { data: { clientId: 'alone-00000001', command: { type: 'releaseLot', lot: 'L26-0541' }, bench: 'Office', pin: '5010' } });
  expect(alone.status()).toBeGreaterThanOrEqual(400);
  expect(alone.status()).toBeLessThan(500);
  await releaser.tap(releaser.page.getByRole('textbox', { name: 'Badge of the second releaser' }));
  await releaser.type('Q-402');
  await pressPin(releaser, 'PIN of the second releaser', '4020');
  await releaser.tap(button(releaser, 'Sign together'));
  await expect(releaser.page.getByText('Q-402 signs with you. Now your own PIN.')).toBeVisible();
  await releaser.accessible();
  await pressPin(releaser, 'PIN', '5010');
  await releaser.tap(releaser.page.getByRole('button', { name: 'Sign', exact: true }));
  await expect(releaser.page.getByRole('heading', { name: 'The certificate C-L26-0541-1' })).toBeVisible();
  await expect(releaser.page.getByText(/Released together with Teo Lindqvane/)).toBeVisible();
  expect((await threadOf(releaser, 'L26-0541')).filter(({ body }) => body.type === 'lotReleased')).toHaveLength(1);
});
