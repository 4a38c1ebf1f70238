import { expect, someone, test } from './plant.ts';
import type { Kiosk, Plant, Story } from './plant.ts';
import { pressFigure, tabTo } from './keypad.ts';
import { lotsWaitingFor } from './lot-stories.ts';

/** A lot of 480 whose ground dimensions are due: the plan asks for 7 circles (level II) and 4 thicknesses (level I) at AQL 1. */
function lotAtDimensions(story: Story): void {
  lotsWaitingFor(story, 'dimensions', [{ id: 'L26-0900', pieces: 480 }]);
}
const CIRCLES = ['12.701', '12.699', '12.711', '12.694', '12.705', '12.698', '12.703'];
const THICKNESSES = ['4.761', '4.755', '4.768', '4.752'];

const keypad = (kiosk: Kiosk) => kiosk.page.locator('gh-asked gh-keypad');
const verdict = (kiosk: Kiosk) => kiosk.page.locator('gh-verdict').getByRole('status');
/** One place of the strip as its table reads it aloud. */
const place = (kiosk: Kiosk, ordinal: number, value: string, standing = 'within limits') => kiosk.page.getByRole('row', { name: `${ordinal} ${value} ${standing}`, exact: true });

async function openTheLot(kiosk: Kiosk): Promise<void> {
  await kiosk.tap(kiosk.page.getByRole('link', { name: /L26-0900/ }));
  await expect(keypad(kiosk)).toContainText('Inscribed circle d, piece 1 of 7');
}
async function inspectorAtTheLot(plant: Plant): Promise<Kiosk> {
  const kiosk = await plant.openKiosk('I-302', 'Gauge room');
  await openTheLot(kiosk);
  return kiosk;
}

test('a gauge that types brings the lot to its verdict without a touch, and another kiosk sees every reading', async ({ startPlant }) => {
  const plant = await startPlant(lotAtDimensions);
  const kiosk = await plant.openKiosk('I-302', 'Gauge room');
  const other = await plant.openKiosk('I-301', 'Gauge room', { portrait: true });
  await kiosk.accessibleInEveryTheme();
  await openTheLot(kiosk);
  await openTheLot(other);
  kiosk.countFromHere();
  for (const [index, value] of CIRCLES.entries()) {
    await kiosk.gauge(value);
    if (index < 6) await expect(place(other, index + 1, value)).toBeAttached({ timeout: 1000 });
    await expect(verdict(kiosk)).toHaveText('');
    if (index !== 3) continue;
    await expect(kiosk.page.locator('gh-demand')).toContainText(/Tray \d, position \d+/);
    await kiosk.picture('inspector-dimensions-1');
    await other.picture('inspector-dimensions-2');
    await kiosk.accessibleInEveryTheme();
    await other.accessible();
  }
  await expect(keypad(other)).toContainText('Thickness s, piece 1 of 4', { timeout: 1000 });
  for (const [index, value] of THICKNESSES.entries()) {
    await expect(verdict(kiosk)).toHaveText('');
    await kiosk.gauge(value);
    if (index < 3) await expect(place(other, index + 1, value)).toBeAttached({ timeout: 1000 });
  }
  await expect(verdict(kiosk)).toHaveText('Accepted: all 2 characteristics');
  await expect(verdict(other)).toHaveText('Accepted: all 2 characteristics', { timeout: 1000 });
  // Worked out by hand from the seven readings: mean 12.70157, s 0.00547.
  await expect(kiosk.page.locator('gh-verdict')).toContainText(/Inscribed circle d: .*mean 12\.7016, s 0\.00547, n 7/);
  await kiosk.picture('inspector-dimensions-3');
  await kiosk.accessibleInEveryTheme();
  expect({ touches: kiosk.touches, keystrokes: kiosk.keystrokes }).toEqual({ touches: 0, keystrokes: 0 });
});

