import { kioskTravellerWords, type KioskTravellerWords } from '../../shared/words/kiosk-traveller.en.ts';
import { localeFor, words, type Catalogue, type Format } from '../../shared/words/index.ts';
import { locale } from '../shell/words.ts';

/** Texts of the traveller desk in the kiosk's language. */
export function travellerWords(): KioskTravellerWords {
  return kioskTravellerWords;
}
/** The message catalogue in the kiosk's language. */
export function catalogue(): Catalogue {
  return words(localeFor(locale()));
}
/** How numbers and times are written on this kiosk. */
export function format(): Format {
  return catalogue().format;
}
