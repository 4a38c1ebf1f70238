import { formatFor, type Format } from '../../shared/words/format.ts';
import { localeFor } from '../../shared/words/locale.ts';
import { parseNumber } from '../../shared/words/parse-number.ts';

/** Numbers and days as the page's language writes them. */
const locale = () => localeFor(document.documentElement.lang);
const format = (): Format => formatFor(locale());

/** A number with exactly this many decimals. */
export const showNumber = (value: number, decimals: number): string => format().number(value, decimals);
/** A number with as many digits as it has: an AQL, a count, a constant. */
export const showFigure = (value: number): string => format().number(value);
/** Day and minute of a moment, in the kiosk's own time. @param iso ISO 8601 */
export const showMoment = (iso: string): string => format().dateTime(iso);
/** A day of the calendar. @param day YYYY-MM-DD */
export const showDay = (day: string): string => format().date(day);
/** "a, b and c". */
export const showList = (items: readonly string[]): string => format().list(items);
/** Reads a number as people type it; null where it is none. */
export const readNumber = (text: string): number | null => parseNumber(text, locale());
/** A number as it would be typed here: no groups, the language's decimal sign. */
export const typedFigure = (value: number): string => String(value).replace('.', format().decimalSign);
