/** The palettes of `kiosk/theme/`. */
export type Theme = 'light' | 'dark' | 'contrast';
/** Bench: gloved targets in true millimetres. Desk: compact. */
export type Density = 'bench' | 'desk';

let following: AbortController | null = null;

/**
 * Shows the kiosk in one palette. With `null` it shows what the device asks for, and follows when that changes.
 * @param theme the palette chosen on this kiosk, or `null` for the device's own wish
 */
export function chooseTheme(theme: Theme | null): void {
  following?.abort();
  following = null;
  if (theme !== null) return showTheme(theme);
  following = new AbortController();
  const wishes = [matchMedia('(prefers-contrast: more)'), matchMedia('(prefers-color-scheme: dark)')];
  for (const wish of wishes) wish.addEventListener('change', showWished, { signal: following.signal });
  showWished();
}

/** Chooses how dense the whole page is; a section may differ through its own `data-density`. */
export function chooseDensity(density: Density): void {
  document.documentElement.dataset['density'] = density;
}

/**
 * Tells the page how many CSS pixels make one real millimetre on this screen, so that a 20 mm key is 20 mm wide.
 * @param pixelsPerMm measured by laying a card of known width on the screen; 2 … 20
 * @throws RangeError outside that range: a measurement that cannot be
 */
export function setTrueSize(pixelsPerMm: number): void {
  if (!(pixelsPerMm >= 2 && pixelsPerMm <= 20)) throw new RangeError(`pixelsPerMm must be 2 … 20, was ${pixelsPerMm}`);
  document.documentElement.style.setProperty('--true-mm', `${pixelsPerMm}px`);
}

function showWished(): void {
  if (matchMedia('(prefers-contrast: more)').matches) return showTheme('contrast');
  showTheme(matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light');
}

function showTheme(theme: Theme): void {
  document.documentElement.dataset['theme'] = theme;
}