/** Serial ports as the browser gives them, held by the test: what is sent comes out of the port, and the cable can be pulled. */
async function withSerialPort(kiosk: Kiosk): Promise<{ readonly send: (text: string) => Promise<void>; readonly pull: () => Promise<void> }> {
  await kiosk.page.addInitScript(() => {
    let sink: ReadableStreamDefaultController<Uint8Array> | null = null;
    let plugged = true;
    const port = {
      readable: null as ReadableStream<Uint8Array> | null,
      opened: [] as unknown[],
      async open(settings: unknown) {
        if (!plugged) throw new DOMException('no cable', 'NetworkError');
        port.opened.push(settings);
        port.readable = new ReadableStream<Uint8Array>({ start: (controller) => void (sink = controller) });
      },
      async close() { port.readable = null; },
    };
    Object.defineProperty(navigator, 'serial', { value: { requestPort: async () => port, getPorts: async () => [] } });
    Object.assign(window, {
      sendSerial: (text: string) => sink?.enqueue(new TextEncoder().encode(text)),
      pullSerial: () => { plugged = false; sink?.error(new DOMException('lost', 'NetworkError')); setTimeout(() => (plugged = true), 500); },
    });
  });
  await kiosk.page.reload();
  const call = (name: 'sendSerial' | 'pullSerial', text = '') => kiosk.page.evaluate(([what, sent]) => { (window as unknown as Record<string, (text: string) => void>)[what ?? '']?.(sent ?? ''); }, [name, text]);
  return { send: (text) => call('sendSerial', text), pull: () => call('pullSerial') };
}

test('a gauge on a serial port brings the lot to its verdict without a touch, and the port comes back by itself', async ({ startPlant }) => {
  const plant = await startPlant((story) => {
    lotAtDimensions(story);
    story.floor.give(someone('K-100'), 'Office', { type: 'setGaugeLine', gauge: 'MIC-11', line: { number: 1, after: 'A', unit: 'mm', factor: 1 } });
  });
  const kiosk = await plant.openKiosk('I-302', 'Gauge room');
  const port = await withSerialPort(kiosk);
  await openTheLot(kiosk);
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Serial port' }));
  await expect(kiosk.page.locator('gh-sheet[open]')).toContainText('Choose the port the gauge is plugged into');
  await kiosk.accessibleInEveryTheme();
  await kiosk.picture('inspector-serial-1');
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Choose the port' }));
  await expect(kiosk.page.locator('gh-sheet[open]')).toContainText('Each line the gauge sends is taken as a reading');
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Done' }));
  kiosk.countFromHere();
  for (const [index, value] of CIRCLES.entries()) {
    // In two pieces, as a port delivers; with a prefix, noughts and the gauge's own decimal sign.
    await port.send(`01A+000${value.slice(0, 4).replace('.', ',')}`);
    await port.send(`${value.slice(4)} mm\r\n`);
    if (index < 6) await expect(place(kiosk, index + 1, value)).toBeAttached();
    if (index === 2) {
      await kiosk.picture('inspector-serial-2');
      await kiosk.accessible();
      await port.pull();
      await expect(kiosk.page.getByRole('button', { name: 'Cable lost' })).toBeVisible();
      await expect(kiosk.page.getByRole('button', { name: 'Connected' })).toBeVisible({ timeout: 8000 });
    }
  }
  for (const value of THICKNESSES) {
    await expect(verdict(kiosk)).toHaveText('');
    await port.send(`01A+000${value} mm\r`);
  }
  await expect(verdict(kiosk)).toHaveText('Accepted: all 2 characteristics');
  expect({ touches: kiosk.touches, keystrokes: kiosk.keystrokes }).toEqual({ touches: 0, keystrokes: 0 });
});

test('what a gauge sends that is no clear reading is told and not taken, by wire and by typing', async ({ startPlant }) => {
  const plant = await startPlant((story) => {
    lotAtDimensions(story);
    story.floor.give(someone('K-100'), 'Office', { type: 'setGaugeLine', gauge: 'MIC-11', line: { number: 1, after: 'A', unit: 'mm', factor: 1 } });
  });
  const kiosk = await plant.openKiosk('I-302', 'Gauge room');
  const port = await withSerialPort(kiosk);
  await openTheLot(kiosk);
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Serial port' }));
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Choose the port' }));
  await expect(kiosk.page.locator('gh-sheet[open]')).toContainText('Each line the gauge sends is taken as a reading');
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Done' }));
  await port.send('01A+00.4999 in\r');
  await expect(kiosk.page.locator('gh-sheet[open]')).toContainText('It sent “01A+00.4999 in”. Nothing was taken.');
  await kiosk.accessible();
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Done' }));
  // Two figures in one run are none; a prefix that the card knows is read; a bare figure with plus, noughts, comma and unit is read.
  await kiosk.scan('12.701 12.702');
  await expect(kiosk.page.getByText('Nothing is known by “12.701 12.702”.')).toBeVisible();
  await expect(keypad(kiosk)).toContainText('piece 1 of 7');
  await kiosk.scan('01A+0012.701 mm');
  await expect(place(kiosk, 1, '12.701')).toBeAttached();
  await kiosk.scan('+0012,699 mm');
  await expect(place(kiosk, 2, '12.699')).toBeAttached();
  // A minus is not dropped: the gauge cannot show it.
  await kiosk.scan('-12.700');
  await expect(kiosk.page.locator('gh-sheet[open]')).toContainText('the gauge measures only 0 … 25 mm');
});

