import type { Catalogue, LanguageParts } from './catalogue.ts';
import { english } from './catalogue.en.ts';
import type { Locale } from './locale.ts';
import { makeCatalogue } from './make-catalogue.ts';

export type { Catalogue, DocumentWords, HasBody, LanguageParts } from './catalogue.ts';
export { formatFor, formatOfTag } from './format.ts';
export type { Format } from './format.ts';
export type { Labels, MoveReason } from './labels.ts';
export { LOCALES, localeFor } from './locale.ts';
export type { Locale } from './locale.ts';
export { parseCount, parseNumber, parseNumberWith } from './parse-number.ts';
export { personName } from './speak.ts';
export type { Reader } from './speak.ts';
export type { ToldRefusal } from './told-refusal.ts';
export { labelOf, say } from './words-for.ts';
export type { WordsFor } from './words-for.ts';

const LANGUAGES: Readonly<Record<Locale, LanguageParts>> = { en: english };
const made = new Map<string, Catalogue>();

/**
 * The message catalogue of a language; the same object each time it is asked for.
 * @param timeZone such as `Europe/Prague`; left out, times are told in the zone of the device
 */
export function words(locale: Locale, timeZone?: string): Catalogue {
  const key = `${locale} ${timeZone ?? ''}`;
  const catalogue = made.get(key) ?? makeCatalogue(locale, LANGUAGES[locale], timeZone);
  made.set(key, catalogue);
  return catalogue;
}
