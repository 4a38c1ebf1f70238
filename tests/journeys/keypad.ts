import type { Kiosk } from './plant.ts';

/** Presses a figure on the keypad in sight and enters it: one touch a character, one for Enter. */
export async function pressFigure(kiosk: Kiosk, figure: string): Promise<void> {
  const pad = kiosk.page.locator('gh-keypad');
  for (const character of figure) await kiosk.tap(pad.getByRole('button', { name: character === '.' ? 'Decimal sign' : character, exact: true }));
  await kiosk.tap(pad.getByRole('button', { name: 'Enter', exact: true }));
}

/** Presses the PIN on the pad in sight and signs. */
export async function pressPin(kiosk: Kiosk, pin: string, key: 'Sign' | 'Sign on' = 'Sign'): Promise<void> {
  const pad = kiosk.page.locator('gh-pin-pad');
  for (const digit of pin) await kiosk.tap(pad.getByRole('button', { name: digit, exact: true }));
  await kiosk.tap(pad.getByRole('button', { name: key, exact: true }));
}

/** Goes on by Tab until the focus stands on what answers to this name. @throws when it is not reached within `most` steps */
export async function tabTo(kiosk: Kiosk, name: string | RegExp, most = 60): Promise<void> {
  const seen: string[] = [];
  for (let step = 0; step < most; step += 1) {
    await kiosk.press('Tab');
    const here = await kiosk.page.evaluate(focusedName);
    if (typeof name === 'string' ? here === name : name.test(here)) return;
    seen.push(here);
  }
  throw new Error(`Tab never came to ${name}; it passed ${seen.join(' | ')}`);
}

/** What the focused element is called, seen through shadow roots. */
function focusedName(): string {
  let focused = document.activeElement;
  while (focused?.shadowRoot?.activeElement) focused = focused.shadowRoot.activeElement;
  if (focused === null) return '';
  const labels = focused instanceof HTMLInputElement || focused instanceof HTMLTextAreaElement ? [...(focused.labels ?? [])] : [];
  return (focused.getAttribute('aria-label') ?? (labels.length > 0 ? labels.map(({ textContent }) => textContent).join(' ') : focused.textContent) ?? '').replaceAll(/\s+/g, ' ').trim();
}
