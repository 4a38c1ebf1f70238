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

/** Touches a field and types into it. */
export async function fillIn(kiosk: Kiosk, label: string, text: string): Promise<void> {
  await kiosk.tap(kiosk.page.getByRole('textbox', { name: label, exact: true }));
  await kiosk.type(text);
}

/** Goes on by Tab until the focus stands on what answers to this name. @throws when it is not reached within `most` steps */
export async function tabTo(kiosk: Kiosk, name: string | RegExp, most = 60): Promise<void> {
  const seen: string[] = [];
  for (let step = 0; step < most; step += 1) {
    // A person's finger rests on a key; keys as quick as a gauge's would be taken for one.
    kiosk.keystrokes += 1;
    await kiosk.page.keyboard.press('Tab', { delay: 90 });
    const here = await kiosk.page.evaluate(focusedName);
    if (typeof name === 'string' ? here === name : name.test(here)) return;
    seen.push(here);
  }
  throw new Error(`Tab never came to ${name}; it passed ${seen.join(' | ')}`);
}

/** What the focused element is called, seen through shadow roots and slots. */
function focusedName(): string {
  const textOf = (node: Node): string => {
    if (node instanceof HTMLSlotElement) return node.assignedNodes({ flatten: true }).map(textOf).join(' ');
    if (node instanceof Element && node.localName.startsWith('gh-') && node.shadowRoot !== null) return [...node.shadowRoot.childNodes].map(textOf).join(' ');
    if (node.nodeType === Node.TEXT_NODE) return node.textContent ?? '';
    return node instanceof Element && node.localName !== 'style' ? [...node.childNodes].map(textOf).join(' ') : '';
  };
  let focused = document.activeElement;
  while (focused?.shadowRoot?.activeElement) focused = focused.shadowRoot.activeElement;
  if (focused === null) return '';
  const labels = focused instanceof HTMLInputElement || focused instanceof HTMLTextAreaElement ? [...(focused.labels ?? [])].map(textOf).join(' ') : '';
  return (focused.getAttribute('aria-label') ?? (labels === '' ? textOf(focused) : labels)).replaceAll(/\s+/g, ' ').trim();
}