test('a figure by keypad costs its characters and one touch, and the limits are drawn in by the uncertainty of the gauge', async ({ startPlant }) => {
  const plant = await startPlant(lotAtDimensions);
  const kiosk = await inspectorAtTheLot(plant);
  kiosk.countFromHere();
  await pressFigure(kiosk, '12.701');
  await expect(place(kiosk, 1, '12.701')).toBeAttached();
  expect(kiosk.touches).toBe('12.701'.length + 1);
  // 12.62 … 12.78 mm drawn in by U = 0.003 mm: 12.778 is inside the specification and not accepted.
  await kiosk.gauge('12.778');
  await expect(place(kiosk, 2, '12.778', 'within the uncertainty of a limit')).toBeAttached();
  await kiosk.gauge('12.781');
  await expect(place(kiosk, 3, '12.781', 'outside limits')).toBeAttached();
  // How sure each decision is: with the process of the last lots where there are any, else with this lot; formula and source on asking.
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'How sure?' }));
  const risk = kiosk.page.locator('gh-decision-risk');
  await expect(risk).toContainText('Judged within');
  await expect(risk).toContainText('12.6230 … 12.7770 mm');
  await expect(risk).toContainText('Process: the 3 readings of this lot so far.');
  await kiosk.tap(risk.getByRole('button', { name: 'How?' }));
  await expect(risk).toContainText('JCGM 106:2012');
  await kiosk.picture('inspector-how-sure');
  await kiosk.accessibleInEveryTheme();
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Close' }));
  for (const limit of ['12.780', '12.777', '12.623', '12.620']) await expect(kiosk.page.locator('gh-sample-strip svg')).toContainText(limit);
  await kiosk.picture('inspector-dimensions-4');
  await kiosk.accessibleInEveryTheme();
});

test('a slipped decimal sign is asked about with both figures, and the gauge that types cannot answer', async ({ startPlant }) => {
  const plant = await startPlant(lotAtDimensions);
  const kiosk = await inspectorAtTheLot(plant);
  await kiosk.gauge('1.27');
  const question = kiosk.page.getByRole('dialog', { name: 'Is 1.27 mm right, or is it 12.7 mm?' });
  await expect(kiosk.page.getByRole('button', { name: 'Take 12.7 mm' })).toBeVisible();
  await expect(kiosk.page.getByRole('button', { name: '1.27 mm is right' })).toBeVisible();
  await kiosk.picture('inspector-dimensions-5');
  await kiosk.accessibleInEveryTheme();
  await kiosk.gauge('12.701');
  await expect(question).toBeVisible();
  kiosk.countFromHere();
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Take 12.7 mm' }));
  await expect(place(kiosk, 1, '12.700')).toBeAttached();
  await expect(keypad(kiosk)).toContainText('piece 2 of 7');
  expect(kiosk.touches).toBe(1);
  // A person who knows better is believed, and the slip says that they were sure.
  await kiosk.gauge('1.271');
  await kiosk.tap(kiosk.page.getByRole('button', { name: '1.271 mm is right' }));
  await expect(place(kiosk, 2, '1.271', 'outside limits')).toBeAttached();
  // Beyond the gauge and finer than its last digit cannot be: said, kept out, and never rounded.
  await kiosk.gauge('127.01');
  await expect(kiosk.page.locator('gh-sheet[open]')).toContainText('127.01 cannot be taken, for the gauge measures only 0 … 25 mm');
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Understood' }));
  await kiosk.gauge('12.7014');
  await expect(kiosk.page.locator('gh-sheet[open]')).toContainText('It is not rounded for you.');
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Understood' }));
  await expect(keypad(kiosk)).toContainText('piece 3 of 7');
});

