import { kioskShellWords, type KioskShellWords } from '../../shared/words/kiosk-shell.en.ts';

/** Texts of the frame in the kiosk's language. */
export function shellWords(): KioskShellWords {
  return kioskShellWords;
}

/** The language numbers and dates are written in. */
export function locale(): string {
  return document.documentElement.lang === '' ? 'en' : document.documentElement.lang;
}
