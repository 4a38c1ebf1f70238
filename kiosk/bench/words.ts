import { kioskBenchWords, type KioskBenchWords } from '../../shared/words/kiosk-bench.en.ts';
import { formatFor, localeFor, type Format } from '../../shared/words/index.ts';
import { locale } from '../shell/words.ts';

/** Texts of the bench list in the kiosk's language. */
export function benchWords(): KioskBenchWords {
  return kioskBenchWords;
}
/** How numbers and times are written on this kiosk. */
export function format(): Format {
  return formatFor(localeFor(locale()));
}
