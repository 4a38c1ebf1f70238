import { localeFor, parseNumber } from '../../shared/words/index.ts';
import { locale } from '../shell/words.ts';

/** A number above 0 that a person typed; null where the text is none. */
export function aboveZero(text: string): number | null {
  const value = parseNumber(text, localeFor(locale()));
  return value !== null && value > 0 ? value : null;
}