test('an overdue gauge is refused in words, on the kiosk and at the door', async ({ startPlant }) => {
  const plant = await startPlant(lotAtDimensions);
  const kiosk = await inspectorAtTheLot(plant);
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Other gauge' }));
  await expect(kiosk.page.getByRole('radio', { name: /MIC-12 .* overdue since/ })).toBeDisabled();
  await kiosk.accessible();
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Close' }));
  await kiosk.scan('MIC-12');
  await expect(kiosk.page.getByRole('dialog')).toContainText(/Gauge MIC-12 cannot count here: its calibration ended on/);
  await kiosk.picture('inspector-dimensions-6');
  await kiosk.accessibleInEveryTheme();
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Understood' }));
  await kiosk.scan('BAL-21');
  await expect(kiosk.page.getByRole('dialog')).toContainText('this characteristic asks for: micrometer');
  await kiosk.tap(kiosk.page.getByRole('button', { name: 'Understood' }));
  await kiosk.gauge('12.701');
  await expect(place(kiosk, 1, '12.701')).toBeAttached();
  const reply = await kiosk.page.request.post('/api/commands', { data: { clientId: 'journey-overdue-gauge', command: { type: 'takeReading', subject: 'lot:L26-0900', gate: 'dimensions', characteristic: 'circle', ordinal: 2, value: 12.7, gauge: 'MIC-12' }, bench: 'Gauge room' } });
  expect(await reply.json()).toMatchObject({ ok: false, refusal: { code: 'gaugeCannotCount', gauge: 'MIC-12', why: 'overdue' } });
});

test('a reading is corrected with its reason; the first entry stays on the traveller', async ({ startPlant }) => {
  const plant = await startPlant(lotAtDimensions);
  const kiosk = await inspectorAtTheLot(plant);
  await kiosk.gauge('12.711');
  await kiosk.tap(kiosk.page.getByRole('button', { name: /slips$/ }));
  const slip = kiosk.page.getByRole('listitem').filter({ hasText: '12.711' });
  await kiosk.tap(slip.getByRole('button', { name: 'Correct' }));
  const sheet = kiosk.page.locator('gh-correct-sheet');
  await expect(sheet.getByRole('dialog', { name: 'Correct Inscribed circle d, piece 1' })).toBeVisible();
  await sheet.getByRole('textbox', { name: 'Right value' }).fill('12.701');
  await kiosk.tap(sheet.getByRole('button', { name: 'Correct', exact: true }));
  await expect(sheet).toContainText('This must be filled in.');
  await kiosk.tap(sheet.getByRole('button', { name: 'wrong piece measured' }));
  await kiosk.picture('inspector-dimensions-7');
  await kiosk.accessibleInEveryTheme();
  await kiosk.tap(sheet.getByRole('button', { name: 'Correct', exact: true }));
  await expect(sheet).toHaveCount(0);
  await expect(kiosk.page.getByRole('listitem').filter({ hasText: 'wrong piece measured' })).toContainText('12.701');
  await expect(slip.first()).toContainText('Corrected');
  await kiosk.picture('inspector-dimensions-8');
  await kiosk.accessibleInEveryTheme();
});

test('the whole of it by keyboard: sign on, open the lot, measure, read the verdict, go back', async ({ startPlant }) => {
  const plant = await startPlant(lotAtDimensions);
  const kiosk = await plant.openKiosk('I-302', 'Gauge room', { signOn: false });
  await expect(kiosk.page.getByRole('heading', { name: 'Where does this kiosk stand?' })).toBeVisible();
  await kiosk.accessible();
  await tabTo(kiosk, 'Gauge room');
  await kiosk.press('Enter');
  await expect(kiosk.page.getByRole('textbox', { name: 'Badge' })).toBeFocused();
  await kiosk.accessibleInEveryTheme();
  kiosk.countFromHere();
  await kiosk.scan('I-302');
  await kiosk.type('3020');
  await kiosk.press('Enter');
  await expect(kiosk.page.getByRole('heading', { name: 'Gauge room', level: 1 })).toBeVisible();
  expect(kiosk.keystrokes, 'change of person: a badge scan and a PIN').toBe(5);
  await tabTo(kiosk, /L26-0900/);
  await kiosk.press('Enter');
  await expect(keypad(kiosk)).toContainText('piece 1 of 7');
  for (const value of [...CIRCLES, ...THICKNESSES]) {
    kiosk.countFromHere();
    await kiosk.type(value);
    await kiosk.press('Enter');
    expect(kiosk.keystrokes).toBe(value.length + 1);
  }
  await expect(verdict(kiosk)).toHaveText('Accepted: all 2 characteristics');
  await tabTo(kiosk, 'Back to the list');
  await kiosk.press('Enter');
  await expect(kiosk.page.getByText('Nothing waits at this bench.')).toBeVisible();
});
