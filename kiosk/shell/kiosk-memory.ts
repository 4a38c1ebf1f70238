import type { Theme } from '../theme/choose-theme.ts';

/* What this kiosk remembers about itself: its look, its bench, the size of its screen. Nothing about people or lots. */
const THEMES: readonly Theme[] = ['light', 'dark', 'contrast'];

/** The look chosen on this kiosk; null: as the device wishes. */
export function rememberedTheme(): Theme | null {
  return THEMES.find((theme) => theme === read('theme')) ?? null;
}
/** Keeps the look chosen; null forgets it. */
export function rememberTheme(theme: Theme | null): void {
  write('theme', theme ?? '');
}
/** The bench this kiosk stands at; empty before it was said. */
export function rememberedBench(): string {
  return read('bench');
}
/** Keeps the bench this kiosk stands at. */
export function rememberBench(bench: string): void {
  write('bench', bench);
}
/** CSS pixels to one true millimetre; null before it was measured. */
export function rememberedSize(): number | null {
  const size = Number(read('true-mm'));
  return size >= 2 && size <= 20 ? size : null;
}
/** Keeps how many CSS pixels make one true millimetre, 2 … 20; others are read back as not measured. */
export function rememberSize(pixelsPerMm: number): void {
  write('true-mm', String(pixelsPerMm));
}

/** Is somebody called by sound here? Off until it was switched on. */
export function rememberedSound(): boolean {
  return read('sound') === 'on';
}
/** Keeps whether somebody is called by sound here. */
export function rememberSound(on: boolean): void {
  write('sound', on ? 'on' : '');
}

// A browser may forbid storage; the kiosk then forgets these at each reload, and that is all.
function read(name: string): string {
  try {
    return localStorage.getItem(`gatehand-${name}`) ?? '';
  } catch {
    return '';
  }
}
function write(name: string, text: string): void {
  try {
    localStorage.setItem(`gatehand-${name}`, text);
  } catch {
    return;
  }
}
