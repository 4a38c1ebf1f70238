import { kioskLabWords, type KioskLabWords } from '../../shared/words/kiosk-lab.en.ts';

/** Texts of the lab desk in the kiosk's language. */
export function labWords(): KioskLabWords {
  return kioskLabWords;
}
