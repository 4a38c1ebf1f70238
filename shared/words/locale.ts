/** Languages with a full catalogue. A further one is a set of files beside the English ones and one line here and in index.ts. */
export const LOCALES = ['en'] as const;
export type Locale = (typeof LOCALES)[number];

/** The tag that numbers and dates are written by. */
export const FORMAT_TAGS: Readonly<Record<Locale, string>> = { en: 'en-GB' };

/** The language to speak for a wish such as `de-AT`; English where it is not held. */
export function localeFor(wished: string): Locale {
  const base = wished.toLowerCase().split('-')[0];
  return LOCALES.find((locale) => locale === base) ?? 'en';
}
