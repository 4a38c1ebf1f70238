import type { LitElement } from 'lit';

/**
 * Brings the focus to the first thing to be filled in of a sheet that has just been opened: its field, or the PIN pad of its signature.
 * Without it a PIN typed on hardware keys would fall on the key that closes the sheet.
 */
export async function focusSheet(host: LitElement): Promise<void> {
  await host.updateComplete;
  const first = host.renderRoot.querySelector<HTMLElement>('gh-sheet[open] gh-field:not([readonly]), gh-sheet[open] gh-pin-pad');
  const pad = host.renderRoot.querySelector('gh-sheet[open] gh-signature')?.shadowRoot?.querySelector<HTMLElement>('gh-pin-pad') ?? null;
  // The sheet opens its dialog, and the browser moves the focus, in the same turn: ours comes after.
  requestAnimationFrame(() => (first ?? pad)?.focus());
}
